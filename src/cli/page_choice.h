#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace strakebook::cli {

/// Pages from `first` to `last`, counted from 1; both are asked for.
struct PageRange {
  int first = 1, last = 1;
};

/// "3,5-7". nullopt: not of this form, page 0, or a range that runs backwards.
std::optional<std::vector<PageRange>> page_ranges(std::string_view text);

/// What is wrong with a choice of pages as text; empty: nothing.
std::string page_ranges_fault(const std::string &text);

} // namespace strakebook::cli
