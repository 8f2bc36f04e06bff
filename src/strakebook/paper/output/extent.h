#pragma once

#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// The box on the page that what an item draws stands in, without the width of its lines: of a path its points, of a run
/// from its top, a type size over the baseline, to a third of it below.
base::Rect extent_of(const page::Item &item);

/// The least box that holds both.
base::Rect united(const base::Rect &a, const base::Rect &b);

} // namespace strakebook::output
