#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/paper/typeset/drawing_scale.h"

namespace strakebook::typeset {

/// What every shape of one drawing is drawn with.
struct Brush {
  const style::Style &style;
  const DrawingScale &scale;
  const std::string &id; ///< of every item
  std::vector<page::Item> &out;
  page::TagPath tag = {}; ///< the figure that every item belongs to
};

/// Fill and hatch when closed, then the outline itself. An outline without points draws nothing.
void draw_outline(const content::Outline &outline, const Brush &brush);

/// A sign of fixed paper size, its middle at the place.
void draw_spot(const content::Spot &spot, const Brush &brush);

/// The line and its ends: ticks of the measure "span-tick" across it, or filled heads, "arrow-length" long, whose
/// points stand exactly at the ends. On a span too short for its heads the heads shrink.
void draw_span(const content::Span &span, const Brush &brush);

} // namespace strakebook::typeset
