#include <algorithm>

#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_style.h"

namespace strakebook::house {
namespace {

using base::Code;
using style::Align;

constexpr Choice<Align> aligns[] = {
    {"left", Align::left}, {"right", Align::right}, {"centre", Align::centre}, {"justify", Align::justify}};

/// The three faces that a text style sets upright, strong and italic words in.
struct Family {
  std::string upright, strong, italic;
};
using Families = std::map<std::string, Family>;

Families read_families(const YamlNode &node, const style::Style &style, Diagnostics &sink) {
  std::vector<std::string> faces;
  for (const auto &face : style.faces)
    faces.push_back(face.name);
  Families families;
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    Family &family = families[entry.key];
    Binding(sink)
        .need("upright", family.upright)
        .need("strong", family.strong)
        .need("italic", family.italic)
        .apply(entry.value);
    for (const auto &use : entry.value.entries)
      if (std::find(faces.begin(), faces.end(), use.value.text) == faces.end())
        refuse_unknown(sink, Code::unknown_word, use.value.span, use.value.text, "a face", faces);
  });
  return families;
}

void check_tone(const YamlNode &node, std::string_view key, const style::Style &style, Diagnostics &sink) {
  if (const YamlNode *tone = node.find(key))
    known_in(style.tones, tone->text, "a tone", tone->span, sink);
}

style::TextStyle read_one(const YamlNode &node, const Families &families, const style::Style &style,
                          Diagnostics &sink) {
  style::TextStyle text;
  std::string family;
  Binding(sink)
      .need("family", family)
      .need("size", text.size)
      .need("leading", text.leading)
      .may_word<Align>("align", text.align, aligns)
      .may("ink", text.ink)
      .may("soft", text.soft_ink)
      .may("tracking", text.tracking)
      .may("capitals", text.capitals)
      .may("before", text.space_before)
      .may("after", text.space_after)
      .may("keep", text.keep_with_next)
      .may("grid", text.on_grid)
      .apply(node);
  check_tone(node, "ink", style, sink);
  check_tone(node, "soft", style, sink);
  if (const YamlNode *at = node.find("family");
      at && known_in(families, family, "a family of faces", at->span, sink)) {
    const Family &faces = families.at(family);
    text.face = faces.upright;
    text.strong_face = faces.strong;
    text.italic_face = faces.italic;
  }
  return text;
}

} // namespace

void read_text_styles(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  const YamlNode *families_at = node.find("families"), *text_at = node.find("text"),
                 *smallest_at = node.find("smallest");
  if (!families_at || !text_at)
    return;
  base::Pt smallest;
  if (smallest_at)
    read(*smallest_at, smallest, sink);
  const Families families = read_families(*families_at, into, sink);
  each_entry(*text_at, sink, [&](const YamlNode::Entry &entry) {
    const auto &text = into.text[entry.key] = read_one(entry.value, families, into, sink);
    const YamlNode *size = entry.value.find("size"), *leading = entry.value.find("leading");
    if (size && text.size < smallest)
      sink.error(Code::out_of_range, size->span,
                 fmt::format("{} is smaller than anything may be set", size->text),
                 fmt::format("{} or more", smallest_at->text));
    if (size && leading && text.leading < text.size)
      sink.error(Code::out_of_range, leading->span, "lines would run into each other",
                 fmt::format("a leading of {} or more", size->text));
  });
}

} // namespace strakebook::house
