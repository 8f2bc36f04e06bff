#pragma once

#include "strakebook/base/geometry.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::typeset {

/// A point turned a quarter to the left about a centre: what read to the right then reads upwards.
base::Point turned_upwards(base::Point point, base::Point about);

/// The box that a turned box takes.
base::Rect turned_upwards(const base::Rect &box, base::Point about);

/// Turns an item of a line of text, with everything in it. Pictures stay upright in their turned box.
void turn_upwards(page::Item &item, base::Point about);

} // namespace strakebook::typeset
