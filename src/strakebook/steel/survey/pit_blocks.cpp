#include "strakebook/steel/survey/pit_blocks.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/wide.h"

namespace strakebook::survey {

using base::Code;

namespace {

void count_differs(const Zone &zone, const PitBlocks &blocks, base::Diagnostics &sink) {
  const auto listed = std::ssize(blocks.deepest);
  if (listed == blocks.blocks)
    return;
  sink.add({.code = Code::pit_blocks_count,
            .span = blocks.span,
            .message = fmt::format("zone {} declares {} blocks, and lists the deepest pit of {}", zone.id, blocks.blocks, listed),
            .expected = fmt::format("{} depths, one a block", blocks.blocks),
            .write = "0 for a block without a pit"});
}

/// The goodness of fit is found by fitting so many depths again and again.
void too_many(const Zone &zone, const PitBlocks &blocks, base::Diagnostics &sink) {
  constexpr std::ptrdiff_t most = 200;
  if (std::ssize(blocks.deepest) <= most)
    return;
  sink.add({.code = Code::out_of_range,
            .span = blocks.span,
            .message = fmt::format("zone {} lists {} blocks", zone.id, blocks.deepest.size()),
            .expected = fmt::format("{} at most: larger blocks", most),
            .write = {}});
}

void more_than_zone(const Zone &zone, const PitBlocks &blocks, base::Diagnostics &sink) {
  if (!zone.area_m2)
    return;
  const auto area = zone.area_m2->ratio(), block = blocks.block_m2.ratio();
  if (base::Wide{block.num} * blocks.blocks * area.den <= base::Wide{area.num} * block.den)
    return;
  sink.add({.code = Code::pit_blocks_area,
            .span = blocks.span,
            .message = fmt::format("{} blocks of {} m2 are more than the {} m2 of zone {}", blocks.blocks,
                                   base::to_text(blocks.block_m2), base::to_text(*zone.area_m2), zone.id),
            .expected = "blocks that do not overlap, inside their zone",
            .write = "the area of one block, not of all together"});
}

void deeper_than_plate(const Zone &zone, const PitBlocks &blocks, base::Diagnostics &sink) {
  const auto deepest = std::ranges::max_element(blocks.deepest, {}, &base::Measured::value);
  if (deepest == blocks.deepest.end() || deepest->value < zone.original.nominal.value)
    return;
  const auto subject = fmt::format("pit-blocks {}", zone.id);
  sink.add({.severity = base::Severity::warning,
            .code = Code::pit_blocks_deep,
            .span = blocks.span,
            .message = fmt::format("a pit {} deep is listed in a block of zone {}, whose plate was {}", deepest->raw, zone.id,
                                   zone.original.nominal.raw),
            .expected = "depths below the surface beside each pit",
            .write = fmt::format("acknowledged: {{{}: why it stands}}", subject),
            .subject = subject});
}

} // namespace

bool pits_in_blocks(const Zone &zone) {
  return zone.pit_blocks &&
         std::ranges::any_of(zone.pit_blocks->deepest, [](const auto &one) { return one.value > base::Length{}; });
}

void check_pit_blocks(const Survey &survey, base::Diagnostics &sink) {
  for (const auto &zone : survey.zones) {
    if (!zone.pit_blocks)
      continue;
    count_differs(zone, *zone.pit_blocks, sink);
    too_many(zone, *zone.pit_blocks, sink);
    more_than_zone(zone, *zone.pit_blocks, sink);
    deeper_than_plate(zone, *zone.pit_blocks, sink);
  }
}

} // namespace strakebook::survey
