#include "strakebook/paper/output/view.h"

#include <algorithm>

#include "strakebook/paper/output/cairo_painter.h"
#include "strakebook/paper/output/sound.h"

namespace strakebook::output {

namespace {

using base::Pt;
using base::Rect;

/// The box of everything that is drawn of a view, in points.
Rect ink_box(const page::Document &document, const View &view, const media::ImageStore &images) {
  const Cairo<cairo_surface_t> surface(cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, nullptr));
  require_drawn(cairo_surface_status(surface.get()));
  const Cairo<cairo_t> context(cairo_create(surface.get()));
  paint(context.get(), document, view, images);
  double x = 0, y = 0, width = 0, height = 0;
  cairo_recording_surface_ink_extents(surface.get(), &x, &y, &width, &height);
  return {{{x}, {y}}, {{width}, {height}}};
}

Rect grown_within(const Rect &box, Pt margin, const base::Size &sheet) {
  const Pt left = std::max(Pt{}, box.at.x - margin), top = std::max(Pt{}, box.at.y - margin);
  const Pt right = std::min(sheet.width, box.right() + margin), bottom = std::min(sheet.height, box.bottom() + margin);
  return {{left, top}, {right - left, bottom - top}};
}

} // namespace

View sheet(const page::Document &document, std::size_t page_index) {
  require_sound(document, page_index);
  const auto &page = document.pages[page_index];
  return {page_index, {{}, page.size}, 0, page.items.size()};
}

std::optional<View> cut_out(const page::Document &document, std::size_t page_index, const std::vector<std::string> &ids,
                            const media::ImageStore &images, Pt margin) {
  View view = sheet(document, page_index);
  const auto &page = document.pages[page_index];
  const auto wanted = [&ids](const page::Item &item) { return std::ranges::find(ids, item.id) != ids.end(); };
  const auto first = std::ranges::find_if(page.items, wanted);
  if (first == page.items.end()) return std::nullopt;
  const auto last = std::find_if(page.items.rbegin(), page.items.rend(), wanted).base();
  view.first = static_cast<std::size_t>(first - page.items.begin());
  view.last = static_cast<std::size_t>(last - page.items.begin());
  const Rect ink = ink_box(document, view, images);
  if (ink.size.width.v <= 0 || ink.size.height.v <= 0) return std::nullopt;
  view.box = grown_within(ink, margin, page.size);
  return view;
}

} // namespace strakebook::output
