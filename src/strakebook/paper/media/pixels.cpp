#include "strakebook/paper/media/pixels.h"

#include <cstring>
#include <utility>

namespace strakebook::media {

Extent turned(Extent extent, int orientation) {
  return orientation >= 5 && orientation <= 8 ? Extent{extent.height, extent.width} : extent;
}

// Orientation (EXIF 2.32, tag 0112): what the stored picture's first row and first column are when seen.
//   1 top, left    2 top, right    3 bottom, right   4 bottom, left
//   5 left, top    6 right, top    7 right, bottom   8 left, bottom
Pixels upright(Pixels stored, int orientation) {
  if (orientation <= 1 || orientation > 8)
    return stored;
  const bool swapped = orientation >= 5;
  const bool rows_from_far_side =
      orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
  const bool columns_from_far_side =
      orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;

  Pixels seen{.width = swapped ? stored.height : stored.width,
              .height = swapped ? stored.width : stored.height,
              .rgb = std::string(stored.rgb.size(), '\0')};
  const auto last_row = stored.height - 1, last_column = stored.width - 1;
  std::size_t to = 0;
  for (int y = 0; y < seen.height; ++y)
    for (int x = 0; x < seen.width; ++x, to += 3) {
      const int along_rows = swapped ? x : y, along_columns = swapped ? y : x;
      const int row = rows_from_far_side ? last_row - along_rows : along_rows;
      const int column = columns_from_far_side ? last_column - along_columns : along_columns;
      const auto from = (static_cast<std::size_t>(row) * static_cast<std::size_t>(stored.width) +
                         static_cast<std::size_t>(column)) *
                        3;
      std::memcpy(&seen.rgb[to], &stored.rgb[from], 3);
    }
  return seen;
}

} // namespace strakebook::media
