#include "strakebook/paper/typeset/recorded.h"

#include <utility>

#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"
#include "strakebook/base/text.h"

namespace strakebook::typeset {
namespace {

constexpr std::size_t bytes_max = 32u << 20;

void damaged(const std::filesystem::path &path, base::Code code, base::Diagnostics &sink) {
  const auto name = path.filename().string();
  base::Diagnostic d;
  d.code = code;
  d.message = "the bundled file " + name + " is missing or not the one that was recorded";
  d.expected = name + " with the digest that SHA256SUMS records";
  d.write = "restore " + path.string() + " from the distribution";
  sink.add(std::move(d));
}

} // namespace

std::optional<std::map<std::string, std::string>> recorded_digests(const std::filesystem::path &folder,
                                                                   base::Diagnostics &sink) {
  const auto sums = base::read_file(folder / "SHA256SUMS", bytes_max, {}, sink);
  if (!sums)
    return std::nullopt;
  // sha256sum's own form: digest, two blanks, file name.
  std::map<std::string, std::string> digests;
  const auto parts = base::words(*sums);
  for (std::size_t i = 0; i + 1 < parts.size(); i += 2)
    digests.emplace(parts[i + 1], parts[i]);
  return digests;
}

std::optional<std::string> recorded_file(const std::filesystem::path &path,
                                         const std::map<std::string, std::string> &digests, base::Code code,
                                         base::Diagnostics &sink) {
  auto bytes = base::read_file(path, bytes_max, {}, sink);
  const auto digest = digests.find(path.filename().string());
  if (bytes && digest != digests.end() && base::sha256_hex(*bytes) == digest->second)
    return bytes;
  damaged(path, code, sink);
  return std::nullopt;
}

} // namespace strakebook::typeset
