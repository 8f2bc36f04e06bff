#include "strakebook/paper/file/inside.h"

#include <algorithm>
#include <stdexcept>

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFFileSpecObjectHelper.hh>

#include "strakebook/paper/file/page_text.h"

namespace strakebook::file {

namespace {

/// Keeps what is unpacked, up to a size that no input of a report has.
class Kept : public Pipeline {
public:
  Kept() : Pipeline("kept", nullptr) {}
  void write(const unsigned char *data, std::size_t length) override {
    constexpr std::size_t most = 256u << 20;
    if (length > most - bytes.size()) throw std::length_error("an attached file that unpacks to more than any input has");
    bytes.append(reinterpret_cast<const char *>(data), length);
  }
  void finish() override {}
  std::string bytes;
};

/// The bytes of the file that a specification stands for. nullopt: they cannot be unpacked, or it stands for two.
std::optional<std::string> unpacked(QPDFFileSpecObjectHelper &specification) {
  auto file = specification.getEmbeddedFileStream();
  if (!file.isStream()) return std::nullopt;
  for (auto &[key, other] : specification.getEmbeddedFileStreams().getDictAsMap())
    if (other.getObjGen() != file.getObjGen()) return std::nullopt;
  Kept kept;
  const bool whole = file.pipeStreamData(&kept, 0, qpdf_dl_generalized, true);
  if (!whole) return std::nullopt;
  return std::move(kept.bytes);
}

void add(QPDFObjectHandle object, Contents &to) {
  QPDFFileSpecObjectHelper specification(object);
  const std::string name = specification.getFilename();
  auto bytes = unpacked(specification);
  const auto found = to.attached.find(name);
  if (!bytes || (found != to.attached.end() && found->second != *bytes)) to.damaged.push_back(name);
  if (bytes) to.attached.emplace(name, std::move(*bytes));
}

/// The specifications that stand anywhere in the file, in the list of attachments or not, also inside another object.
void find_specifications(QPDFObjectHandle object, int depth, Contents &to) {
  constexpr int deepest = 8;
  if (depth > deepest || (depth > 0 && object.isIndirect())) return;
  if (object.isDictionary() && object.getKey("/EF").isDictionary()) return add(object, to);
  if (object.isArray())
    for (auto &item : object.getArrayAsVector()) find_specifications(item, depth + 1, to);
  if (object.isDictionary())
    for (auto &[key, item] : object.getDictAsMap()) find_specifications(item, depth + 1, to);
}

} // namespace

Contents contents_inside(std::string_view pdf) {
  QPDF file;
  file.setSuppressWarnings(true);
  file.processMemoryFile("the report", pdf.data(), pdf.size());
  Contents contents;
  for (auto &object : file.getAllObjects()) find_specifications(object, 0, contents);
  contents.pages = page_texts(file);
  std::ranges::sort(contents.damaged);
  return contents;
}

} // namespace strakebook::file
