#pragma once

#include <vector>

#include "strakebook/paper/content/document.h"
#include "strakebook/report.h"

namespace strakebook {

/// Everything in a document that can be shown by itself, in its order; blocks without an id are not among it.
std::vector<Figure> figures_of(const content::Document &document);

} // namespace strakebook
