#include "strakebook/report/canonical.h"

#include <algorithm>

#include "strakebook/base/digest.h"
#include "strakebook/base/yaml_text.h"

namespace strakebook::canonical {

namespace {

/// Of a map with names those that `keep` has; the key itself goes where none is left.
template <class Things> void keep_named(base::YamlNode &tree, std::string_view key, const Things &keep) {
  const auto map = std::ranges::find(tree.entries, key, &base::YamlNode::Entry::key);
  if (map == tree.entries.end()) return;
  auto &named = map->value.entries;
  std::erase_if(named, [&](const auto &entry) { return std::ranges::find(keep, entry.key, [](const auto &thing) { return thing.id; }) == keep.end(); });
  if (named.empty()) tree.entries.erase(map);
}

base::YamlNode parsed(const std::string &text) {
  base::Diagnostics told_before;
  return base::parse_yaml(std::make_shared<const base::SourceFile>(base::SourceFile{{}, text}), told_before);
}

} // namespace

std::string survey_yaml(const std::string &text, const survey::Survey &told) {
  auto tree = parsed(text);
  std::erase_if(tree.entries, [](const auto &entry) { return entry.key == "private"; });
  keep_named(tree, "addenda", told.addenda);
  keep_named(tree, "photos", told.photos);
  return base::yaml_text(tree);
}

std::string yaml(const std::string &text) { return base::yaml_text(parsed(text)); }

std::string csv(std::string_view text) {
  std::string kept;
  while (!text.empty()) {
    auto line = text.substr(0, text.find('\n'));
    text.remove_prefix(std::min(line.size() + 1, text.size()));
    if (line.ends_with('\r')) line.remove_suffix(1);
    if (!line.starts_with('#')) kept += std::string(line) + '\n';
  }
  return kept;
}

std::vector<base::InputFile> inputs(const Case &the_case) {
  std::map<std::string, const std::string *> as_read; // by digest
  for (const auto *seen : {&the_case.folder.seen(), &the_case.layouts.seen()})
    for (const auto &[path, bytes] : *seen) as_read.emplace(base::sha256_hex(bytes), &bytes);
  auto inputs = the_case.inputs;
  for (auto &input : inputs)
    if (input.kind == "layout") input.digest = base::sha256_hex(yaml(*as_read.at(input.digest)));
  return inputs;
}

} // namespace strakebook::canonical
