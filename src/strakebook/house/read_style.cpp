#include "strakebook/house/read_style.h"

#include <fmt/format.h>

#include "strakebook/house/bind.h"

namespace strakebook::house {
namespace {

// A name whose value is wrong is still a known name: one slip is one message, not one for every place that
// uses it.
void read_faces(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    style::Face &face = into.faces.emplace_back();
    face.name = entry.key;
    read(entry.value, face.file, sink);
  });
}

template <class T> void read_named(const YamlNode &node, std::map<std::string, T> &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) { read(entry.value, into[entry.key], sink); });
}

/// One line of a layout, and one place where it may be wrong.
void read_photographs(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  auto &photographs = into.photographs;
  const auto within = [&sink](int &value, int least, int most) {
    return [&value, least, most, &sink](const YamlNode &n) {
      if (read(n, value, sink) && (value < least || value > most))
        sink.error(base::Code::out_of_range, n.span, fmt::format("{} is not from {} to {}", value, least, most),
                   fmt::format("a whole number from {} to {}", least, most));
    };
  };
  Binding(sink)
      .by("per-inch", true, within(photographs.per_inch, 72, 1200))
      .by("jpeg-quality", true, within(photographs.quality, 1, 100))
      .by("wide-from", true, within(photographs.wide_from, 2, 100))
      .apply(node);
}

} // namespace

style::Style read_style(const YamlNode &node, Diagnostics &sink) {
  style::Style s;
  // What others name comes first, whatever the order of the file.
  if (const YamlNode *faces = node.find("faces"))
    read_faces(*faces, s, sink);
  if (const YamlNode *tones = node.find("tones"))
    read_named(*tones, s.tones, sink);
  read_text_styles(node, s, sink);
  if (const YamlNode *masters = node.find("masters"))
    read_masters(*masters, s, sink);
  const auto part = [&](auto reader) { return [&, reader](const YamlNode &n) { reader(n, s, sink); }; };
  const auto read_before = [](const YamlNode &) {};
  Binding(sink)
      .need("grid", s.grid)
      .by("smallest", true, read_before)
      .by("faces", true, read_before)
      .by("families", true, read_before)
      .by("tones", true, read_before)
      .by("text", true, read_before)
      .by("masters", true, read_before)
      .by("setting", true, part(read_setting))
      .by("meanings", true, part(read_meanings))
      .by("lattices", true, part(read_lattices))
      .by("tables", true, part(read_tables))
      .by("keys", true, part(read_keys))
      .by("photographs", true, part(read_photographs))
      .by("measures", true, [&](const YamlNode &n) { read_named(n, s.measures, sink); })
      .apply(node);
  check_style(node, s, sink);
  return s;
}

} // namespace strakebook::house
