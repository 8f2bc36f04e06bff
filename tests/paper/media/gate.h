#pragma once

#include "strakebook/base/digest.h"
#include "strakebook/paper/media/media.h"

/// The gate with its diagnostics kept: what came through, or why not.
struct Gate {
  strakebook::base::Diagnostics sink;
  std::optional<strakebook::media::Image> image;
  strakebook::media::Pixels pixels; ///< of the image, empty without one

  /// An inch of paper for every pixel, and a pixel to the inch: all pixels are kept.
  static strakebook::media::Placing as_given() {
    return {.frame = [](strakebook::media::Extent given) {
              return strakebook::base::Size{{given.width * 72.0}, {given.height * 72.0}};
            },
            .per_inch = 1,
            .quality = 95};
  }

  explicit Gate(const std::string &bytes, const std::string &name = "photos/p1.jpg",
                const strakebook::media::ImageLimits &limits = {}, const strakebook::media::Placing &placing = as_given(),
                const strakebook::media::Decode &decode = strakebook::media::decode_picture) {
    image = strakebook::media::admit({bytes, strakebook::base::sha256_hex(bytes), name, {}}, placing, sink, limits, decode);
    if (image) pixels = strakebook::media::pixels_of(*image);
  }

  /// The message of the one refusal with this code, or what is wrong with the outcome.
  std::string refusal(strakebook::base::Code code = strakebook::base::Code::photo_unreadable) const {
    if (image)
      return "admitted";
    if (sink.all().size() != 1)
      return "not exactly one diagnostic";
    const auto &found = sink.all().front();
    return found.code == code ? found.message : "another code";
  }
};

inline int sample_of(const strakebook::media::Pixels &pixels, int x, int y, int component) {
  return static_cast<unsigned char>(pixels.rgb.at(static_cast<std::size_t>((y * pixels.width + x) * 3 + component)));
}
