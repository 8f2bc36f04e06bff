#include <cmath>

#include "strakebook/compose/afloat.h"
#include "strakebook/compose/coating_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Coating schemes: what goes where, and how many litres of it.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string lack_word(const Scope &scope, protection::Lack lack) {
  using protection::Lack;
  switch (lack) {
  case Lack::area:
    return scope.say("coating.lack-area");
  case Lack::film:
    return scope.say("coating.lack-film");
  case Lack::solids:
    return scope.say("coating.lack-solids");
  case Lack::loss:
    return scope.say("coating.lack-loss");
  case Lack::metal:
    return scope.say("coating.lack-metal");
  case Lack::bare:
    return scope.say("coating.lack-bare");
  case Lack::current:
    return scope.say("coating.lack-current");
  case Lack::years:
    return scope.say("coating.lack-years");
  case Lack::net_mass:
    return scope.say("coating.lack-net");
  case Lack::stands_out:
    return scope.say("coating.lack-stands-out");
  }
  return {};
}

content::Cell dash(const Scope &scope) { return cell(scope.say("voice.dash")); }

Inlines product(const Scope &scope, const survey::CoatingScheme &scheme) {
  Inlines text = answer_to(scope, scheme.coating);
  if (!scheme.blast.given())
    return text;
  text.emplace_back(content::LineBreak{});
  return std::move(text) + scope.tell("coating.blast", {{"blast", prose(scope, scheme.blast.text)}});
}

content::Cell film_cell(const Scope &scope, const std::optional<base::Measured> &film) {
  constexpr std::int64_t nm_in_um = 1000;
  return film ? cell(base::to_text(base::round_to({film->value.nm(), nm_in_um}, 0))) : dash(scope);
}

/// To a tenth, and never less than is needed.
std::optional<double> bought(const std::optional<double> &litres) {
  constexpr double tenths = 10;
  return litres ? std::optional(std::ceil(*litres * tenths) / tenths) : std::nullopt;
}

content::Row scheme_row(const Scope &scope, const survey::CoatingScheme &scheme, const protection::Scheme &result) {
  return row({cell(content::strong(scheme.id)), cell(reach_words(scope, scheme.at)), cell(product(scope, scheme)),
              film_cell(scope, scheme.dry_film), given_cell(scope, scheme.area_m2), given_cell(scope, scheme.solids_percent),
              given_cell(scope, scheme.loss_percent), reckoned_cell(scope, bought(result.litres), 1),
              scheme.recoat.given() ? cell(prose(scope, scheme.recoat.text)) : dash(scope)},
             {}, scheme.span);
}

} // namespace

std::string lack_words(const Scope &scope, std::span<const protection::Lack> lacking) {
  std::vector<std::string> words;
  for (const protection::Lack lack : lacking)
    words.push_back(lack_word(scope, lack));
  return join_and(scope, words);
}

content::Cell given_cell(const Scope &scope, const std::optional<base::Decimal> &value) {
  return value ? cell(figure(*value)) : dash(scope);
}

content::Cell given_cell(const Scope &scope, const std::optional<base::Measured> &value) {
  return value ? cell(in_mm(*value)) : dash(scope);
}

content::Cell reckoned_cell(const Scope &scope, const std::optional<double> &value, int places) {
  return value ? cell(rounded(*value, places)) : dash(scope);
}

content::Block schemes_table(const Scope &scope, Numbering &numbering) {
  const std::string percent = scope.say("coating.percent");
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("coating.schemes"),
      {column(scope.say("coating.scheme")), stretching(scope.say("coating.at")), stretching(scope.say("coating.product")),
       column(scope.say("coating.film"), Align::right, scope.say("coating.um")),
       column(scope.say("coating.area"), Align::right, scope.say("coating.m2")),
       column(scope.say("coating.solids"), Align::right, percent), column(scope.say("coating.loss"), Align::right, percent),
       column(scope.say("coating.litres"), Align::right, scope.say("coating.l")), stretching(scope.say("coating.again"))});
  std::vector<content::Row> rows;
  const auto &schemes = scope.survey().coating.schemes;
  const auto &results = scope.outlook().protection.schemes;
  table.notes = {plain(scope.say("coating.volume", {{"interval", scope.policy().protection.recoat_interval}}))};
  for (std::size_t i = 0; i < schemes.size(); ++i) {
    rows.push_back(scheme_row(scope, schemes[i], results[i]));
    if (!results[i].lacking.empty())
      table.notes.push_back(scope
                                .tell_computed("coating.scheme-lacking", {{"id", plain(schemes[i].id)},
                                                                          {"what", plain(lack_words(scope, results[i].lacking))}})
                                .text());
  }
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/coating");
}

} // namespace strakebook::compose
