#include "strakebook/paper/output/pdf_metadata.h"

#include <fmt/format.h>
#include <stdexcept>

#include "strakebook/base/date.h"

namespace strakebook::output {

namespace {

std::string escaped(std::string_view text) {
  std::string result;
  for (char c : text) {
    if (static_cast<unsigned char>(c) < 0x20)
      throw std::logic_error("a control character in the metadata");
    if (c == '&')
      result += "&amp;";
    else if (c == '<')
      result += "&lt;";
    else if (c == '>')
      result += "&gt;";
    else
      result += c;
  }
  return result;
}

/// One property, or nothing where there is no value.
std::string property(std::string_view name, std::string_view open, std::string_view value,
                     std::string_view close) {
  if (value.empty())
    return {};
  return fmt::format("<{}>{}{}{}</{}>\n", name, open, escaped(value), close, name);
}

std::string plain(std::string_view name, std::string_view value) { return property(name, "", value, ""); }
std::string in_language(std::string_view name, std::string_view value) {
  return property(name, "<rdf:Alt><rdf:li xml:lang=\"x-default\">", value, "</rdf:li></rdf:Alt>");
}
std::string listed(std::string_view name, const char *kind, std::string_view value) {
  return property(name, fmt::format("<rdf:{}><rdf:li>", kind), value,
                  fmt::format("</rdf:li></rdf:{}>", kind));
}

std::string xmp(const page::Metadata &about, const std::string &producer, const std::string &moment, PdfKind kind) {
  return "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
         "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n<rdf:RDF "
         "xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
         "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" "
         "xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" "
         "xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n"
         "<dc:format>application/pdf</dc:format>\n" +
         in_language("dc:title", about.title) + listed("dc:creator", "Seq", about.author) +
         in_language("dc:description", about.subject) + listed("dc:language", "Bag", about.language) +
         plain("xmp:CreatorTool", about.creator) + plain("xmp:CreateDate", moment) +
         plain("xmp:ModifyDate", moment) + plain("pdf:Producer", producer) +
         plain("pdfaid:part", kind == PdfKind::archival ? "1" : "") +
         plain("pdfaid:conformance", kind == PdfKind::archival ? "B" : "") +
         "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>\n";
}

void add_info(PdfFile &file, const page::Metadata &about, const std::string &producer,
              const std::string &moment) {
  auto info = file.info();
  const auto put = [&info](const char *key, const std::string &value) {
    if (!value.empty())
      info.text(key, value);
  };
  put("Title", about.title);
  put("Author", about.author);
  put("Subject", about.subject);
  put("Creator", about.creator);
  put("Producer", producer);
  put("CreationDate", moment);
  put("ModDate", moment);
}

} // namespace

void add_metadata(PdfFile &file, const page::Metadata &metadata) {
  std::string info_moment, xmp_moment;
  if (!metadata.date.empty()) {
    const auto date = base::parse_date(metadata.date);
    if (!date)
      throw std::logic_error("the metadata carry a date that is none: " + metadata.date);
    info_moment = fmt::format("D:{:04}{:02}{:02}000000Z", date->year, date->month, date->day);
    xmp_moment = base::iso(*date) + "T00:00:00Z";
  }
  const auto producer = file.producer();
  add_info(file, metadata, producer, info_moment);
  auto packet = file.stream(xmp(metadata, producer, xmp_moment, file.kind()), Coding::plain);
  packet.name("Type", "Metadata").name("Subtype", "XML");
  auto catalog = file.catalog();
  catalog.put("Metadata", packet).put("ViewerPreferences", file.dict().boolean("DisplayDocTitle", true));
  if (!metadata.language.empty())
    catalog.text("Lang", metadata.language);
}

} // namespace strakebook::output
