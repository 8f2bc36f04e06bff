#include <algorithm>
#include <map>

#include "strakebook/compose/low_side.h"
#include "strakebook/compose/plate_glyph.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"
#include "strakebook/compose/wastage.h"

/// The readings table: every planned mark once, in the order of the map, and the summary of rows under it.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr int stations_between_rules = 5;
constexpr std::size_t most_figures = 16; // letters of figures at a mark for which the narrow table has room: three of "10.0"

/// What is the same for every mark of a row, found once.
struct RowView {
  const survey::Row &row;
  const survey::Zone &zone;
  std::optional<DrawnLimit> limit;
  Length widest;
  bool with_units = false; ///< some figure of this survey was not noted in mm
  bool weak = false; ///< the original is told and not proved: neither it nor a loss is printed
  bool low = false;  ///< the table has a column for the low side
  bool told = false; ///< the original is what somebody told, and its losses with it
};

using PhotosAt = std::map<std::string, std::vector<std::string>>;

PhotosAt photos_at_marks(const Scope &scope) {
  PhotosAt out;
  for (const auto &photo : scope.survey().photos) out[photo.at.row + " " + photo.at.station.raw].push_back(photo.id);
  return out;
}

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

std::string displayed(const Scope &scope, const survey::Mark &mark, bool with_units) {
  return repeats(scope, mark, [&](const base::Measured &one) { return with_units ? as_written(one) : one.raw; });
}

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

content::Cell glyph_cell(const Scope &scope, const RowView &view, const survey::Mark &mark, const assess::MarkResult &result) {
  content::Cell out = cell(std::string());
  const Length original = view.zone.original.nominal.value;
  if (result.used) {
    out.glyph = plate_glyph({original, result.remaining, {}, view.limit ? std::optional(view.limit->remaining) : std::nullopt,
                             ramp_meaning(scope, view.zone, result.judged()), view.widest});
  } else if (mark.plate == survey::Plate::doubler && !mark.repeats.empty()) {
    const Length outer = std::ranges::min_element(mark.repeats, {}, &base::Measured::value)->value;
    out.glyph = doubler_glyph(original, outer, view.widest);
  } else {
    out.glyph = unread_glyph(original, view.widest);
  }
  return out;
}

content::Cell original_cell(const Scope &scope, const RowView &view) {
  if (view.weak) return dash_cell(scope);
  return cell(content::soft(base::mm_exact(view.zone.original.nominal.value, 1)));
}

content::Row mark_row(const Scope &scope, const RowView &view, const survey::Mark &mark, const assess::MarkResult &result,
                      const PhotosAt &photos) {
  const auto at = photos.find(mark.id());
  const Inlines pictures = at == photos.end() ? Inlines{} : photo_links(scope, at->second);
  std::vector<content::Cell> cells = {cell(untorn(mark.station.raw)), cell(content::soft(displayed(scope, mark, view.with_units)))};
  if (view.with_units) cells.push_back(cell(content::soft(repeats(scope, mark, in_mm))));
  if (result.used) {
    cells.push_back(cell(content::strong(remaining_text(scope, view.zone.id, result.remaining))));
    if (view.low) cells.push_back(result.low ? cell(low_text(scope, view.zone.id, *result.low)) : dash_cell(scope));
    cells.push_back(original_cell(scope, view));
    cells.push_back(view.weak ? dash_cell(scope) : cell(short_mm(result.loss)));
    cells.push_back(share_cell(scope, result.share));
    cells.push_back(margin_cell(scope, result.standing));
  } else {
    cells.push_back(dash_cell(scope));
    if (view.low) cells.push_back(dash_cell(scope));
    cells.push_back(original_cell(scope, view));
    for (int i = 0; i < 3; ++i) cells.push_back(dash_cell(scope));
  }
  cells.push_back(glyph_cell(scope, view, mark, result));
  cells.push_back(cell(status_of(scope, mark, result)));
  cells.push_back(cell(pictures));
  return row(std::move(cells), mark_id(mark.id()), mark.span);
}

std::vector<base::Measured>::const_iterator least_of(const survey::Mark &mark) {
  return std::ranges::min_element(mark.repeats, {}, &base::Measured::value);
}

/// Whether a table with fewer columns says the same, so that it may stand twice beside itself: few figures at a mark; where the
/// mark is used the least of them, as it was displayed, is what remains, and no words stand there but "lowest of row".
bool may_be_narrow(const Scope &scope) {
  return std::ranges::all_of(scope.assessment().marks, [&](const assess::MarkResult &result) {
    const survey::Mark &mark = scope.survey().marks[result.mark];
    if (displayed(scope, mark, false).size() > most_figures) return false;
    if (!result.used) return true;
    const std::string &zone = survey::zone_of_row(scope.survey(), mark.row).id;
    const std::size_t lowest_alone = result.lowest_of_row ? 1 : 0;
    return least_of(mark)->raw == remaining_text(scope, zone, result.remaining) && status_of(scope, mark, result).size() == lowest_alone;
  });
}

/// The figures displayed, what remains among them in strong.
Inlines displayed_with_least(const survey::Mark &mark) {
  Inlines out;
  const auto least = least_of(mark);
  for (auto repeat = mark.repeats.begin(); repeat != mark.repeats.end(); ++repeat) {
    if (!out.empty()) out = out + content::soft("  ");
    out = out + (repeat == least ? content::strong(repeat->raw) : content::soft(repeat->raw));
  }
  return out;
}

/// The same mark in fewer columns: the words of a mark that is not used stand where its loss would.
content::Row narrow_mark_row(const Scope &scope, const RowView &view, const survey::Mark &mark, const assess::MarkResult &result,
                             const PhotosAt &photos) {
  const auto at = photos.find(mark.id());
  std::vector<content::Cell> cells = {cell(result.lowest_of_row ? content::strong(mark.station.raw) : plain(mark.station.raw))};
  if (result.used) {
    cells.push_back(cell(displayed_with_least(mark)));
    cells.push_back(view.weak ? dash_cell(scope) : cell(with_minus(base::mm_exact(result.loss, 1))));
    cells.push_back(share_cell(scope, result.share));
    cells.push_back(margin_cell(scope, result.standing));
  } else {
    cells.push_back(cell(content::soft(displayed(scope, mark, false))));
    cells.push_back(cell(status_of(scope, mark, result)));
    cells.back().across = 3;
  }
  cells.push_back(glyph_cell(scope, view, mark, result));
  cells.back().glyph->x.measure = "glyph-millimetre-narrow";
  cells.push_back(cell(at == photos.end() ? Inlines{} : photo_links(scope, at->second)));
  return row(std::move(cells), mark_id(mark.id()), mark.span);
}

Inlines group_head(const Scope &scope, const RowView &view) {
  const std::string nominal = unit_mm(scope, base::mm_exact(view.zone.original.nominal.value, 0));
  const base::Fill plate{"plate", nominal + told_sign(scope, view.told)};
  std::string about = view.weak ? scope.say("results.group-weak", {plate}) : scope.say("results.group", {plate});
  if (view.limit)
    about += scope.say("results.group-limit", {{"limit", limit_name(scope, view.limit->criterion, view.limit->remaining) + told_sign(scope, view.limit->told)}});
  return content::strong(view.row.id) + plain("  " + row_words(scope, view.row.id)) + content::soft("   " + about);
}

std::vector<content::Column> reading_columns(const Scope &scope, bool with_units, bool low) {
  const std::string mm = scope.say("voice.mm");
  std::vector<content::Column> columns = {column(scope.say("results.station"), Align::right, std::string(base::name_of(scope.survey().datum.station_unit))),
          column(scope.say("results.displayed"), Align::right, with_units ? scope.say("results.as-noted") : mm),
          column(scope.say("results.remaining"), Align::decimal, mm),
          column(scope.say("results.original"), Align::decimal, mm),
          column(scope.say("results.loss"), Align::decimal, mm),
          column(scope.say("results.share"), Align::right, scope.say("results.share-unit")),
          column(scope.say("results.over-limit"), Align::decimal, mm),
          column(scope.say("results.section"), Align::left, scope.say("results.section-unit")),
          stretching(scope.say("results.status")),
          column(scope.say("results.photo"), Align::right, scope.say("results.photo-unit"))};
  constexpr std::ptrdiff_t after_displayed = 2, after_remaining = 3;
  if (low) columns.insert(columns.begin() + after_remaining, column(scope.say("results.low"), Align::decimal, mm));
  if (with_units) columns.insert(columns.begin() + after_displayed, column(scope.say("results.converted"), Align::right, mm));
  return columns;
}

std::string how_reduced(const Scope &scope) {
  bool least = false, mean = false;
  for (const auto &mark : scope.survey().marks)
    (mark.reduce == survey::Reduction::mean_of_repeats ? mean : least) = true;
  if (!mean) return scope.say("results.by-least");
  return least ? scope.say("results.by-either") : scope.say("results.by-mean");
}

/// How many of the readings are indicative, and what the low side is.
std::vector<Inlines> low_notes(const Scope &scope, bool low) {
  std::vector<Inlines> notes;
  const auto indicative = std::ranges::count_if(scope.assessment().marks, &assess::MarkResult::indicative);
  if (indicative > 0)
    notes.push_back(scope.tell("results.indicative-note", {{"n", plain(std::to_string(indicative))},
                                                           {"page", page_link(section_id("instruments"))}}));
  if (low) notes.push_back(plain(scope.say("results.low-note")));
  return notes;
}

std::vector<content::Column> narrow_columns(const Scope &scope) {
  const std::string mm = scope.say("voice.mm");
  return {column(scope.say("results.station"), Align::right, std::string(base::name_of(scope.survey().datum.station_unit))),
          column(scope.say("results.displayed"), Align::right, mm),
          column(scope.say("results.loss"), Align::decimal, mm),
          column(scope.say("results.share"), Align::right, scope.say("results.share-unit")),
          column(scope.say("results.over-limit"), Align::decimal, mm),
          column(scope.say("results.section")),
          column(scope.say("results.photo"), Align::right, scope.say("results.photo-unit"))};
}

Inlines share_note(const Scope &scope) {
  std::vector<std::string> named;
  bool weak = false;
  for (const auto &zone : scope.survey().zones) {
    weak = weak || assess::zone_result(scope.assessment(), zone.id).weak_basis;
    for (const auto &id : zone.original.tolerances)
      if (std::ranges::find(named, id) == named.end()) named.push_back(id);
  }
  std::string text = named.empty() ? scope.say("results.share-note-bare")
                                   : scope.say("results.share-note", {{"tolerance", join_and(scope, named)}});
  if (weak) text += " " + scope.say("results.share-weak");
  return plain(text);
}

} // namespace

content::Block readings_table(const Scope &scope, Numbering &numbering) {
  const bool low = any_mark_lowered(scope), with_units = other_units(scope), narrow = !low && !with_units && may_be_narrow(scope);
  auto table = narrow ? labelled_table(scope, numbering, "readings-abreast", scope.tell("results.readings-narrow-caption"),
                                       narrow_columns(scope))
                      : labelled_table(scope, numbering, "readings",
                                       scope.tell("results.readings-caption", {{"how", plain(how_reduced(scope))}}),
                                       reading_columns(scope, with_units, low));
  const PhotosAt photos = photos_at_marks(scope);
  const Length widest = widest_plate(scope);
  bool any_told = false;
  std::map<std::string, std::vector<std::size_t>> marks;
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i) marks[scope.survey().marks[i].row].push_back(i);
  for (const auto &one : scope.survey().rows) {
    const auto &zone = survey::zone_of_row(scope.survey(), one.id);
    const auto &result = assess::zone_result(scope.assessment(), zone.id);
    const RowView view{one, zone, main_limit(scope, zone.id), widest, with_units, result.weak_basis, low, result.told};
    any_told = any_told || view.told || (view.limit && view.limit->told);
    content::RowGroup group{.head = group_head(scope, view), .id = "row/" + one.id, .rows = {}};
    for (const std::size_t i : marks[one.id]) {
      const auto set = narrow ? narrow_mark_row : mark_row;
      group.rows.push_back(set(scope, view, scope.survey().marks[i], scope.assessment().marks[i], photos));
      group.rows.back().rule_after = group.rows.size() % stations_between_rules == 0;
    }
    if (!group.rows.empty()) table.groups.push_back(std::move(group));
  }
  table.notes = {share_note(scope) + plain(" " + scope.say("results.section-note"))};
  if (with_units) table.notes.push_back(plain(scope.say("results.units-note")));
  for (auto &note : low_notes(scope, low)) table.notes.push_back(std::move(note));
  if (any_told) table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/readings");
}

content::Block rows_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "summary", scope.tell("results.rows-caption"),
                              {column(scope.say("results.row")), stretching(scope.say("results.row-name")),
                               column(scope.say("results.planned"), Align::right), column(scope.say("results.read"), Align::right),
                               column(scope.say("results.used"), Align::right), column(scope.say("results.min"), Align::decimal, mm),
                               column(scope.say("results.mean"), Align::decimal, mm), column(scope.say("results.max"), Align::decimal, mm),
                               column(scope.say("results.worst"))});
  std::vector<content::Row> rows;
  for (const auto &summary : scope.assessment().rows) {
    const auto &zone = survey::zone_of_row(scope.survey(), summary.row);
    std::vector<content::Cell> cells = {cell(content::strong(summary.row)), cell(row_words(scope, summary.row)),
                                        cell(std::to_string(summary.count.planned)), cell(std::to_string(summary.count.read)),
                                        cell(std::to_string(summary.count.used))};
    if (summary.min && summary.max && summary.mean_nm) {
      const Ratio mean_mm{summary.mean_nm->num, summary.mean_nm->den * 1'000'000};
      cells.push_back(cell(content::strong(remaining_text(scope, zone.id, *summary.min))));
      cells.push_back(cell(base::to_text(base::round_to(mean_mm, 2))));
      cells.push_back(cell(base::mm_exact(*summary.max, 1)));
      cells.push_back(cell(link(mark_id(summary.worst), summary.worst)));
    } else {
      for (int i = 0; i < 4; ++i) cells.push_back(dash_cell(scope));
    }
    rows.push_back(row(std::move(cells)));
  }
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("results.rows-note"))};
  for (const auto &zone : scope.assessment().zones)
    if (const auto words = wastage_sentences(scope, zone))
      table.notes.push_back(scope.tell("results.zone-line", {{"zone", plain(zone_name(scope, zone.zone))}, {"words", words->text()}}));
  return block(std::move(table), "table/rows");
}

} // namespace strakebook::compose
