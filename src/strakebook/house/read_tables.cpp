#include "strakebook/house/bind.h"
#include "strakebook/house/read_style.h"

namespace strakebook::house {
namespace {

void check_text_styles(const YamlNode &node, std::initializer_list<std::string_view> keys,
                       const style::Style &style, Diagnostics &sink) {
  for (const std::string_view key : keys)
    if (const YamlNode *name = node.find(key))
      known_in(style.text, name->text, "a text style", name->span, sink);
}

void read_rules(const YamlNode &node, style::TableStyle &into, Diagnostics &sink) {
  Binding(sink)
      .need("top", into.rule_top)
      .need("head", into.rule_head)
      .need("group", into.rule_group)
      .need("row", into.rule_row)
      .need("foot", into.rule_foot)
      .apply(node);
}

void read_rule_tones(const YamlNode &node, style::TableStyle &into, const style::Style &style,
                     Diagnostics &sink) {
  Binding(sink)
      .need("rule", into.rule_tone)
      .need("group", into.group_rule_tone)
      .need("row", into.row_rule_tone)
      .apply(node);
  for (const auto &entry : node.entries)
    known_in(style.tones, entry.value.text, "a tone", entry.value.span, sink);
}

void read_abreast(const YamlNode &node, int &into, Diagnostics &sink) {
  if (read(node, into, sink) && into < 1)
    sink.error(base::Code::out_of_range, node.span, "a table cannot stand in no column", "1 or more");
}

} // namespace

void read_tables(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    style::TableStyle &t = into.tables[entry.key];
    Binding(sink)
        .need("head", t.head)
        .need("unit", t.unit)
        .need("body", t.body)
        .need("group", t.group)
        .need("caption", t.caption)
        .need("note", t.note)
        .need("row-pitch", t.row_pitch)
        .need("cell-gap", t.cell_gap)
        .by("rules", true, [&](const YamlNode &n) { read_rules(n, t, sink); })
        .by("rule-tones", true, [&](const YamlNode &n) { read_rule_tones(n, t, into, sink); })
        .need("before", t.space_before)
        .need("after", t.space_after)
        .need("keep-rows", t.keep_rows)
        .need("keep-group", t.keep_group)
        .need("keep-table", t.keep_table)
        .by("abreast", false, [&](const YamlNode &n) { read_abreast(n, t.abreast, sink); })
        .apply(entry.value);
    check_text_styles(entry.value, {"head", "unit", "body", "group", "caption", "note"}, into, sink);
  });
}

void read_keys(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    style::KeyStyle &k = into.keys[entry.key];
    Binding(sink)
        .need("label", k.label)
        .need("value", k.value)
        .need("label-width", k.label_width)
        .need("gap", k.gap)
        .need("row-gap", k.row_gap)
        .apply(entry.value);
    check_text_styles(entry.value, {"label", "value"}, into, sink);
  });
}

} // namespace strakebook::house
