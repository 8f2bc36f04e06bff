#include <algorithm>
#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_style.h"

namespace strakebook::house {
namespace {

using base::Code;
using base::Pt;

/// Widths written to 0.1 mm may miss the body by their rounding.
constexpr double rounding_points = 0.3;

void read_sheet(const YamlNode &node, base::Size &into, Diagnostics &sink) {
  std::vector<Pt> sides;
  if (!read(node, sides, sink))
    return;
  if (sides.size() == 2)
    into = {sides[0], sides[1]};
  else
    sink.error(Code::wrong_kind, node.span, "a sheet has a width and a height", "two lengths",
               "[210mm, 297mm]");
}

void check_body(const YamlNode::Entry &entry, const style::PageMaster &master, Diagnostics &sink) {
  if (style::body_width(master) > Pt{} && style::body_height(master) > Pt{})
    return;
  sink.error(Code::out_of_range, entry.key_span,
             fmt::format("the margins of \"{}\" leave nothing to print on", entry.key),
             "margins that together are less than the sheet");
}

/// Where a master is wrong itself, that is what has been reported.
bool masters_are_sound(const style::Style &style) {
  return std::all_of(style.masters.begin(), style.masters.end(),
                     [](const auto &m) { return style::body_width(m.second) > Pt{}; });
}

bool fits_a_body(const style::Lattice &lattice, const style::Style &style) {
  const auto sum = [](const std::vector<Pt> &parts) {
    return std::accumulate(parts.begin(), parts.end(), Pt{});
  };
  const Pt width = sum(lattice.widths) + sum(lattice.gutters);
  return std::any_of(style.masters.begin(), style.masters.end(), [&](const auto &m) {
    return std::abs((style::body_width(m.second) - width).v) <= rounding_points;
  });
}

void check_lattice(const YamlNode::Entry &entry, const style::Lattice &lattice, const style::Style &style,
                   Diagnostics &sink) {
  if (lattice.gutters.size() + 1 != lattice.widths.size())
    sink.error(Code::out_of_range, entry.key_span,
               fmt::format("{} columns and {} gutters", lattice.widths.size(), lattice.gutters.size()),
               "one gutter fewer than columns");
  else if (masters_are_sound(style) && !fits_a_body(lattice, style))
    sink.error(Code::out_of_range, entry.key_span,
               fmt::format("the columns of \"{}\" do not fill the body of any page", entry.key),
               "widths and gutters that add up to the width between the margins");
}

} // namespace

void read_masters(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    style::PageMaster &m = into.masters[entry.key];
    const std::size_t before = sink.errors();
    Binding(sink)
        .by("sheet", true, [&](const YamlNode &n) { read_sheet(n, m.sheet, sink); })
        .need("left", m.left)
        .need("right", m.right)
        .need("top", m.top)
        .need("bottom", m.bottom)
        .need("head-baseline", m.head_baseline)
        .need("head-rule", m.head_rule)
        .need("foot-baseline", m.foot_baseline)
        .apply(entry.value);
    if (sink.errors() == before)
      check_body(entry, m, sink);
  });
}

void read_lattices(const YamlNode &node, style::Style &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    style::Lattice &lattice = into.lattices[entry.key];
    const std::size_t before = sink.errors();
    Binding(sink).need("widths", lattice.widths).need("gutters", lattice.gutters).apply(entry.value);
    if (sink.errors() == before)
      check_lattice(entry, lattice, into, sink);
  });
}

} // namespace strakebook::house
