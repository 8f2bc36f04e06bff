#pragma once

#include <string>

namespace strakebook::base {

/// A picture by its digest, so that blocks and pages can carry photographs without seeing their bytes.
struct ImageRef {
  std::string digest; ///< SHA-256 of the file
  int width = 0;      ///< pixels, upright
  int height = 0;
  bool operator==(const ImageRef &) const = default;
};

} // namespace strakebook::base
