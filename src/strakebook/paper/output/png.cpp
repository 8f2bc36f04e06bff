#include "strakebook/paper/output/output.h"

#include <cmath>
#include <stdexcept>

#include "strakebook/paper/output/cairo_painter.h"

namespace strakebook::output {

namespace {

constexpr double points_per_inch = 72, most_dpi = 1e5;

} // namespace

std::string png(const page::Document &document, const View &view, const media::ImageStore &images, double dpi) {
  if (!(dpi > 0 && dpi <= most_dpi))
    throw std::logic_error("a preview at no resolution that can be drawn");
  const double scale = dpi / points_per_inch;
  const auto pixels = [scale](base::Pt side) { return static_cast<int>(std::ceil(side.v * scale - 1e-6)); };
  const Cairo<cairo_surface_t> surface(
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, pixels(view.box.size.width), pixels(view.box.size.height)));
  require_drawn(cairo_surface_status(surface.get()));
  const Cairo<cairo_t> context(cairo_create(surface.get()));
  cairo_set_source_rgb(context.get(), 1, 1, 1);
  cairo_paint(context.get());
  cairo_scale(context.get(), scale, scale);
  paint(context.get(), document, view, images);
  std::string bytes;
  require_drawn(cairo_surface_write_to_png_stream(surface.get(), append_bytes, &bytes));
  return bytes;
}

std::string png(const page::Document &document, std::size_t page_index, const media::ImageStore &images, double dpi) {
  return png(document, sheet(document, page_index), images, dpi);
}

} // namespace strakebook::output
