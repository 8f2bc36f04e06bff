#include "strakebook/house/read_wording.h"

#include <algorithm>
#include <stdexcept>

#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/placeholders.h"

namespace strakebook::house {
namespace {

using base::Code;

constexpr std::size_t months_in_a_year = 12;

void read_words(const YamlNode &node, Wording &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    std::string text;
    if (!read(entry.value, text, sink))
      return;
    if (!braces_close(text))
      sink.error(Code::layout_pattern, entry.value.span,
                 fmt::format("a brace in \"{}\" does not make a place holder", entry.key),
                 "place holders such as {page}");
    into.words[entry.key] = text;
  });
}

void read_sections(const YamlNode &node, Wording &into, const style::Style &style, Diagnostics &sink) {
  for (const YamlNode::Entry *entry : in_order(node, sink)) {
    SectionPlan plan;
    plan.id = entry->key;
    Binding(sink)
        .need("title", plan.title)
        .need("starts-page", plan.starts_page)
        .need("master", plan.master)
        .may("text", plan.text)
        .known("after")
        .apply(entry->value);
    if (const YamlNode *master = entry->value.find("master"))
      known_in(style.masters, plan.master, "a page master", master->span, sink);
    into.sections.push_back(plan);
  }
}

void read_when(const YamlNode &node, std::string &into, Diagnostics &sink) {
  const auto known = caution_occasions();
  if (!read(node, into, sink))
    return;
  if (std::find(known.begin(), known.end(), into) == known.end())
    refuse_unknown(sink, Code::unknown_word, node.span, into, "an occasion for a caution", known);
}

void read_cautions(const YamlNode &node, Wording &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    Caution caution;
    caution.id = entry.key;
    Binding(sink)
        .by("when", true, [&](const YamlNode &n) { read_when(n, caution.when, sink); })
        .need("title", caution.title)
        .need("text", caution.text)
        .need("source", caution.source)
        .apply(entry.value);
    into.cautions.push_back(caution);
  });
}

void read_months(const YamlNode &node, Wording &into, Diagnostics &sink) {
  if (!read(node, into.months, sink) || into.months.size() == months_in_a_year)
    return;
  sink.error(Code::out_of_range, node.span, fmt::format("{} months are written here", into.months.size()),
             fmt::format("the names of {} months", months_in_a_year));
}

} // namespace

std::vector<std::string> caution_occasions() {
  return {"always", "hot-work",    "steel-added", "doubler",    "confined", "lifting",
          "hammer", "old-coating", "afloat",      "spot-check", "gauge"};
}

Wording read_wording(const YamlNode &tree, const style::Style &style, Diagnostics &sink) {
  Wording w;
  const auto each_text = [&](const YamlNode &n, auto take) {
    each_entry(n, sink, [&](const YamlNode::Entry &e) {
      std::string text;
      if (read(e.value, text, sink))
        take(e.key, text);
    });
  };
  Binding(sink)
      .need("language", w.language)
      .need("firm", w.firm)
      .by("words", true, [&](const YamlNode &n) { read_words(n, w, sink); })
      .by("sections", true, [&](const YamlNode &n) { read_sections(n, w, style, sink); })
      .by("cautions", true, [&](const YamlNode &n) { read_cautions(n, w, sink); })
      .by("jurisdiction", true,
          [&](const YamlNode &n) {
            each_text(n, [&](const auto &, const auto &text) { w.jurisdiction.push_back(text); });
          })
      .by("glossary", true,
          [&](const YamlNode &n) {
            each_text(n, [&](const auto &term, const auto &text) { w.glossary[term] = text; });
          })
      .by("formula-signs", true,
          [&](const YamlNode &n) {
            each_text(n, [&](const auto &symbol, const auto &sign) { w.signs[symbol] = sign; });
          })
      .by("formulas", true, [](const YamlNode &) {})
      .by("months", true, [&](const YamlNode &n) { read_months(n, w, sink); })
      .by("issue", true, [](const YamlNode &) {})
      .by("policy", true, [](const YamlNode &) {})
      .by("style", true, [](const YamlNode &) {})
      .apply(tree);
  return w;
}

const std::string &word(const Wording &wording, std::string_view key) {
  const auto at = wording.words.find(std::string(key));
  if (at == wording.words.end())
    throw std::out_of_range("no layout gives the wording \"" + std::string(key) + "\"");
  return at->second;
}

} // namespace strakebook::house
