#include "strakebook/paper/output/image_of.h"

#include <stdexcept>

namespace strakebook::output {

const media::Image &image_of(const media::ImageStore &images, const std::string &digest) {
  const auto found = images.find(digest);
  if (found == images.end())
    throw std::logic_error("a page shows a picture that is not in the store: " + digest);
  const auto &image = found->second;
  if (image.ref.width <= 0 || image.ref.height <= 0 || image.data.empty())
    throw std::logic_error("a picture without pixels: " + digest);
  return image;
}

} // namespace strakebook::output
