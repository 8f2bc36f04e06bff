#include "strakebook/paper/typeset/photo.h"

#include <algorithm>
#include <array>

#include "strakebook/paper/typeset/drawing.h"
#include "strakebook/paper/typeset/drawing_path.h"
#include "strakebook/paper/typeset/drawing_text.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

using base::Point;
using base::Pt;
using base::Rect;
using base::Size;

Point middle(Size frame) { return {frame.width / 2, frame.height / 2}; }

/// The largest box of the picture's own shape inside the frame: it stands on its caption, at the edge of the column.
Rect fitted(const base::ImageRef &image, Size frame) {
  const double scale = std::min(frame.width.v / image.width, frame.height.v / image.height);
  const Size size{{image.width * scale}, {image.height * scale}};
  return {{{}, frame.height - size.height}, size};
}

void add_stroked(page::Path path, const std::string &meaning, const Context &context, Fragment &out) {
  path.stroke = stroke_of(style::meaning_style(context.style, meaning), context.style);
  if (path.stroke) out.items.push_back({context.tag, context.id, std::move(path)});
}

/// The two diagonals of a frame, without the part that crosses a box of half the size `half` about the middle.
page::Path diagonals(Size frame, Size half) {
  const Point centre = middle(frame);
  const double covered = std::min({half.width / centre.x, half.height / centre.y, 1.0});
  page::Path path;
  for (const double across : {-1.0, 1.0})
    for (const double down : {-1.0, 1.0}) {
      path.steps.emplace_back(page::Move{{centre.x + centre.x * (across * covered),
                                          centre.y + centre.y * (down * covered)}});
      path.steps.emplace_back(page::Line{{centre.x + centre.x * across, centre.y + centre.y * down}});
    }
  return path;
}

/// Half the width that the words of a centred text take about its middle.
Pt half_width(const Fragment &text, Pt width) {
  Pt half{};
  for (const auto &item : text.items) {
    const auto *run = std::get_if<page::Run>(&item.what);
    if (!run) continue;
    Pt end = run->origin.x;
    for (const auto &glyph : run->glyphs) end += glyph.advance;
    half = std::max({half, end - width / 2, width / 2 - run->origin.x});
  }
  return half;
}

/// The frame is as high as the words in it need.
Fragment set_placeholder(const content::Photo &photo, Size frame, const Context &context) {
  const Context own = tagged(context, {.role = page::Role::figure, .spoken = plain_text(photo.placeholder, context)});
  const Pt clear = style::measure(context.style, "photo-text-clear");
  const Pt width = frame.width - clear * 2;
  Fragment text = set_text(photo.placeholder, style::text_style(context.style, "photo-placeholder"), width,
                           {true, {}}, own);
  frame.height = std::max(frame.height, text.size.height + clear * 2);
  Fragment out;
  out.size = frame;
  add_stroked(polyline(std::array{Point{}, Point{frame.width, {}}, Point{frame.width, frame.height},
                                  Point{{}, frame.height}}, true), "photo-frame", own, out);
  const Size half{half_width(text, width) + clear, text.size.height / 2 + clear};
  add_stroked(diagonals(frame, photo.placeholder.empty() ? Size{} : half), "photo-diagonal", own, out);
  const Pt down = (frame.height - text.size.height) / 2;
  append(out.items, std::move(text), {clear, down});
  return out;
}

Fragment set_frame(const content::Photo &photo, Size frame, const Context &context) {
  if (!photo.image) return set_placeholder(photo, frame, context);
  Fragment set;
  set.size = frame;
  const Context own = tagged(context, {.role = page::Role::figure, .spoken = plain_text(photo.caption, context)});
  set.items.push_back({own.tag, own.id, page::Picture{*photo.image, fitted(*photo.image, frame)}});
  return set;
}

/// The number hangs at the left, its figures as high as the capitals of the first line beside it.
Fragment set_numbered_caption(const content::Photo &photo, Pt width, const Context &context) {
  const auto &number_style = style::text_style(context.style, "photo-number");
  const auto &caption_style = style::text_style(context.style, "caption");
  const Context own = tagged(context, {.role = page::Role::caption});
  auto number = set_line(content::plain(photo.number), number_style, {}, own);
  const Pt indent = std::max(style::measure(context.style, "photo-hang"),
                             number.size.width + style::measure(context.style, "photo-number-gap"));
  auto caption = set_text(photo.caption, caption_style, width - indent, {true, {}}, own);
  const Pt baseline = caption.first_baseline + cap_height(number_style, context.fonts) -
                      cap_height(caption_style, context.fonts);
  const Pt number_top = std::max(Pt{}, baseline - number.first_baseline);
  Fragment set;
  set.first_baseline = caption.first_baseline;
  set.size = {width, std::max(caption.size.height, number_top + number.size.height)};
  append(set.items, std::move(number), {{}, number_top});
  append(set.items, std::move(caption), {indent, {}});
  return set;
}

} // namespace

Outcome lay_photo(const content::Photo &photo, const Region &region, const Context &context) {
  const std::string reason = "a photograph with its caption does not fit";
  Fragment set = set_frame(photo, {region.width, style::measure(context.style, photo.aspect)}, context);
  if (!photo.number.empty() || !photo.caption.empty())
    stack(set, set_numbered_caption(photo, std::min(region.width, style::measure(context.style, "caption-measure")), context),
          style::measure(context.style, "photo-caption-gap"));
  if (!photo.strip) return whole_or_next(std::move(set), region, reason);
  const DrawingScale scale = scaled(*photo.strip, context.style, std::min(region.width, style::measure(context.style, "photo-strip")));
  const Pt gap = style::measure(context.style, "photo-strip-gap");
  // Not drawn until it fits, so that nothing in it is reported twice.
  if (set.size.height + gap + scale.size.height > region.height_left)
    return NextPage{reason, context.origin, context.id};
  stack(set, draw_at(*photo.strip, scale, tagged(context, {.role = page::Role::group}), context.id), gap);
  return Whole{std::move(set)};
}

} // namespace strakebook::typeset
