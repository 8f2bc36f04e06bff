#include <algorithm>

#include "strakebook/compose/instrument_tables.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/tables.h"
#include "strakebook/steel/assess/low_side.h"

/// Block checks, and what follows where they are missing or failed.
namespace strakebook::compose {

using assess::BlockCheck;
using assess::Correction;
using content::Block;
using content::plain;
using content::operator+;

namespace {

content::Cell figure_cell(const Scope &scope, const std::optional<base::Measured> &value) {
  return value ? cell(in_mm(*value)) : cell(not_given(scope));
}

content::Cell off_cell(const Scope &scope, const std::optional<Length> &off) {
  if (!off)
    return cell(scope.say("voice.dash"));
  return cell(*off == Length{} ? base::mm_exact(*off, 2) : with_sign(base::mm_exact(*off, 2)));
}

bool either(const assess::GaugeResult &result, BlockCheck::State state) {
  return result.before.state == state || result.after.state == state;
}

std::string block_verdict(const Scope &scope, const assess::GaugeResult &result) {
  const bool differs = either(result, BlockCheck::State::differs), missing = either(result, BlockCheck::State::missing);
  if (differs && missing)
    return scope.say("instruments.differs-incomplete");
  if (differs)
    return scope.say("instruments.differs");
  return missing ? scope.say("instruments.incomplete") : scope.say("instruments.agrees");
}

std::string why_indicative(const Scope &scope, const survey::Gauge &gauge, const assess::GaugeResult &result) {
  std::vector<std::string> reasons;
  if (result.lapsed)
    reasons.push_back(scope.say("instruments.why-lapsed", {{"date", date(scope, gauge.certificate_until->value)}}));
  if (result.checked && result.before.state == BlockCheck::State::missing)
    reasons.push_back(scope.say("instruments.before-missing"));
  if (result.before.state == BlockCheck::State::differs)
    reasons.push_back(scope.say("instruments.before-differs"));
  if (result.checked && result.after.state == BlockCheck::State::missing)
    reasons.push_back(scope.say("instruments.after-missing"));
  if (result.after.state == BlockCheck::State::differs)
    reasons.push_back(scope.say("instruments.after-differs"));
  return join_and(scope, reasons);
}

std::string correction_words(const Scope &scope, const survey::Gauge &gauge, const Correction &correction) {
  switch (correction.by) {
  case Correction::By::before:
    return scope.say("corrections.before", {{"shown", in_mm(*gauge.before)}, {"block", in_mm(*gauge.block)}});
  case Correction::By::after:
    return scope.say("corrections.after", {{"shown", in_mm(*gauge.after)}, {"block", in_mm(*gauge.block)}});
  case Correction::By::true_velocity:
    return scope.say("corrections.velocity",
                     {{"true", figure(*gauge.true_velocity)}, {"set", figure(*survey::velocity_set(gauge))}});
  }
  return {};
}

content::Row correction_row(const Scope &scope, const survey::Gauge &gauge, const assess::GaugeResult &result,
                            const Correction &correction) {
  const std::string zone = survey::zone_of_row(scope.survey(), survey::mark_of(scope.survey(), result.worst)->row).id;
  const auto zero = assess::zero_type(result.worst_shown, correction);
  return row({cell(gauge_name(gauge)), cell(correction_words(scope, gauge, correction)),
              cell(link(mark_id(result.worst), tied_mark(result.worst))),
              cell(remaining_text(scope, zone, result.worst_shown)),
              cell(low_text(scope, zone, assess::velocity_type(result.worst_shown, correction))),
              zero ? cell(low_text(scope, zone, *zero)) : cell(scope.say("voice.dash"))});
}

std::optional<Block> corrections(const Scope &scope, Numbering &numbering) {
  std::vector<content::Row> rows;
  for (std::size_t i = 0; i < scope.survey().gauges.size(); ++i) {
    const auto &result = scope.assessment().gauges[i];
    if (!result.worst.empty())
      for (const auto &correction : result.corrections)
        rows.push_back(correction_row(scope, scope.survey().gauges[i], result, correction));
  }
  if (rows.empty())
    return std::nullopt;
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("corrections.caption"),
      {stretching(scope.say("instruments.gauge")), column(scope.say("corrections.by")), column(scope.say("corrections.at")),
       column(scope.say("results.displayed"), Align::decimal, mm),
       column(scope.say("corrections.velocity-type"), Align::decimal, mm),
       column(scope.say("corrections.zero-type"), Align::decimal, mm)});
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("corrections.note"))};
  return block(std::move(table), "table/corrections");
}

std::optional<Block> retakes(const Scope &scope) {
  const auto &all = scope.assessment().retakes;
  if (all.empty())
    return std::nullopt;
  Inlines places;
  for (const auto &one : all) {
    if (!places.empty())
      places = places + plain(scope.say("voice.list-between"));
    places = places + link(subject_target(scope, one.place), tied_mark(one.place));
  }
  const Length within = scope.policy().retake_within;
  Inlines text = scope.tell("instruments.retakes", {{"n", plain(std::to_string(all.size()))},
                                                    {"within", plain(unit_mm(scope, base::mm_exact(within, 1)))},
                                                    {"places", std::move(places)}});
  if (std::ranges::any_of(all, [&](const assess::Retake &one) { return std::max(one.off, -one.off) > within; }))
    text = text + plain(" " + scope.say("instruments.retakes-echo"));
  return paragraph(std::move(text), look::text);
}

} // namespace

std::vector<Block> block_checks(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("instruments.blocks-caption"),
      {stretching(scope.say("instruments.gauge")), column(scope.say("instruments.block"), Align::decimal, mm),
       column(scope.say("instruments.before"), Align::decimal, mm), column(scope.say("instruments.off"), Align::decimal, mm),
       column(scope.say("instruments.after"), Align::decimal, mm), column(scope.say("instruments.off"), Align::decimal, mm),
       column(scope.say("instruments.drift"), Align::decimal, mm), column(scope.say("instruments.verdict"))});
  std::vector<content::Row> rows;
  for (std::size_t i = 0; i < scope.survey().gauges.size(); ++i) {
    const auto &gauge = scope.survey().gauges[i];
    const auto &result = scope.assessment().gauges[i];
    if (result.checked)
      rows.push_back(row({cell(gauge_name(gauge)), figure_cell(scope, gauge.block), figure_cell(scope, gauge.before),
                          off_cell(scope, result.before.off), figure_cell(scope, gauge.after),
                          off_cell(scope, result.after.off), off_cell(scope, result.drift), cell(block_verdict(scope, result))},
                         {}, gauge.span));
  }
  if (rows.empty())
    return {};
  add_rows(table, std::move(rows));
  table.notes.push_back(plain(scope.say(
      "instruments.blocks-note", {{"most", unit_mm(scope, base::mm_exact(scope.policy().block_agreement, 1))}})));
  std::vector<Block> out;
  out.push_back(block(std::move(table), "table/blocks"));
  return out;
}

std::vector<Block> indicative_gauges(const Scope &scope, Numbering &numbering) {
  std::vector<Block> out;
  for (std::size_t i = 0; i < scope.survey().gauges.size(); ++i) {
    const auto &gauge = scope.survey().gauges[i];
    const auto &result = scope.assessment().gauges[i];
    if (result.indicative)
      out.push_back(paragraph(scope.tell("instruments.indicative", {{"gauge", plain(gauge_name(gauge))},
                                                                    {"why", plain(why_indicative(scope, gauge, result))}}),
                              look::text));
  }
  if (auto table = corrections(scope, numbering))
    out.push_back(std::move(*table));
  if (auto list = retakes(scope))
    out.push_back(std::move(*list));
  return out;
}

} // namespace strakebook::compose
