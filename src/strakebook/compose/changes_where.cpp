#include <algorithm>
#include <map>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/figures.h"
#include "strakebook/compose/hull.h"

/// Where on the hull the changed readings and pits are.
namespace strakebook::compose {

using amend::Change;
using content::Anchor;
using content::Level;
using content::plain;
using content::operator+;

namespace {

constexpr std::size_t most_drawn = 16; // more would be a list, and that stands above
constexpr double lane = 1.7, strip_gap = 0.7;
constexpr double rake_room = 0.02;       // of the length: the names stand clear of the raked stem
constexpr double turns_at = 0.6;         // of the length: words of a place further aft stand at its left
constexpr const char *clear = "\u00A0\u00A0\u00A0"; // between a sign and its words

struct Place {
  const Change *change;
  double x = 0;
};

/// How a place is judged in this issue; unread where it is not there or not used.
void add_sign(Drawing &to, const Editions &both, const Place &place, double y) {
  const Scope &scope = both.now;
  const auto &assessment = scope.assessment();
  const std::string &subject = place.change->subject;
  const auto row = place_of_steel(both, subject).row;
  const auto sign = [&](const std::optional<assess::Standing> &standing, Length judged) {
    add_spot(to, {place.x, y}, map_sign(standing), ramp_meaning(scope, survey::zone_of_row(scope.survey(), row), judged));
  };
  for (const auto &pit : assessment.pits)
    if (scope.survey().pits[pit.pit].id == subject)
      return sign(pit.standing, pit.judged());
  for (const auto &mark : assessment.marks)
    if (mark.used && scope.survey().marks[mark.mark].id() == subject)
      return sign(mark.standing, mark.judged());
  add_spot(to, {place.x, y}, "unread");
}

Inlines place_words(const Editions &both, const Change &change) {
  const Inlines name = content::strong(untorn(change.subject));
  const InlineFill now{"now", plain(changed_figure(both, change, change.remaining_after))};
  const InlineFill before{"before", plain(changed_figure(both, change, change.remaining_before))};
  return both.now.tell("changes.place", {{"place", name}, now, before});
}

void add_place(Drawing &to, const Editions &both, const Place &place, double y) {
  add_sign(to, both, place, y);
  const bool aft = place.x > to.x0 + turns_at * (to.x1 - to.x0);
  const Inlines words = place_words(both, *place.change);
  add_label(to, {place.x, y}, aft ? words + plain(clear) : plain(clear) + words, aft ? Anchor::right : Anchor::left, Level::middle).stays = true;
}

std::map<Strip, std::vector<Place>> places_of(const Editions &both) {
  std::map<Strip, std::vector<Place>> out;
  for (const auto &change : both.amended.changes.all) {
    if (!is_measured(change.kind))
      continue;
    const auto at = place_of_steel(both, change.subject);
    const Scope &scope = scope_with(both, change.subject);
    const auto *row = survey::row_of(scope.survey(), at.row);
    out[strip_of(scope, *row)].push_back({&change, from_bow(both.now, metres_of(at.station))});
  }
  return out;
}

void add_strip(Drawing &to, const Editions &both, Strip strip, const std::vector<Place> &places, double low) {
  const auto hull = hull_extent(both.now);
  const double high = low + lane * (static_cast<double>(places.size()) + 0.4);
  add_area(to, strip_outline(strip, hull, low, high), "hull");
  add_label(to, {hull.from - rake_room * (hull.to - hull.from), (low + high) / 2}, content::soft(strip_head(both.now, strip)), Anchor::right,
            Level::middle);
  double y = high - lane * 0.7;
  for (const auto &place : places) {
    add_place(to, both, place, y);
    y -= lane;
  }
  to.y1 = high;
}

} // namespace

std::vector<content::Block> where_changed(const Editions &both) {
  const auto places = places_of(both);
  std::size_t count = 0;
  for (const auto &[strip, on_it] : places)
    count += on_it.size();
  if (count == 0 || count > most_drawn)
    return {};
  Drawing out = bare_strips(both.now);
  double low = 0;
  for (const Strip strip : {Strip::starboard, Strip::bottom, Strip::port})
    if (const auto found = places.find(strip); found != places.end()) {
      add_strip(out, both, strip, found->second, low);
      low = out.y1 + strip_gap;
    }
  auto axis = hull_axis(both.now, content::Axis::Side::bottom, 0);
  axis.title = station_title(both.now);
  out.elements.emplace_back(std::move(axis));
  out.spoken = both.now.say("changes.where-spoken");
  content::Figure figure{.label = {}, .caption = {}, .caption_above = false, .panels = {}, .lattice = {}, .notes = {}};
  figure.panels.push_back({{}, {}, std::move(out), "figure/changes"});
  return {item_heading(both.now.say("changes.where-head")), block(std::move(figure))};
}

} // namespace strakebook::compose
