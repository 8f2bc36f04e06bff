#include "strakebook/compose/results_readings.h"

#include <algorithm>

#include "strakebook/compose/low_side.h"
#include "strakebook/compose/plate_glyph.h"
#include "strakebook/compose/tables.h"

/// What both forms of the readings table say of a mark.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// Whether any figure was noted in another unit than mm: then every figure carries its unit, and a column gives it in mm.
bool other_units(const Scope &scope) {
  return std::ranges::any_of(scope.survey().marks, [](const survey::Mark &mark) {
    return std::ranges::any_of(mark.repeats, [](const base::Measured &one) { return one.unit != base::Unit::millimetre; });
  });
}

template <class Figure> std::string repeats(const Scope &scope, const survey::Mark &mark, Figure figure) {
  std::string text;
  for (const auto &repeat : mark.repeats) text += (text.empty() ? "" : "  ") + figure(repeat);
  return text.empty() ? scope.say("voice.dash") : text;
}

/// What a single echo reads too much, as far as it can be estimated.
Inlines single_echo(const Scope &scope, const assess::MarkResult &result, bool first) {
  const std::string words =
      result.over_read ? scope.say("results.over-read", {{"least", fixed_mm(result.over_read->least, 2)},
                                                         {"most", fixed_mm(result.over_read->most, 2)}})
                       : scope.say("results.over-read-open");
  return plain(first ? words : scope.say("results.because", {{"why", words}}));
}

} // namespace

ReadingsView::ReadingsView(const Scope &scope)
    : map(scope), photos(photos_at_marks(scope)), items(items_by_subject(scope)), widest(widest_plate(scope)),
      with_units(other_units(scope)), low(any_mark_lowered(scope)), cited(any_item_at(items, mark_id({}))),
      pictured(std::ranges::any_of(scope.survey().marks, [&](const survey::Mark &mark) { return photos.contains(mark.id()); })) {}

std::string displayed(const Scope &scope, const survey::Mark &mark, bool with_units) {
  return repeats(scope, mark, [&](const base::Measured &one) { return with_units ? as_written(one) : one.raw; });
}

std::string displayed_mm(const Scope &scope, const survey::Mark &mark) { return repeats(scope, mark, in_mm); }

Inlines status_of(const Scope &scope, const survey::Mark &mark, const assess::MarkResult &result) {
  Inlines text;
  if (result.used) {
    if (result.lowest_of_row) text = content::strong(scope.say("results.lowest"));
    return mark.surface == survey::Surface::coated_single_echo ? text + single_echo(scope, result, text.empty()) : text;
  }
  if (mark.plate == survey::Plate::doubler && mark.status == survey::Status::read)
    return content::italic(scope.say("results.doubler")) + plain(scope.say("results.outer-only"));
  text = content::italic(status_word(scope, mark.status));
  return mark.why.given() ? text + plain(scope.say("results.because", {{"why", mark.why.text}})) : text;
}

content::Cell glyph_cell(const Scope &scope, const MarkView &view) {
  content::Cell out = cell(std::string());
  const auto &[table, row, mark, result] = view;
  const Length original = row.zone.original.nominal.value;
  if (result.used) {
    out.glyph = plate_glyph({original, result.remaining, {}, row.limit ? std::optional(row.limit->remaining) : std::nullopt,
                             ramp_meaning(scope, row.zone, result.judged()), table.widest});
    out.glyph->spoken = scope.say("results.glyph", {{"mm", remaining_text(scope, row.zone.id, result.remaining)}});
  } else if (mark.plate == survey::Plate::doubler && !mark.repeats.empty()) {
    const Length outer = std::ranges::min_element(mark.repeats, {}, &base::Measured::value)->value;
    out.glyph = doubler_glyph(original, outer, table.widest);
    out.glyph->spoken = scope.say("results.glyph-doubler");
  } else {
    out.glyph = unread_glyph(original, table.widest);
    out.glyph->spoken = scope.say("results.glyph-unread");
  }
  return out;
}

void add_crossing_columns(std::vector<content::Column> &to, const Scope &scope, const ReadingsView &table) {
  if (table.pictured) to.push_back(column(scope.say("results.photo"), Align::right, scope.say("results.photo-unit")));
  if (table.cited) to.push_back(column(scope.say("results.item"), Align::right, scope.say("results.photo-unit")));
}

void add_crossing_cells(std::vector<content::Cell> &to, const Scope &scope, const MarkView &view) {
  if (view.table.pictured) {
    const auto at = view.table.photos.find(view.mark.id());
    to.push_back(cell(at == view.table.photos.end() ? Inlines{} : photo_links(scope, at->second)));
  }
  if (view.table.cited) to.push_back(cell(item_links(scope, items_at(view.table.items, mark_id(view.mark.id())))));
}

} // namespace strakebook::compose
