#include "strakebook/compose/plate_glyph.h"

#include <algorithm>

#include "strakebook/compose/sketch.h"

namespace strakebook::compose {

namespace {

// The glyph's own height is 1; the limit's tick stands out over both faces, the pit's mouth takes the middle part.
constexpr double overshoot = 0.22;
constexpr double mouth_low = 0.2, mouth_high = 0.8;

Drawing empty_glyph(Length widest) {
  Drawing out;
  out.x1 = mm_of(widest);
  out.y0 = -overshoot;
  out.y1 = 1 + overshoot;
  out.x = {content::Scale::Rule::named, "glyph-millimetre"};
  out.y = {content::Scale::Rule::fill, "glyph-height"};
  return out;
}

} // namespace

content::Drawing plate_glyph(const PlateGlyph &plate) {
  Drawing out = empty_glyph(plate.widest);
  add_box(out, {0, 0}, {mm_of(plate.original), 1}, "original");
  const double left = mm_of(plate.remaining);
  if (plate.under_pit) {
    const double apex = std::max(0.0, mm_of(*plate.under_pit));
    add_area(out, {{0, 0}, {left, 0}, {left, mouth_low}, {apex, 0.5}, {left, mouth_high}, {left, 1}, {0, 1}}, plate.ramp);
  } else {
    add_box(out, {0, 0}, {left, 1}, plate.ramp);
  }
  if (plate.limit) add_line(out, {{mm_of(*plate.limit), -overshoot}, {mm_of(*plate.limit), 1 + overshoot}}, "limit-tick");
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
