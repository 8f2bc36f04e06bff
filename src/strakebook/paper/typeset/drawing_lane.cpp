#include "strakebook/paper/typeset/drawing_lane.h"

#include <algorithm>
#include <numeric>

namespace strakebook::typeset {
namespace {

std::vector<std::size_t> by_middle(std::span<const LaneLabel> labels) {
  std::vector<std::size_t> order(labels.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto middle = [&](std::size_t i) { return labels[i].left.v + labels[i].width.v / 2; };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return middle(a) < middle(b); });
  return order;
}

/// The non-decreasing sequence nearest to `wanted` in squares.
std::vector<double> isotonic(const std::vector<double> &wanted) {
  struct Pool { double sum; std::size_t count; };
  const auto mean = [](const Pool &p) { return p.sum / static_cast<double>(p.count); };
  std::vector<Pool> pools;
  for (const double w : wanted) {
    pools.push_back({w, 1});
    while (pools.size() > 1 && mean(pools[pools.size() - 2]) > mean(pools.back())) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back().sum += last.sum;
      pools.back().count += last.count;
    }
  }
  std::vector<double> result;
  result.reserve(wanted.size());
  for (const auto &p : pools) result.insert(result.end(), p.count, mean(p));
  return result;
}

} // namespace

std::vector<base::Pt> pushed_apart(std::span<const LaneLabel> labels, const Lane &lane) {
  const auto order = by_middle(labels);
  // Taking from each place the room that all before it need turns "apart" into "in order".
  std::vector<double> taken(order.size(), 0), wanted(order.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    if (i > 0) taken[i] = taken[i - 1] + labels[order[i - 1]].width.v + lane.clear.v;
    wanted[i] = labels[order[i]].left.v - taken[i];
  }
  const auto places = isotonic(wanted);
  std::vector<base::Pt> lefts(labels.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto &label = labels[order[i]];
    const double room_after = taken.back() - taken[i] + labels[order.back()].width.v;
    const double inside = std::max(lane.from.v + taken[i], std::min(places[i] + taken[i], lane.to.v - room_after));
    lefts[order[i]] = {std::clamp(inside, label.left.v - lane.most.v, label.left.v + lane.most.v)};
  }
  return lefts;
}

} // namespace strakebook::typeset
