#include "strakebook/paper/output/pdf_text.h"

#include <cmath>

#include "strakebook/paper/output/clusters.h"
#include "strakebook/paper/output/pdf_number.h"
#include "strakebook/paper/output/pdf_objects.h"

namespace strakebook::output {

namespace {

/// One run's TJ arrays. Lengths are in thousandths of the type size, as TJ counts them.
class GlyphLine {
public:
  GlyphLine(std::string &to, const page::Run &run, FontSubset &font)
      : to_(to), font_(font), per_point_(1000 / run.size.v) {}

  void show(const page::Glyph &glyph, std::uint16_t code) {
    raise(-glyph.offset.y.v);
    move_to((pen_ + glyph.offset.x.v) * per_point_);
    open_codes();
    append_hex(to_, code);
    reached_ += font_.width_of(code);
    pen_ += glyph.advance.v;
  }

  void begin_span(std::string_view text) {
    close_array();
    to_ += "/Span <</ActualText <feff";
    append_hex(to_, utf16be(text));
    to_ += ">>> BDC\n";
  }

  void end_span() {
    close_array();
    to_ += "EMC\n";
  }

  void finish() {
    raise(0);
    close_array();
  }

private:
  void raise(double points) {
    if (std::abs(points - rise_) < 0.0005)
      return;
    close_array();
    append_number(to_, points);
    to_ += " Ts\n";
    rise_ = points;
  }

  /// The part of the adjustment that rounding drops stays in `reached_`, so that errors do not add up.
  void move_to(double target) {
    const double back = std::round((reached_ - target) * 10) / 10;
    if (back == 0)
      return;
    open_array();
    if (codes_open_)
      to_ += '>';
    codes_open_ = false;
    append_number(to_, back, 1);
    reached_ -= back;
  }

  void open_array() {
    if (!array_open_)
      to_ += '[';
    array_open_ = true;
  }

  void open_codes() {
    open_array();
    if (!codes_open_)
      to_ += '<';
    codes_open_ = true;
  }

  void close_array() {
    if (!array_open_)
      return;
    to_ += codes_open_ ? ">]TJ\n" : "]TJ\n";
    array_open_ = codes_open_ = false;
  }

  std::string &to_;
  FontSubset &font_;
  double per_point_;
  double pen_ = 0;     ///< where the page has the pen, in points
  double reached_ = 0; ///< where the reader of the PDF has it
  double rise_ = 0;
  bool array_open_ = false, codes_open_ = false;
};

} // namespace

void append_glyphs(std::string &to, const page::Run &run, FontSubset &font) {
  GlyphLine line(to, run, font);
  for_each_cluster(run, [&](const Cluster &cluster) {
    const bool several = cluster.glyphs.size() > 1;
    if (several)
      line.begin_span(cluster.text);
    auto text = cluster.text;
    for (const auto &glyph : cluster.glyphs) {
      line.show(glyph, font.code_of(glyph.id, text));
      text = {};
    }
    if (several)
      line.end_span();
  });
  line.finish();
}

void append_blank(std::string &to, FontSubset &font) {
  hb_codepoint_t glyph = 0;
  if (!hb_font_get_nominal_glyph(font.font(), ' ', &glyph))
    return;
  to += "[<";
  append_hex(to, static_cast<unsigned>(font.code_of(glyph, " ")));
  to += ">]TJ\n";
}

bool needs_blank(std::string_view before, std::string_view after) {
  if (before.empty() || after.empty() || before.back() == ' ' || after.front() == ' ')
    return false;
  for (std::string_view hyphen : {"-", "\xC2\xAD", "\xE2\x80\x90", "\xE2\x80\x91", "\xE2\x80\x93"})
    if (before.ends_with(hyphen))
      return before.size() > hyphen.size() && before[before.size() - hyphen.size() - 1] == ' ';
  return true;
}

} // namespace strakebook::output
