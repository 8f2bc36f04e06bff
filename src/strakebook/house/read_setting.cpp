#include "strakebook/house/bind.h"
#include "strakebook/house/read_style.h"

namespace strakebook::house {
namespace {

/// A part of a width, from 0 to 1.
void read_part(const YamlNode &node, double &into, Diagnostics &sink) {
  base::Ratio part;
  if (read(node, part, sink))
    into = static_cast<double>(part.num) / static_cast<double>(part.den);
}

void read_ties(const YamlNode &node, style::Ties &ties, Diagnostics &sink) {
  Binding(sink)
      .need("units", ties.units)
      .need("divided-units", ties.divided_units)
      .need("months", ties.months)
      .need("leaders", ties.leaders)
      .need("ranges", ties.ranges)
      .need("arrows", ties.arrows)
      .need("titles", ties.titles)
      .need("dashes", ties.dashes)
      .need("code-letters", ties.code_letters)
      .apply(node);
}

} // namespace

void read_setting(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  style::Setting &s = into.setting;
  const auto part = [&](double &value) {
    return [&](const YamlNode &n) { read_part(n, value, sink); };
  };
  const auto blanks = [&](const YamlNode &n) {
    Binding(sink)
        .by("grow", true, part(s.blanks_grow))
        .by("shrink", true, part(s.blanks_shrink))
        .apply(n);
  };
  const auto divide = [&](const YamlNode &n) {
    Binding(sink)
        .need("left", s.divide_left)
        .need("right", s.divide_right)
        .need("in-a-row", s.divided_in_a_row)
        .apply(n);
  };
  const auto rivers = [&](const YamlNode &n) {
    Binding(sink).need("lines", s.river_lines).by("overlap", true, part(s.river_overlap)).apply(n);
  };
  const auto hang = [&](const YamlNode &n) {
    each_entry(n, sink,
               [&](const YamlNode::Entry &entry) { read_part(entry.value, s.hang[entry.key], sink); });
  };
  const auto long_words = [&](const YamlNode &n) {
    Binding(sink)
        .need("from", s.long_words.from)
        .need("after", s.long_words.after)
        .need("digits", s.long_words.digits)
        .apply(n);
  };
  Binding(sink)
      .by("blanks", true, blanks)
      .by("divide", true, divide)
      .need("last-line", s.last_line)
      .by("rivers", true, rivers)
      .by("hang", true, hang)
      .by("long-words", true, long_words)
      .by("together", true, [&](const YamlNode &n) { read_ties(n, s.ties, sink); })
      .apply(node);
}

} // namespace strakebook::house
