#include "strakebook/issue/identity.h"

#include "strakebook/base/digest.h"

namespace strakebook::issue {

namespace {

What kind_of(const Entry &entry) { return entry.addendum == 0 ? What::report : What::addendum; }

/// The issue that a file beside another is the stamped copy of; null: it is no such copy.
const Entry *stamped_issue(const KeptFile &file, const Register &register_) {
  for (const auto &entry : register_.entries)
    if (file.path == entry.folder + "-superseded.pdf") return &entry;
  return nullptr;
}

Identity companion(const Entry &entry, const KeptFile &file, const Register &register_) {
  const auto *stamped = stamped_issue(file, register_);
  return {stamped ? What::stamped_copy : What::companion, Likeness::none, stamped ? stamped : &entry, &file};
}

/// Every PDF that went out.
std::vector<Identity> documents(const Register &register_) {
  std::vector<Identity> all;
  for (const auto &entry : register_.entries) {
    all.push_back({kind_of(entry), Likeness::same, &entry, &entry.document});
    if (entry.unsigned_document.digest != entry.document.digest)
      all.push_back({kind_of(entry), Likeness::without_signature, &entry, &entry.unsigned_document});
    for (const auto &file : entry.beside) {
      if (!file.path.ends_with(".pdf")) continue;
      all.push_back(companion(entry, file, register_));
      all.back().likeness = Likeness::same;
    }
  }
  return all;
}

bool begins_with(std::string_view pdf, const KeptFile &file) {
  return file.bytes > 0 && pdf.size() > file.bytes && base::sha256_hex(pdf.substr(0, file.bytes)) == file.digest;
}

} // namespace

Identity identity_of(std::string_view pdf, const Register &register_, const Manifest *claimed) {
  const auto digest = base::sha256_hex(pdf);
  const auto all = documents(register_);
  for (const auto &document : all)
    if (document.file->digest == digest) return document;
  for (auto document : all)
    if (begins_with(pdf, *document.file)) {
      document.likeness = Likeness::longer;
      return document;
    }
  const auto *entry = claimed ? register_.of(claimed->report, claimed->issue, claimed->addendum) : nullptr;
  if (!entry) return {};
  return {kind_of(*entry), Likeness::claimed, entry, &entry->document};
}

} // namespace strakebook::issue
