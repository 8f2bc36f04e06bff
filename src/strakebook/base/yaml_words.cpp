#include "strakebook/base/yaml_words.h"

#include <array>

#include <fmt/format.h>

namespace strakebook::base {
namespace {

struct Known {
  std::string_view begins; ///< how the parser's message begins (yaml-cpp 0.7)
  Code code;
  std::string_view message, write;
  int back = 0;
  char unclosed = '\0';
};

constexpr std::string_view quote_it = "quotes about a text that begins with such a sign";

constexpr auto known = std::to_array<Known>({
    {"end of map not found", Code::yaml_syntax, "this does not fit the map that it stands in",
     "keys of one map one under the other, a blank after each colon, every quote and bracket closed"},
    {"end of map flow not found", Code::yaml_syntax, "a { is not closed before this place",
     "} at its end, and a comma between its keys", 0, '{'},
    {"end of sequence flow not found", Code::yaml_syntax, "a [ is not closed before this place",
     "] at its end, and a comma between its items", 0, '['},
    {"end of sequence not found", Code::yaml_syntax, "this does not fit the list that it stands in",
     "every - of a list at the same column"},
    {"illegal map value", Code::yaml_syntax, "a colon where no key can stand",
     "quotes about a text that holds a colon and a blank; keys of one map one under the other"},
    {"illegal map key", Code::yaml_syntax, "a key where none can stand",
     "keys of one map one under the other"},
    {"illegal flow end", Code::yaml_syntax, "a bracket that nothing opened",
     "the text without it, or quotes about the text"},
    {"illegal block entry", Code::yaml_syntax, "a list cannot begin here",
     "the first - of a list on a line of its own; quotes about a text that begins with -"},
    {"unknown token", Code::yaml_syntax, "a text cannot begin with this sign", quote_it},
    {"unknown escape character", Code::yaml_syntax, "a backslash before a letter that means nothing there",
     "single quotes, in which a backslash is only itself", 2},
    {"illegal tab", Code::yaml_syntax, "a tab indents this line", "blanks for indentation"},
    {"unexpected character in block", Code::yaml_syntax, "something after | or > in its line",
     "the block text from the next line on"},
    {"cannot set zero indentation", Code::yaml_syntax, "a 0 after | or >", "| or > alone"},
    {"illegal EOF in scalar", Code::yaml_open_quote, "the file ends inside a quoted text",
     "the closing quote"},
    {"illegal document indicator", Code::yaml_open_quote, "a --- or ... inside a quoted text",
     "the closing quote before this line"},
    {"the referenced anchor", Code::yaml_forbidden, "an alias (* and a name)",
     "the value itself; quotes about a text that begins with *"},
    {"alias not found", Code::yaml_forbidden, "an alias (* and a name)", quote_it},
    {"illegal character found while scanning alias", Code::yaml_forbidden, "an alias (* and a name)",
     quote_it},
    {"anchor not found", Code::yaml_forbidden, "an anchor (& and a name)", quote_it},
    {"illegal character found while scanning anchor", Code::yaml_forbidden, "an anchor (& and a name)",
     quote_it},
    {"illegal character found while scanning tag", Code::yaml_forbidden, "a tag (! and a name)", quote_it},
    {"tag handle", Code::yaml_forbidden, "a tag (! and a name)", quote_it},
});

/// Column of the first tab that indents the line; 0: none does.
int tab_in_indentation(std::string_view line) {
  const std::size_t tab = line.substr(0, line.find_first_not_of(" \t")).find('\t');
  return tab == line.npos ? 0 : static_cast<int>(tab) + 1;
}

} // namespace

YamlFault explain_yaml(std::string_view parser_message, std::string_view line) {
  if (const int tab = tab_in_indentation(line))
    return {Code::yaml_syntax, "a tab indents this line", "blanks for indentation", 0, tab, '\0'};
  for (const Known &k : known)
    if (parser_message.starts_with(k.begins))
      return {k.code, std::string(k.message), std::string(k.write), k.back, 0, k.unclosed};
  return {Code::yaml_syntax,
          fmt::format("this is not well-formed YAML (the parser says: {})", parser_message),
          "the line so that it fits the lines about it"};
}

} // namespace strakebook::base
