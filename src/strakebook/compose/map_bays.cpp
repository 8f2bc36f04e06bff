#include <algorithm>
#include <map>
#include <set>

#include "strakebook/compose/low_side.h"
#include "strakebook/compose/map_parts.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"

/// The unrolled hull of a large boat as strips of cells, and the list of what does not meet its limit.
namespace strakebook::compose {

using content::Anchor;
using content::Level;
using content::plain;
using content::operator+;

namespace {

constexpr double strip_gap = 1.6; // rows of white between strips: their name stands in it
constexpr std::size_t most_rows_one_by_one = 14;

double spacing_of(const Scope &scope) { return scope.survey().datum.spacing ? metres_of(*scope.survey().datum.spacing) : 1; }

/// A cell of the map: its lesser plate reading, and whether any of its marks does not meet its limit.
struct Cell {
  std::optional<Length> least;
  std::string mark; ///< the least one's; of a cell without any, the first not used
  bool unread = false;      ///< one of its marks has no reading of the hull plate
  bool short_of_limit = false; ///< a mark or pit in it does not meet its limit
};

using Cells = std::map<std::pair<std::string, int>, Cell>;

Cells cells_of(const Scope &scope) {
  Cells out;
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i) {
    const auto &mark = scope.survey().marks[i];
    const auto &result = scope.assessment().marks[i];
    auto &cell = out[{mark.row, bay_of(scope, mark.station)}];
    if (cell.mark.empty()) cell.mark = mark.id();
    cell.unread = cell.unread || !result.used;
    if (!result.used) continue;
    if (!cell.least || result.judged() < *cell.least) {
      cell.least = result.judged();
      cell.mark = mark.id();
    }
    cell.short_of_limit = cell.short_of_limit || not_met(result.standing);
  }
  for (const auto &result : scope.assessment().pits) {
    const auto &pit = scope.survey().pits[result.pit];
    if (not_met(result.standing)) out[{pit.at.row, bay_of(scope, pit.at.station)}].short_of_limit = true;
  }
  return out;
}

void add_cell(Drawing &to, const Scope &scope, const survey::Zone &zone, const Cell &cell, XY low) {
  const XY high{low.x + 1, low.y + 1};
  const std::string look = cell.least ? ramp_meaning(scope, zone, *cell.least) + "-cell" : "unread-plate";
  auto &box = add_box(to, low, high, look);
  if (!cell.mark.empty()) box.target = mark_id(cell.mark);
  if (cell.unread) add_line(to, {low, high}, "unread-line");
}

void outline_if_not_met(Drawing &to, const Scope &, const survey::Zone &, const Cell &cell, XY low) {
  if (cell.short_of_limit) add_box(to, low, {low.x + 1, low.y + 1}, "cell-not-met");
}

void add_pit(Drawing &to, XY at, const std::string &pit) {
  auto &spot = add_spot(to, at, "pit");
  spot.id = map_id(pit_id(pit));
  spot.target = pit_id(pit);
}

void add_row(Drawing &to, const Scope &scope, const Cells &cells, const survey::Row &row, double y) {
  const auto &zone = survey::zone_of_row(scope.survey(), row.id);
  const int first = static_cast<int>(to.x0), last = static_cast<int>(to.x1);
  const auto each = [&](auto draw) {
    for (int bay = first; bay < last; ++bay)
      if (const auto found = cells.find({row.id, bay}); found != cells.end()) draw(to, scope, zone, found->second, XY{static_cast<double>(bay), y});
  };
  each(add_cell);
  for (int bay = first; bay < last; ++bay)
    if (cells.contains({row.id, bay})) add_place(to, {static_cast<double>(bay), y + 1}, map_bay_id(row.id, bay));
  each(outline_if_not_met);
  for (const auto &pit : scope.survey().pits)
    if (const int bay = bay_of(scope, pit.at.station); pit.at.row == row.id && bay >= first && bay < last)
      add_pit(to, {metres_of(pit.at.station) / spacing_of(scope), y + 0.5}, pit.id);
  auto &name = add_label(to, {to.x0, y + 0.5}, content::strong(row.id + " "), Anchor::right, Level::middle);
  name.text_style = "map-row";
  const auto summary = std::ranges::find(scope.assessment().rows, row.id, &assess::RowSummary::row);
  if (summary == scope.assessment().rows.end() || !summary->min) return;
  auto &least = add_label(to, {to.x1, y + 0.5}, content::strong(" " + remaining_text(scope, zone.id, *summary->min)) + content::soft("  " + summary->worst), Anchor::left, Level::middle);
  least.target = mark_id(summary->worst);
  least.yields = true;
}

content::Axis bay_axis(int first, int last) {
  content::Axis axis{.side = content::Axis::Side::top, .at = 0, .ticks = {}, .numbers = {}, .title = {}};
  constexpr int step = 5;
  for (int bay = first; bay < last; ++bay)
    if ((bay + 1) % step == 0 || bay == first) axis.numbers.emplace_back(bay + 0.5, std::to_string(bay + 1));
  return axis;
}

content::Axis metre_axis(const Scope &scope, int first, int last, double at) {
  content::Axis axis{.side = content::Axis::Side::bottom, .at = at, .ticks = {}, .numbers = {}, .title = {}};
  const double spacing = spacing_of(scope);
  constexpr int step = 5;
  for (int metre = 0; metre <= static_cast<int>(last * spacing); ++metre) {
    const double x = metre / spacing;
    if (x < first) continue;
    axis.ticks.push_back(x);
    if (metre % step == 0) axis.numbers.emplace_back(x, std::to_string(metre));
  }
  return axis;
}

} // namespace

int bay_of(const Scope &scope, const base::Measured &station) {
  constexpr double past_line = 1e-9; // a mark on the line between two bays belongs to the one that begins there
  return static_cast<int>(metres_of(station) / spacing_of(scope) + past_line);
}

int bay_count(const Scope &scope) {
  int out = 0;
  for (const auto &mark : scope.survey().marks) out = std::max(out, bay_of(scope, mark.station) + 1);
  return out;
}

bool needs_bays(const Scope &scope) {
  if (scope.survey().rows.size() > most_rows_one_by_one) return true;
  const auto &style = scope.source.house.style;
  const auto hull = hull_extent(scope);
  return map_width(scope) * (spacing_of(scope) / (hull.to - hull.from)) < style::measure(style, "map-least-station");
}

namespace {

/// The strakes of a strip under its name, below `high`; the lower edge, or `high` where there are none.
double add_strakes(Drawing &to, const Scope &scope, const Cells &cells, std::string_view zone, Strip strip, double high) {
  double y = high - strip_gap;
  for (const auto &row : scope.survey().rows)
    if (strip_of(scope, row) == strip && (zone.empty() || row.zone == zone)) add_row(to, scope, cells, row, y -= 1);
  if (y == high - strip_gap) return high;
  auto &head = add_label(to, {to.x0, high}, content::strong(strip_head(scope, strip)), Anchor::left, Level::below);
  head.text_style = "map-row";
  return y;
}

Drawing map_of_bays(const Scope &scope, const Cells &cells, std::string_view zone, int first, int last) {
  Drawing out;
  out.x0 = first;
  out.x1 = last;
  double y = 0;
  for (const Strip strip : {Strip::port, Strip::bottom, Strip::starboard})
    y = add_strakes(out, scope, cells, zone, strip, y);
  out.y0 = y;
  out.y1 = 0;
  const auto &style = scope.source.house.style;
  const bool tall = style::measure(style, "heat-row") * (out.y1 - out.y0) > style::measure(style, "map-drawn");
  out.y = tall ? content::Scale{content::Scale::Rule::fill, "map-drawn"} : content::Scale{content::Scale::Rule::named, "heat-row"};
  out.pad_left = "heat-names";
  out.pad_right = "heat-right";
  out.pad_top = "map-axis";
  out.pad_bottom = "map-axis";
  out.elements.emplace_back(bay_axis(first, last));
  out.elements.emplace_back(metre_axis(scope, first, last, y));
  out.spoken = scope.say("map.bays-spoken", {{"rows", spoken_rows(scope, zone)}});
  return out;
}

int most_bays(const Scope &scope, const char *master) {
  const auto &style = scope.source.house.style;
  const auto width = style::body_width(style::master(style, master)) - style::measure(style, "heat-names") - style::measure(style, "heat-right");
  return std::max(2, static_cast<int>(width / style::measure(style, "heat-cell")));
}

} // namespace

std::vector<content::Figure::Panel> maps_of_bays(const Scope &scope, std::string_view zone, const char *master) {
  std::vector<content::Figure::Panel> out;
  const Cells cells = cells_of(scope);
  const int bays = bay_count(scope), most = most_bays(scope, master);
  const std::string id = zone.empty() ? "figure/map" : "figure/zone-map/" + std::string(zone);
  for (int first = 0; first + 1 < bays || first == 0; first += most - 1) // parts share a bay
    out.push_back({{}, {}, map_of_bays(scope, cells, zone, first, std::min(bays, first + most)), id + "/bays-" + std::to_string(first)});
  return out;
}

namespace {

/// A mark or pit that does not meet the limit it is measured against.
struct NotMet {
  std::string id;
  Length remaining, judged;
  std::string zone;
  std::optional<double> conformance;
};

std::vector<NotMet> all_not_met(const Scope &scope) {
  std::vector<NotMet> found;
  const auto consider = [&](const std::string &id, const std::string &row, const auto &result) {
    if (not_met(result.standing))
      found.push_back({id, result.remaining, result.judged(), survey::zone_of_row(scope.survey(), row).id, result.standing->result.conformance});
  };
  for (const auto &result : scope.assessment().marks)
    consider(scope.survey().marks[result.mark].id(), scope.survey().marks[result.mark].row, result);
  for (const auto &result : scope.assessment().pits)
    consider(scope.survey().pits[result.pit].id, scope.survey().pits[result.pit].at.row, result);
  std::ranges::stable_sort(found, {}, &NotMet::judged);
  return found;
}

} // namespace

bool all_met(const Scope &scope) { return all_not_met(scope).empty(); }

content::Block not_met_list(const Scope &scope, Numbering &numbering) {
  const auto found = all_not_met(scope);
  auto table = labelled_table(scope, numbering, "small", scope.tell("map.not-met-caption", {{"n", plain(std::to_string(found.size()))}}),
                              {column(scope.say("map.place")), stretching(scope.say("map.where")), column(scope.say("map.left"), Align::decimal, scope.say("voice.mm"))});
  const bool low = std::ranges::any_of(found, [](const NotMet &one) { return one.judged < one.remaining; });
  if (low) table.columns.push_back(column(scope.say("results.low"), Align::decimal, scope.say("voice.mm")));
  table.columns.push_back(column(scope.say("map.probability"), Align::right));
  std::vector<content::Row> rows;
  for (const auto &one : found) {
    rows.push_back(row({cell(link(subject_target(scope, one.id), one.id)), cell(subject_place(scope, one.id)), cell(remaining_text(scope, one.zone, one.remaining))}));
    auto &cells = rows.back().cells;
    if (low) cells.push_back(one.judged < one.remaining ? cell(low_text(scope, one.zone, one.judged)) : cell(scope.say("voice.dash")));
    cells.push_back(cell(probability_text(scope, one.conformance)));
  }
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("map.probability-note"))};
  return block(std::move(table), "table/not-met");
}

} // namespace strakebook::compose
