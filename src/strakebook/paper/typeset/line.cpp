#include "strakebook/paper/typeset/line.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "strakebook/paper/typeset/line_break.h"
#include "strakebook/paper/typeset/piece_cuts.h"
#include "strakebook/paper/typeset/reference_text.h"
#include "strakebook/paper/typeset/signs.h"
#include "strakebook/paper/typeset/text_pieces.h"

namespace strakebook::typeset {
namespace {

/// How a line is placed in its width.
struct Placing {
  base::Pt start;  ///< pen at its beginning
  double glue = 1; ///< blanks are this many times their own width
  base::Pt width;  ///< of the fragment
};

/// From the middle of a line down to its baseline, in parts of the size: half the difference between ascent
/// and descent of the bundled faces, which is the same for both families to 0.01, so that lines of serif and
/// sans stand level.
constexpr double baseline_below_middle = 0.353;

base::Pt baseline_in(const style::TextStyle &style) {
  return style.leading / 2 + style.size * baseline_below_middle;
}

/// Draws pieces one after the other; neighbours of one look become one run, so that a line is few runs with
/// its blanks.
class Pen {
public:
  Pen(const style::TextStyle &style, const Context &context, const Placing &placing)
      : style_(style), context_(context), placing_(placing), x_(placing.start), baseline_(baseline_in(style)) {}

  void draw(const Piece &piece) {
    if (piece.target != target_ || (!target_.empty() && piece.tag != link_))
      end_link(piece);
    if (piece.kind == Piece::Kind::sign)
      draw_sign_at_pen(piece);
    else if (!piece.shaped.glyphs.empty())
      draw_letters(piece);
  }

  Fragment finished() {
    end_link({});
    end_strike();
    Fragment line;
    line.size = {placing_.width, style_.leading};
    line.first_baseline = baseline_;
    line.items = std::move(items_);
    return line;
  }

private:
  void draw_letters(const Piece &piece) {
    if (piece.struck != struck_from_.has_value()) {
      end_strike();
      if (piece.struck)
        struck_from_ = x_;
      struck_font_ = piece.font;
    }
    page::Run &run = run_for(piece);
    const auto offset = static_cast<std::uint32_t>(run.text.size());
    run.text += piece.text;
    if (!target_.empty())
      said_ += piece.text;
    const double factor = piece.kind == Piece::Kind::glue ? placing_.glue : 1;
    for (auto glyph : piece.shaped.glyphs) {
      glyph.cluster += offset;
      glyph.advance = glyph.advance * factor;
      x_ += glyph.advance;
      run.glyphs.push_back(glyph);
    }
  }

  page::Run &run_for(const Piece &piece) {
    if (open_run_) {
      auto &run = std::get<page::Run>(items_.back().what);
      if (items_.back().tag == piece.tag && run.font == piece.font && run.size == piece.size && run.colour == piece.colour)
        return run;
    }
    page::Run run;
    run.font = piece.font;
    run.size = piece.size;
    run.origin = {x_, baseline_};
    run.colour = piece.colour;
    items_.push_back({piece.tag, context_.id, std::move(run)});
    open_run_ = true;
    return std::get<page::Run>(items_.back().what);
  }

  void draw_sign_at_pen(const Piece &piece) {
    const auto &meaning = style::meaning_style(context_.style, piece.meaning);
    const auto caps =
        context_.fonts.vertical(context_.fonts.index_of(style_.face)).cap_height * style_.size.v;
    draw_sign(meaning, context_.style, {x_ + sign_size(meaning).width / 2, baseline_ - caps / 2},
              std::nullopt, piece.tag, context_.id, items_);
    x_ += piece.width;
    open_run_ = false;
  }

  /// Through the middle of figures and capitals.
  void end_strike() {
    if (!struck_from_)
      return;
    const auto &meaning = style::meaning_style(context_.style, "struck");
    const auto ink = colour(style::tone(context_.style, meaning.stroke.value_or("soft")));
    const base::Pt up = context_.fonts.vertical(struck_font_).cap_height * style_.size.v / 2;
    items_.push_back(rule(*struck_from_, x_, baseline_ - up, meaning.stroke_width, ink));
    struck_from_.reset();
    open_run_ = false;
  }

  void end_link(const Piece &next) {
    // What stands again on a later page leads nowhere: a link belongs to one element.
    if (!target_.empty() && x_ > link_from_ && !page::is_furniture(link_)) {
      const base::Rect box{{link_from_, base::Pt{}}, {x_ - link_from_, style_.leading}};
      items_.push_back({link_, context_.id, page::Link{box, target_, std::exchange(said_, {})}});
    }
    said_.clear();
    target_ = next.target;
    link_ = next.tag;
    link_from_ = x_;
    open_run_ = false;
  }

  const style::TextStyle &style_;
  const Context &context_;
  Placing placing_;
  base::Pt x_, baseline_, link_from_;
  std::string target_, said_; ///< of the link being drawn
  page::TagPath link_;
  bool open_run_ = false;
  std::optional<base::Pt> struck_from_; ///< where the line through the letters being drawn begins
  int struck_font_ = 0;
  std::vector<page::Item> items_;
};

base::Pt natural_width(const std::vector<Piece> &pieces) {
  base::Pt width;
  for (const auto &piece : pieces)
    width += piece.width;
  return width;
}

Placing placed(const std::vector<Piece> &pieces, const LineSpan &span, const style::TextStyle &style,
               base::Pt width, base::Pt indent) {
  Placing placing{indent, 1, width};
  const base::Pt slack = width - indent - span.natural;
  if (style.align == style::Align::right)
    placing.start += slack;
  else if (style.align == style::Align::centre)
    placing.start += slack / 2;
  else if (style.align == style::Align::justify && (!span.last || slack.v < 0))
    placing.glue = glue_factor(pieces, span, width - indent);
  return placing;
}

Fragment drawn(const std::vector<Piece> &pieces, const LineSpan &span, const style::TextStyle &style,
               const Context &context, const Placing &placing) {
  Pen pen(style, context, placing);
  if (span.head)
    pen.draw(pieces[*span.head].division->after);
  for (std::size_t i = span.begin; i < span.end; ++i)
    pen.draw(pieces[i]);
  if (span.tail)
    pen.draw(pieces[*span.tail].division->before);
  auto line = pen.finished();
  line.divided = span.tail.has_value();
  return line;
}

content::Inlines without_breaks(content::Inlines text) {
  for (auto &part : text)
    if (std::holds_alternative<content::LineBreak>(part))
      part = content::Text{" ", content::Emphasis::plain};
  return text;
}

std::vector<Piece> one_line(const content::Inlines &text, const style::TextStyle &style,
                            const TextOptions &options, const Context &context) {
  const bool has_breaks = std::any_of(text.begin(), text.end(), [](const auto &part) {
    return std::holds_alternative<content::LineBreak>(part);
  });
  return pieces_of(has_breaks ? without_breaks(text) : text, style, options, context);
}

} // namespace

Fragment set_line(const content::Inlines &text, const style::TextStyle &style, const TextOptions &options,
                  const Context &context) {
  const auto pieces = one_line(text, style, options, context);
  const base::Pt width = options.first_indent + natural_width(pieces);
  return drawn(pieces, {.begin = 0, .end = pieces.size()}, style, context, {options.first_indent, 1, width});
}

base::Pt line_width(const content::Inlines &text, const style::TextStyle &style, const TextOptions &options,
                    const Context &context) {
  return options.first_indent + natural_width(one_line(text, style, options, context));
}

std::vector<Fragment> set_lines(const content::Inlines &text, const style::TextStyle &style, base::Pt width,
                                const TextOptions &options, const Context &context) {
  auto pieces = pieces_of(text, style, options, context);
  if (pieces.empty())
    return {};
  split_wide(pieces, width - options.first_indent);
  const auto spans = break_lines(pieces, {width, options.first_indent, style.align == style::Align::justify,
                                        context.style.setting});
  std::vector<Fragment> lines;
  lines.reserve(spans.size());
  for (const auto &span : spans) {
    const base::Pt indent = lines.empty() ? options.first_indent : base::Pt{};
    lines.push_back(drawn(pieces, span, style, context, placed(pieces, span, style, width, indent)));
  }
  return lines;
}

Fragment set_text(const content::Inlines &text, const style::TextStyle &style, base::Pt width,
                  const TextOptions &options, const Context &context) {
  Fragment block;
  block.size.width = width;
  for (auto &line : set_lines(text, style, width, options, context))
    stack(block, std::move(line), base::Pt{});
  return block;
}

std::string plain_text(const content::Inlines &text, const Context &context) {
  std::string plain;
  for (const auto &part : text) {
    if (const auto *words = std::get_if<content::Text>(&part))
      plain += words->text;
    else if (const auto *reference = std::get_if<content::Reference>(&part))
      plain += reference_text(*reference, context);
    else if (std::holds_alternative<content::LineBreak>(part))
      plain += ' ';
  }
  return plain;
}

} // namespace strakebook::typeset
