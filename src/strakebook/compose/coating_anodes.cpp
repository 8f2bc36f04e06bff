#include "strakebook/compose/coating_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/tables.h"

/// Anodes planned, and what follows from metals and water, wear and width.
namespace strakebook::compose {

using content::plain;

namespace {

/// 0.90 as "90".
std::string in_percent(const base::Decimal &part) {
  const base::Ratio ratio = part.ratio();
  return base::to_text(base::round_to({ratio.num * 100, ratio.den}, part.places > 2 ? part.places - 2 : 0));
}

std::vector<Inlines> plan_notes(const Scope &scope, const survey::AnodePlan &plan) {
  const policy::ProtectionRule &rule = scope.policy().protection;
  std::vector<Inlines> notes = {scope.tell("coating.current-from", {{"from", answer_to(scope, plan.source)}})};
  if (const auto metal = rule.metals.find(plan.metal.text); metal != rule.metals.end())
    notes.push_back(plain(scope.say("coating.by-metal", {{"metal", capitalised(metal->first)},
                                                         {"capacity", figure(metal->second.capacity)},
                                                         {"source", metal->second.source},
                                                         {"used", in_percent(rule.utilisation)}})));
  const auto &lacking = scope.outlook().protection.anodes->lacking;
  if (!lacking.empty())
    notes.push_back(scope.tell_computed("coating.plan-lacking", {{"what", plain(lack_words(scope, lacking))}}).text());
  return notes;
}

content::Row plan_row(const Scope &scope, const survey::AnodePlan &plan) {
  const protection::Anodes &anodes = *scope.outlook().protection.anodes;
  const auto count = anodes.count ? std::to_string(*anodes.count) : scope.say("voice.dash");
  return row({cell(answer_to(scope, plan.metal)), given_cell(scope, plan.area_m2), given_cell(scope, plan.bare_percent),
              given_cell(scope, plan.current_ma_m2), given_cell(scope, plan.years), reckoned_cell(scope, anodes.current_a, 3),
              reckoned_cell(scope, anodes.mass_kg, 1), given_cell(scope, plan.net_kg), cell(content::strong(count)),
              given_cell(scope, plan.stands_out)},
             {}, plan.span);
}

std::optional<content::Block> metal_sentence(const Scope &scope, const std::optional<protection::Suited> &metal, bool planned) {
  if (!metal || metal->suits)
    return std::nullopt;
  const Inlines name = plain(metal->metal), waters = plain(join_and(scope, metal->waters)), water = plain(metal->water);
  const Sentence text = planned
                            ? scope.tell_computed("coating.unsuited-planned", {{"metal", name}, {"waters", waters}, {"water", water}})
                            : scope.tell_computed("coating.unsuited-fitted", {{"metal", name}, {"waters", waters}, {"water", water}});
  return computed(scope, text, scope.say("coating.by-waters"));
}

std::optional<content::Block> wear_sentence(const Scope &scope) {
  const auto &worn = scope.outlook().protection.worn;
  if (!worn || !worn->unworn)
    return std::nullopt;
  const policy::ProtectionRule &rule = scope.policy().protection;
  const Sentence text = scope.tell_computed("coating.unworn", {{"on", plain(date(scope, worn->on))},
                                                               {"worn", plain(figure(worn->percent))},
                                                               {"inspected", plain(date(scope, worn->inspected))},
                                                               {"least", plain(figure(rule.unworn_percent))},
                                                               {"months", plain(std::to_string(rule.unworn_months))}});
  return computed(scope, text, scope.say("coating.by-wear"));
}

/// The schedule's plates and the anodes, as far as they stand out.
Inlines standing_out(const Scope &scope, const protection::Width &width) {
  std::vector<std::string> what = width.items;
  if (width.anodes)
    what.push_back(scope.say("coating.stands-anodes"));
  return plain(join_and(scope, what));
}

Sentence against_narrowest(const Scope &scope, const protection::Width &width) {
  if (!width.narrowest)
    return scope.tell_computed("coating.no-narrowest");
  const Inlines narrowest = plain(as_written(scope.survey().vessel.narrowest->length));
  return width.too_wide() ? scope.tell_computed("coating.too-wide", {{"narrowest", narrowest}})
                          : scope.tell_computed("coating.narrowest", {{"narrowest", narrowest}});
}

std::optional<content::Block> width_sentence(const Scope &scope) {
  const auto &width = scope.outlook().protection.width;
  if (!width)
    return std::nullopt;
  const auto mm = [&](Length length) { return plain(unit_mm(scope, base::mm_exact(length, 0))); };
  const Sentence text = scope.tell_computed("coating.over-all", {{"over", mm(width->over_all())},
                                                                 {"beam", mm(width->beam)},
                                                                 {"port", mm(width->port)},
                                                                 {"starboard", mm(width->starboard)},
                                                                 {"what", standing_out(scope, *width)}}) +
                        against_narrowest(scope, *width);
  return computed(scope, text, scope.say("coating.by-width"));
}

} // namespace

content::Block plan_table(const Scope &scope, Numbering &numbering) {
  const survey::AnodePlan &plan = *scope.survey().coating.plan;
  const std::string kg = scope.say("coating.kg");
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("coating.plan"),
      {stretching(scope.say("coating.metal")), column(scope.say("coating.wetted"), Align::right, scope.say("coating.m2")),
       column(scope.say("coating.bare"), Align::right, scope.say("coating.percent")),
       column(scope.say("coating.density"), Align::right, scope.say("coating.ma")), column(scope.say("coating.years"), Align::right),
       column(scope.say("coating.current"), Align::right, scope.say("coating.ampere")),
       column(scope.say("coating.mass"), Align::right, kg), column(scope.say("coating.each"), Align::right, kg),
       column(scope.say("coating.count"), Align::right),
       column(scope.say("coating.stands-out"), Align::right, scope.say("voice.mm"))});
  add_rows(table, {plan_row(scope, plan)});
  table.notes = plan_notes(scope, plan);
  return block(std::move(table), "table/anodes");
}

std::vector<content::Block> protection_sentences(const Scope &scope) {
  const protection::Protection &found = scope.outlook().protection;
  std::vector<content::Block> out;
  for (auto &sentence : {metal_sentence(scope, found.fitted, false), wear_sentence(scope), metal_sentence(scope, found.planned, true),
                         width_sentence(scope)})
    if (sentence)
      out.push_back(*sentence);
  return out;
}

} // namespace strakebook::compose
