#pragma once

#include <limits>
#include <span>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// Where data lands on paper: the whole drawing with its pads, and the area that the data takes in it.
struct DrawingScale {
  base::Size size; ///< the drawing with its pads
  base::Rect area; ///< of the data, in the drawing's own coordinates: the top left of the padded drawing is 0, 0
  double x0 = 0, y0 = 0;             ///< data at the left and at the bottom of the area
  double points_x = 1, points_y = 1; ///< points a data unit, negative where data run from right to left or downwards

  base::Point place(content::XY at) const {
    return {{area.at.x.v + (at.x - x0) * points_x}, {area.bottom().v - (at.y - y0) * points_y}};
  }
};

/// The largest scales that panels of one figure can share, in points a data unit.
struct ScaleLimit {
  double x = std::numeric_limits<double>::infinity();
  double y = std::numeric_limits<double>::infinity();
};

/// Scale rules: x fills `width` less its pads or takes a named measure a data unit; y fills a height of that name,
/// takes a named measure a unit, or takes as much as x. A rule that says nothing (x as x, an empty range to fill, no
/// measure where one is needed, no width left) throws std::invalid_argument: a fault of whoever composed the drawing.
/// A scale that fills stays within the limit, and then fills less; a named one is what its name says.
DrawingScale scaled(const content::Drawing &drawing, const style::Style &style, base::Pt width, ScaleLimit limit = {});

/// The limit under which drawings set to these widths have one scale: the least of those that fill.
/// Precondition: as many widths as drawings.
ScaleLimit common_limit(std::span<const content::Drawing *const> drawings, std::span<const base::Pt> widths,
                        const style::Style &style);

} // namespace strakebook::typeset
