#include "strakebook/steel/assess/ladder.h"

#include <algorithm>

#include "strakebook/steel/policy/fraction.h"

namespace strakebook::assess {

namespace {

using policy::lowest;
using policy::product;
using policy::fraction;
using policy::Fraction;

bool less(Fraction a, Fraction b) { return product(a.num, b.den) < product(b.num, a.den); }

bool applies(const policy::Rung &rung, Length remaining, Length original) {
  if (rung.below && remaining >= *rung.below) return false;
  return !rung.below_part || less(Fraction{remaining.nm(), 1}, fraction(*rung.below_part) * Fraction{original.nm(), 1});
}

bool under_percent(Fraction share, const policy::ExtentRule &rule) {
  return less(share * Fraction{100, 1}, fraction(rule.under_percent.ratio()));
}

} // namespace

std::optional<std::size_t> rung_of(const policy::Ladder &ladder, Length remaining, Length highest_original) {
  for (std::size_t i = 0; i < ladder.rungs.size(); ++i)
    if (applies(ladder.rungs[i], remaining, highest_original)) return i;
  return std::nullopt;
}

Suggestion suggest(const policy::Policy &policy, const Worst &worst, Length highest_original,
                   std::span<const Length> used_marks) {
  const auto rung = rung_of(policy.ladder, worst.remaining, highest_original);
  if (!rung) return {};
  const auto on_it_or_lower = std::ranges::count_if(used_marks, [&](Length remaining) {
    const auto own = rung_of(policy.ladder, remaining, highest_original);
    return own && *own <= *rung;
  });
  const policy::Rung &found = policy.ladder.rungs[*rung];
  Suggestion result{.rung = found.id, .share_at_rung = {}, .actions = {}};
  result.extensive = worst.under_pit && worst.pitting != Extent::isolated;
  if (!used_marks.empty()) {
    const Fraction share = lowest(on_it_or_lower, static_cast<std::int64_t>(used_marks.size()));
    result.share_at_rung = policy::ratio(share);
    if (!under_percent(share, policy.extent)) result.extensive = true;
  }
  result.actions = result.extensive ? found.extensive : found.isolated;
  return result;
}

} // namespace strakebook::assess
