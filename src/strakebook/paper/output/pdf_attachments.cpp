#include "strakebook/paper/output/pdf_attachments.h"

#include <map>
#include <stdexcept>

namespace strakebook::output {

namespace {

/// Pictures are packed already.
Coding coding_of(const page::Attachment &attachment) {
  return attachment.media_type.starts_with("image/") ? Coding::plain : Coding::deflate;
}

PdfDict specification(PdfFile &file, const page::Attachment &attachment) {
  auto stream = file.stream(attachment.bytes, coding_of(attachment));
  stream.name("Type", "EmbeddedFile").name("Subtype", attachment.media_type.c_str());
  stream.put("Params", file.dict().number("Size", static_cast<int>(attachment.bytes.size())));
  auto made = file.indirect_dict();
  made.name("Type", "Filespec").text("F", attachment.name).text("UF", attachment.name);
  if (!attachment.description.empty())
    made.text("Desc", attachment.description);
  return made.put("EF", file.dict().put("F", stream).put("UF", stream)).name("AFRelationship", "Source");
}

/// By the bytes of the names in the file, which is the order of a name tree.
std::map<std::string, const page::Attachment *> in_order(const std::vector<page::Attachment> &attachments) {
  std::map<std::string, const page::Attachment *> sorted;
  for (const auto &attachment : attachments)
    if (attachment.name.empty() || !sorted.emplace(text_string(attachment.name), &attachment).second)
      throw std::logic_error("a file without a name, or two of one name, are to be attached: " + attachment.name);
  return sorted;
}

} // namespace

void add_attachments(PdfFile &file, const std::vector<page::Attachment> &attachments) {
  if (attachments.empty())
    return;
  if (file.kind() == PdfKind::archival)
    throw std::logic_error("an archival PDF carries no files");
  auto names = file.array(), all = file.array();
  for (const auto &[key, attachment] : in_order(attachments)) {
    const auto made = specification(file, *attachment);
    names.bytes(key).put(made);
    all.put(made);
  }
  file.names().put("EmbeddedFiles", file.indirect_dict().put("Names", names));
  file.catalog().put("AF", all);
}

} // namespace strakebook::output
