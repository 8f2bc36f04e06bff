#include "strakebook/steel/review/figures_quoted.h"

#include <algorithm>

#include "strakebook/base/measured.h"

namespace strakebook::review {

namespace {

using survey::FoundPointer;
using survey::Target;

struct Token {
  enum class Kind { word, place, figure, stop } kind = Kind::word;
  std::string_view text = {};
  FoundPointer place = {};
  base::Decimal figure = {};
};
using Tokens = std::vector<Token>;

constexpr std::size_t most_words_after = 3, most_words_before = 2, bound_reaches = 2;
constexpr std::string_view links[] = {"and", "or"}; // between the members of a list

bool digit(char c) { return c >= '0' && c <= '9'; }
bool letter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (static_cast<unsigned char>(c) & 0x80) != 0; }

std::string_view run(std::string_view text, std::size_t at, bool (*belongs)(char)) {
  auto end = at;
  while (end < text.size() && belongs(text[end])) ++end;
  return text.substr(at, end - at);
}

class Cutter {
public:
  Cutter(const survey::Survey &survey, std::string_view text) : text_(text), pointers_(survey::scan_pointers(survey, text)) {}

  Tokens tokens() {
    while (at_ < text_.size())
      if (!pointer() && !word() && !number()) mark();
    return std::move(found_);
  }

private:
  bool pointer() {
    const auto found = std::ranges::find(pointers_, at_, &FoundPointer::begin);
    if (found == pointers_.end()) return false;
    const auto text = text_.substr(at_, found->length);
    const bool place = found->leads && (found->target == Target::mark || found->target == Target::pit);
    const bool range = found->target == Target::pit && text != found->id; // P1-P4: nobody's figure
    if (range) add({.kind = Token::Kind::stop});
    else if (place) add({.kind = Token::Kind::place, .place = *found});
    at_ += found->length;
    return true;
  }

  bool word() {
    const auto letters = run(text_, at_, [](char c) { return letter(c) || digit(c); });
    if (letters.empty() || digit(letters.front())) return false;
    add({.kind = Token::Kind::word, .text = letters});
    at_ += letters.size();
    return true;
  }

  /// A figure in mm; anything else that begins with a digit is passed over with what hangs on to it.
  bool number() {
    auto digits = run(text_, at_, [](char c) { return digit(c) || letter(c) || c == '.' || c == '-' || c == '/'; });
    if (digits.empty() || !digit(digits.front())) return false;
    at_ += digits.size();
    while (digits.ends_with('.')) digits.remove_suffix(1);
    const auto value = base::parse_decimal(digits);
    if (value && value->places > 0 && in_mm()) add({.kind = Token::Kind::figure, .figure = *value});
    return true;
  }

  /// Takes the unit that follows; false: it is another than mm.
  bool in_mm() {
    auto next = at_;
    while (next < text_.size() && text_[next] == ' ') ++next;
    if (next < text_.size() && text_[next] == '%') return false;
    const auto unit = base::unit_named(run(text_, next, letter));
    if (!unit) return true;
    if (*unit != base::Unit::millimetre) return false;
    at_ = next + run(text_, next, letter).size();
    return true;
  }

  void mark() {
    if (text_[at_] == ';' || text_[at_] == ':') add({.kind = Token::Kind::stop});
    ++at_;
  }
  void add(Token token) { found_.push_back(std::move(token)); }

  std::string_view text_;
  std::vector<FoundPointer> pointers_;
  std::size_t at_ = 0;
  Tokens found_;
};

/// Tokens [first, last] of one kind with nothing but commas and links between them.
struct Group {
  std::size_t first = 0, last = 0;
};

bool is_link(const Token &token) { return token.kind == Token::Kind::word && std::ranges::find(links, token.text) != std::end(links); }

std::vector<Group> groups(const Tokens &tokens, Token::Kind kind) {
  std::vector<Group> all;
  for (std::size_t i = 0; i < tokens.size(); ++i) {
    if (tokens[i].kind != kind) continue;
    const bool follows = !all.empty() && (i == all.back().last + 1 || (i == all.back().last + 2 && is_link(tokens[i - 1])));
    if (follows) all.back().last = i;
    else all.push_back({i, i});
  }
  return all;
}

/// Words between two tokens; nullopt where something other than words stands there.
std::optional<std::size_t> words_between(const Tokens &tokens, std::size_t before, std::size_t after) {
  for (auto i = before + 1; i < after; ++i)
    if (tokens[i].kind != Token::Kind::word) return std::nullopt;
  return after - before - 1;
}

bool is_bound(const Tokens &tokens, const Group &figures, const std::vector<std::string> &bounds) {
  const auto bounding = [&](const Token &token) {
    return token.kind == Token::Kind::word && std::ranges::find(bounds, token.text) != bounds.end();
  };
  const auto from = figures.first - std::min(figures.first, bound_reaches);
  const auto to = std::min(figures.last + bound_reaches + 1, tokens.size());
  return std::any_of(tokens.begin() + static_cast<std::ptrdiff_t>(from), tokens.begin() + static_cast<std::ptrdiff_t>(to), bounding);
}

const Group *figures_of(const Tokens &tokens, const Group &places, const std::vector<Group> &figures) {
  for (const Group &group : figures)
    if (group.first > places.last)
      if (const auto words = words_between(tokens, places.last, group.first); words && *words <= most_words_after) return &group;
  for (const Group &group : figures)
    if (group.last < places.first)
      if (const auto words = words_between(tokens, group.last, places.first); words && *words <= most_words_before) return &group;
  return nullptr;
}

} // namespace

std::vector<Quoted> figures_quoted(const survey::Survey &survey, std::string_view sentence, const std::vector<std::string> &bounds) {
  const Tokens tokens = Cutter(survey, sentence).tokens();
  const auto figures = groups(tokens, Token::Kind::figure);
  std::vector<Quoted> all;
  for (const Group &places : groups(tokens, Token::Kind::place)) {
    const Group *beside = figures_of(tokens, places, figures);
    if (!beside || is_bound(tokens, *beside, bounds)) continue;
    Quoted quoted;
    for (auto i = places.first; i <= places.last; ++i)
      if (tokens[i].kind == Token::Kind::place) quoted.places.push_back(tokens[i].place);
    for (auto i = beside->first; i <= beside->last; ++i)
      if (tokens[i].kind == Token::Kind::figure) quoted.figures.push_back(tokens[i].figure);
    all.push_back(std::move(quoted));
  }
  return all;
}

} // namespace strakebook::review
