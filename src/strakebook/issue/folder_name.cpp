#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/issue/issued_folder.h"

namespace strakebook::issue {

namespace {

constexpr std::size_t most_letters = 80; // of a part; with issue, addendum and the ending it stays far under what any file system takes
constexpr std::size_t digest_letters = 12;

bool is_plain(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'); }

} // namespace

std::string file_part(std::string_view words) {
  std::string out;
  for (const char c : words)
    if (is_plain(c))
      out += c;
    else if (!out.empty() && out.back() != '-')
      out += '-';
  if (out.ends_with('-'))
    out.pop_back();
  if (!out.empty() && out.size() <= most_letters)
    return out;
  const auto digest = base::sha256_hex(words).substr(0, digest_letters);
  return out.empty() ? digest : out.substr(0, most_letters) + "-" + digest;
}

std::string folder_name(std::string_view report, int issue, int addendum) {
  const std::string name = fmt::format("{}-issue-{}", file_part(report), issue);
  return addendum == 0 ? name : fmt::format("{}-addendum-{}", name, addendum);
}

} // namespace strakebook::issue
