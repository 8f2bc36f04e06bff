#pragma once

#include "strakebook/compose/compose.h"

namespace strakebook::compose {

/// The page that is laid over each page of the issue that this one replaces: a band in the margin at head and foot, which says by what
/// and when; nothing between them. Needs `amended`.
content::Document stamp(const Source &source);

} // namespace strakebook::compose
