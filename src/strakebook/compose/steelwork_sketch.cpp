#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>

#include "strakebook/base/approximate.h"
#include "strakebook/compose/hull.h"
#include "strakebook/compose/steelwork_parts.h"
#include "strakebook/steel/survey/reach.h"
#include "strakebook/steel/works/frames.h"

/// Sketches of the plates in the schedule: outline, corners, lap, plugs, dimensions, stations and frames.
namespace strakebook::compose {

using base::Pt;
using content::Anchor;
using content::Level;
using content::plain;

namespace {

/// Paper to a metre of plate, the largest scale first.
constexpr std::array<const char *, 7> scales = {"sketch-10", "sketch-20", "sketch-25", "sketch-50", "sketch-75", "sketch-100", "sketch-200"};
constexpr std::ptrdiff_t abreast_scales = 4; ///< a plate that is too long for these takes the width of the page
constexpr int arc_steps = 8;

/// A plate as it is sketched; metres, x from the bow, y up.
struct Plate {
  const survey::SteelworkItem &written;
  const works::Item &item;
  double length, breadth, x0;
  std::string scale;   ///< name of its measure
  bool abreast = false;

  double x1() const { return x0 + length; }
};

Pt measure(const Scope &scope, std::string_view name) { return style::measure(scope.source.house.style, name); }

Pt width_of(const Scope &scope, std::string_view lattice) {
  return style::lattice(scope.source.house.style, lattice).widths.front();
}

/// The first scale at which the plate goes into so much width, and not over the height of a sketch.
auto scale_for(const Scope &scope, const works::Item &item, Pt width) {
  const Pt room = width - measure(scope, "sketch-left") - measure(scope, "sketch-right");
  return std::ranges::find_if(scales, [&](const char *scale) {
    const double metre = measure(scope, scale).v;
    return base::in_metres(*item.length) * metre <= room.v && base::in_metres(*item.breadth) * metre <= measure(scope, "sketch-height").v;
  });
}

/// "1:20".
std::string ratio_text(const Scope &scope, const std::string &scale) {
  constexpr double points_in_metre = 72.0 / 0.0254;
  return scope.say("works.scale", {{"n", rounded(points_in_metre / measure(scope, scale).v, 0)}});
}

std::optional<Plate> plate_of(const Scope &scope, std::size_t index) {
  const auto &item = scope.outlook().works.items.at(index);
  if (!item.adds_steel || !works::outlined(item)) return std::nullopt;
  Plate plate{.written = scope.survey().steelwork[index], .item = item, .length = base::in_metres(*item.length),
              .breadth = base::in_metres(*item.breadth), .x0 = 0, .scale = {}};
  if (item.centre) plate.x0 = from_bow(scope, base::in_metres(*item.centre)) - plate.length / 2;
  const auto half = scale_for(scope, item, width_of(scope, "halves"));
  plate.abreast = half - scales.begin() < abreast_scales;
  const auto scale = plate.abreast ? half : scale_for(scope, item, width_of(scope, "full"));
  if (scale == scales.end()) return std::nullopt; // larger than any drawing of a plate
  plate.scale = *scale;
  return plate;
}

/// Outline of a rectangle with rounded corners, `inset` inside its edges.
std::vector<XY> rounded_box(const Plate &plate, double inset) {
  const double r = std::max(0.0, base::in_metres(plate.item.radius.value_or(Length{})) - inset);
  const double left = plate.x0 + inset, right = plate.x1() - inset, low = inset, high = plate.breadth - inset;
  const std::array<XY, 4> centres = {XY{right - r, high - r}, {left + r, high - r}, {left + r, low + r}, {right - r, low + r}};
  std::vector<XY> out;
  for (std::size_t corner = 0; corner < centres.size(); ++corner)
    for (int i = 0; i <= arc_steps; ++i) {
      const double turn = (static_cast<double>(corner) + static_cast<double>(i) / arc_steps) * std::numbers::pi / 2;
      out.push_back({centres[corner].x + r * std::cos(turn), centres[corner].y + r * std::sin(turn)});
      if (r == 0) break;
    }
  return out;
}

void add_plate(Drawing &to, const Plate &plate) {
  add_area(to, rounded_box(plate, 0), plate.item.insert ? "insert" : "doubler");
  const auto &lap = plate.written.lap_width;
  if (lap && plate.item.doubler && 2 * base::in_metres(lap->value) < std::min(plate.length, plate.breadth))
    add_area(to, rounded_box(plate, base::in_metres(lap->value)), "lap-edge");
}

void add_plugs(Drawing &to, const Plate &plate) {
  if (!plate.item.plugs) return;
  const auto &plugs = *plate.item.plugs;
  for (std::int64_t i = 1; i <= plugs.along; ++i)
    for (std::int64_t k = 1; k <= plugs.across; ++k)
      add_spot(to, {plate.x0 + plate.length * static_cast<double>(i) / static_cast<double>(plugs.along + 1),
                    plate.breadth * static_cast<double>(k) / static_cast<double>(plugs.across + 1)}, "plug");
}

/// Stations of the marks on the rows that the item names, as far as the plate reaches.
void add_stations(Drawing &to, const Scope &scope, const Plate &plate) {
  content::Axis axis{.side = content::Axis::Side::top, .at = plate.breadth, .ticks = {}, .numbers = {}, .title = {}, .line = false};
  std::set<Length> seen;
  for (const auto &mark : scope.survey().marks) {
    const double x = from_bow(scope, metres_of(mark.station));
    if (x < plate.x0 || plate.x1() < x || !survey::covers_row(scope.survey(), plate.written.at, mark.row)) continue;
    if (!seen.insert(mark.station.value).second) continue;
    axis.ticks.push_back(x);
    axis.numbers.emplace_back(x, untorn(mark.station.raw));
  }
  if (!axis.ticks.empty()) to.elements.emplace_back(std::move(axis));
}

void add_frames(Drawing &to, const Scope &scope, const Plate &plate, double under) {
  const auto framing = works::framing(scope.survey());
  if (!framing) return;
  const works::Stretch along{*plate.item.centre - Length::nanometres(plate.item.length->nm() / 2),
                             *plate.item.centre + Length::nanometres(plate.item.length->nm() / 2)};
  const auto a = works::nearest(*framing, along.from).number, b = works::nearest(*framing, along.to).number;
  constexpr std::int64_t most_drawn = 100; // closer frames are no frames of a hull
  if (std::max(a, b) - std::min(a, b) > most_drawn) return;
  for (auto n = std::min(a, b); n <= std::max(a, b); ++n) {
    const Length station = framing->station(n);
    if (station < along.from || along.to < station) continue;
    const double x = from_bow(scope, base::in_metres(station));
    add_line(to, {{x, -under}, {x, plate.breadth}}, "frame-line");
    auto &name = add_label(to, {x, -under}, content::soft(scope.say("works.frame-short", {{"n", with_minus(std::to_string(n))}})), Anchor::centre, Level::below);
    name.yields = true;
  }
}

std::string mm_of_plate(Length side) { return base::mm_text(side, 0); }

/// Length under the plate with the stations of its ends, breadth at its left.
void add_dimensions(Drawing &to, const Scope &scope, const Plate &plate, double under, double beside) {
  using Ends = content::Span::Ends;
  to.elements.emplace_back(content::Span{{plate.x0, -under}, {plate.x1(), -under}, Ends::arrows, "dimension"});
  auto &length = add_label(to, {(plate.x0 + plate.x1()) / 2, -under}, content::strong(mm_of_plate(*plate.item.length)), Anchor::centre, Level::middle);
  length.ground = content::Label::Ground::chip;
  to.elements.emplace_back(content::Span{{plate.x0 - beside, 0}, {plate.x0 - beside, plate.breadth}, Ends::ticks, "dimension"});
  add_label(to, {plate.x0 - beside, plate.breadth / 2}, content::strong(mm_of_plate(*plate.item.breadth)) , Anchor::right, Level::middle);
  if (!plate.item.centre) return;
  const Length half = Length::nanometres(plate.item.length->nm() / 2);
  Length left = *plate.item.centre - half, right = *plate.item.centre + half;
  if (counted_forward(scope)) std::swap(left, right);
  add_label(to, {plate.x0, -under}, plain(station_text(scope, left) + " "), Anchor::right, Level::middle);
  add_label(to, {plate.x1(), -under}, plain(" " + station_text(scope, right)), Anchor::left, Level::middle);
}

std::string title_of(const Scope &scope, const Plate &plate) {
  return scope.say("works.sketch-title", {{"kind", action_name(scope, plate.item.action)}, {"mm", unit_mm(scope, base::mm_exact(*plate.item.thickness))}});
}

std::string spoken(const Scope &scope, const Plate &plate) {
  return scope.say("works.sketch-spoken", {{"id", plate.item.id}, {"what", title_of(scope, plate)},
                                           {"length", mm_of_plate(*plate.item.length)}, {"breadth", mm_of_plate(*plate.item.breadth)},
                                           {"where", reach_words(scope, plate.written.at)}, {"scale", ratio_text(scope, plate.scale)}});
}

Drawing drawing_of(const Scope &scope, const Plate &plate) {
  Drawing out;
  out.x0 = plate.x0;
  out.x1 = plate.x1();
  out.y1 = plate.breadth;
  out.x = {content::Scale::Rule::named, plate.scale};
  out.y = {content::Scale::Rule::as_x, {}};
  out.pad_left = "sketch-left";
  out.pad_right = "sketch-right";
  out.pad_top = "sketch-top";
  out.pad_bottom = "sketch-bottom";
  const double metre = measure(scope, plate.scale).v;
  add_plate(out, plate);
  if (plate.item.centre) {
    add_frames(out, scope, plate, measure(scope, "sketch-frames").v / metre);
    add_stations(out, scope, plate);
  }
  add_plugs(out, plate);
  add_dimensions(out, scope, plate, measure(scope, "sketch-dimension").v / metre, measure(scope, "sketch-breadth").v / metre);
  out.spoken = spoken(scope, plate);
  return out;
}

content::Figure::Panel panel_of(const Scope &scope, const Plate &plate) {
  using content::operator+;
  return {.title = content::strong(plate.item.id) + plain("\u00A0\u00A0" + title_of(scope, plate)),
          .title_right = content::soft(ratio_text(scope, plate.scale)), .drawing = drawing_of(scope, plate), .id = "sketch/" + plate.item.id};
}

Inlines caption_of(const Scope &scope, const std::vector<Plate> &plates) {
  std::string text = scope.say("works.sketch-caption");
  const auto any = [&](auto holds) { return std::ranges::any_of(plates, holds); };
  if (any([](const Plate &plate) { return plate.item.centre.has_value(); })) text += " " + scope.say("works.sketch-stations");
  if (works::framing(scope.survey())) text += " " + scope.say("works.sketch-frames");
  if (any([](const Plate &plate) { return plate.item.plugs.has_value(); })) text += " " + scope.say("works.sketch-plugs");
  if (any([](const Plate &plate) { return plate.item.doubler && plate.written.lap_width; })) text += " " + scope.say("works.sketch-lap");
  return plain(text);
}

} // namespace

std::vector<content::Block> sketches(const Scope &scope, Numbering &numbering) {
  std::vector<Plate> all;
  for (std::size_t i = 0; i < scope.survey().steelwork.size(); ++i)
    if (auto plate = plate_of(scope, i)) all.push_back(std::move(*plate));
  std::vector<content::Block> out;
  for (const bool abreast : {true, false}) {
    content::Figure figure;
    for (const Plate &plate : all)
      if (plate.abreast == abreast) figure.panels.push_back(panel_of(scope, plate));
    if (figure.panels.empty()) continue;
    figure.label = next_figure(scope, numbering);
    figure.caption = out.empty() ? caption_of(scope, all) : plain(scope.say("works.sketch-more"));
    figure.lattice = abreast ? "halves" : "";
    out.push_back(block(std::move(figure), abreast ? "figure/plates" : "figure/long-plates"));
  }
  return out;
}

} // namespace strakebook::compose
