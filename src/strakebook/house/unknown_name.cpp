#include "strakebook/house/unknown_name.h"

#include <fmt/format.h>

#include "strakebook/base/text.h"

namespace strakebook::house {
namespace {

/// A longer list helps nobody.
constexpr std::size_t most_names_listed = 16;

} // namespace

void refuse_unknown(base::Diagnostics &sink, base::Code code, const base::SourceSpan &at,
                    std::string_view found, std::string_view what, std::span<const std::string> known) {
  std::string expected = std::string(what);
  if (!known.empty() && known.size() <= most_names_listed)
    expected += ", one of: " + base::joined(known, ", ");
  sink.error(code, at, fmt::format("\"{}\" is not {} that is known here", found, what), expected,
             base::nearest(found, known).value_or(std::string{}));
}

} // namespace strakebook::house
