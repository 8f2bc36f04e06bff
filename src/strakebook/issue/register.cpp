#include "strakebook/issue/register.h"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

#include "strakebook/base/text.h"
#include "strakebook/issue/register_text.h"

namespace strakebook::issue {

namespace {

constexpr std::size_t digest_digits = 64;

struct Fault {
  std::size_t at = 0; ///< of the line, in the text
  std::string message;
};

bool is_digest(std::string_view text) {
  return text.size() == digest_digits && text.find_first_not_of("0123456789abcdef") == text.npos;
}

template <class Number> std::optional<Number> number(std::string_view text) {
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

/// Takes lines "key: value" off a text, in the order in which they are asked for. The first that is not there, or whose value is
/// none, is kept as the fault; from then on everything it hands out is empty.
class Lines {
public:
  Lines(std::string_view text, std::size_t at) : text_(text), at_(at) {}

  std::size_t at() const { return at_; }
  const std::optional<Fault> &fault() const { return fault_; }

  std::optional<std::string> maybe(std::string_view key) {
    const auto end = text_.find('\n', at_);
    const std::string begins = std::string(key) + ": ";
    if (fault_ || end == text_.npos || !text_.substr(at_, end - at_).starts_with(begins))
      return std::nullopt;
    auto value = unspelled(text_.substr(at_ + begins.size(), end - at_ - begins.size()));
    if (!value)
      return refuse(fmt::format("the value of \"{}\" has a backslash that means nothing", key));
    at_ = end + 1;
    return value;
  }
  std::string need(std::string_view key) {
    auto value = maybe(key);
    if (!value)
      refuse(fmt::format("a line \"{}: ...\" has to stand here", key));
    return value.value_or("");
  }
  std::string digest(std::string_view key) {
    const auto before = at_;
    auto value = need(key);
    if (!is_digest(value))
      refuse_at(before, fmt::format("\"{}\" has to be a SHA-256 of {} digits", key, digest_digits));
    return value;
  }
  int whole(std::string_view key) {
    const auto before = at_;
    const auto value = number<int>(need(key));
    if (!value || *value < 1)
      refuse_at(before, fmt::format("\"{}\" has to be a number from 1", key));
    return value.value_or(0);
  }
  std::optional<KeptFile> maybe_file(std::string_view key) {
    const auto before = at_;
    const auto value = maybe(key);
    if (!value)
      return std::nullopt;
    auto file = file_of(*value);
    if (!file)
      refuse_at(before, fmt::format("\"{}\" has to be a SHA-256, a number of bytes and a path", key));
    return file;
  }
  KeptFile file(std::string_view key) {
    auto found = maybe_file(key);
    if (!found)
      refuse(fmt::format("a line \"{}: ...\" has to stand here", key));
    return found.value_or(KeptFile{});
  }
  base::Date date(std::string_view key) {
    const auto before = at_;
    const auto value = base::parse_date(need(key));
    if (!value)
      refuse_at(before, fmt::format("\"{}\" has to be a day that exists, YYYY-MM-DD", key));
    return value.value_or(base::Date{});
  }
  void blank() {
    if (text_.substr(at_, 1) == "\n")
      ++at_;
    else
      refuse("an entry begins with a blank line");
  }

private:
  static std::optional<KeptFile> file_of(std::string_view value) {
    const auto first = value.find(' ');
    const auto second = first == value.npos ? first : value.find(' ', first + 1);
    if (second == value.npos)
      return std::nullopt;
    const auto bytes = number<std::size_t>(value.substr(first + 1, second - first - 1));
    if (!bytes || !is_digest(value.substr(0, first)))
      return std::nullopt;
    return KeptFile{.path = std::string(value.substr(second + 1)), .digest = std::string(value.substr(0, first)), .bytes = *bytes};
  }
  std::nullopt_t refuse(std::string message) { return refuse_at(at_, std::move(message)); }
  std::nullopt_t refuse_at(std::size_t at, std::string message) {
    if (!fault_)
      fault_ = Fault{at, std::move(message)};
    return std::nullopt;
  }

  std::string_view text_;
  std::size_t at_;
  std::optional<Fault> fault_;
};

Entry entry_from(Lines &lines) {
  Entry entry;
  lines.blank();
  entry.report = lines.need("report");
  entry.issue = lines.whole("issue");
  if (const auto addendum = lines.maybe("addendum"))
    entry.addendum = number<int>(*addendum).value_or(0);
  entry.state = lines.need("state");
  entry.date = lines.date("date");
  entry.folder = lines.need("folder");
  entry.document = lines.file("document");
  entry.unsigned_document = lines.file("unsigned");
  entry.signer = lines.maybe("signer").value_or("");
  entry.manifest = lines.digest("manifest");
  while (auto file = lines.maybe_file("input"))
    entry.inputs.push_back(std::move(*file));
  while (auto file = lines.maybe_file("beside"))
    entry.beside.push_back(std::move(*file));
  entry.replaces = lines.maybe("replaces").value_or("");
  while (auto reason = lines.maybe("reason"))
    entry.reasons.push_back(std::move(*reason));
  entry.makers.tool = lines.need("tool");
  while (auto library = lines.maybe("library"))
    entry.makers.libraries.push_back(std::move(*library));
  while (auto who = lines.maybe("to"))
    entry.recipients.push_back({std::move(*who), lines.maybe("how").value_or("")});
  return entry;
}

std::string name_of(const Entry &entry) {
  return entry.addendum == 0 ? fmt::format("{} issue {}", entry.report, entry.issue)
                             : fmt::format("{} issue {} addendum {}", entry.report, entry.issue, entry.addendum);
}

int line_at(std::string_view text, std::size_t at) { return 1 + static_cast<int>(std::ranges::count(text.substr(0, at), '\n')); }

/// What is wrong with an entry that was read: its lines from `from` to `to`, covered from `covered`.
std::optional<Fault> fault_of(const Entry &entry, std::string_view text, std::size_t covered, std::size_t from, std::size_t chain, std::size_t to,
                              const Register &before) {
  const auto altered = [&] {
    return fmt::format("the entry of {} is not as it was written: one of the lines {} to {} was altered", name_of(entry), line_at(text, covered),
                       line_at(text, chain));
  };
  if (chain_line(text.substr(covered, chain - covered)) != text.substr(chain, to - chain))
    return Fault{from + 1, altered()};
  if (lines_of(entry) != text.substr(from, chain - from))
    return Fault{from + 1, fmt::format("the entry of {} is not spelled as this program spells one", name_of(entry))};
  if (before.of(entry.report, entry.issue, entry.addendum))
    return Fault{from + 1, fmt::format("{} stands in the register twice", name_of(entry))};
  return std::nullopt;
}

/// Reads entries until the end or the first fault.
std::optional<Fault> take_entries(std::string_view text, Register &to) {
  if (!text.starts_with(register_head))
    return Fault{0, "it does not begin as a register does"};
  if (text.size() == register_head.size())
    return Fault{0, "it has no entry, and it is never written without one"};
  std::size_t covered = 0, at = register_head.size();
  while (at < text.size()) {
    Lines lines(text, at);
    Entry entry = entry_from(lines);
    const std::size_t chain = lines.at();
    (void)lines.digest("chain");
    auto fault = lines.fault() ? lines.fault() : fault_of(entry, text, covered, at, chain, lines.at(), to);
    if (fault)
      return fault;
    to.entries.push_back(std::move(entry));
    covered = chain;
    at = lines.at();
  }
  return std::nullopt;
}

} // namespace

const Entry *Register::of(std::string_view report, int issue, int addendum) const {
  const auto found = std::ranges::find_if(
      entries, [&](const Entry &e) { return e.report == report && e.issue == issue && e.addendum == addendum; });
  return found == entries.end() ? nullptr : &*found;
}

const Entry *Register::last_issue(std::string_view report) const {
  const Entry *last = nullptr;
  for (const Entry &entry : entries)
    if (entry.report == report && entry.addendum == 0 && (!last || entry.issue > last->issue))
      last = &entry;
  return last;
}

Register read_register(const base::SourcePtr &file, base::Diagnostics &sink) {
  Register read{.entries = {}, .text = file->text};
  if (const auto fault = take_entries(file->text, read)) {
    const int line = line_at(file->text, fault->at);
    const int length = std::max(1, static_cast<int>(base::code_point_count(base::line_text(*file, line))));
    sink.error(base::Code::register_broken, {file, line, 1, length}, "the register was altered or cut: " + fault->message,
               "the lines that the program wrote, each of them, in their order",
               "nothing here by hand: put back the register from your latest copy of the folder");
  }
  return read;
}

std::string with_entry(const Register &old, const Entry &entry) {
  std::string text = old.text.empty() ? std::string(register_head) : old.text;
  const auto before = text.rfind("\nchain: ");
  const std::size_t covered = before == text.npos ? 0 : before + 1;
  text += lines_of(entry);
  return text + chain_line(std::string_view(text).substr(covered));
}

} // namespace strakebook::issue
