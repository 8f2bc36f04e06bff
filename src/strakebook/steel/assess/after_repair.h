#pragma once

#include "strakebook/steel/assess/assessment.h"

/// Readings that an addendum gives, judged as the marks of the survey are.
namespace strakebook::assess {

struct NewResult {
  std::string zone;                 ///< of its row
  Length remaining;                 ///< as displayed
  bool on_doubler = false;          ///< of a plate laid over the hull's, by this item or before: judged by nothing
  bool lapsed = false;              ///< the gauge's certificate ran out before the day of the addendum
  /// Against the limit that governs the zone, else the one that its marks are measured by, with the addendum's gauge's own doubt.
  /// The limit is that of the zone as surveyed: a share is of its original. Absent on a doubler and where no criterion applies.
  std::optional<Standing> standing;
};

/// One for each reading of the item, same order.
std::vector<NewResult> after_repair(const survey::Survey &survey, const policy::Policy &policy, const Assessment &assessment,
                                    const survey::Addendum &addendum, const survey::ClosedItem &item);

/// Every addendum with its items and what is computed of their readings, as JSON; lengths as decimal strings in mm.
nlohmann::ordered_json addenda_json(const survey::Survey &survey, const policy::Policy &policy, const Assessment &assessment);

} // namespace strakebook::assess
