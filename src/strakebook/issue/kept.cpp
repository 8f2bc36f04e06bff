#include "strakebook/issue/kept.h"

#include <charconv>

#include <fmt/format.h>

#include "strakebook/base/digest.h"

namespace strakebook::issue {

namespace {

constexpr std::string_view head = "strakebook kept inputs 1";
constexpr std::size_t digest_digits = 64;

/// A short list can ask for one large file any number of times.
constexpr std::size_t most_taken_up = 1u << 30;

/// One line whatever the text holds.
std::string in_one_line(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\') out += "\\\\";
    else if (c == '\n') out += "\\n";
    else if (static_cast<unsigned char>(c) < 0x20) out += fmt::format("\\x{:02x}", static_cast<unsigned>(c));
    else out += c;
  }
  return out;
}

std::optional<int> number_in(std::string_view text, int base = 10) {
  int value = 0;
  const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), value, base);
  if (failed != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

/// The text of in_one_line again, or something that in_one_line does not give back.
std::string as_it_was(std::string_view line) {
  std::string out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char next = line[i] == '\\' && i + 1 < line.size() ? line[i + 1] : '\0';
    if (next == '\0') {
      out += line[i];
    } else if (next == 'x') {
      out += static_cast<char>(number_in(line.substr(i + 2, 2), 16).value_or('?'));
      i += 3;
    } else {
      out += next == 'n' ? '\n' : next;
      ++i;
    }
  }
  return out;
}

/// The lines of a manifest, each a word and what it says.
class Lines {
public:
  explicit Lines(std::string_view text) : rest_(text) {}

  bool at_end() const { return rest_.empty(); }
  /// What the next line says if it begins with this word, and goes on.
  std::optional<std::string_view> take(std::string_view word) {
    const auto line = rest_.substr(0, rest_.find('\n'));
    if (!line.starts_with(word) || line.size() == rest_.size()) return std::nullopt;
    rest_.remove_prefix(line.size() + 1);
    return line.substr(word.size());
  }

private:
  std::string_view rest_;
};

std::optional<KeptFile> file_in(std::string_view line) {
  const auto digest_end = line.find(' '), bytes_end = line.find(' ', digest_end + 1);
  if (digest_end != digest_digits || bytes_end == line.npos) return std::nullopt;
  const auto bytes = line.substr(digest_end + 1, bytes_end - digest_end - 1);
  KeptFile file{as_it_was(line.substr(bytes_end + 1)), std::string(line.substr(0, digest_end)), 0};
  const auto [end, failed] = std::from_chars(bytes.data(), bytes.data() + bytes.size(), file.bytes);
  if (failed != std::errc() || end != bytes.data() + bytes.size()) return std::nullopt;
  return file;
}

std::optional<Manifest> parsed(std::string_view text) {
  Lines lines(text);
  Manifest manifest;
  const auto first = lines.take(head), report = lines.take("report: "), issue = lines.take("issue: ");
  const auto addendum = lines.take("addendum: "), tool = lines.take("tool: ");
  if (!first || !report || !issue || !tool) return std::nullopt;
  manifest.report = as_it_was(*report);
  manifest.issue = number_in(*issue).value_or(0);
  manifest.addendum = addendum ? number_in(*addendum).value_or(0) : 0;
  manifest.makers.tool = as_it_was(*tool);
  while (const auto library = lines.take("library: ")) manifest.makers.libraries.push_back(as_it_was(*library));
  while (const auto line = lines.take("file: ")) {
    auto file = file_in(*line);
    if (!file) return std::nullopt;
    manifest.files.push_back(std::move(*file));
  }
  return manifest;
}

} // namespace

Manifest manifest_of(const base::FileSet &files, std::string report, int issue, int addendum, Makers makers) {
  Manifest manifest{std::move(report), issue, addendum, std::move(makers), {}};
  for (const auto &[path, bytes] : files) manifest.files.push_back({path, base::sha256_hex(bytes), bytes.size()});
  return manifest;
}

std::string text_of(const Manifest &manifest) {
  std::string text = fmt::format("{}\nreport: {}\nissue: {}\n", head, in_one_line(manifest.report), manifest.issue);
  if (manifest.addendum > 0) text += fmt::format("addendum: {}\n", manifest.addendum);
  text += fmt::format("tool: {}\n", in_one_line(manifest.makers.tool));
  for (const auto &library : manifest.makers.libraries) text += fmt::format("library: {}\n", in_one_line(library));
  for (const auto &file : manifest.files) text += fmt::format("file: {} {} {}\n", file.digest, file.bytes, in_one_line(file.path));
  return text;
}

std::optional<Manifest> read_manifest(std::string_view text) {
  auto manifest = parsed(text);
  if (!manifest || text_of(*manifest) != text) return std::nullopt;
  return manifest;
}

base::FileSet laid_down(const base::FileSet &files, const Manifest &manifest) {
  base::FileSet lying{{std::string(manifest_name), text_of(manifest)}};
  std::map<std::string_view, std::string_view> first; // digest -> path
  for (const auto &file : manifest.files)
    if (first.emplace(file.digest, file.path).second) lying[file.path] = files.at(file.path);
  return lying;
}

base::FileSet taken_up(const Manifest &manifest, const base::FileSet &lying) {
  std::map<std::string, const std::string *> by_digest;
  for (const auto &[path, bytes] : lying) by_digest.emplace(base::sha256_hex(bytes), &bytes);
  base::FileSet files;
  std::size_t bytes = 0;
  for (const auto &file : manifest.files) {
    const auto found = by_digest.find(file.digest);
    if (found == by_digest.end()) continue;
    bytes += found->second->size();
    if (bytes > most_taken_up) return {};
    files[file.path] = *found->second;
  }
  return files;
}

std::string short_digest(std::string_view digest) {
  return fmt::format("{} {} {}", digest.substr(0, 4), digest.substr(4, 4), digest.substr(8, 4));
}

} // namespace strakebook::issue
