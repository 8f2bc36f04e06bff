#pragma once

#include <string>

#include "strakebook/paper/media/media.h"

namespace strakebook::output {

/// The picture with this digest. Throws std::logic_error when the store has none or it is without size
/// or data: pages only carry pictures that passed the photo gate.
const media::Image &image_of(const media::ImageStore &images, const std::string &digest);

} // namespace strakebook::output
