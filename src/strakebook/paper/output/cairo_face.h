#pragma once

#include <memory>

#include <cairo.h>

#include "strakebook/paper/page/page.h"

namespace strakebook::output {

struct CairoRelease {
  void operator()(cairo_t *it) const { cairo_destroy(it); }
  void operator()(cairo_surface_t *it) const { cairo_surface_destroy(it); }
  void operator()(cairo_font_face_t *it) const { cairo_font_face_destroy(it); }
  void operator()(cairo_font_options_t *it) const { cairo_font_options_destroy(it); }
};
template <class T> using Cairo = std::unique_ptr<T, CairoRelease>;

/// The face of a font, unhinted. Throws std::runtime_error for bytes that are no font.
Cairo<cairo_font_face_t> cairo_face(const page::Font &font);

} // namespace strakebook::output
