#include <algorithm>
#include <cmath>

#include "strakebook/compose/low_side.h"
#include "strakebook/compose/map_parts.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/sketch.h"
#include "strakebook/compose/subjects.h"

/// Wastage profiles: the plate of each row cut along the hull. Filled is steel left, blank above it is steel gone.
namespace strakebook::compose {

using content::Anchor;
using content::Level;
using content::plain;
using content::operator+;

namespace {

constexpr double gap_half = 0.42;   // of a station's spacing, either side of a mark not read
constexpr double mouth_half = 0.16; // metres: the width of a pit's notch is not to scale
constexpr std::size_t most_rows_in_halves = 14;
constexpr int numbers_on_axis = 4;

/// Scale and extent that every panel of the page shares.
struct Frame {
  double x0 = 0, x1 = 1, top = 1, spacing = 1, name_pitch = 1;
  bool halves = true;
};

double measure_ratio(const Scope &scope, const char *part, const char *whole) {
  const auto &style = scope.source.house.style;
  return style::measure(style, part) / style::measure(style, whole);
}

Frame shared_frame(const Scope &scope) {
  Frame out;
  const auto &survey = scope.survey();
  out.spacing = survey.datum.spacing ? metres_of(*survey.datum.spacing) : 1;
  bool first = true;
  for (const auto &mark : survey.marks) {
    const double x = metres_of(mark.station);
    out.x0 = first ? x : std::min(out.x0, x);
    out.x1 = first ? x : std::max(out.x1, x);
    first = false;
  }
  out.x0 -= gap_half * out.spacing;
  out.x1 += gap_half * out.spacing;
  out.halves = survey.rows.size() <= most_rows_in_halves;
  out.name_pitch = measure_ratio(scope, "profile-name-pitch", "profile-millimetre");
  return out;
}

/// A mark as the profile meets it.
struct Station {
  double x = 0;
  const survey::Mark *mark = nullptr;
  const assess::MarkResult *result = nullptr;
};

std::vector<Station> stations_of(const Scope &scope, std::string_view row) {
  std::vector<Station> out;
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i)
    if (const auto &mark = scope.survey().marks[i]; mark.row == row)
      out.push_back({metres_of(mark.station), &mark, &scope.assessment().marks[i]});
  return out;
}

std::vector<const survey::Pit *> pits_on(const Scope &scope, std::string_view row) {
  std::vector<const survey::Pit *> out;
  for (const auto &pit : scope.survey().pits)
    if (pit.at.row == row) out.push_back(&pit);
  std::ranges::stable_sort(out, {}, [](const survey::Pit *pit) { return pit->at.station.value; });
  return out;
}

/// Steel over a run of neighbouring marks that were used, closed down to the inside face.
void add_steel(Drawing &to, const Frame &frame, const std::vector<Station> &run) {
  if (run.empty()) return;
  const double half = gap_half * frame.spacing;
  std::vector<XY> outline = {{run.front().x - half, 0}, {run.front().x - half, mm_of(run.front().result->remaining)}};
  for (const auto &one : run) outline.push_back({one.x, mm_of(one.result->remaining)});
  outline.push_back({run.back().x + half, mm_of(run.back().result->remaining)});
  outline.push_back({run.back().x + half, 0});
  add_area(to, std::move(outline), "left");
  for (const auto &one : run) add_spot(to, {one.x, mm_of(one.result->remaining)}, "mark");
}

void add_gap(Drawing &to, const Frame &frame, const Station &at, double original) {
  const double half = gap_half * frame.spacing;
  if (at.mark->plate == survey::Plate::doubler && !at.mark->repeats.empty()) {
    const double outer = mm_of(std::ranges::min_element(at.mark->repeats, {}, &base::Measured::value)->value);
    add_box(to, {at.x - half, 0}, {at.x + half, original}, "doubler-inner");
    add_box(to, {at.x - half, original}, {at.x + half, original + outer}, "doubler");
    return;
  }
  add_box(to, {at.x - half, 0}, {at.x + half, original}, "unread-plate");
  add_spot(to, {at.x, 0}, "unread");
}

/// Why marks were not read, written over the limits that run through the gaps.
void add_words(Drawing &to, const Scope &scope, const std::vector<Station> &stations, double original) {
  for (const auto &at : stations) {
    if (at.result->used || at.mark->plate == survey::Plate::doubler) continue;
    auto &word = add_label(to, {at.x, original / 2}, content::italic(short_status(scope, *at.mark)), Anchor::centre, Level::middle);
    word.upwards = true;
    word.ground = content::Label::Ground::chip;
    word.yields = true;
  }
}

void add_plate(Drawing &to, const Frame &frame, const std::vector<Station> &stations, double original) {
  std::vector<Station> run;
  for (const auto &one : stations) {
    if (one.result->used) {
      run.push_back(one);
      continue;
    }
    add_steel(to, frame, run);
    run.clear();
    add_gap(to, frame, one, original);
  }
  add_steel(to, frame, run);
}

void add_original(Drawing &to, const Frame &frame, const DrawnOriginal &original) {
  if (original.has_interval)
    add_box(to, {frame.x0, mm_of(original.thinnest)}, {frame.x1, mm_of(original.thickest)}, "tolerance");
  add_line(to, {{frame.x0, mm_of(original.nominal)}, {frame.x1, mm_of(original.nominal)}}, "nominal");
  add_label(to, {frame.x1, mm_of(original.nominal)}, plain(" " + base::mm_exact(original.nominal, 0)), Anchor::left, Level::middle);
}

/// The limits that can be named without touching: the governing one always, others thinnest first.
std::vector<DrawnLimit> nameable(const std::vector<DrawnLimit> &limits, double original, double pitch) {
  std::vector<DrawnLimit> out;
  const auto free = [&](const DrawnLimit &limit) {
    return std::abs(mm_of(limit.remaining) - original) >= pitch && std::ranges::all_of(out, [&](const DrawnLimit &other) {
             return std::abs(mm_of(limit.remaining) - mm_of(other.remaining)) >= pitch;
           });
  };
  for (const auto &limit : limits)
    if (limit.governs) out.push_back(limit);
  for (const auto &limit : limits)
    if (!limit.governs && free(limit)) out.push_back(limit);
  return out;
}

void add_limits(Drawing &to, const Scope &scope, const Frame &frame, const survey::Zone &zone, double original) {
  for (const auto &limit : nameable(limits_of(scope, zone.id), original, frame.name_pitch)) {
    const double y = mm_of(limit.remaining);
    add_line(to, {{frame.x0, y}, {frame.x1, y}}, limit.governs ? "limit-governs" : "limit");
    const std::string name = " " + limit_name(scope, limit.criterion, limit.remaining);
    add_label(to, {frame.x1, y}, limit.governs ? content::strong(name) : plain(name), Anchor::left, Level::middle);
  }
}

/// `behind`: thickness of the plate under the one that a pit is in; none unless it is on a doubler.
template <class Behind>
void add_pits(Drawing &to, const Frame &frame, const std::vector<const survey::Pit *> &pits, double lane, Behind behind) {
  for (const auto *pit : pits) {
    const double x = metres_of(pit->at.station), inner = mm_of(behind(*pit));
    const double mouth = inner + mm_of(pit->adjacent.value);
    const double apex = inner + std::max(0.0, mm_of(pit->adjacent.value - pit->depth.value));
    add_area(to, {{x - mouth_half, mouth}, {x, apex}, {x + mouth_half, mouth}}, "gone");
    add_line(to, {{x - mouth_half, mouth}, {x, apex}, {x + mouth_half, mouth}}, "axis");
    if (!frame.halves) continue;
    add_line(to, {{x, mouth}, {x, lane}}, "pit-line");
    auto &name = add_label(to, {x, lane}, plain(pit->id), Anchor::centre, Level::above);
    name.target = pit_id(pit->id);
    name.yields = true;
  }
}

content::Axis thickness_axis(const Frame &frame, double original) {
  content::Axis axis{.side = content::Axis::Side::left, .at = frame.x0, .ticks = {}, .numbers = {}, .title = {}};
  const int step = original > 10 ? 4 : 2;
  for (int mm = 0; mm <= static_cast<int>(original); mm += step) {
    axis.ticks.push_back(mm);
    axis.numbers.emplace_back(mm, std::to_string(mm));
  }
  return axis;
}

content::Axis station_axis(const std::vector<Station> &stations) {
  content::Axis axis{.side = content::Axis::Side::bottom, .at = 0, .ticks = {}, .numbers = {}, .title = {}};
  const std::size_t step = std::max<std::size_t>(1, (stations.size() + numbers_on_axis - 1) / numbers_on_axis);
  for (std::size_t i = 0; i < stations.size(); ++i) {
    axis.ticks.push_back(stations[i].x);
    if (i % step == 0) axis.numbers.emplace_back(stations[i].x, stations[i].mark->station.raw);
  }
  return axis;
}

std::string spoken_profile(const Scope &scope, const survey::Row &row) {
  const auto &summary = scope.assessment().rows[static_cast<std::size_t>(&row - scope.survey().rows.data())];
  return scope.say("profile.spoken", {{"name", row_words(scope, row.id)}, {"row", spoken_row(scope, summary)}, {"pits", spoken_pits(scope, row.id)}});
}

Drawing profile(const Scope &scope, const Frame &frame, const survey::Row &row) {
  const auto &zone = survey::zone_of_row(scope.survey(), row.id);
  const auto original = drawn_original(scope, zone);
  const auto stations = stations_of(scope, row.id);
  Drawing out;
  out.x0 = frame.x0;
  out.x1 = frame.x1;
  out.y1 = std::max(mm_of(original.thickest), mm_of(original.nominal));
  for (const auto &one : stations)
    if (one.result->used) out.y1 = std::max(out.y1, mm_of(one.result->remaining));
    else if (one.mark->plate == survey::Plate::doubler && !one.mark->repeats.empty())
      out.y1 = std::max(out.y1, mm_of(original.nominal) + mm_of(one.mark->repeats.front().value));
  out.y = {content::Scale::Rule::named, frame.halves ? "profile-millimetre" : "profile-millimetre-small"};
  out.pad_left = "profile-left";
  out.pad_right = "profile-right";
  out.pad_top = scope.survey().pits.empty() ? "profile-top-plain" : "profile-top";
  out.pad_bottom = "profile-bottom";
  add_plate(out, frame, stations, mm_of(original.nominal));
  add_original(out, frame, original);
  add_pits(out, frame, pits_on(scope, row.id), out.y1, [&](const survey::Pit &pit) {
    const auto index = static_cast<std::size_t>(&pit - scope.survey().pits.data());
    return scope.assessment().pits[index].doubler.empty() ? Length{} : zone.original.nominal.value;
  });
  add_limits(out, scope, frame, zone, mm_of(original.nominal));
  if (frame.halves) add_words(out, scope, stations, mm_of(original.nominal));
  add_line(out, {{frame.x0, 0}, {frame.x1, 0}}, "inside-face");
  out.elements.emplace_back(thickness_axis(frame, mm_of(original.nominal)));
  out.elements.emplace_back(station_axis(stations));
  out.spoken = spoken_profile(scope, row);
  return out;
}

Inlines lowest_words(const Scope &scope, const survey::Row &row, const assess::RowSummary &summary) {
  if (!summary.min) return content::italic(scope.say("profile.none-read"));
  const std::string figure = remaining_text(scope, row.zone, *summary.min);
  return scope.tell("profile.lowest", {{"mm", content::strong(figure)}, {"mark", link(mark_id(summary.worst), summary.worst)}});
}

} // namespace

content::Block profiles_figure(const Scope &scope, Numbering &numbering) {
  const Frame frame = shared_frame(scope);
  content::Figure out;
  out.label = next_figure(scope, numbering);
  out.caption = scope.tell("profile.caption");
  out.lattice = frame.halves ? "halves" : "strakes";
  for (std::size_t i = 0; i < scope.survey().rows.size(); ++i) {
    const auto &row = scope.survey().rows[i];
    out.panels.push_back({content::strong(row.id) + plain("  " + (frame.halves ? row_words(scope, row.id) : std::string())),
                          lowest_words(scope, row, scope.assessment().rows[i]), profile(scope, frame, row), "profile/" + row.id});
  }
  out.notes = {plain(scope.say("profile.note"))};
  if (any_mark_lowered(scope)) out.notes.push_back(plain(scope.say("profile.displayed")));
  return block(std::move(out), "figure/profiles");
}

} // namespace strakebook::compose
