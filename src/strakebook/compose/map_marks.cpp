#include <algorithm>
#include <map>

#include "strakebook/compose/map_parts.h"
#include "strakebook/compose/subjects.h"

/// The unrolled hull, mark by mark. Each row has its mark line, a lane for pits below it, and a lane below that which the row
/// shares with the next one: labels of its pits and words of its marks not read, photographs of the next row.
namespace strakebook::compose {

using content::Anchor;
using content::Level;
using content::plain;
using content::operator+;

namespace {

// In rows: y runs up, one row is one unit.
constexpr double first_row = 0.75, below_last = 0.85, strip_gap = 0.25;
constexpr double pit_lane = 0.32, shared_lane = 0.62, area_half = 0.42, beside = 0.16;
constexpr double rake_room = 0.012; // of the length: names stand clear of the raked stem
constexpr double least_area = 0.25; // half of the spacing: an area at one station still shows

/// Where rows stand, decided once.
struct Plan {
  struct Line { const survey::Row *row; double y; double lane_above, lane_below; };
  struct Area { Strip strip; double low, high; };
  std::vector<Line> lines;
  std::vector<Area> strips;
  double height = 0, spacing = 1;
  Reach1D hull;
};

Plan plan_of(const Scope &scope) {
  Plan out;
  out.hull = hull_extent(scope);
  out.spacing = scope.survey().datum.spacing ? metres_of(*scope.survey().datum.spacing) : 1;
  double y = 0;
  for (const Strip strip : {Strip::port, Strip::bottom, Strip::starboard}) {
    const double high = y;
    double line = high - first_row, above = line + 1 - shared_lane;
    bool any = false;
    for (const auto &row : scope.survey().rows) {
      if (strip_of(scope, row) != strip) continue;
      const double below = line - shared_lane;
      out.lines.push_back({&row, line, above, below});
      above = below;
      line -= 1;
      any = true;
    }
    if (!any) continue;
    y = line + 1 - below_last;
    out.strips.push_back({strip, y, high});
    y -= strip_gap;
  }
  out.height = -y - strip_gap;
  return out;
}

double line_y(const Plan &plan, std::string_view row) {
  const auto found = std::ranges::find(plan.lines, row, [](const Plan::Line &line) { return std::string_view(line.row->id); });
  return found == plan.lines.end() ? 0 : found->y;
}

void add_areas(Drawing &to, const Scope &scope, const Plan &plan, const survey::Reach &reach, const std::string &meaning) {
  auto along = stations_of_reach(scope, reach);
  if (along.to - along.from < 2 * least_area * plan.spacing) {
    along.from -= least_area * plan.spacing;
    along.to += least_area * plan.spacing;
  }
  for (const auto *row : rows_of_reach(scope, reach)) {
    const double y = line_y(plan, row->id);
    add_box(to, {along.from, y - area_half}, {along.to, y + area_half}, meaning);
  }
}

void add_ground(Drawing &to, const Scope &scope, const Plan &plan) {
  for (const auto &strip : plan.strips) add_area(to, strip_outline(strip.strip, plan.hull, strip.low, strip.high), "hull");
  for (const auto &limitation : scope.survey().limitations)
    if (limitation.at.from) add_areas(to, scope, plan, limitation.at, "not-seen");
  for (const auto &doubler : scope.survey().doublers) add_areas(to, scope, plan, doubler.over, "doubler");
}

std::string short_word(const Scope &scope, const survey::Mark &mark) {
  if (mark.status == survey::Status::read) return scope.say("map.doubler");
  switch (mark.status) {
  case survey::Status::no_echo: return scope.say("map.no-echo");
  case survey::Status::unstable: return scope.say("map.unstable");
  case survey::Status::not_cleaned: return scope.say("map.not-cleaned");
  case survey::Status::no_access: return scope.say("map.no-access");
  case survey::Status::weld_or_fitting: return scope.say("map.fitting");
  case survey::Status::rejected: return scope.say("map.rejected");
  case survey::Status::queried: return scope.say("map.queried");
  case survey::Status::read: break;
  }
  return {};
}

/// Neighbours that were not used for the same reason, told once.
struct Unread {
  std::string word;
  double from = 0, to = 0;
};

void add_word(Drawing &to, const Plan::Line &line, const Unread &run) {
  if (run.word.empty()) return;
  auto &word = add_label(to, {(run.from + run.to) / 2, line.lane_below}, content::italic(run.word), Anchor::centre, Level::middle);
  word.chip = true;
  word.yields = true;
}

void add_marks(Drawing &to, const Scope &scope, const Plan::Line &line) {
  const auto &zone = survey::zone_of_row(scope.survey(), line.row->id);
  Unread run;
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i) {
    const auto &mark = scope.survey().marks[i];
    if (mark.row != line.row->id) continue;
    const double x = metres_of(mark.station);
    const auto &result = scope.assessment().marks[i];
    if (!result.used) {
      add_spot(to, {x, line.y}, "unread");
      const std::string word = short_word(scope, mark);
      if (word != run.word) {
        add_word(to, line, run);
        run = {word, x, x};
      }
      run.to = x;
      continue;
    }
    add_word(to, line, run);
    run = {};
    add_spot(to, {x, line.y}, map_sign(result.standing), ramp_meaning(scope, zone, result.judged()));
    const std::string figure = remaining_text(scope, zone.id, result.remaining);
    auto &label = add_label(to, {x + beside, line.y}, result.lowest_of_row ? content::strong(figure) : plain(figure), Anchor::left, Level::middle);
    label.target = mark_id(mark.id());
    label.yields = true;
    label.chip = true;
  }
  add_word(to, line, run);
}

void add_pits(Drawing &to, const Scope &scope, const Plan::Line &line) {
  for (std::size_t i = 0; i < scope.survey().pits.size(); ++i) {
    const auto &pit = scope.survey().pits[i];
    if (pit.at.row != line.row->id) continue;
    const auto &zone = survey::zone_of_row(scope.survey(), pit.at.row);
    const Length remaining = scope.assessment().pits[i].remaining;
    const double x = metres_of(pit.at.station);
    add_spot(to, {x, line.y - pit_lane}, map_sign(scope.assessment().pits[i].standing), ramp_meaning(scope, zone, scope.assessment().pits[i].judged()));
    add_spot(to, {x, line.y - pit_lane}, "pit");
    auto &label = add_label(to, {x, line.lane_below}, plain(pit.id + "\u00A0") + content::strong(remaining_text(scope, zone.id, remaining)),
                            Anchor::centre, Level::middle);
    label.target = pit_id(pit.id);
    label.yields = true;
  }
}

void add_photos(Drawing &to, const Scope &scope, const Plan::Line &line) {
  for (const auto &photo : scope.survey().photos) {
    if (photo.at.row != line.row->id) continue;
    auto &label = add_label(to, {metres_of(photo.at.station), line.lane_above}, plain(scope.say("map.photo", {{"n", photo.id}})), Anchor::centre, Level::middle);
    label.chip = true;
    label.target = photo_id(photo.id);
    label.yields = true;
  }
}

void add_names(Drawing &to, const Scope &scope, const Plan &plan) {
  const double at = plan.hull.from - rake_room * (plan.hull.to - plan.hull.from);
  for (const auto &line : plan.lines) {
    auto &name = add_label(to, {at, line.y}, content::soft(line.row->name.text + " ") + content::strong(line.row->id + "  "), Anchor::right, Level::middle);
    name.text_style = "map-row";
    name.yields = true;
  }
  for (const auto &strip : plan.strips) {
    auto &name = add_label(to, {at, strip.high}, content::strong(strip_head(scope, strip.strip) + "   "), Anchor::right, Level::below);
    name.text_style = "map-row";
  }
}

} // namespace

Drawing map_of_marks(const Scope &scope) {
  const Plan plan = plan_of(scope);
  Drawing out;
  out.x0 = plan.hull.from;
  out.x1 = plan.hull.to;
  out.y0 = -plan.height;
  out.y1 = 0;
  out.y = {content::Scale::Rule::fill, "map-drawn"};
  out.pad_left = "map-names";
  out.pad_right = "map-right";
  out.pad_top = "map-axis";
  out.pad_bottom = "map-axis";
  add_ground(out, scope, plan);
  add_names(out, scope, plan);
  for (const auto &line : plan.lines) {
    add_line(out, {{plan.hull.from, line.y}, {plan.hull.to, line.y}}, "row-line");
    add_marks(out, scope, line);
    add_pits(out, scope, line);
    add_photos(out, scope, line);
  }
  out.elements.emplace_back(hull_axis(scope, content::Axis::Side::top, 0));
  out.elements.emplace_back(hull_axis(scope, content::Axis::Side::bottom, out.y0));
  out.spoken = scope.say("map.spoken");
  return out;
}

} // namespace strakebook::compose
