#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

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

constexpr std::string_view rest = "rest"; ///< a width that shares what the others leave of the body

double millimetres(Pt length) {
  constexpr double points_a_millimetre = 72 / 25.4;
  return length.v / points_a_millimetre;
}

Pt sum(const std::vector<Pt> &parts) { return std::accumulate(parts.begin(), parts.end(), Pt{}); }

/// Widths as written; those of `rest` are nought, and their places are noted.
void read_widths(const YamlNode &node, std::vector<Pt> &into, std::vector<std::size_t> &open, Diagnostics &sink) {
  if (node.kind != YamlNode::Kind::list)
    sink.error(Code::wrong_kind, node.span, "a list is needed here", "lengths on paper, and rest for those that share what is left",
               "[rest, 52mm]");
  for (const YamlNode &item : node.items) {
    if (item.text == rest)
      open.push_back(into.size());
    Pt width{};
    if (item.text != rest && !read(item, width, sink))
      return;
    into.push_back(width);
  }
}

/// Fills the open widths from the body of the master, or says which sums do not agree.
void fill_body(const YamlNode::Entry &entry, const std::string &on, Pt body, const std::vector<std::size_t> &open,
               style::Lattice &lattice, Diagnostics &sink) {
  const Pt written = sum(lattice.widths) + sum(lattice.gutters), left = body - written;
  const bool agrees = open.empty() ? std::abs(left.v) <= rounding_points : left.v > 0;
  if (!agrees) {
    sink.error(Code::out_of_range, entry.key_span,
               fmt::format("the columns and gutters of \"{}\" come to {:.1f} mm, the body of \"{}\" is {:.1f} mm wide", entry.key,
                           millimetres(written), on, millimetres(body)),
               "widths and gutters that add up to the width between the margins",
               "rest for one column or more: they share what the others leave");
    return;
  }
  for (const std::size_t at : open)
    lattice.widths[at] = left / static_cast<double>(open.size());
}

void check_lattice(const YamlNode::Entry &entry, const std::string &on, const std::vector<std::size_t> &open,
                   style::Lattice &lattice, const style::Style &style, Diagnostics &sink) {
  if (lattice.gutters.size() + 1 != lattice.widths.size()) {
    sink.error(Code::out_of_range, entry.key_span,
               fmt::format("{} columns and {} gutters", lattice.widths.size(), lattice.gutters.size()),
               "one gutter fewer than columns");
    return;
  }
  if (!known_in(style.masters, on, "a page master", entry.value.find("on")->span, sink))
    return;
  const Pt body = style::body_width(style.masters.at(on));
  if (body > Pt{}) // a master that is wrong itself has been reported
    fill_body(entry, on, body, open, lattice, sink);
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
    std::vector<std::size_t> open;
    std::string on;
    const std::size_t before = sink.errors();
    Binding(sink)
        .need("on", on)
        .by("widths", true, [&](const YamlNode &n) { read_widths(n, lattice.widths, open, sink); })
        .need("gutters", lattice.gutters)
        .apply(entry.value);
    if (sink.errors() == before)
      check_lattice(entry, on, open, lattice, into, sink);
  });
}

} // namespace strakebook::house
