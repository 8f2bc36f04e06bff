#include "strakebook/paper/page/page.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <string_view>

#include "strakebook/base/digest.h"

namespace strakebook::page {

namespace {

/// To 0.01, never "-0.00", so that a golden text does not change with the sign of a rounding error.
std::string number(double value) { return fmt::format("{:.2f}", std::abs(value) < 0.005 ? 0.0 : value); }

std::string number(Pt value) { return number(value.v); }
std::string text_of(Point p) { return number(p.x) + "," + number(p.y); }
std::string text_of(Size s) { return number(s.width) + "x" + number(s.height); }
std::string text_of(const Rect &r) { return text_of(r.at) + " " + text_of(r.size); }

std::string text_of(const Colour &colour) {
  const auto level = [](double part) { return std::lround(std::clamp(part, 0.0, 1.0) * 255); };
  return fmt::format("#{:02x}{:02x}{:02x}", level(colour.r), level(colour.g), level(colour.b));
}

std::string quoted(std::string_view text) {
  std::string result = "\"";
  for (char c : text) {
    if (c == '"' || c == '\\')
      result += '\\';
    if (c == '\n')
      result += "\\n";
    else
      result += c;
  }
  return result + '"';
}

struct StepText {
  std::string operator()(const Move &s) const { return fmt::format(" M {}", text_of(s.to)); }
  std::string operator()(const Line &s) const { return fmt::format(" L {}", text_of(s.to)); }
  std::string operator()(const Curve &s) const {
    return fmt::format(" C {} {} {}", text_of(s.c1), text_of(s.c2), text_of(s.to));
  }
  std::string operator()(const Close &) const { return " Z"; }
};

std::string text_of(const Stroke &stroke) {
  auto text = fmt::format(" stroke {} {}", number(stroke.width), text_of(stroke.colour));
  if (!stroke.dash.empty())
    text += " dash";
  for (Pt part : stroke.dash)
    text += fmt::format(" {}", number(part));
  return text;
}

struct ItemText {
  std::string operator()(const Run &run) const {
    Pt width;
    for (const auto &glyph : run.glyphs)
      width += glyph.advance;
    return fmt::format("text {}{} w {} font {} {} {} {}", text_of(run.origin), run.upright ? "" : " turned",
                       number(width), run.font, number(run.size), text_of(run.colour), quoted(run.text));
  }
  std::string operator()(const Path &path) const {
    std::string text = "path";
    for (const auto &step : path.steps)
      text += std::visit(StepText{}, step);
    if (path.fill)
      text += fmt::format(" fill {}", text_of(*path.fill));
    if (path.stroke)
      text += text_of(*path.stroke);
    return text;
  }
  std::string operator()(const Picture &picture) const {
    const auto &image = picture.image;
    return fmt::format("picture {} {} {}x{}", text_of(picture.box), image.digest.substr(0, 12), image.width,
                       image.height);
  }
  std::string operator()(const Anchor &anchor) const { return fmt::format("anchor {}", text_of(anchor.at)); }
  std::string operator()(const Link &link) const {
    return fmt::format("link {} to {}", text_of(link.box), quoted(link.target));
  }
};

std::string head_of(const Document &document) {
  const auto &about = document.metadata;
  auto text = fmt::format("title {}\nauthor {}\nsubject {}\nlanguage {}\ndate {}\ncreator {}\n",
                          quoted(about.title), quoted(about.author), quoted(about.subject), about.language,
                          about.date, quoted(about.creator));
  for (std::size_t i = 0; i < document.fonts.size(); ++i)
    text += fmt::format("font {} {}\n", i, document.fonts[i].name);
  for (const auto &entry : document.outline)
    text += fmt::format("outline {} {} to {}\n", entry.level, quoted(entry.title), quoted(entry.target));
  for (const auto &file : document.attachments)
    text += fmt::format("attached {} {} {} bytes {}\n", quoted(file.name), file.media_type, file.bytes.size(),
                        base::sha256_hex(file.bytes).substr(0, 12));
  return text;
}

} // namespace

std::string dump(const Page &page) {
  auto text = fmt::format("size {}\n", text_of(page.size));
  for (const auto &frame : page.frames)
    text += fmt::format("frame {} {}\n", frame.name, text_of(frame.box));
  for (const auto &item : page.items)
    text += fmt::format("{}{}{} {}\n", text_of(item.tag), item.id.empty() ? "" : " ",
                        item.id.empty() ? "" : quoted(item.id), std::visit(ItemText{}, item.what));
  return text;
}

std::string dump(const Document &document) {
  auto text = head_of(document);
  for (std::size_t i = 0; i < document.pages.size(); ++i)
    text += fmt::format("\npage {}\n{}", i + 1, dump(document.pages[i]));
  return text;
}

} // namespace strakebook::page
