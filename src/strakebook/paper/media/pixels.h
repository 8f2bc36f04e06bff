#pragma once

#include <functional>
#include <string>

namespace strakebook::media {

/// Width and height in pixels.
struct Extent {
  int width = 0, height = 0;
  bool operator==(const Extent &) const = default;
};

/// How many pixels are kept of a picture of so many; never more than it has, and at least one either way.
using KeptExtent = std::function<Extent(Extent upright)>;

inline Extent all_of_it(Extent upright) { return upright; }

/// 8-bit RGB rows from the top, width * height * 3 bytes.
struct Pixels {
  int width = 0, height = 0;
  std::string rgb;
};

/// A picture that was read: how many pixels it had when seen upright, and those that were kept.
struct Reading {
  Extent given;
  Pixels pixels;
};

/// The picture as it is meant to be seen, for an EXIF orientation of 1 (upright) to 8; 6 is turned a quarter
/// clockwise.
Pixels upright(Pixels stored, int orientation);

/// What is to be kept of a stored picture that is `kept` when upright; also the other way round.
Extent turned(Extent extent, int orientation);

} // namespace strakebook::media
