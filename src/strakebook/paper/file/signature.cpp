#include "strakebook/paper/file/signature.h"

#include <stdexcept>
#include <vector>

#include <fmt/format.h>
#include <qpdf/QPDF.hh>
#include <qpdf/QUtil.hh>

#include "strakebook/base/date.h"
#include "strakebook/base/digest.h"
#include "strakebook/paper/file/first_revision.h"
#include "strakebook/paper/file/spelled.h"

namespace strakebook::file {

namespace {

/// Room for a signature with the certificates of those who vouch for it: two or three, of keys of 4096 bits.
constexpr std::size_t most_bytes = 12 << 10;
/// Of the list of what is covered: four numbers of ten digits.
constexpr std::size_t range_width = 44;
/// Levels of a tree of pages; one that leads round has no end.
constexpr int deepest = 64;

/// What of the file the update is made from.
struct Original {
  explicit Original(std::string_view pdf) {
    document.setAttemptRecovery(false);
    document.setSuppressWarnings(true);
    document.processMemoryFile("the PDF", pdf.data(), pdf.size());
    page = document.getRoot().getKey("/Pages");
    for (int level = 0; level < deepest && page.isDictionaryOfType("/Pages"); ++level) page = page.getKey("/Kids").getArrayItem(0);
    if (!page.isDictionaryOfType("/Page")) throw std::logic_error("its first page cannot be found");
    for (auto changed : {document.getRoot(), page})
      if (!changed.isIndirect() || changed.getGeneration() != 0) throw std::logic_error("its objects are not in their plain form");
    if (document.getRoot().hasKey("/AcroForm") || document.isEncrypted()) throw std::logic_error("it is signed, or a form, or locked");
  }
  int size() { return document.getTrailer().getKey("/Size").getIntValueAsInt(); }

  QPDF document;
  QPDFObjectHandle page;
};

/// Objects appended to a file, with the table that leads to them.
class Update {
public:
  explicit Update(std::string_view pdf) : bytes_(pdf) {}

  /// Returns where the object's own text begins.
  std::size_t add(int id, const std::string &text) {
    places_[id] = bytes_.size();
    bytes_ += fmt::format("{} 0 obj\n", id);
    const auto begins = bytes_.size();
    bytes_ += text + "\nendobj\n";
    return begins;
  }

  std::string ended(const Entries &trailer) {
    const auto table = bytes_.size();
    bytes_ += "xref\n";
    for (const auto &[id, place] : places_) bytes_ += fmt::format("{} 1\n{:010} 00000 n\r\n", id, place);
    bytes_ += fmt::format("trailer\n{}\nstartxref\n{}\n%%EOF\n", spelled(trailer), table);
    return std::move(bytes_);
  }

  const std::string &so_far() const { return bytes_; }

private:
  std::string bytes_;
  std::map<int, std::size_t> places_;
};

/// A day as PDF writes it (ISO 32000-1, 7.9.4): no hour is claimed.
std::string day_spelled(const std::string &iso) {
  const auto day = base::parse_date(iso);
  if (!day) throw std::logic_error("a signature of a day that is none: " + iso);
  return fmt::format("(D:{:04}{:02}{:02})", day->year, day->month, day->day);
}

/// ISO 32000-1, 12.8.1; the form of the signature is that of ETSI EN 319 142-1.
std::string signature_text(const SignatureWords &words) {
  std::string text = "<<\n/Type /Sig\n/Filter /Adobe.PPKLite\n/SubFilter /ETSI.CAdES.detached\n";
  const std::pair<const char *, const std::string &> said[] = {{"Name", words.name}, {"Reason", words.reason}, {"Location", words.location}};
  for (const auto &[key, value] : said)
    if (!value.empty()) text += fmt::format("/{} {}\n", key, text_spelled(value));
  if (!words.date.empty()) text += fmt::format("/M {}\n", day_spelled(words.date));
  return text + fmt::format("/ByteRange {}\n/Contents <{}>\n>>", std::string(range_width, ' '), std::string(2 * most_bytes, '0'));
}

/// The field and its place on the page in one. It has no size and is hidden: nothing is drawn, and nothing is to be read out
/// (ISO 32000-1, 12.7.4.5; ISO 14289-1, 7.18.1).
Entries field(int signature, const QPDFObjectHandle &page) {
  constexpr int hidden = 2, locked = 128; // ISO 32000-1, table 165
  return {{"/Type", "/Annot"}, {"/Subtype", "/Widget"}, {"/FT", "/Sig"}, {"/T", text_spelled("Signature")},
          {"/V", fmt::format("{} 0 R", signature)}, {"/P", spelled(page)}, {"/Rect", "[0 0 0 0]"}, {"/F", std::to_string(hidden | locked)}};
}

Entries page_with(QPDFObjectHandle page, const std::string &annotation) {
  auto entries = entries_of(page);
  std::string list;
  for (const auto &there : page.getKey("/Annots").isArray() ? page.getKey("/Annots").getArrayAsVector() : std::vector<QPDFObjectHandle>())
    list += spelled(there) + " ";
  entries["/Annots"] = "[" + list + annotation + "]";
  return entries;
}

Entries catalog_with(const QPDFObjectHandle &catalog, const std::string &only_field) {
  constexpr int exist_and_append_only = 3; // ISO 32000-1, table 219
  auto entries = entries_of(catalog);
  entries["/AcroForm"] = spelled(Entries{{"/Fields", "[" + only_field + "]"}, {"/SigFlags", std::to_string(exist_and_append_only)}});
  return entries;
}

/// The first part of the identifier stays, the second is of what the file is now (ISO 32000-1, 14.4).
Entries trailer_of(Original &original, int size, std::size_t references, const std::string &so_far) {
  auto old = original.document.getTrailer();
  auto entries = entries_of(old);
  if (auto id = old.getKey("/ID"); id.isArray() && id.getArrayNItems() == 2)
    entries["/ID"] = fmt::format("[{} <{}>]", spelled(id.getArrayItem(0)), base::sha256_hex(so_far).substr(0, 32));
  entries["/Size"] = std::to_string(size);
  entries["/Prev"] = std::to_string(references);
  return entries;
}

void put_range(Prepared &made) {
  const auto range = fmt::format("[0 {} {} {}]", made.hole, made.hole_end, made.bytes.size() - made.hole_end);
  const auto at = made.bytes.rfind("/ByteRange ", made.hole) + std::string_view("/ByteRange ").size();
  made.bytes.replace(at, range.size(), range);
}

Prepared prepared_of(std::string_view pdf, std::size_t references, const SignatureWords &words) {
  Original original(pdf);
  const int signature = original.size(), widget = signature + 1;
  const auto widget_name = fmt::format("{} 0 R", widget);
  Update update(pdf);
  Prepared made;
  const auto text = signature_text(words);
  made.hole = update.add(signature, text) + text.rfind('<');
  made.hole_end = made.hole + 2 * most_bytes + 2;
  update.add(widget, spelled(field(signature, original.page)));
  update.add(original.page.getObjectID(), spelled(page_with(original.page, widget_name)));
  update.add(original.document.getRoot().getObjectID(), spelled(catalog_with(original.document.getRoot(), widget_name)));
  made.bytes = update.ended(trailer_of(original, widget + 1, references, update.so_far()));
  put_range(made);
  return made;
}

} // namespace

std::string Prepared::covered() const { return bytes.substr(0, hole) + bytes.substr(hole_end); }

Prepared prepared(std::string_view pdf, const SignatureWords &words) {
  const auto first = first_revision(pdf);
  if (!first || first->end != pdf.size() || pdf.substr(first->references, 4) != "xref")
    throw std::logic_error("a signature is asked for on a file that this program did not write");
  try {
    return prepared_of(pdf, first->references, words);
  } catch (const std::exception &failure) {
    throw std::logic_error(std::string("a signature cannot be added: ") + failure.what());
  }
}

std::optional<std::string> filled(const Prepared &prepared, std::string_view der) {
  if (der.empty() || der.size() > most_bytes) return std::nullopt;
  auto bytes = prepared.bytes;
  const auto digits = QUtil::hex_encode(std::string(der));
  bytes.replace(prepared.hole + 1, digits.size(), digits);
  return bytes;
}

} // namespace strakebook::file
