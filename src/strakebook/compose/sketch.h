#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/drawing.h"

/// Short ways to put shapes in a drawing.
namespace strakebook::compose {

using content::Drawing;
using content::XY;

void add_line(Drawing &to, std::vector<XY> points, std::string meaning);
void add_area(Drawing &to, std::vector<XY> points, std::string meaning);
content::Outline &add_box(Drawing &to, XY low, XY high, std::string meaning);
/// What links there and where it leads are set on the returned reference.
content::Spot &add_spot(Drawing &to, XY at, std::string meaning, std::string tone = {});
/// A place that links lead to, without ink.
void add_place(Drawing &to, XY at, std::string id);

/// A label with its text plain; what differs is set on the returned reference.
content::Label &add_label(Drawing &to, XY at, content::Inlines text, content::Anchor anchor, content::Level level);

} // namespace strakebook::compose
