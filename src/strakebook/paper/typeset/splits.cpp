#include <algorithm>
#include <span>
#include <utility>

#include "strakebook/paper/typeset/blocks.h"

namespace strakebook::typeset {
namespace {

constexpr std::size_t lines_together = 2; // at either side of a split: no widows, no orphans

/// How many of the lines go on this page, all of one height; 0: none. A page does not end inside a word if it can
/// end a line sooner.
std::size_t lines_here(std::span<const Fragment> lines, const Region &region) {
  const std::size_t count = lines.size();
  std::size_t fit = 0;
  while (fit < count && region.holds(lines.front().size.height * static_cast<double>(fit + 1)))
    ++fit;
  if (fit == count)
    return fit;
  std::size_t kept = count > lines_together ? std::min(fit, count - lines_together) : 0;
  const auto whole_word = [&](std::size_t here) { return !lines[here - 1].divided; };
  for (std::size_t fewer = kept; fewer >= lines_together; --fewer)
    if (whole_word(fewer)) {
      kept = fewer;
      break;
    }
  if (kept >= lines_together)
    return kept;
  return region.empty_page() ? fit : 0;
}

} // namespace

Outcome split_lines(std::vector<Fragment> lines, const Resume &from, const Region &region) {
  if (from.index >= lines.size())
    return Nothing{};
  const std::size_t count = lines.size() - from.index;
  const std::size_t here = lines_here(std::span(lines).subspan(from.index), region);
  if (here == 0)
    return NextPage{"its lines", {}, {}};
  Fragment set;
  for (std::size_t i = from.index; i < from.index + here; ++i)
    stack(set, std::move(lines[i]), base::Pt{});
  if (here == count)
    return Whole{std::move(set)};
  return Part{std::move(set), {from.index + here, {}}};
}

Outcome split_rows(std::size_t count, base::Pt gap, const std::function<Fragment(std::size_t)> &make,
                   const Resume &from, const Region &region) {
  Fragment set;
  for (std::size_t i = from.index; i < count; ++i) {
    Fragment row = make(i);
    const bool first = i == from.index;
    if (!region.holds(set.size.height + (first ? base::Pt{} : gap) + row.size.height)) {
      if (first)
        return NextPage{"one of its rows", {}, {}};
      return Part{std::move(set), {i, {}}};
    }
    stack(set, std::move(row), gap);
  }
  if (set.size.height.v == 0)
    return Nothing{};
  return Whole{std::move(set)};
}

Fragment beside(Fragment left, Fragment right, base::Pt x) {
  const base::Pt baseline = std::max(left.first_baseline, right.first_baseline);
  const base::Pt left_top = left.first_baseline.v > 0 ? baseline - left.first_baseline : base::Pt{};
  const base::Pt right_top = right.first_baseline.v > 0 ? baseline - right.first_baseline : base::Pt{};
  Fragment both;
  both.first_baseline = baseline;
  both.size = {std::max(left.size.width, x + right.size.width),
               std::max(left_top + left.size.height, right_top + right.size.height)};
  append(both.items, std::move(left), {base::Pt{}, left_top});
  append(both.items, std::move(right), {x, right_top});
  return both;
}

} // namespace strakebook::typeset
