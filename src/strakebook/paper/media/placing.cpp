#include "strakebook/paper/media/placing.h"

#include <algorithm>
#include <cmath>

namespace strakebook::media {

namespace {

constexpr double points_per_inch = 72;

/// Inches of paper to a pixel that was given.
double inches_per_pixel(Extent given, const Placing &placing) {
  const auto box = placing.frame(given);
  return std::min(box.width.v / given.width, box.height.v / given.height) / points_per_inch;
}

} // namespace

Extent printed_extent(Extent given, const Placing &placing) {
  const double kept = inches_per_pixel(given, placing) * placing.per_inch;
  const auto part = [kept](int side) { return std::clamp(static_cast<int>(std::ceil(side * kept)), 1, side); };
  return kept >= 1 ? given : Extent{part(given.width), part(given.height)};
}

int pixels_per_inch(Extent given, Extent shown, const Placing &placing) {
  // The longer side: of the shorter one, rounding takes a greater part.
  const bool wide = given.width >= given.height;
  const double inches = inches_per_pixel(given, placing) * (wide ? given.width : given.height);
  return static_cast<int>((wide ? shown.width : shown.height) / inches);
}

} // namespace strakebook::media
