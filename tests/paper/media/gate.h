#pragma once

#include "strakebook/paper/media/media.h"

/// The gate with its diagnostics kept: what came through, or why not.
struct Gate {
  strakebook::base::Diagnostics sink;
  std::optional<strakebook::media::Image> image;

  explicit Gate(const std::string &bytes, const std::string &name = "photos/p1.jpg",
                strakebook::media::ImageLimits limits = {}) {
    image = strakebook::media::admit(bytes, name, {}, sink, limits);
  }

  /// The message of the one refusal, or what is wrong with the outcome.
  std::string refusal() const {
    if (image)
      return "admitted";
    if (sink.all().size() != 1)
      return "not exactly one diagnostic";
    const auto &found = sink.all().front();
    return found.code == strakebook::base::Code::photo_unreadable ? found.message : "another code";
  }
};

inline int sample_of(const strakebook::media::Image &image, int x, int y, int component) {
  return static_cast<unsigned char>(
      image.rgb.at(static_cast<std::size_t>((y * image.ref.width + x) * 3 + component)));
}
