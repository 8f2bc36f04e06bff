#pragma once

#include <span>

#include "strakebook/steel/assess/assessment.h"

/// The firm's ladder: what it suggests at a zone, by figures that the policy gives.
namespace strakebook::assess {

/// Index of the first rung whose bounds all lie above `remaining`; nullopt: none does.
std::optional<std::size_t> rung_of(const policy::Ladder &ladder, Length remaining, Length highest_original);

/// What the ladder is asked about a zone.
struct Worst {
  Length remaining;      ///< the least of the zone
  bool under_pit = false;
  Extent pitting = Extent::none;
};

struct Suggestion {
  std::string rung;
  bool extensive = false;
  std::optional<Ratio> share_at_rung;
  std::vector<std::string> actions;
};

/// The rung is that of the least remaining. Its "extensive" column is taken when the least remaining is under a pit and the
/// pitting is not isolated (scattered, extensive or not declared), or when the used marks that stand on that rung or a lower one are as large a share of
/// the used marks as the extent rule's share of area, or larger; else its "isolated" column.
Suggestion suggest(const policy::Policy &policy, const Worst &worst, Length highest_original,
                   std::span<const Length> used_marks);

} // namespace strakebook::assess
