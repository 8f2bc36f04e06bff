#include "strakebook/steel/unseen/pit_depths.h"

#include <algorithm>
#include <cmath>

#include "strakebook/base/approximate.h"
#include "strakebook/steel/assess/statistics.h"
#include "strakebook/steel/policy/fraction.h"
#include "strakebook/steel/survey/pitting.h"

namespace strakebook::unseen {

namespace {

constexpr std::int64_t nm_in_mm = 1'000'000;


Ratio blocks_in(const base::Decimal &area, const base::Decimal &block) {
  const Ratio a = area.ratio(), b = block.ratio();
  return policy::ratio(policy::lowest(base::Wide{a.num} * b.den, base::Wide{a.den} * b.num));
}

Refusal refusal(const survey::Zone &zone, const survey::PitBlocks &blocks, const policy::UnseenRule &rule) {
  const auto &deepest = blocks.deepest;
  const auto depth = [](const base::Measured &one) { return one.value; };
  if (static_cast<int>(deepest.size()) < rule.least_blocks) return Refusal::few_blocks;
  if (std::ranges::any_of(deepest, [](const auto &one) { return one.value <= Length{}; })) return Refusal::blocks_without_pits;
  if (!zone.area_m2) return Refusal::no_area;
  if (blocks_in(*zone.area_m2, blocks.block_m2) <= Ratio{static_cast<std::int64_t>(deepest.size()), 1}) return Refusal::all_seen;
  const auto [least, most] = std::ranges::minmax_element(deepest, {}, depth);
  return least->value == most->value ? Refusal::all_alike : Refusal::none;
}

void add_level(Expected &to, double confidence) {
  const double period = base::approximate(to.period), reduced = reduced_variate(period);
  const Gumbel &law = to.by_likelihood.law;
  to.level = level_at(law, reduced);
  to.error = level_error(to.by_likelihood, reduced);
  const double half = assess::normal_quantile((1 + confidence) / 2) * to.error;
  to.low = to.level - half;
  to.high = to.level + half;
  to.upper = to.level + assess::normal_quantile(confidence) * to.error;
  to.mode = level_at(law, std::log(period));
  to.within = to.mode + law.scale * reduced_of_probability(confidence);
  to.chance_deeper = -std::expm1(period * std::log1p(-1 / period));
}

Expected expected(const survey::Zone &zone, const survey::PitBlocks &blocks, const assess::ZoneResult &result,
                  const policy::UnseenRule &rule) {
  const auto depths = depths_mm(blocks);
  Expected out;
  out.by_likelihood = fit(depths);
  out.by_l_moments = by_l_moments(depths);
  out.a2 = anderson_darling(depths, out.by_likelihood.law);
  out.chance = chance_of(out.a2, static_cast<int>(depths.size()), samples_drawn);
  out.poor = out.chance < base::approximate(rule.significance);
  out.period = blocks_in(*zone.area_m2, blocks.block_m2);
  add_level(out, base::approximate(rule.confidence));
  if (result.general) out.beside_mean = base::approximate(result.general->remaining_nm) / static_cast<double>(nm_in_mm) - out.level;
  return out;
}

} // namespace

std::vector<double> depths_mm(const survey::PitBlocks &blocks) {
  std::vector<double> out;
  for (const auto &one : blocks.deepest) out.push_back(base::in_millimetres(one.value));
  return out;
}

PitDepths pit_depths(const survey::Survey &survey, const survey::Zone &zone, const assess::ZoneResult &result,
                     const policy::UnseenRule &rule) {
  const survey::PitBlocks &blocks = *zone.pit_blocks;
  PitDepths out{.blocks = static_cast<int>(blocks.deepest.size()), .block_m2 = blocks.block_m2};
  for (const auto &one : blocks.deepest) {
    out.deepest_seen = std::max(out.deepest_seen, one.value);
    if (one.value <= Length{}) ++out.without_pits;
  }
  Length deepest = out.deepest_seen;
  for (const auto *pit : survey::pits_of(survey, zone.id))
    if (pit->depth.value > deepest) {
      deepest = pit->depth.value;
      out.deeper_pit = pit->id;
    }
  out.refused = refusal(zone, blocks, rule);
  if (out.refused == Refusal::none) out.expected = expected(zone, blocks, result, rule);
  return out;
}

} // namespace strakebook::unseen
