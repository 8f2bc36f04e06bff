#include "strakebook/paper/output/cairo_painter.h"

#include <numbers>
#include <stdexcept>

#include "strakebook/paper/output/image_of.h"

namespace strakebook::output {

namespace {

/// Draws items one after the other.
class Painter {
public:
  Painter(cairo_t *to, const page::Document &document, const media::ImageStore &images)
      : to_(to), document_(document), images_(images), faces_(document.fonts.size()),
        options_(cairo_font_options_create()) {
    cairo_font_options_set_hint_style(options_.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options_.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options_.get(), CAIRO_ANTIALIAS_GRAY);
    cairo_set_font_options(to_, options_.get());
    cairo_set_fill_rule(to_, CAIRO_FILL_RULE_EVEN_ODD);
  }

  void operator()(const page::Run &run);
  void operator()(const page::Path &path);
  void operator()(const page::Picture &picture);
  void operator()(const page::Anchor &) {} // a place to go to leaves no ink
  void operator()(const page::Link &) {}

  void operator()(const page::Move &step) { cairo_move_to(to_, step.to.x.v, step.to.y.v); }
  void operator()(const page::Line &step) { cairo_line_to(to_, step.to.x.v, step.to.y.v); }
  void operator()(const page::Curve &step) {
    cairo_curve_to(to_, step.c1.x.v, step.c1.y.v, step.c2.x.v, step.c2.y.v, step.to.x.v, step.to.y.v);
  }
  void operator()(const page::Close &) { cairo_close_path(to_); }

private:
  cairo_font_face_t *face(int font);
  void ink(const page::Colour &colour) { cairo_set_source_rgb(to_, colour.r, colour.g, colour.b); }

  cairo_t *to_;
  const page::Document &document_;
  const media::ImageStore &images_;
  std::vector<Cairo<cairo_font_face_t>> faces_;
  Cairo<cairo_font_options_t> options_;
  std::vector<cairo_glyph_t> glyphs_;
};

cairo_font_face_t *Painter::face(int font) {
  const auto index = static_cast<std::size_t>(font);
  if (!faces_[index])
    faces_[index] = cairo_face(document_.fonts[index]);
  return faces_[index].get();
}

void Painter::operator()(const page::Run &run) {
  glyphs_.clear();
  double pen = 0;
  for (const auto &glyph : run.glyphs) {
    glyphs_.push_back({glyph.id, pen + glyph.offset.x.v, glyph.offset.y.v});
    pen += glyph.advance.v;
  }
  cairo_save(to_);
  cairo_translate(to_, run.origin.x.v, run.origin.y.v);
  if (!run.upright)
    cairo_rotate(to_, -std::numbers::pi / 2);
  cairo_set_font_face(to_, face(run.font));
  cairo_set_font_size(to_, run.size.v);
  ink(run.colour);
  cairo_show_glyphs(to_, glyphs_.data(), static_cast<int>(glyphs_.size()));
  cairo_restore(to_);
}

void Painter::operator()(const page::Path &path) {
  cairo_new_path(to_);
  for (const auto &step : path.steps)
    std::visit(*this, step);
  if (path.fill) {
    ink(*path.fill);
    cairo_fill_preserve(to_);
  }
  if (path.stroke) {
    std::vector<double> dash;
    for (auto part : path.stroke->dash)
      dash.push_back(part.v);
    ink(path.stroke->colour);
    cairo_set_line_width(to_, path.stroke->width.v);
    cairo_set_dash(to_, dash.data(), static_cast<int>(dash.size()), 0);
    cairo_stroke_preserve(to_);
  }
  cairo_new_path(to_);
}

/// The pixels as cairo holds them: 32 bits each, blue in the lowest eight.
Cairo<cairo_surface_t> surface_of(const media::Image &image) {
  const auto pixels = media::pixels_of(image);
  Cairo<cairo_surface_t> surface(
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, image.ref.width, image.ref.height));
  if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error("cairo cannot take a picture");
  const auto *from = reinterpret_cast<const unsigned char *>(pixels.rgb.data());
  auto *row = cairo_image_surface_get_data(surface.get());
  for (int y = 0; y < image.ref.height; ++y, row += cairo_image_surface_get_stride(surface.get())) {
    auto *pixel = reinterpret_cast<std::uint32_t *>(row);
    for (int x = 0; x < image.ref.width; ++x, from += 3)
      *pixel++ = static_cast<std::uint32_t>(from[0] << 16 | from[1] << 8 | from[2]);
  }
  cairo_surface_mark_dirty(surface.get());
  if (image.coding == media::Image::Coding::jpeg) // an SVG then holds the photograph as it came; the store outlives the drawing
    cairo_surface_set_mime_data(surface.get(), CAIRO_MIME_TYPE_JPEG,
                                reinterpret_cast<const unsigned char *>(image.data.data()), image.data.size(), nullptr,
                                nullptr);
  return surface;
}

void Painter::operator()(const page::Picture &picture) {
  const auto &image = image_of(images_, picture.image.digest);
  const auto surface = surface_of(image);
  const auto &box = picture.box;
  cairo_save(to_);
  cairo_rectangle(to_, box.at.x.v, box.at.y.v, box.size.width.v, box.size.height.v);
  cairo_clip(to_);
  cairo_translate(to_, box.at.x.v, box.at.y.v);
  if (box.size.width.v > 0 && box.size.height.v > 0) {
    cairo_scale(to_, box.size.width.v / image.ref.width, box.size.height.v / image.ref.height);
    cairo_set_source_surface(to_, surface.get(), 0, 0);
    cairo_pattern_set_extend(cairo_get_source(to_), CAIRO_EXTEND_PAD); // no grey seam along the edges
    cairo_paint(to_);
  }
  cairo_restore(to_);
}

} // namespace

void paint(cairo_t *to, const page::Document &document, const View &view, const media::ImageStore &images) {
  const auto &items = document.pages.at(view.page).items;
  cairo_save(to);
  cairo_translate(to, -view.box.at.x.v, -view.box.at.y.v);
  Painter painter(to, document, images);
  for (std::size_t i = view.first; i < view.last; ++i) std::visit(painter, items[i].what);
  cairo_restore(to);
  require_drawn(cairo_status(to));
}

void require_drawn(cairo_status_t status) {
  if (status != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error(std::string("the preview cannot be drawn: ") + cairo_status_to_string(status));
}

cairo_status_t append_bytes(void *to, const unsigned char *bytes, unsigned count) {
  static_cast<std::string *>(to)->append(reinterpret_cast<const char *>(bytes), count);
  return CAIRO_STATUS_SUCCESS;
}

} // namespace strakebook::output
