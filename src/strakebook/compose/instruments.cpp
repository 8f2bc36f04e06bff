#include "strakebook/compose/chapters.h"
#include "strakebook/compose/instrument_tables.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// Instruments and method: what measured, how it was proved, and how far its figures may be off.
namespace strakebook::compose {

using content::plain;

namespace {

Inlines certificate_end(const Scope &scope, const survey::Gauge &gauge, const assess::GaugeResult &result) {
  if (!gauge.certificate_until)
    return not_given(scope);
  const std::string until = date(scope, gauge.certificate_until->value);
  return plain(result.lapsed ? scope.say("instruments.lapsed", {{"date", until}}) : until);
}

Inlines doubt_words(const Scope &scope, const survey::Gauge &gauge, const assess::GaugeResult &result) {
  if (gauge.u)
    return scope.tell("instruments.u-text", {{"u", plain(unit_mm(scope, base::mm_exact(result.u, 2)))},
                                             {"basis", answer_to(scope, gauge.u_basis)}});
  return scope.tell("instruments.u-budget", {{"u", plain(unit_mm(scope, doubt_mm(result.u, places_of_u)))},
                                             {"table", label_link("table/budgets")}});
}

content::Block particulars(const Scope &scope, const survey::Gauge &gauge, const assess::GaugeResult &result) {
  Entries entries;
  add_if_given(scope, entries, scope.say("instruments.mode"), gauge.mode);
  add_if_given(scope, entries, scope.say("instruments.probe"), gauge.probe);
  if (gauge.crystal)
    add(entries, scope.say("unseen.crystal"), plain(with_mm(scope, *gauge.crystal)));
  add_if_given(scope, entries, scope.say("instruments.velocity"), gauge.velocity);
  if (gauge.true_velocity)
    add(entries, scope.say("instruments.true-velocity"),
        scope.tell("instruments.true-velocity-text",
                   {{"v", plain(figure(*gauge.true_velocity))}, {"basis", answer_to(scope, gauge.true_velocity_basis)}}));
  add_if_given(scope, entries, scope.say("instruments.resolution"), gauge.resolution);
  add_if_given(scope, entries, scope.say("instruments.serial"), gauge.serial);
  add_if_given(scope, entries, scope.say("instruments.setting"), gauge.setting);
  add_answer(scope, entries, scope.say("instruments.certificate"), gauge.certificate);
  add(entries, scope.say("instruments.until"), certificate_end(scope, gauge, result));
  add(entries, scope.say("instruments.u"), doubt_words(scope, gauge, result));
  return keys(std::move(entries), look::plain_keys, 2);
}

/// How the doubt of a place enters its verdict, if the house's rule counts it; Student's factor is spoken of only where some
/// gauge has one.
std::string doubt_words(const Scope &scope) {
  const auto &rule = scope.policy().decision;
  if (rule.kind == policy::DecisionKind::simple_acceptance)
    return scope.say("instruments.doubt-not-counted", {{"rule", rule.name}, {"source", rule.source}});
  std::string text = scope.say("instruments.doubt", {{"rule", rule.name}, {"band", figure(rule.band)}, {"source", rule.source}});
  for (const auto &gauge : scope.assessment().gauges)
    if (gauge.factor != rule.band)
      return text + " " + scope.say("instruments.doubt-student", {{"coverage", percent(scope, rule.coverage)}});
  return text;
}

} // namespace

content::Section instruments(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  for (std::size_t i = 0; i < scope.survey().gauges.size(); ++i) {
    const auto &gauge = scope.survey().gauges[i];
    out.blocks.push_back(item_heading(capitalised(gauge_name(gauge)), "gauge/" + gauge.id));
    out.blocks.push_back(particulars(scope, gauge, scope.assessment().gauges[i]));
  }
  append(out.blocks, budgets(scope, numbering));
  out.blocks.push_back(item_heading(scope.say("instruments.method")));
  append(out.blocks, reduction_and_surfaces(scope));
  out.blocks.push_back(paragraph(plain(doubt_words(scope)), look::text));
  append(out.blocks, block_checks(scope, numbering));
  append(out.blocks, indicative_gauges(scope, numbering));
  return out;
}

} // namespace strakebook::compose
