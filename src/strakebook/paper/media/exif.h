#pragma once

#include <string_view>

namespace strakebook::media {

/// The orientation, 1 to 8, in an EXIF block (from its "II" or "MM" on). 1 when there is none, or when the
/// block is damaged: the picture is then shown as it is stored, as every viewer shows it.
int exif_orientation(std::string_view tiff);

} // namespace strakebook::media
