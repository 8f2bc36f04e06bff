#include "strakebook/paper/media/jpeg_segments.h"

#include "strakebook/paper/media/exif.h"
#include "strakebook/paper/media/refusal.h"

namespace strakebook::media {

namespace {

using namespace std::string_view_literals;

constexpr int end_of_image = 0xD9, start_of_scan = 0xDA, comment = 0xFE, app0 = 0xE0, app1 = 0xE1,
              app14 = 0xEE, app15 = 0xEF;

int byte_at(std::string_view bytes, std::size_t at) { return static_cast<unsigned char>(bytes[at]); }

bool is_restart(int marker) { return marker >= 0xD0 && marker <= 0xD7; }

/// C4, C8 and CC lie among the frame markers but are tables and an extension.
bool is_frame(int marker) {
  return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
}

/// Where the coded data that begin at `at` end: at the next FF that is neither stuffing nor a restart.
std::size_t end_of_coded_data(std::string_view jpeg, std::size_t at) {
  while ((at = jpeg.find('\xFF', at)) != std::string_view::npos && at + 1 < jpeg.size()) {
    const int next = byte_at(jpeg, at + 1);
    if (next != 0 && !is_restart(next))
      return at;
    at += 2;
  }
  throw Refusal("JPEG, the file ends too early");
}

struct Segment {
  int marker;
  std::string_view whole, body; ///< with and without marker and length
};

Segment segment_at(std::string_view jpeg, std::size_t at) {
  if (at + 4 > jpeg.size())
    throw Refusal("JPEG, the file ends too early");
  const auto length = static_cast<std::size_t>(byte_at(jpeg, at + 2) << 8 | byte_at(jpeg, at + 3));
  if (length < 2 || length > jpeg.size() - at - 2)
    throw Refusal("JPEG, a segment runs past the end of the file");
  return {byte_at(jpeg, at + 1), jpeg.substr(at, length + 2), jpeg.substr(at + 4, length - 2)};
}

/// Notes what the segment says; true if it belongs into the file without metadata.
bool take(const Segment &segment, JpegSegments &found) {
  constexpr auto exif_head = "Exif\0\0"sv;
  if (is_frame(segment.marker))
    found.frame_marker = segment.marker;
  if (segment.marker == app1 && segment.body.starts_with(exif_head))
    found.orientation = exif_orientation(segment.body.substr(exif_head.size()));
  const bool adobe = segment.marker == app14 && segment.body.starts_with("Adobe"sv);
  if (adobe)
    found.adobe = true;
  return adobe || !((segment.marker >= app0 && segment.marker <= app15) || segment.marker == comment);
}

} // namespace

JpegSegments walk_segments(std::string_view jpeg) {
  JpegSegments found;
  found.without_metadata.reserve(jpeg.size());
  found.without_metadata = jpeg.substr(0, 2);
  std::size_t at = 2;
  while (true) {
    if (at + 2 > jpeg.size())
      throw Refusal("JPEG, the file ends too early");
    if (byte_at(jpeg, at) != 0xFF)
      throw Refusal("JPEG, bytes between its segments");
    if (byte_at(jpeg, at + 1) == 0xFF) { // a fill byte
      ++at;
      continue;
    }
    if (byte_at(jpeg, at + 1) == end_of_image)
      break;
    const auto segment = segment_at(jpeg, at);
    if (take(segment, found))
      found.without_metadata += segment.whole;
    at += segment.whole.size();
    if (segment.marker != start_of_scan)
      continue;
    const auto end = end_of_coded_data(jpeg, at);
    found.without_metadata += jpeg.substr(at, end - at);
    at = end;
  }
  found.without_metadata += "\xFF\xD9"sv;
  return found;
}

} // namespace strakebook::media
