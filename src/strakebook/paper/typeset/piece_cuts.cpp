#include "strakebook/paper/typeset/piece_cuts.h"

#include <algorithm>
#include <utility>

namespace strakebook::typeset {
namespace {

constexpr double division_penalty = 50;    // plain TeX's \hyphenpenalty
constexpr double emergency_penalty = 5000; // a word cut because no line can hold it

constexpr const char *drawn_hyphen = "\xE2\x80\x90";
// What a divided word is read back with: ISO 32000-1, 14.8.2.2.3.
constexpr const char *read_hyphen = "\xC2\xAD";

/// The glyphs from `first` to `last` of a box as a box of its own; `to` is the end of their text.
Piece letters(const Piece &box, std::size_t first, std::size_t last, std::size_t to) {
  const auto &glyphs = box.shaped.glyphs;
  const std::size_t begin = first < glyphs.size() ? glyphs[first].cluster : to;
  Piece piece = box;
  piece.hang = {};
  piece.text = box.text.substr(begin, to - begin);
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

/// The first glyph that stands for text at or after `offset`.
std::size_t glyph_at(const Piece &box, std::size_t offset) {
  const auto &glyphs = box.shaped.glyphs;
  std::size_t i = 0;
  while (i < glyphs.size() && glyphs[i].cluster < offset)
    ++i;
  return i;
}

std::size_t text_end(const Piece &box, std::size_t glyph) {
  return glyph < box.shaped.glyphs.size() ? box.shaped.glyphs[glyph].cluster : box.text.size();
}

Piece shaped_like(const Piece &word, std::string text, const std::function<void(Piece &)> &shape) {
  Piece piece = word;
  piece.text = std::move(text);
  shape(piece);
  return piece;
}

std::string last_character(const std::string &text) {
  std::size_t at = text.size();
  while (at > 0 && (static_cast<unsigned char>(text[at - 1]) & 0xC0) == 0x80)
    --at;
  return text.substr(at > 0 ? at - 1 : 0);
}

/// The hyphen behind `before`, as near to its last letter as the face says; drawn in a box of its own.
Piece hyphen_behind(const Piece &before, const std::function<void(Piece &)> &shape) {
  Piece hyphen = shaped_like(before, drawn_hyphen, shape);
  const auto last = last_character(before.text);
  const auto alone = shaped_like(before, last, shape);
  const auto pair = shaped_like(before, last + drawn_hyphen, shape);
  const auto &end = before.shaped.glyphs.back();
  const bool of_itself = end.cluster + last.size() == before.text.size(); // not the last of a ligature
  const base::Pt nearer = pair.width - hyphen.width - (of_itself ? end.advance : alone.width);
  for (auto &glyph : hyphen.shaped.glyphs) {
    glyph.offset.x += nearer;
    glyph.advance += nearer;
  }
  hyphen.shaped.width += nearer;
  hyphen.width += nearer;
  hyphen.text = read_hyphen;
  return hyphen;
}

/// `letters` with a hyphen, as one box.
Piece with_hyphen(Piece letters, const Piece &hyphen) {
  for (auto glyph : hyphen.shaped.glyphs) {
    glyph.cluster += static_cast<std::uint32_t>(letters.text.size());
    letters.shaped.glyphs.push_back(glyph);
  }
  letters.text += hyphen.text;
  letters.shaped.width += hyphen.width;
  letters.width = letters.shaped.width;
  letters.hang = hyphen.hang;
  return letters;
}

Piece division_at(Piece whole, Piece before, Piece after) {
  whole.kind = Piece::Kind::hyphen;
  whole.penalty = division_penalty;
  whole.division = std::make_shared<const Division>(Division{std::move(before), std::move(after)});
  return whole;
}

void cut_between_letters(std::vector<Piece> &out, const Piece &box) {
  const auto &glyphs = box.shaped.glyphs;
  for (std::size_t first = 0; first < glyphs.size();) {
    std::size_t last = first + 1;
    while (last < glyphs.size() && glyphs[last].cluster == glyphs[first].cluster)
      ++last;
    if (first > 0)
      out.push_back(line_end(Piece::Kind::chance, emergency_penalty));
    out.push_back(letters(box, first, last, text_end(box, last)));
    first = last;
  }
}

/// Frees the tied blanks from `begin` to `end`; false: there are none.
bool untied(std::vector<Piece> &pieces, std::size_t begin, std::size_t end) {
  bool any = false;
  for (std::size_t i = begin; i < end; ++i)
    any |= std::exchange(pieces[i].tied, false);
  return any;
}

} // namespace

Piece line_end(Piece::Kind kind, double penalty) {
  Piece piece;
  piece.kind = kind;
  piece.penalty = penalty;
  return piece;
}

std::vector<Piece> divided(const Piece &word, const std::vector<std::size_t> &breaks,
                           const std::function<void(Piece &)> &shape) {
  std::vector<Piece> out;
  std::size_t from = 0; // glyph
  for (const std::size_t offset : breaks) {
    const std::size_t at = glyph_at(word, offset);
    if (offset <= text_end(word, from))
      continue; // inside a ligature that has been parted
    if (text_end(word, at) == offset) {
      out.push_back(letters(word, from, at, offset));
      Piece nothing = letters(word, at, at, offset);
      out.push_back(division_at(nothing, hyphen_behind(out.back(), shape), nothing));
      from = at;
      continue;
    }
    const std::size_t ligature = at - 1, begin = text_end(word, ligature), end = text_end(word, at);
    if (ligature > from)
      out.push_back(letters(word, from, ligature, begin));
    Piece first = shaped_like(word, word.text.substr(begin, offset - begin), shape);
    Piece second = shaped_like(word, word.text.substr(offset, end - offset), shape);
    const Piece hyphen = hyphen_behind(first, shape);
    out.push_back(division_at(letters(word, ligature, at, end), with_hyphen(std::move(first), hyphen),
                              std::move(second)));
    from = at;
  }
  if (from < word.shaped.glyphs.size()) {
    out.push_back(letters(word, from, word.shaped.glyphs.size(), word.text.size()));
    out.back().hang = word.hang;
  }
  return out;
}

void split_wide(std::vector<Piece> &pieces, base::Pt room) {
  const base::Pt width =
      room + base::Pt{1e-6}; // a column as wide as its widest cell: sums differ in the last bit
  std::vector<Piece> out;
  out.reserve(pieces.size());
  for (std::size_t i = 0; i < pieces.size();) {
    std::size_t end = i;
    base::Pt together;
    while (end < pieces.size() && !may_end(pieces[end]))
      together += pieces[end++].width;
    if (together > width && untied(pieces, i, end))
      continue;
    for (std::size_t k = i; k < end; ++k) {
      if (together > width && k > i)
        out.push_back(line_end(Piece::Kind::chance, emergency_penalty));
      if (pieces[k].width > width && pieces[k].kind == Piece::Kind::box)
        cut_between_letters(out, pieces[k]);
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
