#pragma once

#include <functional>
#include <string>
#include <vector>

/// Picture files made in memory by the same libraries that the gate decodes with.
namespace pictures {

enum class Kind { grey, grey_alpha, rgb, rgba, rgb16, palette };

/// A PNG of `width` x `height` whose samples are given row by row, as many for a pixel as the kind has
/// (palette: indices into black, red, white; rgb16: 0 or 255, written as 0 or 65535).
std::string png(Kind kind, int width, int height, const std::vector<int> &samples, bool interlaced = false);
/// The same PNG with an eXIf chunk of this orientation and a GPS mark in front of a chunk.
std::string with_exif(std::string png, const std::string &before, int orientation);

struct JpegForm {
  int components = 3; ///< 1 grey, 3 YCbCr, 4 CMYK with an Adobe marker
  bool progressive = false;
  int orientation = 0; ///< 0: no EXIF block
  std::string comment; ///< empty: none
};
/// A JPEG of the best quality; `sample(x, y, component)` gives 0 to 255.
std::string jpeg(int width, int height, const JpegForm &form,
                 const std::function<int(int, int, int)> &sample);

/// A smooth picture that compression hardly changes.
int slope(int x, int y, int component);
/// The same, as samples of an RGB picture.
std::vector<int> slope_samples(int width, int height);

/// The same file with the size in its header changed (and, for PNG, the header's checksum made right again).
std::string png_of_size(std::string png, std::uint32_t width, std::uint32_t height);
std::string jpeg_of_size(std::string jpeg, int width, int height);

} // namespace pictures
