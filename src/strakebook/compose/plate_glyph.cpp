#include "strakebook/compose/plate_glyph.h"

#include <algorithm>

#include "strakebook/compose/sketch.h"

namespace strakebook::compose {

namespace {

// The glyph's own height is 1; the limit's tick stands out over both faces, the pit's mouth takes the middle part.
constexpr double overshoot = 0.22;
constexpr double mouth_low = 0.2, mouth_high = 0.8;
constexpr double pair_pitch = 2.2; // from a plate to the one over it

Drawing empty_glyph(Length widest) {
  Drawing out;
  out.x1 = mm_of(widest);
  out.y0 = -overshoot;
  out.y1 = 1 + overshoot;
  out.x = {content::Scale::Rule::named, "glyph-millimetre"};
  out.y = {content::Scale::Rule::fill, "glyph-height"};
  return out;
}

void add_plate(Drawing &out, const PlateGlyph &plate, double low) {
  add_box(out, {0, low}, {mm_of(plate.original), low + 1}, "original");
  const double left = mm_of(plate.remaining);
  if (plate.under_pit) {
    const double apex = std::max(0.0, mm_of(*plate.under_pit));
    add_area(out, {{0, low}, {left, low}, {left, low + mouth_low}, {apex, low + 0.5}, {left, low + mouth_high}, {left, low + 1}, {0, low + 1}}, plate.ramp);
  } else {
    add_box(out, {0, low}, {left, low + 1}, plate.ramp);
  }
  if (plate.limit) add_line(out, {{mm_of(*plate.limit), low - overshoot}, {mm_of(*plate.limit), low + 1 + overshoot}}, "limit-tick");
}

void add_name(Drawing &out, const std::string &name, double low) {
  add_label(out, {out.x1, low + 0.5}, content::soft(name), content::Anchor::left, content::Level::middle);
}

} // namespace

content::Drawing plate_glyph(const PlateGlyph &plate) {
  Drawing out = empty_glyph(plate.widest);
  add_plate(out, plate, 0);
  return out;
}

content::Drawing plate_pair(const NamedPlate &before, const NamedPlate &now) {
  Drawing out = empty_glyph(now.plate.widest);
  out.y1 += pair_pitch;
  out.x = {content::Scale::Rule::named, "glyph-pair-millimetre"};
  out.y = {content::Scale::Rule::fill, "glyph-pair-height"};
  out.pad_right = "glyph-pair-right";
  add_plate(out, before.plate, pair_pitch);
  add_name(out, before.name, pair_pitch);
  add_plate(out, now.plate, 0);
  add_name(out, now.name, 0);
  return out;
}

content::Drawing unread_glyph(Length original, Length widest) {
  Drawing out = empty_glyph(widest);
  add_box(out, {0, 0}, {mm_of(original), 1}, "unread-plate");
  add_line(out, {{0, 0}, {mm_of(original), 1}}, "unread-line");
  return out;
}

content::Drawing doubler_glyph(Length original, Length outer, Length widest) {
  Drawing out = empty_glyph(widest);
  add_box(out, {0, 0}, {mm_of(original), 1}, "doubler-inner");
  add_box(out, {mm_of(original), 0}, {mm_of(original + outer), 1}, "ramp-4");
  return out;
}

Length widest_plate(const Scope &scope) {
  Length widest;
  for (const auto &zone : scope.survey().zones) widest = std::max(widest, drawn_original(scope, zone).nominal);
  for (const auto &mark : scope.survey().marks) {
    if (mark.repeats.empty()) continue;
    const Length original = survey::zone_of_row(scope.survey(), mark.row).original.nominal.value;
    const Length read = std::ranges::min_element(mark.repeats, {}, &base::Measured::value)->value;
    widest = std::max(widest, mark.plate == survey::Plate::doubler ? original + read : read);
  }
  return widest;
}

} // namespace strakebook::compose
