#include "strakebook/paper/media/reducer.h"

#include <algorithm>

namespace strakebook::media {

namespace {

constexpr std::size_t parts = 3;

std::uint64_t wide(int pixels) { return static_cast<std::uint64_t>(pixels); }

} // namespace

// Either way a pixel given is `to` units wide and a pixel kept is `from` units, so that every overlap is a whole number.
Reducer::Reducer(Extent from, Extent to)
    : from_(from), to_(to), line_(wide(to.width) * parts), area_(wide(to.width) * parts),
      made_{to.width, to.height, std::string(wide(to.width) * wide(to.height) * parts, '\0')} {}

void Reducer::sum_across(const unsigned char *rgb) {
  std::fill(line_.begin(), line_.end(), 0);
  const auto given = wide(from_.width), kept = wide(to_.width);
  std::uint64_t left = 0;
  for (std::uint64_t x = 0; x < given; ++x, left += kept, rgb += parts) {
    auto *sum = &line_[left / given * parts];
    const auto edge = (left / given + 1) * given;
    const auto first = std::min(kept, edge - left), second = kept - first;
    for (std::size_t part = 0; part < parts; ++part) {
      sum[part] += rgb[part] * first;
      if (second > 0) sum[parts + part] += rgb[part] * second;
    }
  }
}

void Reducer::add_line(std::uint64_t weight) {
  for (std::size_t i = 0; i < line_.size(); ++i) area_[i] += line_[i] * weight;
}

void Reducer::put_line() {
  const auto whole = wide(from_.width) * wide(from_.height);
  for (auto &sum : area_) {
    made_.rgb[put_++] = static_cast<char>((sum + whole / 2) / whole);
    sum = 0;
  }
}

void Reducer::take(const unsigned char *rgb) {
  sum_across(rgb);
  const auto given = wide(from_.height), kept = wide(to_.height);
  const auto top = row_++ * kept, edge = (top / given + 1) * given;
  const auto first = std::min(kept, edge - top);
  add_line(first);
  if (top + kept < edge) return;
  put_line();
  if (kept > first) add_line(kept - first);
}

Pixels Reducer::pixels() && { return std::move(made_); }

} // namespace strakebook::media
