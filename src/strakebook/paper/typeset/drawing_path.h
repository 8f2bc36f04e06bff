#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// A line through the points, closed or not; no paint yet. Precondition: at least one point.
page::Path polyline(std::span<const base::Point> points, bool closed);

/// A circle of four curves; no paint yet.
page::Path circle(base::Point centre, base::Pt radius);

/// The stroke that a meaning asks for; nullopt when it names no stroke tone.
std::optional<page::Stroke> stroke_of(const style::MeaningStyle &meaning, const style::Style &style);

/// The fill that a meaning asks for; nullopt when it names none.
std::optional<page::Colour> fill_of(const style::MeaningStyle &meaning, const style::Style &style);

/// The hatch of a meaning inside a closed polygon, as one stroked path; nullopt when nothing is hatched.
std::optional<page::Path> hatch_of(const style::MeaningStyle &meaning, const style::Style &style,
                                   std::span<const base::Point> polygon);

} // namespace strakebook::typeset
