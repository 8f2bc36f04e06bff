#include <algorithm>
#include <map>

#include "strakebook/compose/appendix_lists.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Every figure that a yard, an engineer or a court may want to check, with its formula and what went in.
namespace strakebook::compose {

using content::plain;
using content::operator+;
using quantity::Quantity;

namespace {

bool begins_word(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool in_word(char c) { return begins_word(c) || (c >= '0' && c <= '9'); }

/// A symbol as paper prints it: "rho" as its sign.
std::string symbol_text(const Scope &scope, const std::string &symbol) {
  const auto sign = scope.wording().signs.find(symbol);
  return sign == scope.wording().signs.end() ? symbol : sign->second;
}

std::string sign_text(char c) { return c == '-' ? "\u2212" : c == ' ' ? "\u00A0" : std::string(1, c); }

/// An equation or a unit as paper prints it: signs for their words, powers raised, its blanks tied.
std::string set_formula(const Scope &scope, std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    if (begins_word(text[at])) {
      const auto end = std::ranges::find_if_not(text.substr(at), in_word) - text.begin();
      out += symbol_text(scope, std::string(text.substr(at, static_cast<std::size_t>(end) - at)));
      at = static_cast<std::size_t>(end);
    } else if (text.substr(at).starts_with("^2")) {
      out += "²";
      at += 2;
    } else {
      out += sign_text(text[at++]);
    }
  }
  return out;
}

std::string unit_text(std::string unit) {
  for (const auto &[plain_form, raised] : {std::pair("m2", "m²"), std::pair("m3", "m³")})
    if (const auto at = unit.find(plain_form); at != std::string::npos)
      unit.replace(at, std::string_view(plain_form).size(), raised);
  return unit;
}

std::string value_with_unit(double value, int places, const std::string &unit) {
  const std::string figure = with_minus(quantity::value_text(value, places));
  return unit.empty() ? figure : tied(figure, unit_text(unit));
}

Inlines inputs_of(const Scope &scope, const Quantity &quantity) {
  Inlines out;
  for (const auto &input : quantity.inputs) {
    const std::string what = untorn(symbol_text(scope, input.symbol) + " " + value_with_unit(input.value, input.places, input.unit));
    if (!out.empty())
      out = std::move(out) + plain(scope.say("quantities.input-between"));
    out = std::move(out) + plain(what);
    if (!input.from.empty())
      out = std::move(out) + content::soft(scope.say("quantities.from", {{"from", input.from}}));
  }
  return out;
}

content::Row quantity_row(const Scope &scope, const Quantity &quantity) {
  return row({cell(quantity.of), cell(value_with_unit(quantity.value, quantity.places, quantity.unit)),
              cell(inputs_of(scope, quantity))});
}

/// "area of the plate  A = L B: L length in m, B breadth in m (geometry)".
Inlines formula_head(const Scope &scope, const house::Formula &formula) {
  std::vector<std::string> symbols;
  for (const auto &[symbol, meaning] : formula.inputs)
    symbols.push_back(symbol_text(scope, symbol) + "\u00A0" + meaning);
  return scope.tell("quantities.formula", {{"name", content::strong(formula.name)},
                                           {"formula", plain(set_formula(scope, formula.text))},
                                           {"symbols", content::soft(base::joined(symbols, scope.say("quantities.input-between")))},
                                           {"source", content::soft(formula.source)}});
}

/// Quantities by formula, in the order in which each first comes.
std::vector<content::RowGroup> by_formula(const Scope &scope) {
  std::map<std::string, std::size_t> place;
  std::vector<content::RowGroup> groups;
  for (const Quantity &quantity : scope.outlook().quantities) {
    const auto [found, fresh] = place.emplace(quantity.formula, groups.size());
    if (fresh)
      groups.push_back({.head = formula_head(scope, scope.wording().formulas.at(quantity.formula)), .id = {}, .rows = {}});
    groups[found->second].rows.push_back(quantity_row(scope, quantity));
  }
  return groups;
}

} // namespace

std::vector<content::Block> quantities(const Scope &scope, Numbering &numbering) {
  if (scope.outlook().quantities.empty())
    return {};
  auto table = labelled_table(scope, numbering, look::small_table, scope.tell("quantities.caption"),
                              {column(scope.say("quantities.of")), column(scope.say("quantities.value"), Align::right),
                               stretching(scope.say("quantities.inputs"))});
  table.groups = by_formula(scope);
  return {item_heading(scope.say("quantities.head")), block(std::move(table), "table/quantities")};
}

} // namespace strakebook::compose
