#include <algorithm>
#include <map>

#include "strakebook/compose/figures.h"
#include "strakebook/compose/hull.h"

/// Where the items are, on three strips of the hull; and the datum drawing.
namespace strakebook::compose {

using content::Anchor;
using content::Level;
using content::plain;

namespace {

// In lanes: y runs up, one item takes one lane, and a strip is as many lanes high as it has items and one more.
constexpr double least_lanes = 2, strip_gap = 0.7;
constexpr double strip_height = 1.0; // of the datum drawing, which has one strip
constexpr double stub_share = 0.05;  // of the length: an extent so short has its number before it
constexpr double rake_room = 0.02;   // of the length: the names stand clear of the raked stem

std::string strip_name(const Scope &scope, Strip strip) {
  switch (strip) {
  case Strip::port: return scope.say("strips.port");
  case Strip::bottom: return scope.say("strips.bottom");
  case Strip::starboard: break;
  }
  return scope.say("strips.starboard");
}

/// An item's stretch on one strip.
struct Extent {
  std::string id;
  Reach1D along;
};

std::map<Strip, std::vector<Extent>> extents(const Scope &scope) {
  std::map<Strip, std::vector<Extent>> out;
  for (const auto &item : scope.survey().recommendations) {
    std::map<Strip, bool> on;
    for (const auto *row : rows_of_reach(scope, item.at)) on[strip_of(scope, *row)] = true;
    for (const auto &[strip, yes] : on) out[strip].push_back({item.id, stations_of_reach(scope, item.at)});
  }
  return out;
}

void add_extents(Drawing &to, double high, const std::vector<Extent> &items, Reach1D hull) {
  double y = high;
  for (const auto &item : items) {
    y -= 1;
    const double a = std::max(hull.from, item.along.from), b = std::max(a, std::min(hull.to, item.along.to));
    to.elements.emplace_back(content::Span{{a, y}, {b, y}, content::Span::Ends::ticks, "extent"});
    const bool stub = b - a < stub_share * (hull.to - hull.from);
    auto &number = stub ? add_label(to, {a, y}, content::strong(item.id), Anchor::right, Level::middle)
                        : add_label(to, {(a + b) / 2, y}, content::strong(item.id), Anchor::centre, Level::middle);
    number.ground = content::Label::Ground::chip;
    number.target = item_id(item.id);
    number.yields = true;
  }
}

std::string spoken_items(const Scope &scope) {
  std::string out;
  for (const auto &item : scope.survey().recommendations)
    out += (out.empty() ? "" : " ") + scope.say("strips.spoken-item", {{"n", item.id}, {"where", reach_words(scope, item.at)}});
  return out;
}

} // namespace

content::Drawing bare_strips(const Scope &scope) {
  Drawing out;
  const auto hull = hull_extent(scope);
  out.x0 = hull.from;
  out.x1 = hull.to;
  out.y = {content::Scale::Rule::named, "item-lane"};
  out.pad_left = "hull-strips-left";
  out.pad_right = "hull-strips-right";
  out.pad_bottom = "profile-bottom";
  return out;
}

content::Drawing item_strips(const Scope &scope) {
  Drawing out = bare_strips(scope);
  const auto hull = hull_extent(scope);
  auto items = extents(scope);
  double low = 0;
  for (const Strip strip : {Strip::starboard, Strip::bottom, Strip::port}) {
    const auto &own = items[strip];
    const double high = low + std::max(least_lanes, static_cast<double>(own.size()) + 1);
    add_area(out, strip_outline(strip, hull, low, high), "hull");
    auto &name = add_label(out, {hull.from - rake_room * (hull.to - hull.from), (low + high) / 2},
                           content::soft(strip_name(scope, strip)), Anchor::right, Level::middle);
    name.text_style = "figure-label";
    add_extents(out, high, own, hull);
    out.y1 = high;
    low = high + strip_gap;
  }
  auto axis = hull_axis(scope, content::Axis::Side::bottom, 0);
  axis.title = station_title(scope);
  out.elements.emplace_back(std::move(axis));
  out.spoken = scope.say("strips.spoken", {{"items", spoken_items(scope)}});
  return out;
}

content::Drawing datum_drawing(const Scope &scope) {
  Drawing out;
  const auto hull = hull_extent(scope);
  out.x0 = hull.from;
  out.x1 = hull.to;
  out.y1 = strip_height;
  out.y = {content::Scale::Rule::fill, "datum-drawn"};
  out.pad_left = "datum-pad";
  out.pad_right = "datum-pad";
  out.pad_top = "datum-top";
  out.pad_bottom = "profile-bottom";
  add_area(out, strip_outline(Strip::port, hull, 0, strip_height), "hull");
  const double reach = (hull.to - hull.from) / 5, y = strip_height * 0.5;
  const double datum = from_bow(scope, hull.from), tip = from_bow(scope, hull.from + reach);
  const Anchor inward = counted_forward(scope) ? Anchor::right : Anchor::left;
  out.elements.emplace_back(content::Span{{datum, y}, {tip, y}, content::Span::Ends::end_arrow, "looking"});
  add_label(out, {tip, y}, plain(" " + scope.survey().datum.towards.text + " "), inward, Level::middle);
  add_line(out, {{datum, 0}, {datum, strip_height * 1.1}}, "frame-line");
  add_label(out, {datum, strip_height * 1.1}, content::strong(scope.survey().datum.from.text), inward, Level::above);
  out.elements.emplace_back(hull_axis(scope, content::Axis::Side::bottom, 0));
  out.spoken = scope.say("strips.datum-spoken", {{"from", scope.survey().datum.from.text}, {"towards", scope.survey().datum.towards.text}});
  return out;
}

} // namespace strakebook::compose
