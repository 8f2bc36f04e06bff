#include <algorithm>

#include "strakebook/compose/map_parts.h"
#include "strakebook/compose/map_plan.h"
#include "strakebook/compose/subjects.h"

/// The unrolled hull, mark by mark.
namespace strakebook::compose {

using content::Anchor;
using content::Label;
using content::Level;
using content::plain;
using content::operator+;

namespace {

constexpr double rake_room = 0.012; // of the length: names stand clear of the raked stem
constexpr double flag_half = 0.05;  // of the place of a photograph, which leads there even where its flag finds no room
constexpr int most_numbers = 24;    // along the hull, the width of a page

/// Neighbours that were not used for the same reason, told once.
struct Unread {
  std::string word;
  double from = 0, to = 0;
};

/// Of a single mark beside its cross, of several under the middle of them.
void add_word(Drawing &to, const MapPlan &plan, const MapLine &line, const Unread &run) {
  if (run.word.empty()) return;
  const bool single = run.from == run.to;
  auto &word = single ? add_label(to, {run.from + plan.sign_half, line.y}, content::italic(run.word), Anchor::left, Level::middle)
                      : add_label(to, {(run.from + run.to) / 2, line.words}, content::italic(run.word), Anchor::centre, Level::middle);
  word.ground = Label::Ground::chip;
  word.stays = single;
  if (single) word.instead = XY{run.from, line.words};
  word.yields = true;
}

void add_words(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line) {
  Unread run;
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i) {
    const auto &mark = scope.survey().marks[i];
    if (mark.row != line.row->id) continue;
    const std::string word = scope.assessment().marks[i].used ? std::string() : short_status(scope, mark);
    const double x = from_bow(scope, metres_of(mark.station));
    if (word == run.word) {
      run.to = x;
      continue;
    }
    add_word(to, plan, line, run);
    run = {word, x, x};
  }
  add_word(to, plan, line, run);
}

/// The sign leads to the row of the tables, whether its figure finds room or not; the row leads to the sign on the shell's map.
void cross(content::Spot &sign, std::string row, const MapPlan &plan) {
  if (!plan.figures_above) sign.id = map_id(row);
  sign.target = std::move(row);
}

void add_signs(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line) {
  const auto &zone = survey::zone_of_row(scope.survey(), line.row->id);
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i) {
    const auto &mark = scope.survey().marks[i];
    if (mark.row != line.row->id) continue;
    const XY at{from_bow(scope, metres_of(mark.station)), line.y};
    const auto &result = scope.assessment().marks[i];
    auto &sign = result.used ? add_spot(to, at, map_sign(result.standing), ramp_meaning(scope, zone, result.judged()))
                             : add_spot(to, at, "unread");
    cross(sign, mark_id(mark.id()), plan);
  }
}

void add_figure(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line, const assess::MarkResult &result) {
  const auto &mark = scope.survey().marks[result.mark];
  const std::string figure = remaining_text(scope, line.row->zone, result.remaining);
  const double x = from_bow(scope, metres_of(mark.station));
  const auto words = result.lowest_of_row ? content::strong(figure) : plain(figure);
  auto &label = plan.figures_above ? add_label(to, {x, line.figures}, words, Anchor::centre, Level::middle)
                                   : add_label(to, {x + plan.sign_half, line.y}, words, Anchor::left, Level::middle);
  if (!plan.figures_above) label.instead = XY{x, line.figures};
  label.target = mark_id(mark.id());
  if (!plan.figures_above) label.ground = Label::Ground::chip;
  label.stays = true;
  label.yields = true;
}

/// The lowest of the row first: where figures are too close to one another, it is the one that stays.
void add_figures(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line) {
  for (const bool lowest : {true, false})
    for (const auto &result : scope.assessment().marks)
      if (result.used && result.lowest_of_row == lowest && scope.survey().marks[result.mark].row == line.row->id)
        add_figure(to, scope, plan, line, result);
}

/// The least first: where labels are too close to one another, it is the one that stays.
void add_pits(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line) {
  auto results = scope.assessment().pits;
  std::ranges::stable_sort(results, {}, &assess::PitResult::judged);
  for (const auto &result : results) {
    const auto &pit = scope.survey().pits[result.pit];
    if (pit.at.row != line.row->id) continue;
    const auto &zone = survey::zone_of_row(scope.survey(), pit.at.row);
    const double x = from_bow(scope, metres_of(pit.at.station));
    cross(add_spot(to, {x, line.pit_lane}, map_sign(result.standing), ramp_meaning(scope, zone, result.judged())), pit_id(pit.id), plan);
    add_spot(to, {x, line.pit_lane}, "pit");
    auto &label = add_label(to, {x, line.lane_below}, plain(pit.id + "\u00A0") + content::strong(remaining_text(scope, zone.id, result.remaining)),
                            Anchor::centre, Level::middle);
    label.ground = Label::Ground::chip;
    label.target = pit_id(pit.id);
    label.yields = true;
  }
}

/// Pointed to where the camera looked: the bow is at the left of every strip.
Label::Ground flag_of(const survey::Photo &photo) {
  if (photo.looking.text == "forward") return Label::Ground::flag_left;
  if (photo.looking.text == "aft") return Label::Ground::flag_right;
  return photo.looking.text == "square on" ? Label::Ground::flag : Label::Ground::chip;
}

void add_photos(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line) {
  for (const auto &photo : scope.survey().photos) {
    if (photo.at.row != line.row->id) continue;
    const double at = from_bow(scope, metres_of(photo.at.station));
    if (!plan.figures_above) add_place(to, {at, line.lane_above}, map_id(photo_id(photo.id)));
    add_box(to, {at - flag_half, line.lane_above - flag_half}, {at + flag_half, line.lane_above + flag_half}, {}).target = photo_id(photo.id);
    auto &label = add_label(to, {at, line.lane_above}, plain(photo.id), Anchor::centre, Level::middle);
    label.ground = flag_of(photo);
    label.target = photo_id(photo.id);
    label.yields = true;
  }
}

Label &add_name(Drawing &to, const MapPlan &plan, double y, Inlines words, Level level) {
  auto &name = add_label(to, {plan.hull.from - rake_room * (plan.hull.to - plan.hull.from), y}, std::move(words), Anchor::right, level);
  name.text_style = "map-row";
  return name;
}

void add_row(Drawing &to, const Scope &scope, const MapPlan &plan, const MapLine &line) {
  add_line(to, {{plan.hull.from, line.y}, {plan.hull.to, line.y}}, "row-line");
  add_signs(to, scope, plan, line);
  add_figures(to, scope, plan, line);
  add_pits(to, scope, plan, line);
  add_words(to, scope, plan, line);
  add_photos(to, scope, plan, line);
}

Drawing empty_map(const Scope &scope, const MapPlan &plan) {
  Drawing out;
  out.x0 = plan.hull.from;
  out.x1 = plan.hull.to;
  out.y0 = -plan.height;
  out.y1 = 0;
  out.pad_top = "map-axis";
  out.pad_bottom = "map-axis";
  for (const auto &limitation : scope.survey().limitations)
    if (limitation.at.from) add_reach(out, scope, plan, limitation.at, "not-seen");
  for (const auto &doubler : scope.survey().doublers) add_reach(out, scope, plan, doubler.over, "doubler");
  return out;
}

void add_axis(Drawing &to, const Scope &scope, const MapPlan &plan, content::Axis::Side side) {
  auto axis = hull_axis(scope, side, side == content::Axis::Side::top ? 0 : -plan.height, 0, most_numbers);
  if (side == content::Axis::Side::top && !plan.figures_above) axis.title = station_title(scope);
  to.elements.emplace_back(std::move(axis));
}

base::Pt between(const Scope &scope, const char *master, const char *left, const char *right) {
  const auto &style = scope.source.house.style;
  return style::body_width(style::master(style, master)) - style::measure(style, left) - style::measure(style, right);
}

} // namespace

std::string short_status(const Scope &scope, const survey::Mark &mark) {
  switch (mark.status) {
  case survey::Status::read: return scope.say("map.doubler");
  case survey::Status::no_echo: return scope.say("map.no-echo");
  case survey::Status::unstable: return scope.say("map.unstable");
  case survey::Status::not_cleaned: return scope.say("map.not-cleaned");
  case survey::Status::no_access: return scope.say("map.no-access");
  case survey::Status::weld_or_fitting: return scope.say("map.fitting");
  case survey::Status::rejected: return scope.say("map.rejected");
  case survey::Status::queried: break;
  }
  return scope.say("map.queried");
}

base::Pt map_width(const Scope &scope) { return between(scope, "map", "map-names", "map-right"); }

Drawing map_of_marks(const Scope &scope) {
  const MapPlan plan = map_plan(scope, {}, map_width(scope));
  Drawing out = empty_map(scope, plan);
  out.y = {content::Scale::Rule::fill, "map-drawn"};
  out.pad_left = "map-names";
  out.pad_right = "map-right";
  for (const auto &strip : plan.strips) {
    add_area(out, strip_outline(strip.strip, plan.hull, strip.low, strip.high), "hull");
    add_name(out, plan, strip.high, content::strong(strip_head(scope, strip.strip) + "   "), Level::below);
  }
  for (const auto &line : plan.lines)
    for (const auto &words : {content::soft(line.row->name.text + " ") + content::strong(line.row->id + "  "), content::strong(line.row->id + "  ")}) {
      auto &name = add_name(out, plan, line.y, words, Level::middle);
      name.stays = true;
      name.yields = true; // where the name finds no room, the id stands alone
    }
  for (const auto &line : plan.lines) add_row(out, scope, plan, line);
  add_axis(out, scope, plan, content::Axis::Side::top);
  add_axis(out, scope, plan, content::Axis::Side::bottom);
  out.spoken = scope.say("map.spoken", {{"rows", spoken_rows(scope, {})}});
  return out;
}

Drawing map_of_zone(const Scope &scope, const survey::Zone &zone) {
  const MapPlan plan = map_plan(scope, zone.id, between(scope, "page", "zone-map-names", "zone-map-right"));
  Drawing out = empty_map(scope, plan);
  out.y = {content::Scale::Rule::named, "map-row"};
  out.pad_left = "zone-map-names";
  out.pad_right = "zone-map-right";
  for (const auto &line : plan.lines) {
    add_name(out, plan, line.y, content::strong(line.row->id + "  "), Level::middle);
    add_row(out, scope, plan, line);
  }
  add_axis(out, scope, plan, content::Axis::Side::top);
  out.pad_bottom = {};
  out.spoken = scope.say("map.zone-spoken", {{"zone", zone.name.text}, {"rows", spoken_rows(scope, zone.id)}});
  return out;
}

} // namespace strakebook::compose
