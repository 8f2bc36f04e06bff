#pragma once

#include <string>
#include <string_view>

namespace strakebook::media {

/// What the marker segments of a JPEG file say, without decoding it.
struct JpegSegments {
  int orientation = 1;  ///< from EXIF
  bool adobe = false;   ///< an Adobe marker states the colour transform
  int frame_marker = 0; ///< 0xC0 baseline, 0xC1 extended, 0xC2 progressive, others; 0: none found
  std::string
      without_metadata; ///< the file up to its end marker, without APP0 to APP15 (but Adobe's) and comments
};

/// Walks the segments of a file that begins FF D8. Throws Refusal when they do not follow each other to the
/// end marker.
JpegSegments walk_segments(std::string_view jpeg);

} // namespace strakebook::media
