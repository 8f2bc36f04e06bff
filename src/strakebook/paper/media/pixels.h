#pragma once

#include <string>

namespace strakebook::media {

/// 8-bit RGB rows from the top, width * height * 3 bytes.
struct Pixels {
  int width = 0, height = 0;
  std::string rgb;
};

/// The picture as it is meant to be seen, for an EXIF orientation of 1 (upright) to 8; 6 is turned a quarter
/// clockwise.
Pixels upright(Pixels stored, int orientation);

} // namespace strakebook::media
