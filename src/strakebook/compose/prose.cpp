#include "strakebook/compose/voice.h"

#include <array>
#include <cctype>

#include "strakebook/compose/looks.h"

namespace strakebook::compose {

namespace {

constexpr std::string_view no_break = "\u00A0";
constexpr std::array<std::string_view, 7> units = {"mm", "m", "%", "kg", "thou", "in", "ft"};

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }
bool is_blank(char c) { return c == ' ' || c == '\n' || c == '\t' || c == '\r'; }

/// Line ends are the file's, not the text's: every run of blanks is one blank.
std::string one_line(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (!is_blank(c))
      out += c;
    else if (out.empty() || out.back() != ' ')
      out += ' ';
  }
  return out;
}

bool unit_follows(std::string_view rest) {
  for (const auto unit : units)
    if (rest.starts_with(unit) && (rest.size() == unit.size() || !is_letter(rest[unit.size()])))
      return true;
  return false;
}

/// A figure and its unit never part.
std::string with_tied_units(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool tie = text[i] == ' ' && i > 0 && is_digit(text[i - 1]) && unit_follows(text.substr(i + 1));
    if (tie)
      out += no_break;
    else
      out += text[i];
  }
  return out;
}

std::string with_tied_blanks(std::string_view text) {
  std::string out;
  for (const char c : text)
    if (c == ' ')
      out += no_break;
    else
      out += c;
  return out;
}

std::vector<std::string_view> stretches(std::string_view text) {
  std::vector<std::string_view> out;
  while (!text.empty()) {
    const auto end = text.find("\n\n");
    const auto part = text.substr(0, end);
    if (!base::words(part).empty())
      out.push_back(part);
    if (end == std::string_view::npos)
      break;
    text.remove_prefix(end + 2);
  }
  return out;
}

} // namespace

Inlines prose(const Scope &scope, std::string_view text) {
  while (!text.empty() && is_blank(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back()))
    text.remove_suffix(1);
  Inlines out;
  for (const auto &piece : survey::pieces(scope.survey(), text)) {
    if (const auto *pointer = std::get_if<survey::Pointer>(&piece)) {
      const Inlines there = link(target_id(*pointer), with_tied_blanks(one_line(pointer->text)));
      out.insert(out.end(), there.begin(), there.end());
    } else {
      const auto &plain = std::get<survey::Plain>(piece);
      out.push_back(content::Text{with_tied_units(one_line(plain.text)),
                                  plain.emphasis ? content::Emphasis::strong : content::Emphasis::plain});
    }
  }
  return out;
}

Inlines not_given(const Scope &scope) {
  const bool open = scope.survey().report.state != survey::State::final;
  return content::italic(open ? scope.say("voice.not-yet-given") : scope.say("voice.not-stated"));
}

Inlines answer_to(const Scope &scope, const survey::Words &words) {
  return words.given() ? prose(scope, words.text) : not_given(scope);
}

std::vector<content::Block> paragraphs(const Scope &scope, const survey::Words &words,
                                       std::string text_style) {
  std::vector<content::Block> out;
  if (!words.given())
    return {paragraph(not_given(scope), std::move(text_style)), block(content::Rule{look::not_given_rule})};
  for (const auto part : stretches(words.text))
    out.push_back(block(content::Paragraph{prose(scope, part), text_style, {}}, {}, words.span));
  return out;
}

Inlines link(std::string target, std::string shown) {
  return {content::Reference{std::move(target), content::Reference::Form::text, std::move(shown), {}}};
}

Inlines page_link(std::string target) {
  return {content::Reference{std::move(target), content::Reference::Form::page, {}, content::Emphasis::soft}};
}

Inlines label_link(std::string target) {
  return {content::Reference{
      std::move(target), content::Reference::Form::label_page, {}, content::Emphasis::soft}};
}

} // namespace strakebook::compose
