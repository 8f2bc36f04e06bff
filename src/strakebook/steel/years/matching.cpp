#include "strakebook/steel/years/matching.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace strakebook::years {

using base::Length;

namespace {

Length apart(Length a, Length b) { return std::max(a - b, b - a); }

struct Pair {
  std::size_t here, there;
  Length off, at_here, at_there;
  auto order() const { return std::tuple(off, at_here, at_there, here, there); }
};

using ByRow = std::map<std::string, std::vector<std::size_t>>;
ByRow by_row(const std::vector<Spot> &spots) {
  ByRow rows;
  for (std::size_t i = 0; i < spots.size(); ++i) rows[spots[i].row].push_back(i);
  return rows;
}

} // namespace

Length true_position(const survey::EarlierDatum &earlier, const survey::Datum &now, Length distance) {
  const bool same_way = (earlier.counts == survey::Counts::forward) == survey::counts_forward(now);
  return same_way ? earlier.zero.value + distance : earlier.zero.value - distance;
}

std::vector<std::optional<std::size_t>> matched(const std::vector<Spot> &here, const std::vector<Spot> &there, Length radius) {
  std::vector<Pair> pairs;
  const ByRow rows = by_row(there);
  for (std::size_t i = 0; i < here.size(); ++i) {
    const auto row = rows.find(here[i].row);
    if (row == rows.end()) continue;
    for (const std::size_t j : row->second)
      if (const Length off = apart(here[i].position, there[j].position); off <= radius)
        pairs.push_back({i, j, off, here[i].position, there[j].position});
  }
  std::ranges::sort(pairs, {}, &Pair::order);
  std::vector<std::optional<std::size_t>> found(here.size());
  std::vector<bool> taken(there.size());
  for (const Pair &pair : pairs) {
    if (found[pair.here] || taken[pair.there]) continue;
    found[pair.here] = pair.there;
    taken[pair.there] = true;
  }
  return found;
}

} // namespace strakebook::years
