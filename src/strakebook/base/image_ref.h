#pragma once

#include <string>

namespace strakebook::base {

/// A picture by its digest, so that blocks and pages can carry photographs without seeing their bytes.
struct ImageRef {
  std::string digest; ///< SHA-256 of the file as it was given
  int width = 0;      ///< pixels as they are printed, upright
  int height = 0;
  bool operator==(const ImageRef &) const = default;
};

/// A picture as it is printed, and what it was made from.
struct PrintedPicture {
  ImageRef shown;
  int given_width = 0;  ///< pixels of the file, upright
  int given_height = 0;
  int per_inch = 0;     ///< printed pixels to the inch of paper, rounded down
};

} // namespace strakebook::base
