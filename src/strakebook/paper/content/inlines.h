#pragma once

#include <string>
#include <variant>
#include <vector>

namespace strakebook::content {

enum class Emphasis { plain, strong, italic, soft, struck }; ///< struck: soft, with a line through it

struct Text {
  std::string text; ///< UTF-8; U+00A0 and U+202F do not break, U+2011 is a hyphen that does not
  Emphasis emphasis = Emphasis::plain;
};

/// Leads to the block with this id. What is printed is made by typeset from where that block landed:
/// page "p. 9", label "Table 4", label_page "Table 4, p. 9", text: `shown` alone, text_page: "`shown`, p. 9".
struct Reference {
  enum class Form { page, label, label_page, text, text_page };
  std::string target;
  Form form = Form::label_page;
  std::string shown;
  Emphasis emphasis = Emphasis::plain;
};

/// A small sign set in the line, drawn as style says for this meaning ("falls-short").
struct Sign {
  std::string meaning;
  std::string spoken; ///< what it says in words, for readers who cannot see it
};

/// A line end that is meant.
struct LineBreak {};

using Inline = std::variant<Text, Reference, Sign, LineBreak>;
using Inlines = std::vector<Inline>;

Inlines plain(std::string text);
Inlines strong(std::string text);
Inlines italic(std::string text);
Inlines soft(std::string text);
Inlines struck(std::string text);
Inlines operator+(Inlines a, Inlines b);

} // namespace strakebook::content
