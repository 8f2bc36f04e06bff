#pragma once

#include <functional>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/media/pixels.h"

namespace strakebook::media {

/// How pictures are set on paper, as far as it decides how many of their pixels are of use.
struct Placing {
  /// The box that a picture of so many upright pixels is set in; it fills the box as far as its shape lets it.
  std::function<base::Size(Extent)> frame;
  int per_inch = 0; ///< the most pixels to an inch of paper
  int quality = 0;  ///< of a picture that is coded anew as JPEG: 1 to 100 on libjpeg's scale
};

/// What is kept of a picture: as many pixels as its size on paper takes, or all where it has fewer.
Extent printed_extent(Extent given, const Placing &placing);

/// Pixels to the inch of a picture that has `shown` of its `given` pixels left, rounded down.
int pixels_per_inch(Extent given, Extent shown, const Placing &placing);

} // namespace strakebook::media
