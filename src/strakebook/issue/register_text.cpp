#include "strakebook/issue/register_text.h"

#include <charconv>

#include <fmt/format.h>

#include "strakebook/base/digest.h"

namespace strakebook::issue {

namespace {

void put(std::string &out, std::string_view key, std::string_view value) {
  out += fmt::format("{}: {}\n", key, spelled(value));
}

void put_if(std::string &out, std::string_view key, std::string_view value) {
  if (!value.empty())
    put(out, key, value);
}

void put(std::string &out, std::string_view key, const KeptFile &file) {
  put(out, key, fmt::format("{} {} {}", file.digest, file.bytes, file.path));
}

bool is_control(unsigned char c) { return c < 0x20 || c == 0x7f; }

/// The byte that two hexadecimal digits at the front of `text` spell.
std::optional<char> hexadecimal(std::string_view text) {
  unsigned value = 0;
  if (text.size() < 2)
    return std::nullopt;
  const auto [end, error] = std::from_chars(text.data(), text.data() + 2, value, 16);
  if (error != std::errc() || end != text.data() + 2)
    return std::nullopt;
  return static_cast<char>(value);
}

} // namespace

std::string spelled(std::string_view text) {
  std::string out;
  for (const char c : text)
    if (c == '\\')
      out += "\\\\";
    else if (c == '\n')
      out += "\\n";
    else if (is_control(static_cast<unsigned char>(c)))
      out += fmt::format("\\x{:02x}", static_cast<unsigned char>(c));
    else
      out += c;
  return out;
}

std::optional<std::string> unspelled(std::string_view line) {
  std::string out;
  for (std::size_t at = 0; at < line.size(); ++at) {
    if (line[at] != '\\') {
      out += line[at];
      continue;
    }
    const char kind = ++at < line.size() ? line[at] : '\0';
    const auto byte = kind == 'x' ? hexadecimal(line.substr(at + 1)) : std::nullopt;
    if (kind == '\\')
      out += '\\';
    else if (kind == 'n')
      out += '\n';
    else if (byte)
      out += *byte, at += 2;
    else
      return std::nullopt;
  }
  return out;
}

std::string lines_of(const Entry &entry) {
  std::string out = "\n";
  put(out, "report", entry.report);
  put(out, "issue", std::to_string(entry.issue));
  if (entry.addendum != 0)
    put(out, "addendum", std::to_string(entry.addendum));
  put(out, "state", entry.state);
  put(out, "date", base::iso(entry.date));
  put(out, "folder", entry.folder);
  put(out, "document", entry.document);
  put(out, "unsigned", entry.unsigned_document);
  put_if(out, "signer", entry.signer);
  put(out, "manifest", entry.manifest);
  for (const KeptFile &file : entry.inputs)
    put(out, "input", file);
  for (const KeptFile &file : entry.beside)
    put(out, "beside", file);
  put_if(out, "replaces", entry.replaces);
  for (const std::string &reason : entry.reasons)
    put(out, "reason", reason);
  put(out, "tool", entry.makers.tool);
  for (const std::string &library : entry.makers.libraries)
    put(out, "library", library);
  for (const Sent &sent : entry.recipients) {
    put(out, "to", sent.who);
    put_if(out, "how", sent.how);
  }
  return out;
}

std::string chain_line(std::string_view covered) { return fmt::format("chain: {}\n", base::sha256_hex(covered)); }

} // namespace strakebook::issue
