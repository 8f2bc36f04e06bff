#include "strakebook/compose/afloat.h"

#include <cmath>

#include "strakebook/base/approximate.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

using afloat::Lack;
using afloat::Step;

std::string lack_word(const Scope &scope, Lack lack) {
  switch (lack) {
  case Lack::water:
    return scope.say("afloat.lack-water");
  case Lack::coefficient:
    return scope.say("afloat.lack-coefficient");
  case Lack::freeboard:
    return scope.say("afloat.lack-freeboard");
  case Lack::downflooding:
    return scope.say("afloat.lack-downflooding");
  }
  return {};
}

bool any_given(const survey::AfloatFigures &given) {
  return given.water.given() || given.waterplane_coefficient || given.freeboard || given.downflooding || given.opening.given() ||
         given.as.given() || given.source.given();
}

Inlines length_fact(const Scope &scope, const std::optional<survey::LengthFact> &fact) {
  if (!fact)
    return not_given(scope);
  return scope.tell("voice.fact", {{"value", plain(as_written(fact->length))}, {"from", plain(origin_words(scope, fact->from))}});
}

/// A height after the work; strong where the house asks after it.
content::Cell height_cell(const Scope &scope, const std::optional<Length> &height, Length least) {
  if (!height)
    return cell(scope.say("voice.dash"));
  const std::string text = height_text(*height, least);
  return *height < least ? cell(content::strong(text)) : cell(text);
}

std::string trim_words(const Scope &scope, const Step &step) {
  if (!step.trim)
    return scope.say("voice.dash");
  const std::string mm = rounded(std::abs(step.trim->signed_mm), 0);
  if (mm == "0")
    return scope.say("afloat.even");
  if (step.trim->by == afloat::Trim::By::bow)
    return scope.say("afloat.by-bow", {{"mm", mm}});
  return scope.say("afloat.by-stern", {{"mm", mm}});
}

content::Row step_row(const Scope &scope, const Step &step, Inlines name) {
  const policy::AfloatRule &rule = scope.policy().afloat;
  return row({cell(std::move(name)), cell(rounded(step.net_kg, 0)), cell(rounded(step.sinkage_mm, 1)),
              height_cell(scope, step.after.freeboard, rule.least_freeboard),
              height_cell(scope, step.after.downflooding, rule.least_downflooding), cell(trim_words(scope, step))});
}

content::Row as_found_row(const Scope &scope) {
  const policy::AfloatRule &rule = scope.policy().afloat;
  const afloat::Heights &before = scope.outlook().afloat.before;
  return row({cell(scope.say("afloat.as-found")), cell(std::string()), cell(std::string()),
              height_cell(scope, before.freeboard, rule.least_freeboard),
              height_cell(scope, before.downflooding, rule.least_downflooding), cell(std::string())});
}

/// Each way to cover an area, by itself and as found, and every area in one way.
content::RowGroup options(const Scope &scope) {
  content::RowGroup group{.head = plain(scope.say("afloat.options")), .id = {}, .rows = {}};
  for (const works::Option &option : scope.outlook().works.options) {
    const Step *step = afloat::option_step(scope.outlook().afloat, option);
    if (step == nullptr)
      continue;
    const base::Fill area{"area", option.area};
    group.rows.push_back(step_row(scope, *step,
                                  plain(option.kind == works::Option::Kind::insert ? scope.say("afloat.option-let-in", {area})
                                                                                   : scope.say("afloat.option-laid-over", {area}))));
  }
  for (const Step &step : scope.outlook().afloat.whole) {
    const bool let_in = step.item == "all insert";
    group.rows.push_back(step_row(scope, step, plain(let_in ? scope.say("afloat.whole-let-in") : scope.say("afloat.whole-laid-over"))));
    group.rows.back().total = true;
  }
  return group;
}

std::vector<content::Row> rows_of(const Scope &scope) {
  const afloat::Afloat &found = scope.outlook().afloat;
  std::vector<content::Row> rows = {as_found_row(scope)};
  for (const Step &step : found.steps)
    rows.push_back(step_row(scope, step, link(steelwork_id(step.item), step.item)));
  if (found.steps.size() > 1) {
    rows.push_back(step_row(scope, *found.all, plain(scope.say("afloat.all"))));
    rows.back().total = true;
  }
  return rows;
}

Sentence not_stability(const Scope &scope) { return scope.tell_computed("afloat.not-stability"); }

/// By what she is reckoned.
Inlines basis(const Scope &scope) {
  const afloat::Hull &hull = *scope.outlook().afloat.hull;
  const auto &vessel = scope.survey().vessel;
  const auto &length = hull.by_waterline ? *vessel.waterline_length : vessel.length;
  const std::string along = as_written(length.length);
  const survey::AfloatFigures &given = scope.survey().afloat;
  return scope
      .tell_computed("afloat.basis",
                     {{"length", plain(hull.by_waterline ? scope.say("afloat.waterline", {{"length", along}})
                                                         : scope.say("afloat.over-all", {{"length", along}}))},
                      {"beam", plain(as_written(vessel.beam.length))},
                      {"coefficient", plain(figure(*given.waterplane_coefficient))},
                      {"from", answer_to(scope, given.source)},
                      {"area", plain(rounded(hull.waterplane_m2, 1))},
                      {"water", plain(given.water.text)},
                      {"density", plain(figure(scope.policy().afloat.waters.at(given.water.text)))},
                      {"tpc", plain(rounded(hull.tpc, 2))}})
      .text();
}

Inlines as_found(const Scope &scope) {
  const survey::AfloatFigures &given = scope.survey().afloat;
  return scope.tell("afloat.heights", {{"as", answer_to(scope, given.as)},
                                       {"freeboard", length_fact(scope, given.freeboard)},
                                       {"opening", answer_to(scope, given.opening)},
                                       {"height", length_fact(scope, given.downflooding)}});
}

Inlines asked_after(const Scope &scope) {
  const policy::AfloatRule &rule = scope.policy().afloat;
  return scope
      .tell_computed("afloat.asked-after", {{"freeboard", plain(unit_mm(scope, base::mm_exact(rule.least_freeboard, 0)))},
                                            {"opening", plain(unit_mm(scope, base::mm_exact(rule.least_downflooding, 0)))},
                                            {"source", plain(rule.source)}})
      .text();
}

/// What is not in the figures.
std::vector<Inlines> gaps(const Scope &scope) {
  const afloat::Afloat &found = scope.outlook().afloat;
  std::vector<Inlines> out;
  std::vector<std::string> missing;
  for (const Lack lack : found.lacking)
    missing.push_back(lack_word(scope, lack));
  if (!missing.empty() && found.steel_added)
    out.push_back(scope.tell_computed("afloat.lacking", {{"what", plain(join_and(scope, missing))}}).text());
  if (!found.unweighed.empty())
    out.push_back(scope.tell_computed("afloat.unweighed", {{"items", plain(join_and(scope, found.unweighed))}}).text());
  return out;
}

content::Block table_of(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, look::plain_table, scope.tell("afloat.caption"),
                              {stretching(scope.say("afloat.after")),
                               column(scope.say("afloat.weight"), Align::right, scope.say("afloat.kg")),
                               column(scope.say("afloat.sinkage"), Align::right, mm),
                               column(scope.say("afloat.freeboard"), Align::right, mm),
                               column(scope.say("afloat.opening"), Align::right, mm), column(scope.say("afloat.trim"))});
  add_rows(table, rows_of(scope));
  if (auto group = options(scope); !group.rows.empty())
    table.groups.push_back(std::move(group));
  table.notes = {(not_stability(scope) + scope.tell_computed("afloat.only-a-hint")).text(), basis(scope), as_found(scope), asked_after(scope)};
  for (Inlines &gap : gaps(scope))
    table.notes.push_back(std::move(gap));
  return block(std::move(table), "table/afloat");
}

/// In words, where there is nothing to put into a table.
content::Block in_words(const Scope &scope) {
  const afloat::Afloat &found = scope.outlook().afloat;
  std::vector<content::Block> out;
  if (any_given(scope.survey().afloat))
    out.push_back(paragraph(as_found(scope), look::text));
  for (Inlines &gap : gaps(scope))
    out.push_back(paragraph(std::move(gap), look::text));
  if (found.hull)
    out.push_back(paragraph(basis(scope), look::note));
  if (!out.empty())
    out.push_back(paragraph(not_stability(scope).text(), look::note));
  return block(content::Together{std::move(out)});
}

} // namespace

std::string height_text(Length height, Length least) {
  constexpr std::int64_t nm_in_mm = 1'000'000;
  const Length whole = Length::nanometres(static_cast<std::int64_t>(std::floor(base::in_millimetres(height))) * nm_in_mm); // never higher than it is
  const bool clear = whole != least && (whole < least) == (height < least);
  return with_minus(clear || whole == height ? base::mm_exact(whole, 0) : base::mm_clear_of(height, least, 0));
}

content::Block afloat_table(const Scope &scope, Numbering &numbering) {
  const afloat::Afloat &found = scope.outlook().afloat;
  return found.hull && !(found.steps.empty() && found.options.empty()) ? table_of(scope, numbering) : in_words(scope);
}

} // namespace strakebook::compose
