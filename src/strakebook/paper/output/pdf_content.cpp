#include "strakebook/paper/output/pdf_content.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <optional>

#include "strakebook/paper/output/extent.h"
#include "strakebook/paper/output/pdf_marks.h"
#include "strakebook/paper/output/pdf_number.h"
#include "strakebook/paper/output/pdf_text.h"

namespace strakebook::output {

namespace {

using base::Point;
using base::Pt;

/// More than rounding.
bool apart(Point a, Point b) {
  constexpr double close = 0.05;
  return std::abs(a.x.v - b.x.v) > close || std::abs(a.y.v - b.y.v) > close;
}

bool paints(const page::Run &run) { return !run.glyphs.empty(); }
bool paints(const page::Path &path) { return !path.steps.empty() && (path.fill || path.stroke); }
bool paints(const page::Picture &) { return true; }
bool paints(const page::Anchor &) { return false; }
bool paints(const page::Link &) { return false; }
bool paints(const page::Item &item) {
  return std::visit([](const auto &what) { return paints(what); }, item.what);
}

/// Writes the operators of one page and remembers the graphics state they leave, so that only changes are
/// written.
class ContentWriter {
public:
  ContentWriter(Pt sheet_height, std::vector<FontSubset> &fonts, PdfMarks marks)
      : height_(sheet_height), fonts_(fonts), marks_(std::move(marks)) {
    content_.fonts.resize(fonts.size());
  }

  void operator()(const page::Run &run);
  void operator()(const page::Path &path);
  void operator()(const page::Picture &picture);
  void operator()(const page::Anchor &) {} // a place to go to leaves no ink
  void operator()(const page::Link &) {}

  void operator()(const page::Move &step) { operation("m", {step.to}); }
  void operator()(const page::Line &step) { operation("l", {step.to}); }
  void operator()(const page::Curve &step) { operation("c", {step.c1, step.c2, step.to}); }
  void operator()(const page::Close &) { operation("h", {}); }

  /// Before the item is drawn.
  void belong(const page::Item &item) {
    if (!paints(item))
      return marks_.see(item.tag);
    if (item.tag && item.tag->role == page::Role::figure) {
      const auto part = extent_of(item);
      marks_.cover(item.tag, {{part.at.x, height_ - part.bottom()}, part.size});
    }
    if (!marks_.changes(item.tag))
      return;
    leave_text(); // text and marked content may not overlap
    marks_.change(item.tag, content_.operators);
  }

  PageContent finished() {
    leave_text();
    marks_.end(content_.operators);
    return std::move(content_);
  }

private:
  void enter_text();
  void leave_text();
  void set_font(int font, Pt size);
  void set_fill(const page::Colour &colour);
  void set_stroke(const page::Stroke &stroke);
  void colour(const page::Colour &colour, const char *grey, const char *rgb);
  void operation(const char *name, std::initializer_list<Point> places);
  void number(double value) {
    append_number(content_.operators, value);
    content_.operators += ' ';
  }
  void place(Point at) {
    number(at.x.v);
    number(height_.v - at.y.v); // PDF counts y from the bottom
  }
  void write(std::string_view text) { content_.operators += text; }

  Pt height_;
  std::vector<FontSubset> &fonts_;
  PdfMarks marks_;
  PageContent content_;
  bool in_text_ = false;
  int font_ = -1;
  Pt size_;
  Point pen_;        ///< where the run before ends, while in text
  std::string last_; ///< its text
  std::optional<page::Colour> fill_;
  std::optional<page::Colour> stroke_colour_;
  std::optional<Pt> line_width_;
  std::vector<Pt> dash_;
};

void ContentWriter::enter_text() {
  if (!in_text_)
    write("BT\n");
  in_text_ = true;
}

void ContentWriter::leave_text() {
  if (in_text_)
    write("ET\n");
  in_text_ = false;
}

void ContentWriter::set_font(int font, Pt size) {
  if (font == font_ && size == size_)
    return;
  content_.fonts[static_cast<std::size_t>(font)] = true;
  write(fmt::format("/F{} ", font));
  number(size.v);
  write("Tf\n");
  font_ = font;
  size_ = size;
}

void ContentWriter::colour(const page::Colour &colour, const char *grey, const char *rgb) {
  const bool is_grey = colour.r == colour.g && colour.g == colour.b;
  number(colour.r);
  if (!is_grey) {
    number(colour.g);
    number(colour.b);
  }
  write(is_grey ? grey : rgb);
}

void ContentWriter::set_fill(const page::Colour &wanted) {
  if (fill_ == wanted)
    return;
  colour(wanted, "g\n", "rg\n");
  fill_ = wanted;
}

void ContentWriter::set_stroke(const page::Stroke &stroke) {
  if (stroke_colour_ != stroke.colour)
    colour(stroke.colour, "G\n", "RG\n");
  stroke_colour_ = stroke.colour;
  if (line_width_ != stroke.width) {
    number(stroke.width.v);
    write("w\n");
    line_width_ = stroke.width;
  }
  if (dash_ == stroke.dash)
    return;
  write("[ ");
  for (Pt part : stroke.dash)
    number(part.v);
  write("] 0 d\n");
  dash_ = stroke.dash;
}

void ContentWriter::operation(const char *name, std::initializer_list<Point> places) {
  for (Point at : places)
    place(at);
  write(name);
  write("\n");
}

void ContentWriter::operator()(const page::Run &run) {
  if (!paints(run))
    return;
  if (in_text_ && apart(pen_, run.origin) && needs_blank(last_, run.text))
    append_blank(content_.operators, fonts_[static_cast<std::size_t>(font_)]);
  enter_text();
  set_fill(run.colour);
  set_font(run.font, run.size);
  write(run.upright ? "1 0 0 1 " : "0 1 -1 0 ");
  place(run.origin);
  write("Tm\n");
  append_glyphs(content_.operators, run, fonts_[static_cast<std::size_t>(run.font)]);
  Pt length;
  for (const auto &glyph : run.glyphs)
    length += glyph.advance;
  pen_ = run.upright ? Point{run.origin.x + length, run.origin.y} : Point{run.origin.x, run.origin.y - length};
  last_ = run.text;
}

void ContentWriter::operator()(const page::Path &path) {
  if (!paints(path))
    return;
  leave_text();
  if (path.fill)
    set_fill(*path.fill);
  if (path.stroke)
    set_stroke(*path.stroke);
  for (const auto &step : path.steps)
    std::visit(*this, step);
  write(path.fill && path.stroke ? "B*\n" : path.fill ? "f*\n" : "S\n");
}

void ContentWriter::operator()(const page::Picture &picture) {
  leave_text();
  auto &known = content_.pictures;
  auto found = std::find(known.begin(), known.end(), picture.image.digest);
  if (found == known.end())
    found = known.insert(found, picture.image.digest);
  const auto &box = picture.box;
  write("q ");
  number(box.size.width.v);
  write("0 0 ");
  number(box.size.height.v);
  place({box.at.x, box.bottom()});
  write(fmt::format("cm /P{} Do Q\n", found - known.begin()));
}

} // namespace

PageContent draw_page(const page::Page &page, int page_index, std::vector<FontSubset> &fonts, TagTree &tree) {
  ContentWriter writer(page.size.height, fonts, PdfMarks(tree, page_index));
  for (const auto &item : page.items) {
    writer.belong(item);
    std::visit(writer, item.what);
  }
  return writer.finished();
}

} // namespace strakebook::output
