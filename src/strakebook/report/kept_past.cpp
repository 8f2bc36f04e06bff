#include "strakebook/report/kept_past.h"

#include <charconv>

#include "strakebook/base/yaml_text.h"
#include "strakebook/report/kept_names.h"

namespace strakebook::kept {

namespace {

using base::YamlNode;

YamlNode text(std::string value) { return {.kind = YamlNode::Kind::scalar, .text = std::move(value)}; }
YamlNode number(std::size_t value) { return text(std::to_string(value)); }
YamlNode map(std::vector<YamlNode::Entry> entries) { return {.kind = YamlNode::Kind::map, .entries = std::move(entries)}; }
YamlNode list(std::vector<YamlNode> items) { return {.kind = YamlNode::Kind::list, .items = std::move(items)}; }

YamlNode form(const survey::Recipient &recipient) {
  std::vector<YamlNode::Entry> entries = {{"who", {}, text(recipient.who.text)}};
  if (recipient.how.given()) entries.push_back({"how", {}, text(recipient.how.text)});
  return map(std::move(entries));
}

YamlNode form(const amend::PastIssue &issue) {
  std::vector<YamlNode> recipients;
  for (const auto &recipient : issue.recipients) recipients.push_back(form(recipient));
  std::vector<YamlNode::Entry> entries = {{"issue", {}, number(static_cast<std::size_t>(issue.issue))}};
  if (issue.date) entries.push_back({"date", {}, text(base::iso(*issue.date))});
  entries.push_back({"digest", {}, text(issue.digest)});
  entries.push_back({"recipients", {}, list(std::move(recipients))});
  return map(std::move(entries));
}

YamlNode form(const std::string &path, const Original &original) {
  return map({{"file", {}, text(path)},
              {"digest", {}, text(original.digest)},
              {"bytes", {}, number(original.bytes)},
              {"width", {}, number(static_cast<std::size_t>(original.extent.width))},
              {"height", {}, number(static_cast<std::size_t>(original.extent.height))}});
}

std::string text_at(const YamlNode &node, std::string_view key) {
  const auto *value = node.find(key);
  return value ? value->text : std::string();
}

/// 0 where there is no number: nothing that is written here is 0.
template <class Number> Number number_at(const YamlNode &node, std::string_view key) {
  const auto written = text_at(node, key);
  Number value{};
  std::from_chars(written.data(), written.data() + written.size(), value);
  return value;
}

survey::Words words_at(const YamlNode &node, std::string_view key) {
  const auto *value = node.find(key);
  return value ? survey::Words{value->text, value->span} : survey::Words{};
}

amend::PastIssue past_in(const YamlNode &node) {
  amend::PastIssue issue{.issue = number_at<int>(node, "issue"), .date = base::parse_date(text_at(node, "date")), .digest = text_at(node, "digest"), .recipients = {}};
  if (const auto *recipients = node.find("recipients"))
    for (const auto &one : recipients->items) issue.recipients.push_back({words_at(one, "who"), words_at(one, "how"), one.span});
  return issue;
}

/// The items of a kept list, if `again` writes the file as it stands.
template <class Value, class Take> std::optional<Value> read(const base::FileSet &files, std::string_view name, Take take, base::Diagnostics &sink) {
  Value value;
  const auto found = files.find(std::string(name));
  if (found == files.end()) return value;
  base::Diagnostics faults;
  const auto file = std::make_shared<const base::SourceFile>(base::SourceFile{std::string(name), found->second});
  for (const auto &item : base::parse_yaml(file, faults).items) take(item, value);
  if (faults.ok() && text_of(value) == found->second) return value;
  sink.error(base::Code::not_a_report, {file, 1, 1, 1}, std::string(name) + " is not as this program keeps it");
  return std::nullopt;
}

} // namespace

base::FileSet in_folder(const base::FileSet &files, std::string_view folder) {
  base::FileSet inner;
  for (auto at = files.lower_bound(std::string(folder)); at != files.end() && at->first.starts_with(folder); ++at)
    inner.emplace(at->first.substr(folder.size()), at->second);
  return inner;
}

std::string text_of(const std::vector<amend::PastIssue> &issues) {
  std::vector<YamlNode> items;
  for (const auto &issue : issues) items.push_back(form(issue));
  return base::yaml_text(list(std::move(items)));
}

std::optional<std::vector<amend::PastIssue>> read_past(const base::FileSet &files, base::Diagnostics &sink) {
  return read<std::vector<amend::PastIssue>>(files, past, [](const YamlNode &item, auto &into) { into.push_back(past_in(item)); }, sink);
}

std::string text_of(const std::map<std::string, Original> &originals) {
  std::vector<YamlNode> items;
  for (const auto &[path, original] : originals) items.push_back(form(path, original));
  return base::yaml_text(list(std::move(items)));
}

std::optional<std::map<std::string, Original>> read_originals(const base::FileSet &files, base::Diagnostics &sink) {
  using Originals = std::map<std::string, Original>;
  const auto take = [](const YamlNode &item, Originals &into) {
    const Original original{text_at(item, "digest"), number_at<std::size_t>(item, "bytes"), {number_at<int>(item, "width"), number_at<int>(item, "height")}};
    if (original.extent.width > 0 && original.extent.height > 0) into[text_at(item, "file")] = original;
  };
  return read<Originals>(files, photographs, take, sink);
}

} // namespace strakebook::kept
