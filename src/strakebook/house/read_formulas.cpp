#include <algorithm>
#include <cctype>

#include <fmt/format.h>

#include "strakebook/base/text.h"
#include "strakebook/house/bind.h"
#include "strakebook/house/placeholders.h"
#include "strakebook/house/read_wording.h"

namespace strakebook::house {
namespace {

using base::Code;

bool begins_word(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }
bool in_word(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }

/// The words of an expression, each once, in their order.
std::vector<std::string> words_of(std::string_view expression) {
  std::vector<std::string> words;
  for (auto at = expression.begin(); at != expression.end();) {
    at = std::find_if(at, expression.end(), begins_word);
    const auto end = std::find_if_not(at, expression.end(), in_word);
    std::string word(at, end);
    if (!word.empty() && std::find(words.begin(), words.end(), word) == words.end())
      words.push_back(std::move(word));
    at = end;
  }
  return words;
}

bool given_by_mathematics(const std::string &word) { return word == "pi" || word == "ln"; }

void check_symbols(const YamlNode &text, const Formula &formula, Diagnostics &sink) {
  const auto equals = formula.text.find('=');
  if (equals == std::string::npos || words_of(formula.text.substr(0, equals)).size() != 1 ||
      formula.text.find('=', equals + 1) != std::string::npos) {
    sink.error(Code::formula_symbol, text.span, fmt::format("\"{}\" is not an equation", formula.text),
               "one symbol, one sign of equality, one expression", "W = 7.85 A t");
    return;
  }
  const auto used = words_of(formula.text.substr(equals + 1));
  for (const std::string &word : used)
    if (!given_by_mathematics(word) && !formula.inputs.count(word))
      sink.error(Code::formula_symbol, text.span, fmt::format("the formula does not say what {} is", word),
                 "every symbol of the formula among its inputs", fmt::format("inputs: {{{}: ...}}", word));
  for (const auto &[symbol, meaning] : formula.inputs)
    if (std::find(used.begin(), used.end(), symbol) == used.end())
      sink.error(Code::formula_symbol, text.span, fmt::format("{} is explained and does not stand in the formula", symbol),
                 "inputs that the formula reckons with");
}

void read_text(const YamlNode &node, const std::string &steel, std::string &into, Diagnostics &sink) {
  static const std::vector<std::string> known{"steel"};
  std::string text;
  if (!read(node, text, sink))
    return;
  if (!braces_close(text)) {
    sink.error(Code::layout_pattern, node.span, "a brace does not make a place holder", "{steel}, or no brace");
    return;
  }
  for (const std::string &name : placeholders(text))
    if (name != known.front()) {
      refuse_unknown(sink, Code::layout_pattern, node.span, name, "a place holder", known);
      return;
    }
  const base::Fill fills[] = {{known.front(), steel}};
  into = base::filled(text, fills);
}

void read_inputs(const YamlNode &node, std::map<std::string, std::string> &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) { read(entry.value, into[entry.key], sink); });
}

} // namespace

std::map<std::string, Formula> read_formulas(const YamlNode &node, const std::string &steel, Diagnostics &sink) {
  std::map<std::string, Formula> formulas;
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    const std::size_t before = sink.errors();
    Formula formula;
    Binding(sink)
        .need("name", formula.name)
        .by("text", true, [&](const YamlNode &n) { read_text(n, steel, formula.text, sink); })
        .by("inputs", true, [&](const YamlNode &n) { read_inputs(n, formula.inputs, sink); })
        .need("source", formula.source)
        .apply(entry.value);
    if (sink.errors() == before)
      check_symbols(*entry.value.find("text"), formula, sink);
    formulas[entry.key] = std::move(formula);
  });
  return formulas;
}

} // namespace strakebook::house
