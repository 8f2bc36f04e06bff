#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/image_ref.h"

namespace strakebook::media {

/// A photograph that decoded cleanly: upright, 8-bit RGB, no metadata. `jpeg` holds the original compressed data with all
/// metadata removed when the picture was an upright RGB or grey baseline/progressive JPEG, so that it need not be coded twice.
struct Image {
  base::ImageRef ref;
  std::string rgb;  ///< width * height * 3 bytes, row by row from the top
  std::string jpeg; ///< empty: use rgb
  int jpeg_components = 3;
};

/// Pictures by digest, each stored once.
using ImageStore = std::map<std::string, Image>;

struct ImageLimits {
  long long pixels = 60'000'000;
  std::size_t bytes = 64u << 20;
};

/// The photo gate: sniffs the type from the bytes (PNG or JPEG, whatever the name says), caps pixels from the header,
/// decodes fully (any decoder warning is an error), applies the EXIF orientation, strips metadata. Refusal adds
/// photo_unreadable at `from` with what was found, and returns nullopt.
std::optional<Image> admit(const std::string &bytes, const std::string &shown_path, const base::SourceSpan &from,
                           base::Diagnostics &sink, ImageLimits limits = {});

} // namespace strakebook::media
