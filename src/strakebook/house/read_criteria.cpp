#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

namespace strakebook::house {
namespace {

using base::Code;
using policy::Criterion;
using policy::CriterionKind;

constexpr Choice<CriterionKind> kinds[] = {{"absolute", CriterionKind::absolute},
                                           {"percent", CriterionKind::percent},
                                           {"margin", CriterionKind::margin},
                                           {"rule-minimum", CriterionKind::rule_minimum},
                                           {"passenger-minimum", CriterionKind::passenger_minimum}};
constexpr Choice<policy::Declaration> declarations[] = {
    {"light-scantlings", policy::Declaration::light_scantlings},
    {"passengers", policy::Declaration::passengers}};
constexpr Choice<policy::Plating> platings[] = {
    {"bottom", policy::Plating::bottom}, {"side", policy::Plating::side}, {"bilge", policy::Plating::bilge}};

/// The keys that a kind is computed from.
std::vector<std::string_view> value_keys(CriterionKind kind) {
  switch (kind) {
  case CriterionKind::absolute:
    return {"limit"};
  case CriterionKind::percent:
    return {"most-loss"};
  case CriterionKind::margin:
    return {"most-loss", "substantial-from"};
  case CriterionKind::rule_minimum:
  case CriterionKind::passenger_minimum:
    return {"rule"};
  }
  return {};
}

void read_line(const YamlNode &node, base::Decimal &constant, base::Decimal &slope, Diagnostics &sink) {
  Binding(sink).need("constant", constant).need("slope", slope).apply(node);
}

void read_rule(const YamlNode &node, policy::RuleMinimum &rule, Diagnostics &sink) {
  Binding(sink)
      .need("split", rule.split)
      .by("shorter", true,
          [&](const YamlNode &n) { read_line(n, rule.shorter_constant, rule.shorter_slope, sink); })
      .by("longer", true,
          [&](const YamlNode &n) { read_line(n, rule.longer_constant, rule.longer_slope, sink); })
      .need("floor", rule.floor)
      .need("spacing", rule.spacing)
      .need("spacing-slope", rule.spacing_slope)
      .need("draught-factor", rule.draught_factor)
      .need("bilge-factor", rule.bilge_factor)
      .need("wing-factor", rule.wing_factor)
      .need("local-wear", rule.local_wear)
      .apply(node);
}

void read_rule(const YamlNode &node, policy::PassengerMinimum &rule, Diagnostics &sink) {
  Binding(sink)
      .need("draught-factor", rule.draught_factor)
      .need("length-factor", rule.length_factor)
      .need("spacing", rule.spacing)
      .need("spacing-slope", rule.spacing_slope)
      .need("least-spacing", rule.least_spacing)
      .need("floor", rule.floor)
      .apply(node);
}

/// The formula is read once its kind is known, wherever the two stand.
void read_formula(const YamlNode &node, Criterion &into, Diagnostics &sink) {
  const YamlNode *rule = node.find("rule");
  if (rule && into.kind == CriterionKind::rule_minimum) read_rule(*rule, into.rule.emplace(), sink);
  if (rule && into.kind == CriterionKind::passenger_minimum) read_rule(*rule, into.passenger.emplace(), sink);
}

void read_platings(const YamlNode &node, std::vector<policy::Plating> &into, Diagnostics &sink) {
  for (const YamlNode &item : node.items) {
    auto plating = policy::Plating::side;
    if (read_choice<policy::Plating>(item, plating, platings, sink))
      into.push_back(plating);
  }
}

void read_declared(const YamlNode &node, std::optional<policy::Declaration> &into, Diagnostics &sink) {
  auto declared = policy::Declaration::passengers;
  if (read_choice<policy::Declaration>(node, declared, declarations, sink))
    into = declared;
}

void check_keys(const YamlNode &node, const Criterion &criterion, Diagnostics &sink) {
  static constexpr std::string_view all[] = {"limit", "most-loss", "substantial-from", "rule"};
  const auto wanted = value_keys(criterion.kind);
  for (const std::string_view key : all) {
    const bool needed = std::ranges::find(wanted, key) != wanted.end();
    const YamlNode *value = node.find(key);
    if (needed && !value)
      sink.error(Code::missing_key, node.span,
                 fmt::format("the criterion \"{}\" has no \"{}\"", criterion.id, key),
                 fmt::format("a value for {}", key), fmt::format("{}: ...", key));
    if (!needed && value)
      sink.error(Code::unknown_key, value->span,
                 fmt::format("\"{}\" means nothing in a criterion of this kind", key),
                 fmt::format("only \"{}\"", fmt::join(wanted, "\" and \"")));
  }
}

void check_value(const YamlNode &node, const Criterion &criterion, Diagnostics &sink) {
  check_keys(node, criterion, sink);
  if (criterion.kind == CriterionKind::absolute && criterion.limit <= base::Length{} && node.find("limit"))
    sink.error(Code::out_of_range, node.find("limit")->span, "a limit is a thickness of steel",
               "more than 0 mm");
}

} // namespace

void read_criteria(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  for (const YamlNode::Entry *entry : in_order(node, sink)) {
    Criterion c;
    c.id = entry->key;
    const std::size_t before = sink.errors();
    Binding(sink)
        .need("name", c.name)
        .need_word<CriterionKind>("kind", c.kind, kinds)
        .may("limit", c.limit)
        .may("most-loss", c.most_loss)
        .may("substantial-from", c.substantial_from)
        .known("rule")
        .may("original-at-most", c.original_at_most)
        .by("declared", false, [&](const YamlNode &n) { read_declared(n, c.declared, sink); })
        .need("authority", c.authority)
        .need("edition", c.edition)
        .need("scope", c.scope)
        .by("plating", false, [&](const YamlNode &n) { read_platings(n, c.plating, sink); })
        .known("after")
        .apply(entry->value);
    if (sink.errors() == before) {
      check_value(entry->value, c, sink);
      read_formula(entry->value, c, sink);
    }
    into.criteria_order.push_back(entry->key);
    into.criteria[entry->key] = c;
  }
}

} // namespace strakebook::house
