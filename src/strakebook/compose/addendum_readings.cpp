#include "strakebook/compose/addendum_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/steel/assess/after_repair.h"

/// Readings after repair, judged as the marks of the report are.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string place(const Scope &scope, const survey::NewReading &read) {
  return scope.say("place.mark", {{"mark", tied(read.at.row, read.at.station.raw)}, {"where", row_words(scope, read.at.row)}});
}

/// What is said of the reading beside its figure: that it is of a plate laid over, that its gauge's certificate ran out, the note.
Inlines remark(const Scope &scope, const survey::NewReading &read, const assess::NewResult &result) {
  std::vector<Inlines> parts;
  if (result.lapsed)
    parts.push_back(plain(scope.say("addendum.lapsed")));
  if (read.note.given())
    parts.push_back(prose(scope, read.note.text));
  Inlines out;
  for (auto &part : parts)
    out = std::move(out) + plain(out.empty() ? "" : scope.say("voice.list-between")) + std::move(part);
  return out;
}

/// Limit, criterion, margin and verdict; where nothing judges the reading, why.
std::vector<content::Cell> judged(const Scope &scope, const assess::NewResult &result) {
  const std::string dash = scope.say("voice.dash");
  if (!result.standing) {
    const std::string why = result.on_doubler ? scope.say("addendum.on-doubler") : scope.say("addendum.no-criterion");
    return {cell(dash), cell(dash), cell(dash), cell(verdict_sign(scope, assess::Verdict::not_applicable) + plain(why))};
  }
  const auto &found = result.standing->result;
  return {cell(limit_text(found.limit)), cell(criterion_name(scope, found.criterion)), cell(margin_text(found, result.standing->band_nm)),
          cell(verdict_sign(scope, found.verdict) + plain(verdict_word(scope, found)))};
}

content::Row reading_row(const Scope &scope, const survey::NewReading &read, const assess::NewResult &result) {
  std::vector<content::Cell> cells = {cell(place(scope, read)), cell(content::strong(with_mm(scope, read.reading)))};
  for (auto &one : judged(scope, result))
    cells.push_back(std::move(one));
  cells.push_back(cell(remark(scope, read, result)));
  return row(std::move(cells), {}, read.span);
}

std::vector<assess::NewResult> results(const Scope &scope, const survey::Addendum &addendum, const survey::ClosedItem &item) {
  return assess::after_repair(scope.survey(), scope.policy(), scope.assessment(), addendum, item);
}

} // namespace

std::vector<content::Block> new_readings(const Scope &scope, const survey::Addendum &addendum, const survey::ClosedItem &item) {
  if (item.readings.empty())
    return {};
  const std::string mm = scope.say("voice.mm");
  auto table = unlabelled_table(look::small_table,
                                {stretching(scope.say("addendum.reading-at")), column(scope.say("addendum.reading"), Align::right),
                                 column(scope.say("addendum.limit"), Align::right, mm), column(scope.say("addendum.criterion")),
                                 column(scope.say("addendum.margin"), Align::right, mm), column(scope.say("addendum.verdict")),
                                 stretching(scope.say("addendum.note"))});
  const auto found = results(scope, addendum, item);
  std::vector<content::Row> rows;
  for (std::size_t i = 0; i < found.size(); ++i)
    rows.push_back(reading_row(scope, item.readings[i], found[i]));
  add_rows(table, std::move(rows));
  return {block(std::move(table))};
}

std::vector<content::Block> new_readings_note(const Scope &scope, const survey::Addendum &addendum) {
  std::optional<Length> doubt;
  bool any = false;
  for (const auto &item : addendum.closes)
    for (const auto &result : results(scope, addendum, item)) {
      any = true;
      if (result.standing && (!doubt || *doubt < result.standing->band_nm))
        doubt = result.standing->band_nm;
    }
  if (!any)
    return {};
  Inlines text = plain(scope.say("addendum.limits-note"));
  if (doubt)
    text = std::move(text) + plain(" " + scope.say("addendum.doubt-note", {{"doubt", doubt_mm(scope, *doubt)}, {"source", scope.policy().decision.source}}));
  return {paragraph(std::move(text), look::note)};
}

} // namespace strakebook::compose
