#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "strakebook/paper/typeset/line_break.h"

namespace strakebook::typeset {

/// A place where a line may end. The line before it ends at piece `end`, the line after begins at `next`.
struct Stop {
  std::size_t end = 0, next = 0;
  double penalty = 0;
  double ends_with = 0;   ///< what a line that ends here is wider than its pieces: a hyphen, less what hangs
  double begins_with = 0; ///< what a line that begins here is wider: letters of a parted ligature
  bool forced = false, divides = false;
};

std::vector<Stop> stops_of(const std::vector<Piece> &pieces, bool justified);

/// What one search may do.
struct Terms {
  bool divide = true;          ///< words at patterns; stops that divide are left out otherwise
  bool emergency = false;      ///< blanks may be pulled beyond the setting, at a price
  std::optional<std::size_t> without; ///< a stop at which no line may end
};

struct Way {
  std::vector<std::size_t> stops; ///< at which lines end, the last one too
  double demerits = 0;
};

/// The way with the least demerits; nullopt: on these terms there is none.
std::optional<Way> best_way(const std::vector<Piece> &pieces, const std::vector<Stop> &stops,
                            const Measure &measure, const Terms &terms);

} // namespace strakebook::typeset
