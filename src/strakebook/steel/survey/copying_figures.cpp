#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/decimal.h"
#include "strakebook/base/ratio.h"
#include "strakebook/steel/survey/copying_rows.h"
#include "strakebook/steel/survey/unit_slip.h"

/// Figures that are odd by themselves: repeats far apart, another unit, more than the plate ever was.
namespace strakebook::survey::copying {

using base::Length;

namespace {

void repeats_apart(const Mark &mark, Length most, base::Diagnostics &sink) {
  const auto [low, high] =
      std::minmax_element(mark.repeats.begin(), mark.repeats.end(),
                          [](const auto &a, const auto &b) { return a.value < b.value; });
  if (high->value - low->value <= most)
    return;
  warn(sink, mark.span,
       {base::Code::unequal_repeats, "repeats-apart " + mark.id(),
        fmt::format("the repeats at {} run from {} to {}", mark.id(), low->raw, high->raw),
        fmt::format("repeats within {} mm of each other", base::mm_exact(most))});
}

/// How far above its nominal new plate may be; nullopt: no tolerance says.
std::optional<Length> most_above(const Original &original, const policy::Policy &policy) {
  std::optional<Length> most;
  for (const auto &[id, tolerance] : policy.tolerances) {
    const auto *band = policy::band_for(tolerance, original.nominal.value);
    const bool named = std::ranges::find(original.tolerances, id) != original.tolerances.end();
    if (!band || (!original.tolerances.empty() && !named))
      continue;
    if (!most || *most < band->upper)
      most = band->upper;
  }
  return most;
}

/// True, after it was reported, for a reading that its own unit leaves out of reach and another brings into it.
bool other_unit(const Mark &mark, const Zone &zone, Length most, base::Ratio share, base::Diagnostics &sink) {
  const auto &reading = least(mark);
  const Length thinnest = base::scaled_up(zone.original.nominal.value, share);
  if (thinnest <= reading.value && reading.value <= most)
    return false;
  const auto others = in_other_units(reading, thinnest, most);
  if (others.empty())
    return false;
  const auto &other = others.front();
  warn(sink, mark.span,
       {base::Code::other_unit, "other-unit " + mark.id(),
        fmt::format("{} reads {}, which is {} mm here; {} would be {} mm of the original {}", mark.id(), reading.raw,
                    base::mm_exact(reading.value), other.raw, base::mm_exact(other.value), zone.original.nominal.raw),
        "the unit beside a figure that is not in the unit of its set: " + other.raw});
  return true;
}

void over_original(const Mark &mark, const Zone &zone, Length most, base::Diagnostics &sink) {
  if (least(mark).value <= most)
    return;
  warn(sink, mark.span,
       {base::Code::reading_over_original, "over-original " + mark.id(),
        fmt::format("{} reads {}, more than the original {} and its tolerance", mark.id(), least(mark).raw,
                    zone.original.nominal.raw),
        fmt::format("at most {} mm, or a doubler, or another original", base::mm_exact(most))});
}

} // namespace

Misfits figures(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  Misfits misfits;
  const Zone *zone = nullptr;
  std::string_view row;
  for (const auto &mark : survey.marks) {
    if (mark.status != Status::read || mark.repeats.empty())
      continue;
    repeats_apart(mark, policy.repeat_spread, sink);
    if (mark.plate != Plate::hull)
      continue;
    if (!zone || row != mark.row)
      zone = &zone_of_row(survey, mark.row);
    row = mark.row;
    const auto above = most_above(zone->original, policy);
    const Length most = zone->original.nominal.value + above.value_or(Length{});
    if (other_unit(mark, *zone, most, policy.copying.unit_share, sink))
      misfits.insert(&mark);
    else if (above)
      over_original(mark, *zone, most, sink);
  }
  return misfits;
}

} // namespace strakebook::survey::copying
