#pragma once

#include <algorithm>
#include <functional>
#include <vector>

namespace strakebook::base {

/// Ascending by `by`, each value once: of equals the first stays.
template <class T, class By = std::identity> void put_in_order(std::vector<T> &all, By by = {}) {
  std::ranges::stable_sort(all, {}, by);
  const auto repeated = std::ranges::unique(all, {}, by);
  all.erase(repeated.begin(), repeated.end());
}

} // namespace strakebook::base
