#pragma once

#include <string_view>

#include "strakebook/paper/style/style.h"

namespace strakebook::house {

/// Where a picture is set: in the first column of a lattice, or over the whole page where its shape asks for that.
struct PhotoFrame {
  bool wide = false;
  base::Size size;
};

/// The frame of a picture of so many upright pixels: the one rule that the chapter of photographs and the photo gate share.
PhotoFrame photo_frame(const style::Style &style, std::string_view lattice, int width, int height);

} // namespace strakebook::house
