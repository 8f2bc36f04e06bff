#include "strakebook/paper/output/output.h"

#include <cairo-svg.h>

#include "strakebook/paper/output/cairo_painter.h"
#include "strakebook/paper/output/svg_text.h"

namespace strakebook::output {

std::string svg(const page::Document &document, const View &view, const media::ImageStore &images,
                const PictureWords &words) {
  std::string bytes;
  const Cairo<cairo_surface_t> surface(
      cairo_svg_surface_create_for_stream(append_bytes, &bytes, view.box.size.width.v, view.box.size.height.v));
  require_drawn(cairo_surface_status(surface.get()));
  cairo_svg_surface_restrict_to_version(surface.get(), CAIRO_SVG_VERSION_1_1);
  {
    const Cairo<cairo_t> context(cairo_create(surface.get()));
    cairo_set_source_rgb(context.get(), 1, 1, 1);
    cairo_paint(context.get());
    paint(context.get(), document, view, images);
  }
  cairo_surface_finish(surface.get());
  require_drawn(cairo_surface_status(surface.get()));
  return with_words(renumbered(bytes), words.title, words.description);
}

} // namespace strakebook::output
