#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

namespace strakebook::house {
namespace {

using base::Code;

policy::ToleranceBand read_band(const YamlNode &node, Diagnostics &sink) {
  policy::ToleranceBand band;
  base::Length minus;
  Binding(sink)
      .need("from", band.from)
      .need("to", band.to)
      .need("minus", minus)
      .need("plus", band.upper)
      .apply(node);
  band.lower = -minus;
  return band;
}

/// Bands lie end to end, from thin to thick, so that every nominal between the first and the last has exactly
/// one.
void check_bands(const YamlNode &node, const std::vector<policy::ToleranceBand> &bands, Diagnostics &sink) {
  for (std::size_t i = 0; i < bands.size(); ++i) {
    const YamlNode &at = node.items[i];
    if (bands[i].to <= bands[i].from)
      sink.error(Code::layout_order, at.span, "the band ends before it begins",
                 "\"to\" greater than \"from\"");
    if (i > 0 && bands[i].from != bands[i - 1].to)
      sink.error(
          Code::layout_order, at.span, "the band does not begin where the one before it ends",
          fmt::format("from: {}", node.items[i - 1].find("to") ? node.items[i - 1].find("to")->text : ""));
  }
}

void read_bands(const YamlNode &node, std::vector<policy::ToleranceBand> &into, Diagnostics &sink) {
  if (node.kind != YamlNode::Kind::list || node.items.empty()) {
    sink.error(Code::wrong_kind, node.span, "a list of bands is needed here", "at least one band");
    return;
  }
  const std::size_t before = sink.errors();
  for (const YamlNode &item : node.items)
    into.push_back(read_band(item, sink));
  if (sink.errors() == before)
    check_bands(node, into, sink);
}

/// Sizes for which a figure was seen, and no others: each is a band of one nanometre.
void read_sizes(const YamlNode &node, std::vector<policy::ToleranceBand> &into, Diagnostics &sink) {
  if (node.kind != YamlNode::Kind::list || node.items.empty()) {
    sink.error(Code::wrong_kind, node.span, "a list of sizes is needed here", "at least one size");
    return;
  }
  for (const YamlNode &item : node.items) {
    policy::ToleranceBand band;
    base::Length minus;
    Binding(sink).need("size", band.from).need("minus", minus).need("plus", band.upper).apply(item);
    band.to = band.from + base::Length::nanometres(1);
    band.lower = -minus;
    if (!into.empty() && band.from < into.back().to)
      sink.error(Code::layout_order, item.span, "the size is not thicker than the one before it",
                 "sizes from thin to thick");
    into.push_back(band);
  }
}

/// A table gives bands of nominals or single sizes.
void check_one_form(const YamlNode::Entry &entry, Diagnostics &sink) {
  const bool bands = entry.value.find("bands"), sizes = entry.value.find("sizes");
  if (bands != sizes)
    return;
  sink.error(bands ? Code::unknown_key : Code::missing_key, entry.key_span,
             fmt::format("the tolerance \"{}\" gives {} bands and sizes", entry.key, bands ? "both" : "neither"),
             "one of them: bands, or sizes");
}

} // namespace

void read_tolerances(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    policy::Tolerance t;
    t.id = entry.key;
    Binding(sink)
        .need("source", t.source)
        .need("verified", t.verified)
        .by("bands", false, [&](const YamlNode &n) { read_bands(n, t.bands, sink); })
        .by("sizes", false, [&](const YamlNode &n) { read_sizes(n, t.bands, sink); })
        .apply(entry.value);
    check_one_form(entry, sink);
    into.tolerances[entry.key] = t;
  });
}

} // namespace strakebook::house
