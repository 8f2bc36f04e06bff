#include "strakebook/house/photo_frame.h"

namespace strakebook::house {

PhotoFrame photo_frame(const style::Style &style, std::string_view lattice, int width, int height) {
  const auto high = style::measure(style, "photo-aspect");
  const bool wide = width >= static_cast<long long>(height) * style.photographs.wide_from;
  if (wide) return {wide, {style::body_width(style::master(style, "page")), high}};
  return {wide, {style::lattice(style, lattice).widths.at(0), high}};
}

} // namespace strakebook::house
