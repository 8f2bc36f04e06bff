#include "strakebook/paper/typeset/drawing_collision.h"

#include <algorithm>
#include <tuple>

namespace strakebook::typeset {
namespace {

bool empty(const base::Rect &box) { return box.size.width.v <= 0 || box.size.height.v <= 0; }

base::Pt shared(const base::Rect &a, const base::Rect &b) {
  const base::Pt across = std::min(a.right(), b.right()) - std::max(a.at.x, b.at.x);
  const base::Pt down = std::min(a.bottom(), b.bottom()) - std::max(a.at.y, b.at.y);
  return std::min(across, down);
}

std::vector<std::size_t> from_left(std::span<const base::Rect> boxes) {
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < boxes.size(); ++i)
    if (!empty(boxes[i])) order.push_back(i);
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return boxes[a].at.x < boxes[b].at.x; });
  return order;
}

} // namespace

bool touch(const base::Rect &a, const base::Rect &b, base::Pt allowed) {
  return !empty(a) && !empty(b) && shared(a, b) > allowed;
}

std::vector<Overlap> overlaps(std::span<const base::Rect> boxes, base::Pt allowed) {
  const auto order = from_left(boxes);
  std::vector<Overlap> found;
  for (std::size_t i = 0; i < order.size(); ++i)
    for (std::size_t k = i + 1; k < order.size() && boxes[order[k]].at.x < boxes[order[i]].right(); ++k) {
      const base::Pt by = shared(boxes[order[i]], boxes[order[k]]);
      if (by > allowed) found.push_back({std::min(order[i], order[k]), std::max(order[i], order[k]), by});
    }
  std::sort(found.begin(), found.end(), [](const Overlap &a, const Overlap &b) {
    return std::tie(a.first, a.second) < std::tie(b.first, b.second);
  });
  return found;
}

std::vector<std::size_t> outside(std::span<const base::Rect> boxes, const base::Rect &area, base::Pt allowed) {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    const auto &box = boxes[i];
    const base::Pt out = std::max({area.at.x - box.at.x, area.at.y - box.at.y, box.right() - area.right(),
                                   box.bottom() - area.bottom()});
    if (!empty(box) && out > allowed) found.push_back(i);
  }
  return found;
}

} // namespace strakebook::typeset
