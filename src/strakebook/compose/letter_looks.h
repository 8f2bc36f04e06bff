#pragma once

#include "strakebook/compose/looks.h"

/// Names of the layout's style that only letters use; the same test holds them against the layout.
namespace strakebook::compose::look {

inline constexpr const char *stamp = "stamp";                 ///< text style
inline constexpr const char *side_keys = "side";              ///< pairs of a label and a value
inline constexpr const char *stamp_between = "stamp-between"; ///< measure
inline constexpr const char *stamp_master = "stamp";          ///< page master

} // namespace strakebook::compose::look
