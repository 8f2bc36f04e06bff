#include "strakebook/paper/typeset/text_pieces.h"

#include <fmt/format.h>
#include <iterator>
#include <utility>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/capitals.h"
#include "strakebook/paper/typeset/reference_text.h"
#include "strakebook/paper/typeset/signs.h"

namespace strakebook::typeset {
namespace {

constexpr double hyphen_penalty = 50;      // a line that ends at a hyphen written by the author
constexpr double emergency_penalty = 5000; // a word cut because no line can hold it

struct Look {
  int font;
  page::Colour colour;
};

bool blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool ascii_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// Every byte of a character beyond ASCII counts as a letter: dashes and blanks are looked for before this is
// asked.
bool letter(char c) { return ascii_letter(c) || static_cast<unsigned char>(c) >= 0x80; }

/// Length in bytes of a hyphen or dash that a line may end after, at `i`; 0: none.
std::size_t hyphen_at(std::string_view word, std::size_t i) {
  if (word[i] == '-')
    return 1;
  const std::string_view three = word.substr(i, 3);
  return three == "\xE2\x80\x90" || three == "\xE2\x80\x93" || three == "\xE2\x80\x94" ? 3 : 0;
}

/// The end of the part of `word` that begins at `from`: after a hyphen or dash between letters, or the word's
/// end.
std::size_t part_end(std::string_view word, std::size_t from) {
  for (std::size_t i = from; i < word.size(); ++i) {
    const std::size_t length = hyphen_at(word, i);
    if (length == 0)
      continue;
    const std::size_t after = i + length;
    if (i > from && after < word.size() && letter(word[i - 1]) && letter(word[after]))
      return after;
    i = after - 1;
  }
  return word.size();
}

Piece line_end(Piece::Kind kind, double penalty) {
  Piece piece;
  piece.kind = kind;
  piece.penalty = penalty;
  return piece;
}

class Cutter {
public:
  Cutter(const style::TextStyle &style, const TextOptions &options, const Context &context, std::size_t parts)
      : style_(style), options_(options), context_(context) {
    pieces_.reserve(parts * 2);
  }

  void operator()(const content::Text &text) { add_text(text.text, text.emphasis, {}); }
  void operator()(const content::Reference &reference) {
    add_text(reference_text(reference, context_), reference.emphasis, reference.target);
  }
  void operator()(const content::Sign &sign) {
    Piece piece;
    piece.kind = Piece::Kind::sign;
    piece.meaning = sign.meaning;
    piece.width = sign_size(style::meaning_style(context_.style, sign.meaning)).width;
    pieces_.push_back(std::move(piece));
  }
  void operator()(const content::LineBreak &) {
    drop_trailing_glue();
    pieces_.push_back(line_end(Piece::Kind::forced, 0));
  }

  // A line end after the last words would only add an empty line.
  std::vector<Piece> finished() {
    while (!pieces_.empty() &&
           (pieces_.back().kind == Piece::Kind::glue || pieces_.back().kind == Piece::Kind::forced))
      pieces_.pop_back();
    return std::move(pieces_);
  }

private:
  Look look(content::Emphasis emphasis) const {
    const std::string *face = &style_.face;
    if (emphasis == content::Emphasis::strong)
      face = &style_.strong_face;
    else if (emphasis == content::Emphasis::italic)
      face = &style_.italic_face;
    const auto &ink = emphasis == content::Emphasis::soft ? style_.soft_ink : style_.ink;
    return {context_.fonts.index_of(*face), colour(style::tone(context_.style, ink))};
  }

  void add_text(const std::string &given, content::Emphasis emphasis, const std::string &target) {
    const std::string raised = style_.capitals ? capitals(given) : std::string();
    const std::string_view text = style_.capitals ? std::string_view(raised) : std::string_view(given);
    const Look how = look(emphasis);
    std::size_t i = 0;
    while (i < text.size()) {
      if (blank(text[i])) {
        add_glue(how, target);
        ++i;
        continue;
      }
      std::size_t end = i;
      while (end < text.size() && !blank(text[end]))
        ++end;
      add_word(text.substr(i, end - i), how, target);
      i = end;
    }
  }

  void add_word(std::string_view word, const Look &how, const std::string &target) {
    gap_after_sign();
    for (std::size_t from = 0; from < word.size();) {
      const std::size_t end = part_end(word, from);
      add_box(word.substr(from, end - from), how, target);
      if (end < word.size())
        pieces_.push_back(line_end(Piece::Kind::chance, hyphen_penalty));
      from = end;
    }
  }

  void add_box(std::string_view text, const Look &how, const std::string &target) {
    Piece piece;
    piece.text = text;
    piece.target = target;
    shape(piece, how);
    if (piece.shaped.missing)
      report_missing(*piece.shaped.missing, text);
    pieces_.push_back(std::move(piece));
  }

  // Blanks at the beginning of a line, and all but the first of several, say nothing.
  void add_glue(const Look &how, const std::string &target) {
    if (pieces_.empty() || pieces_.back().kind == Piece::Kind::glue ||
        pieces_.back().kind == Piece::Kind::forced)
      return;
    Piece piece;
    piece.kind = Piece::Kind::glue;
    piece.text = " ";
    piece.target = target;
    shape(piece, how);
    pieces_.push_back(std::move(piece));
  }

  void shape(Piece &piece, const Look &how) const {
    piece.font = how.font;
    piece.colour = how.colour;
    piece.size = style_.size;
    piece.shaped = context_.fonts.shape(how.font, style_.size, piece.text, options_.tabular);
    if (style_.tracking.v != 0)
      for (auto &glyph : piece.shaped.glyphs) {
        glyph.advance += style_.tracking;
        piece.shaped.width += style_.tracking;
      }
    piece.width = piece.shaped.width;
  }

  void gap_after_sign() {
    if (!pieces_.empty() && pieces_.back().kind == Piece::Kind::sign)
      pieces_.back().width += style::measure(context_.style, "sign-gap");
  }

  void drop_trailing_glue() {
    while (!pieces_.empty() && pieces_.back().kind == Piece::Kind::glue)
      pieces_.pop_back();
  }

  void report_missing(char32_t character, std::string_view word) const {
    report(context_, base::Code::glyph_missing,
           fmt::format("no bundled face has the character \"{}\" (U+{:04X}) in \"{}\"", base::utf8(character),
                       static_cast<unsigned>(character), word),
           "characters of the bundled faces", "another character or a word instead");
  }

  const style::TextStyle &style_;
  const TextOptions &options_;
  const Context &context_;
  std::vector<Piece> pieces_;
};

/// One character of a box as a box of its own; `first` to `last` are its glyphs.
Piece letters(const Piece &box, std::size_t first, std::size_t last) {
  const auto &glyphs = box.shaped.glyphs;
  const std::size_t begin = glyphs[first].cluster;
  const std::size_t end = last < glyphs.size() ? glyphs[last].cluster : box.text.size();
  Piece piece = box;
  piece.text = box.text.substr(begin, end - begin);
  piece.shaped = {};
  for (std::size_t i = first; i < last; ++i) {
    auto glyph = glyphs[i];
    glyph.cluster -= static_cast<std::uint32_t>(begin);
    piece.shaped.width += glyph.advance;
    piece.shaped.glyphs.push_back(glyph);
  }
  piece.width = piece.shaped.width;
  return piece;
}

void add_split(std::vector<Piece> &out, const Piece &box) {
  const auto &glyphs = box.shaped.glyphs;
  for (std::size_t first = 0; first < glyphs.size();) {
    std::size_t last = first + 1;
    while (last < glyphs.size() && glyphs[last].cluster == glyphs[first].cluster)
      ++last;
    if (first > 0)
      out.push_back(line_end(Piece::Kind::chance, emergency_penalty));
    out.push_back(letters(box, first, last));
    first = last;
  }
}

bool breakable(const Piece &piece) {
  return piece.kind != Piece::Kind::box && piece.kind != Piece::Kind::sign;
}

} // namespace

std::vector<Piece> pieces_of(const content::Inlines &text, const style::TextStyle &style,
                             const TextOptions &options, const Context &context) {
  Cutter cutter(style, options, context, text.size());
  for (const auto &part : text)
    std::visit(cutter, part);
  return cutter.finished();
}

void split_wide(std::vector<Piece> &pieces, base::Pt room) {
  const base::Pt width =
      room + base::Pt{1e-6}; // a column as wide as its widest cell: sums differ in the last bit
  std::vector<Piece> out;
  out.reserve(pieces.size());
  for (std::size_t i = 0; i < pieces.size();) {
    std::size_t end = i;
    base::Pt together;
    while (end < pieces.size() && !breakable(pieces[end]))
      together += pieces[end++].width;
    for (std::size_t k = i; k < end; ++k) {
      if (together > width && k > i)
        out.push_back(line_end(Piece::Kind::chance, emergency_penalty));
      if (pieces[k].width > width && pieces[k].kind == Piece::Kind::box)
        add_split(out, pieces[k]);
      else
        out.push_back(std::move(pieces[k]));
    }
    if (end < pieces.size())
      out.push_back(std::move(pieces[end++]));
    i = end;
  }
  pieces = std::move(out);
}

} // namespace strakebook::typeset
