#include "strakebook/paper/output/image_of.h"

#include <stdexcept>

namespace strakebook::output {

const media::Image &image_of(const media::ImageStore &images, const std::string &digest) {
  const auto found = images.find(digest);
  if (found == images.end())
    throw std::logic_error("a page shows a picture that is not in the store: " + digest);
  const auto &image = found->second;
  const bool has_size = image.ref.width > 0 && image.ref.height > 0;
  if (!has_size || image.rgb.size() != static_cast<std::size_t>(image.ref.width) *
                                           static_cast<std::size_t>(image.ref.height) * 3)
    throw std::logic_error("a picture whose pixels do not fill its size: " + digest);
  return image;
}

} // namespace strakebook::output
