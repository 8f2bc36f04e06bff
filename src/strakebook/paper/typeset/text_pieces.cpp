#include "strakebook/paper/typeset/text_pieces.h"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>
#include <optional>
#include <utility>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/capitals.h"
#include "strakebook/paper/typeset/piece_cuts.h"
#include "strakebook/paper/typeset/reference_text.h"
#include "strakebook/paper/typeset/signs.h"
#include "strakebook/paper/typeset/ties.h"
#include "strakebook/paper/typeset/word_parts.h"

namespace strakebook::typeset {
namespace {

constexpr double hyphen_penalty = 50; // a line that ends at a hyphen written by the author
constexpr double inside_penalty = 200; // a line that ends inside a path or a digest

constexpr std::string_view soft_hyphen = "\xC2\xAD", no_break_space = "\xC2\xA0";

struct Look {
  int font;
  page::Colour colour;
  bool struck;
};

bool blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

std::size_t last_character_at(std::string_view text) {
  std::size_t at = text.size();
  while (at > 0 && (static_cast<unsigned char>(text[at - 1]) & 0xC0) == 0x80)
    --at;
  return at > 0 ? at - 1 : 0;
}

class Cutter {
public:
  Cutter(const style::TextStyle &style, const TextOptions &options, const Context &context, std::size_t parts)
      : style_(style), options_(options), context_(context) {
    pieces_.reserve(parts * 2);
  }

  void operator()(const content::Text &text) { add_text(text.text, text.emphasis, {}, context_.tag); }
  void operator()(const content::Reference &reference) {
    add_text(reference_text(reference, context_), reference.emphasis, reference.target, element(page::Role::link, {}));
  }
  void operator()(const content::Sign &sign) {
    Piece piece;
    piece.kind = Piece::Kind::sign;
    piece.meaning = sign.meaning;
    if (!sign.spoken.empty())
      piece.tag = element(page::Role::span, sign.spoken);
    piece.width = sign_size(style::meaning_style(context_.style, sign.meaning)).width;
    pieces_.push_back(std::move(piece));
  }
  void operator()(const content::LineBreak &) {
    drop_trailing_glue();
    begin_text();
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
    const bool struck = emphasis == content::Emphasis::struck;
    const auto &ink = struck || emphasis == content::Emphasis::soft ? style_.soft_ink : style_.ink;
    return {context_.fonts.index_of(*face), colour(style::tone(context_.style, ink)), struck};
  }

  page::TagPath element(page::Role role, const std::string &spoken) {
    return page::under(context_.tag, {.role = role, .key = ++elements_, .spoken = spoken});
  }

  void add_text(const std::string &given, content::Emphasis emphasis, const std::string &target,
                const page::TagPath &tag) {
    tag_ = tag;
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
    tie_to(word);
    current_ += word;
    if (word.find(soft_hyphen) != std::string_view::npos) {
      std::string bare(word);
      const auto places = take_soft_hyphens(bare);
      add_divided(bare, places, how, target);
      return;
    }
    const auto &setting = context_.style.setting;
    std::size_t from = 0;
    const auto breaks = open_breaks(word, setting.long_words);
    for (const std::size_t to : breaks) {
      add_box(word.substr(from, to - from), how, target);
      pieces_.push_back(line_end(Piece::Kind::chance, written_hyphen(word, to) ? hyphen_penalty : inside_penalty));
      from = to;
    }
    if (breaks.empty() && target.empty())
      add_divided(word, divisions(word), how, target);
    else
      add_box(word.substr(from), how, target);
  }

  static bool written_hyphen(std::string_view word, std::size_t to) {
    return word[to - 1] == '-' || static_cast<unsigned char>(word[to - 1]) >= 0x80;
  }

  /// Only justified text needs it; what is set in capitals or ragged keeps its words whole.
  std::vector<std::size_t> divisions(std::string_view word) const {
    std::vector<std::size_t> places;
    if (!justified() || style_.capitals || !context_.hyphenation)
      return places;
    const auto letters = dividable_letters(word);
    const auto &setting = context_.style.setting;
    for (const std::size_t at : context_.hyphenation->breaks(word.substr(letters.begin, letters.end - letters.begin),
                                                             setting.divide_left, setting.divide_right))
      places.push_back(letters.begin + at);
    return places;
  }

  void add_divided(std::string_view word, const std::vector<std::size_t> &places, const Look &how,
                   const std::string &target) {
    add_box(word, how, target);
    if (places.empty())
      return;
    const Piece whole = std::move(pieces_.back());
    pieces_.pop_back();
    for (auto &piece : divided(whole, places, [&](Piece &part) { shape(part, how); }))
      pieces_.push_back(std::move(piece));
  }

  /// Ties the blank before `word` where it is the first part of one.
  void tie_to(std::string_view word) {
    if (!current_.empty() || !glue_)
      return;
    const auto &ties = context_.style.setting.ties;
    const Before before{before_, earlier_};
    const bool range = is_range(before, word, ties);
    pieces_[*glue_].tied = range || tied(before, word, ties);
    if (range && earlier_glue_)
      pieces_[*earlier_glue_].tied = true;
    if (Piece &last = pieces_[*glue_ - 1]; last.text == before_ && is_fraction(before_) && in_divided_units(word))
      set_as_fraction(last);
  }

  bool in_divided_units(std::string_view word) const {
    const auto &units = context_.style.setting.ties.divided_units;
    return std::any_of(units.begin(), units.end(), [&](const auto &unit) {
      return word.starts_with(unit) && (word.size() == unit.size() || !letter_at(word, unit.size()));
    });
  }

  static bool letter_at(std::string_view word, std::size_t i) {
    return (word[i] >= 'a' && word[i] <= 'z') || (word[i] >= 'A' && word[i] <= 'Z');
  }

  /// "3/16 in" with a blank that does not break is one word.
  bool is_fraction_with_unit(std::string_view word) const {
    const auto blank_at = word.find(no_break_space);
    return blank_at != std::string_view::npos && is_fraction(word.substr(0, blank_at)) &&
           in_divided_units(word.substr(blank_at + no_break_space.size()));
  }

  void set_as_fraction(Piece &piece) const {
    piece.shaped = context_.fonts.shape(piece.font, piece.size, piece.text, FontSet::Figures::fraction);
    piece.width = piece.shaped.width;
  }

  bool justified() const { return style_.align == style::Align::justify; }

  void add_box(std::string_view text, const Look &how, const std::string &target) {
    Piece piece;
    piece.text = text;
    piece.target = target;
    shape(piece, how);
    if (piece.shaped.missing)
      report_missing(*piece.shaped.missing, text);
    if (is_fraction_with_unit(text))
      set_as_fraction(piece);
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
    begin_word();
    pieces_.push_back(std::move(piece));
  }

  void begin_word() {
    earlier_ = std::exchange(before_, std::exchange(current_, {}));
    earlier_glue_ = std::exchange(glue_, pieces_.size());
  }

  void begin_text() {
    earlier_.clear();
    before_.clear();
    current_.clear();
    glue_ = earlier_glue_ = std::nullopt;
  }

  void shape(Piece &piece, const Look &how) const {
    piece.tag = tag_;
    piece.font = how.font;
    piece.colour = how.colour;
    piece.struck = how.struck;
    piece.size = style_.size;
    piece.shaped = context_.fonts.shape(how.font, style_.size, piece.text, options_.tabular);
    if (style_.tracking.v != 0)
      for (auto &glyph : piece.shaped.glyphs) {
        glyph.advance += style_.tracking;
        piece.shaped.width += style_.tracking;
      }
    piece.width = piece.shaped.width;
    piece.hang = justified() ? hang_of(piece) : base::Pt{};
  }

  base::Pt hang_of(const Piece &piece) const {
    const auto &hang = context_.style.setting.hang;
    const auto last = last_character_at(piece.text);
    const auto it = hang.find(std::string_view(piece.text).substr(last));
    if (it == hang.end() || piece.shaped.glyphs.empty())
      return {};
    return piece.shaped.glyphs.back().advance * it->second;
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
  std::string earlier_, before_, current_; ///< words: the one being read, and the two before it
  std::optional<std::size_t> glue_, earlier_glue_; ///< the blanks between them
  page::TagPath tag_;          ///< of the text being cut
  std::int64_t elements_ = 0;  ///< made so far
};

} // namespace

bool may_end(const Piece &piece) {
  const bool fixed = piece.kind == Piece::Kind::box || piece.kind == Piece::Kind::sign || piece.tied;
  return !fixed;
}

std::vector<Piece> pieces_of(const content::Inlines &text, const style::TextStyle &style,
                             const TextOptions &options, const Context &context) {
  Cutter cutter(style, options, context, text.size());
  for (const auto &part : text)
    std::visit(cutter, part);
  return cutter.finished();
}

} // namespace strakebook::typeset
