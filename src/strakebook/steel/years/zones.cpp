#include "strakebook/steel/years/zones.h"

#include <algorithm>
#include <cmath>

#include "strakebook/steel/years/elapsed.h"
#include "strakebook/steel/years/rates.h"

namespace strakebook::years {

namespace {

void count(ZoneHistory &zone, Change change) {
  ++zone.matched;
  ++(change == Change::lost ? zone.lost : change == Change::grown ? zone.grown : zone.within_doubt);
}

/// Losses and growths are never put together: the mean is of the places that lost, the greatest of those that have not grown.
void add_rate(ZoneHistory &zone, const Place &place, Fraction &sum_lost) {
  if (!place.change || *place.change == Change::grown) return;
  const Ratio rate = place.governing()->per_year;
  if (zone.greatest_at.empty() || rate > zone.greatest) {
    zone.greatest_at = place.id;
    zone.greatest = rate;
  }
  if (*place.change == Change::lost) sum_lost = sum_lost + policy::fraction(rate);
}

const Life *measured_life(const Place &place, const assess::ZoneResult &zone) {
  const auto life = std::ranges::find(place.lives, zone.measured_by, &Life::criterion);
  return life == place.lives.end() ? nullptr : &*life;
}

void add_life(ZoneHistory &zone, const Place &place, const Life &life) {
  if (!life.upper || (!zone.shortest_at.empty() && *life.upper >= zone.shortest)) return;
  zone.shortest_at = place.id;
  zone.shortest = *life.upper;
}

int gravity(assess::Verdict verdict) {
  return verdict == assess::Verdict::falls_short ? 2 : verdict == assess::Verdict::too_close ? 1 : 0;
}

/// The gravest so far, and how long it lasts at the upper rate: infinitely where nothing ends it.
struct Gravest {
  std::optional<RateCriterion> rate;
  double life = 0;
  void see(const RateCriterion &next, const std::optional<double> &upper) {
    const double lasts = upper.value_or(HUGE_VAL);
    const int by = rate ? gravity(next.verdict) - gravity(rate->verdict) : 1;
    if (by < 0 || (by == 0 && lasts >= life)) return;
    rate = next;
    life = lasts;
  }
};

} // namespace

ZoneHistory zone_history(const assess::ZoneResult &zone, const History &history, base::Decimal band) {
  ZoneHistory out{.zone = zone.zone};
  Fraction sum_lost;
  Gravest gravest;
  for (const Place &place : history.places) {
    if (place.zone != zone.zone) continue;
    if (place.change) count(out, *place.change);
    add_rate(out, place, sum_lost);
    const Life *life = measured_life(place, zone);
    if (life == nullptr) continue;
    add_life(out, place, *life);
    if (!history.horizon) continue;
    for (const auto *rate : {&place.short_term, &place.long_term, &place.as_built})
      if (*rate) gravest.see({keeps(life->margin, **rate, *history.horizon, band), place.id, life->criterion}, life->upper);
  }
  if (out.lost > 0) out.mean_lost = policy::ratio(sum_lost * policy::lowest(1, out.lost));
  if (out.matched > 0) out.rate = gravest.rate; // its places of no earlier survey then speak too, by what they lost since she was built
  return out;
}

NextLook next_look(const std::vector<ZoneHistory> &zones, base::Date inspected, const policy::YearsRule &rule) {
  NextLook look{.date = base::months_later(inspected, rule.longest_months), .capped = true};
  const ZoneHistory *shortest = nullptr;
  for (const ZoneHistory &zone : zones)
    if (!zone.shortest_at.empty() && (shortest == nullptr || zone.shortest < shortest->shortest)) shortest = &zone;
  if (shortest == nullptr) return look;
  look.at = shortest->shortest_at;
  constexpr double months_a_year = 12;
  const double part = static_cast<double>(rule.life_part.num) / static_cast<double>(rule.life_part.den) * shortest->shortest;
  if (part * months_a_year > rule.longest_months + 1) return look; // far beyond the cap: no date of that size is formed
  const base::Date by_life = years_later(inspected, part);
  if (by_life < look.date) {
    look.date = by_life;
    look.capped = false;
  }
  return look;
}

} // namespace strakebook::years
