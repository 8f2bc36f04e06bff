#include "strakebook/compose/low_side.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/sketch.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"

/// Every criterion against the lowest steel of each zone: margin, verdict and how near the limit is to the doubt.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// A short scale centred on the limit, a millimetre either way; the bar is the doubt about the margin. Beyond the scale the
/// bar becomes a pointer at its end.
content::Drawing nearness(const assess::CriterionResult &result, Length band) {
  constexpr double reach = 1.0, half_height = 0.3, tip = 0.25;
  Drawing out;
  out.x0 = -reach;
  out.x1 = reach;
  out.y0 = -1;
  out.y1 = 1;
  out.x = {content::Scale::Rule::named, "nearness-millimetre"};
  out.y = {content::Scale::Rule::fill, "glyph-height"};
  add_line(out, {{-reach, 0}, {reach, 0}}, "near-line");
  add_line(out, {{0, -1}, {0, 1}}, "near-limit");
  const double margin = mm_of(result.margin), doubt = mm_of(band);
  const std::string meaning = "near-" + verdict_meaning(result.verdict);
  if (margin - doubt > reach - tip || margin + doubt < tip - reach) {
    const double end = margin > 0 ? reach : -reach, base = margin > 0 ? reach - tip : tip - reach;
    add_area(out, {{base, -half_height * 1.5}, {end, 0}, {base, half_height * 1.5}}, meaning);
  } else {
    add_box(out, {std::max(-reach, margin - doubt), -half_height}, {std::min(reach, margin + doubt), half_height}, meaning);
  }
  return out;
}

std::string where(const Scope &scope, const assess::Subject &subject) {
  const auto *pit = survey::pit_of(scope.survey(), subject.id);
  return pit == nullptr ? subject.id : pit->id + ", " + pit->at.row + " " + pit->at.station.raw;
}

content::Row result_row(const Scope &scope, const assess::Subject &subject, const policy::Criterion &criterion,
                        const assess::CriterionResult &result) {
  std::vector<content::Cell> cells = {cell(plain(criterion.name))};
  if (result.governs) cells.front().text = content::strong(criterion.name) + plain(scope.say("matrix.governs"));
  content::Cell verdict = cell(verdict_word(scope, result));
  verdict.sign = verdict_meaning(result.verdict);
  if (result.verdict == assess::Verdict::not_applicable) {
    for (int i = 0; i < 3; ++i) cells.push_back(dash_cell(scope));
    verdict.text = content::soft(scope.say("matrix.not-applied", {{"why", why_not_words(scope, criterion.id, result.why_not)}}));
    cells.push_back(cell(std::string()));
  } else {
    cells.push_back(cell(limit_text(result.limit) + told_sign(scope, result.told)));
    cells.push_back(cell(base::mm_clear_of(subject.judged(), result.limit, 2)));
    cells.push_back(cell(margin_text(result, subject.band_nm)));
    content::Cell scale = cell(std::string());
    scale.glyph = nearness(result, subject.band_nm);
    scale.glyph->spoken = scope.say("matrix.spoken", {{"margin", margin_text(result, subject.band_nm)},
                                                      {"doubt", doubt_text(scope, subject.band_nm)}});
    cells.push_back(std::move(scale));
  }
  cells.push_back(std::move(verdict));
  if (result.verdict != assess::Verdict::not_applicable && result.bare == assess::Bare::at_limit)
    cells.back().text = cells.back().text + content::soft(scope.say("matrix.at-limit"));
  cells.back().text = cells.back().text + content::soft(substantial_words(scope, result));
  return row(std::move(cells));
}

content::RowGroup subject_group(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject) {
  const bool pit = subject.kind == assess::Subject::Kind::pit;
  const InlineFill name{"zone", content::strong(zone_name(scope, zone.zone))}, at{"where", plain(where(scope, subject))};
  const InlineFill remaining{"remaining", plain(unit_mm(scope, remaining_text(scope, zone.zone, subject.remaining)))};
  const InlineFill doubt{"doubt", plain(doubt_text(scope, subject.band_nm))};
  content::RowGroup group;
  group.id = "matrix/" + zone.zone + "/" + subject.id;
  group.head = pit ? scope.tell("matrix.pit-head", {name, at, remaining, doubt})
                   : scope.tell("matrix.plate-head", {name, at, remaining, doubt});
  if (subject.low)
    group.head = group.head + plain(scope.say("matrix.low", {{"low", judged_text(scope, zone.zone, subject)}}));
  if (subject.indicative) group.head = group.head + plain(scope.say("matrix.indicative"));
  for (std::size_t i = 0; i < subject.results.size(); ++i)
    group.rows.push_back(result_row(scope, subject, scope.assessment().criteria[i], subject.results[i]));
  return group;
}

} // namespace

content::Block matrix_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "pits", scope.tell("matrix.caption"),
                              {stretching(scope.say("matrix.criterion")), column(scope.say("matrix.limit"), Align::decimal, mm),
                               column(scope.say("matrix.left"), Align::decimal, mm), column(scope.say("matrix.margin"), Align::decimal, mm),
                               column(scope.say("matrix.nearness"), Align::left, scope.say("matrix.nearness-unit")),
                               column(scope.say("matrix.verdict"))});
  for (const auto &zone : scope.assessment().zones)
    for (const auto &subject : zone.subjects) table.groups.push_back(subject_group(scope, zone, subject));
  table.notes = {plain(scope.say("matrix.note"))};
  if (any_mark_lowered(scope) || any_pit_lowered(scope)) table.notes.push_back(plain(scope.say("matrix.low-note")));
  if (any_limit_told(scope)) table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/matrix");
}

} // namespace strakebook::compose
