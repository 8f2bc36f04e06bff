#pragma once

#include "strakebook/paper/output/cairo_face.h"
#include "strakebook/paper/output/view.h"

namespace strakebook::output {

/// Draws the items of a view in points, y down as the page has them, with the top left corner of its box at the origin.
/// Unhinted: glyphs stand where the page has them, as in the PDF.
void paint(cairo_t *to, const page::Document &document, const View &view, const media::ImageStore &images);

/// Throws std::runtime_error with cairo's words when it could not draw.
void require_drawn(cairo_status_t status);

/// A cairo_write_func_t that appends to the std::string at `to`.
cairo_status_t append_bytes(void *to, const unsigned char *bytes, unsigned count);

} // namespace strakebook::output
