#include <fmt/format.h>

#include "strakebook/base/decimal.h"
#include "strakebook/base/ratio.h"
#include "strakebook/steel/survey/copying_rows.h"

/// Pits whose depth may be what was left of the plate. A hole, as deep as the plate is thick, is not asked about.
namespace strakebook::survey::copying {

void swapped_pits(const Survey &survey, const policy::CopyingChecks &policy, base::Diagnostics &sink) {
  for (const auto &pit : survey.pits) {
    const auto left = pit.adjacent.value - pit.depth.value;
    if (left <= base::Length{} || base::ratio_of(pit.depth.value, pit.adjacent.value) <= policy.pit_share)
      continue;
    warn(sink, pit.span,
         {base::Code::pit_swapped, "pit-swapped " + pit.id,
          fmt::format("pit {} is {} deep in {}, and {} mm is left; if {} was what is left, the depth is {} mm", pit.id,
                      pit.depth.raw, pit.adjacent.raw, base::mm_exact(left), pit.depth.raw, base::mm_exact(left)),
          "the depth below the plate beside it, not what is left under it"});
  }
}

} // namespace strakebook::survey::copying
