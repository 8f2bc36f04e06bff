#include "strakebook/house/strictness.h"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

#include <fmt/format.h>

#include "strakebook/base/text.h"
#include "strakebook/house/directions.h"
#include "strakebook/house/placeholders.h"
#include "strakebook/house/values.h"

namespace strakebook::house {
namespace {

using base::Code;

/// Decision rules, each stricter than the one before: one with a band calls less, one with four classes tells more.
constexpr std::array<std::string_view, 3> decision_rules{"simple-acceptance", "guard-band", "four-classes"};
std::ptrdiff_t place_along(std::string_view word) {
  return std::ranges::find(decision_rules, word) - decision_rules.begin();
}

struct Sourced {
  Pattern path;
  std::string_view key;
};
const std::vector<Sourced> &sourced() {
  static const std::vector<Sourced> table{{{"policy", "criteria", "*"}, "authority"},
                                          {{"policy", "tolerances", "*"}, "source"},
                                          {{"policy", "ladder"}, "source"},
                                          {{"policy", "extent"}, "source"},
                                          {{"policy", "pitting"}, "source"},
                                          {{"policy", "robustness"}, "source"},
                                          {{"policy", "local-area"}, "source"},
                                          {{"policy", "works"}, "source"},
                                          {{"policy", "checks", "copying"}, "source"},
                                          {{"policy", "unseen"}, "source"},
                                          {{"policy", "years"}, "source"},
                                          {{"policy", "doubt"}, "source"},
                                          {{"policy", "afloat"}, "source"},
                                          {{"policy", "protection"}, "source"},
                                          {{"policy", "protection", "metals", "*"}, "source"}};
  return table;
}

const std::vector<Pattern> &wordings() {
  static const std::vector<Pattern> table{
      {"words", "*"},    {"cautions", "*", "title"}, {"cautions", "*", "text"},      {"jurisdiction", "*"},
      {"glossary", "*"}, {"sections", "*", "title"}, {"policy", "ladder", "too-few"},
      {"formulas", "*", "name"}, {"formulas", "*", "text"}, {"formulas", "*", "source"}, {"formulas", "*", "inputs", "*"}};
  return table;
}

/// Maps whose names are the program's: a new one would never be used, so it is a slip.
const std::vector<Pattern> &closed() {
  static const std::vector<Pattern> table{{"words", "*"},
                                          {"formulas", "*"},
                                          {"formula-signs", "*"},
                                          {"style", "measures", "*"},
                                          {"style", "meanings", "*"},
                                          {"style", "lattices", "*"},
                                          {"style", "tables", "*"},
                                          {"style", "keys", "*"}};
  return table;
}

const std::vector<Pattern> &growing() {
  static const std::vector<Pattern> table{{"policy", "required-rows"},
                                          {"policy", "robustness", "limits"},
                                          {"policy", "robustness", "losses"},
                                          {"policy", "robustness", "doubts"},
                                          {"policy", "required-fields"},
                                          {"policy", "prose", "abbreviations"},
                                          {"policy", "prose", "pits"},
                                          {"policy", "prose", "doublers"},
                                          {"policy", "prose", "bounds"}};
  return table;
}

bool matches(const Path &path, const Pattern &pattern) {
  return std::equal(path.begin(), path.end(), pattern.begin(), pattern.end(),
                    [](const std::string &key, std::string_view p) { return p == "*" || p == key; });
}
bool any_matches(const Path &path, const std::vector<Pattern> &table) {
  return std::any_of(table.begin(), table.end(), [&](const Pattern &p) { return matches(path, p); });
}

/// A value, or a list of them.
std::string words_of(const YamlNode &node) {
  std::vector<std::string> items;
  for (const YamlNode &item : node.items)
    items.push_back(item.text);
  return node.kind == YamlNode::Kind::list ? base::joined(items, ", ") : node.text;
}

bool laxer(const std::string &was, const std::string &now, Way way) {
  if (way == Way::to_yes)
    return was == "yes" && now != "yes";
  if (way == Way::fixed)
    return now != was;
  if (way == Way::to_always)
    return now != was && now != "always";
  if (way == Way::along)
    return place_along(now) < place_along(was);
  const auto before = figure_of(was), after = figure_of(now);
  if (!before || !after)
    return false; // not a figure at all: the reader of that value says so
  return way == Way::up ? *after < *before : *after > *before;
}

std::string_view stricter(Way way) {
  switch (way) {
  case Way::up:
    return "or more";
  case Way::down:
    return "or less";
  case Way::to_yes:
  case Way::fixed:
    return "and nothing else";
  case Way::to_always:
    return "or always";
  case Way::along:
    return "or one that calls less";
  }
  return {};
}

void check_placeholders(const std::string &was, const YamlNode &over, Diagnostics &sink) {
  const auto known = placeholders(was);
  for (const std::string &name : placeholders(over.text)) {
    if (std::find(known.begin(), known.end(), name) != known.end())
      continue;
    const std::string expected =
        known.empty() ? "words without place holders" : "only {" + base::joined(known, "}, {") + "}";
    sink.error(Code::layout_pattern, over.span, fmt::format("nothing fills {{{}}} here", name), expected);
  }
}

void check_added_section(const YamlNode::Entry &entry, Diagnostics &sink) {
  for (const std::string_view key : {"after", "text"})
    if (!entry.value.find(key))
      sink.error(Code::missing_key, entry.key_span,
                 fmt::format("the added section \"{}\" has no \"{}\"", entry.key, key),
                 "a section that a layout adds says after which section it stands, and its own text",
                 fmt::format("{}: ...", key));
}

} // namespace

bool grows(const Path &path) { return any_matches(path, growing()); }

bool may_replace(const YamlNode &base, const YamlNode &over, const Path &path, Diagnostics &sink) {
  for (const Direction &d : directions()) {
    if (!matches(path, d.path) || !laxer(words_of(base), words_of(over), d.way))
      continue;
    sink.error(Code::layout_loosens, over.span,
               fmt::format("{} is laxer than {}, which the base asks for", words_of(over), words_of(base)),
               fmt::format("{} {}", words_of(base), stricter(d.way)));
    return false;
  }
  if (path.back() == "after") {
    sink.error(Code::layout_loosens, over.span, "the order of the base is fixed",
               "no \"after\" for what the base has");
    return false;
  }
  if (any_matches(path, wordings()))
    check_placeholders(base.text, over, sink);
  return true;
}

bool may_be_added(const YamlNode &base, const YamlNode::Entry &entry, const Path &path, Diagnostics &sink) {
  static constexpr std::array<std::string_view, 5> lax_keys{"drop", "remove", "without", "omit", "order"};
  if (std::find(lax_keys.begin(), lax_keys.end(), entry.key) != lax_keys.end()) {
    sink.error(Code::layout_loosens, entry.key_span,
               fmt::format("\"{}\": a layout cannot drop or re-order what its base has", entry.key),
               "additions, other words and stricter values");
    return false;
  }
  if (entry.key == "after") {
    sink.error(Code::layout_loosens, entry.key_span, "the order of the base is fixed",
               "no \"after\" for what the base has");
    return false;
  }
  if (any_matches(path, closed())) {
    std::vector<std::string> known;
    for (const auto &e : base.entries)
      known.push_back(e.key);
    refuse_unknown(sink, Code::unknown_key, entry.key_span, entry.key, "a name", known);
    return false;
  }
  if (matches(path, {"sections", "*"}))
    check_added_section(entry, sink);
  return true;
}

void check_sourced(const YamlNode &base, const YamlNode &over, const Path &path, Diagnostics &sink) {
  for (const Sourced &rule : sourced()) {
    if (!matches(path, rule.path) || !base.find(rule.key) || over.find(rule.key) || over.entries.empty())
      continue;
    sink.error(Code::missing_key, over.span,
               fmt::format("\"{}\" is changed without saying on whose authority", path.back()),
               fmt::format("the key \"{}\" beside what changes", rule.key), fmt::format("{}: ...", rule.key));
  }
}

} // namespace strakebook::house
