#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_style.h"

namespace strakebook::house {
namespace {

using style::Hatch;
using style::Shape;

constexpr Choice<Hatch> hatches[] = {
    {"none", Hatch::none}, {"diagonal", Hatch::diagonal}, {"cross", Hatch::cross}};
constexpr Choice<Shape> shapes[] = {{"none", Shape::none},
                                    {"circle", Shape::circle},
                                    {"half-diamond", Shape::half_diamond},
                                    {"triangle-down", Shape::triangle_down},
                                    {"dash", Shape::dash},
                                    {"cross", Shape::cross},
                                    {"dot", Shape::dot},
                                    {"ring", Shape::ring},
                                    {"tick", Shape::tick},
                                    {"caution-bar", Shape::caution_bar},
                                    {"line-heavy", Shape::line_heavy},
                                    {"line-light", Shape::line_light},
                                    {"line-dashed", Shape::line_dashed},
                                    {"line-dotted", Shape::line_dotted},
                                    {"line-double", Shape::line_double}};

/// A key that means nothing unless another stands beside it.
void goes_with(const YamlNode &node, std::string_view key, std::string_view other, Diagnostics &sink) {
  if (node.find(key) && !node.find(other))
    sink.error(base::Code::missing_key, node.find(key)->span,
               fmt::format("\"{}\" has no \"{}\" beside it", key, other),
               fmt::format("a value for {}", other), fmt::format("{}: ...", other));
}

} // namespace

void read_meanings(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    style::MeaningStyle &m = into.meanings[entry.key];
    Binding(sink)
        .may("fill", m.fill)
        .may("stroke", m.stroke)
        .may("width", m.stroke_width)
        .may("dash", m.dash)
        .may_word<Hatch>("hatch", m.hatch, hatches)
        .may("hatch-pitch", m.hatch_pitch)
        .may("hatch-width", m.hatch_width)
        .may("hatch-tone", m.hatch_tone)
        .may_word<Shape>("shape", m.shape, shapes)
        .may("size", m.shape_size)
        .apply(entry.value);
    for (const std::string_view key : {"fill", "stroke", "hatch-tone"})
      if (const YamlNode *tone = entry.value.find(key))
        known_in(into.tones, tone->text, "a tone", tone->span, sink);
    goes_with(entry.value, "stroke", "width", sink);
    for (const std::string_view key : {"hatch-pitch", "hatch-width", "hatch-tone"})
      goes_with(entry.value, "hatch", key, sink);
    goes_with(entry.value, "shape", "size", sink);
  });
}

} // namespace strakebook::house
