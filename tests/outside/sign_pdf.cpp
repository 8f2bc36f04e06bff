#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "strakebook/issue/signer.h"
#include "strakebook/paper/file/stamp.h"

/// What follows a written PDF, for judges of it:
///   sign_pdf sign PDF OUT KEY CERTIFICATE PASSPHRASE DAY   (a file of the key's passphrase; CERTIFICATE may be "")
///   sign_pdf stamp PDF OUT STAMP
///   sign_pdf revisions PDF CERTIFICATE                     prints "first BYTES", "more", "signature holds NAME" or why not
namespace {

using namespace strakebook;

std::string read(const char *path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

int told(const base::Diagnostics &sink, const std::string &bytes, const char *to) {
  std::fputs(base::terminal_text(sink).c_str(), stderr);
  if (!sink.ok() || bytes.empty()) return 1;
  return std::ofstream(to, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size())).flush() ? 0 : 3;
}

int sign(char **given) {
  base::Diagnostics sink;
  auto passphrase = read(given[6]);
  const auto signer = issue::Signer::load({given[4], given[5]}, passphrase, sink);
  const auto made = signer ? issue::signed_document(read(given[2]), {.name = "", .reason = "Issued", .location = "", .date = given[7]}, *signer, sink) : std::nullopt;
  return told(sink, made.value_or(""), given[3]);
}

int stamp(char **given) {
  base::Diagnostics sink;
  const auto made = file::stamped(read(given[2]), read(given[4]), sink);
  return told(sink, made, given[3]);
}

int revisions(char **given) {
  const auto found = file::revisions(read(given[2]));
  if (!found) return 1;
  std::printf("first %zu\n", found->first);
  if (found->more) std::puts("more");
  if (!found->signature) return 0;
  const auto checked = issue::check_signature(found->signature->der, found->signature->covered, given[3][0] ? read(given[3]) : std::string());
  std::printf("signature %s %s\n", checked.holds ? "holds" : "broken", checked.holds ? checked.name.c_str() : checked.why.c_str());
  return 0;
}

} // namespace

int main(int count, char **given) {
  const std::string what = count > 1 ? given[1] : "";
  if (what == "sign" && count == 8) return sign(given);
  if (what == "stamp" && count == 5) return stamp(given);
  return what == "revisions" && count == 4 ? revisions(given) : 2;
}
