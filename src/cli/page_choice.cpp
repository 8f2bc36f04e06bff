#include "cli/page_choice.h"

#include <algorithm>
#include <charconv>

namespace strakebook::cli {

namespace {

std::optional<int> page_number(std::string_view text) {
  int number = 0;
  const auto *end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, number);
  if (read.ec != std::errc() || read.ptr != end || number < 1) return std::nullopt;
  return number;
}

std::optional<PageRange> page_range(std::string_view text) {
  const auto dash = text.find('-');
  const auto first = page_number(text.substr(0, dash));
  const auto last = dash == std::string_view::npos ? first : page_number(text.substr(dash + 1));
  if (!first || !last || *last < *first) return std::nullopt;
  return PageRange{*first, *last};
}

} // namespace

std::optional<std::vector<PageRange>> page_ranges(std::string_view text) {
  std::vector<PageRange> ranges;
  for (std::size_t from = 0; from <= text.size();) {
    const auto end = std::min(text.find(',', from), text.size());
    const auto range = page_range(text.substr(from, end - from));
    if (!range) return std::nullopt;
    ranges.push_back(*range);
    from = end + 1;
  }
  return ranges;
}

std::string page_ranges_fault(const std::string &text) {
  return page_ranges(text) ? "" : "\"" + text + "\" is no choice of pages: write page numbers and ranges, as in 3,5-7";
}

} // namespace strakebook::cli
