#include <string_view>

#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_style.h"
#include "strakebook/paper/style/required_names.h"

namespace strakebook::house {
namespace {

using base::Code;

template <class Names, class Map>
void demand(const YamlNode &style, std::string_view map, const Names &names, const Map &given,
            Diagnostics &sink) {
  const YamlNode *node = style.find(map);
  if (!node)
    return; // its absence is reported where keys are read
  for (const std::string_view name : names)
    if (given.find(std::string(name)) == given.end())
      sink.error(Code::missing_key, node->span,
                 fmt::format("{} lacks \"{}\", which every page needs", map, name),
                 fmt::format("an entry \"{}\"", name), fmt::format("{}: ...", name));
}

/// Relative luminance weights of sRGB (ITU-R BT.709), good enough to order tones from dark to light.
double lightness(const style::Tone &tone) { return 0.2126 * tone.r + 0.7152 * tone.g + 0.0722 * tone.b; }

/// Dark is thin: each band of the ramp is lighter than the one before, in a grey copy too.
void check_ramp(const YamlNode &style_node, const style::Style &style, Diagnostics &sink) {
  const style::Tone *before = nullptr;
  for (int band = 1;; ++band) {
    const std::string name = fmt::format("ramp-{}", band);
    const auto at = style.tones.find(name);
    if (at == style.tones.end())
      return;
    if (before && lightness(at->second) <= lightness(*before))
      sink.error(Code::layout_order, style_node.find("tones")->find(name)->span,
                 fmt::format("{} is not lighter than the band before it", name),
                 "tones from dark (thin) to light (thick)");
    before = &at->second;
  }
}

} // namespace

void check_style(const YamlNode &node, const style::Style &style, Diagnostics &sink) {
  demand(node, "text", style::required_text_styles, style.text, sink);
  demand(node, "measures", style::required_measures, style.measures, sink);
  demand(node, "tones", style::required_tones, style.tones, sink);
  demand(node, "meanings", style::required_meanings, style.meanings, sink);
  demand(node, "tables", style::required_table_styles, style.tables, sink);
  demand(node, "keys", style::required_key_styles, style.keys, sink);
  demand(node, "masters", style::required_masters, style.masters, sink);
  check_ramp(node, style, sink);
}

} // namespace strakebook::house
