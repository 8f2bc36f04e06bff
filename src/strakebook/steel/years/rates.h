#pragma once

#include "strakebook/steel/years/years.h"

/// Rates of loss and what follows from one, exact wherever a verdict turns on it.
namespace strakebook::years {

using policy::Fraction;

/// A thickness and the square of its standard uncertainty, nm2.
struct Known {
  Length thickness;
  Fraction variance;
};

/// The loss from then to now: its rate is lost / years (API 570 section 7.1), its spread sqrt(u1^2 + u2^2) / years, and at the upper
/// rate `band` times the spread is added. years > 0.
Rate rate_since(std::string since, const Known &then, const Known &now, Ratio years, base::Decimal band);

/// From the nominal on 1 July of the year she was built in, the middle of it. The original is taken as anywhere within its
/// delivery interval with equal chance: a standard uncertainty of its width / sqrt(12), half the width / sqrt(3); where no
/// tolerance is named, as the nominal. nullopt on a weak basis, and where the year is not four figures or not before the inspection.
std::optional<Rate> rate_as_built(const survey::Survey &survey, const policy::Policy &policy, const survey::Zone &zone,
                                  const Known &now);

/// |lost| > band * sqrt(u1^2 + u2^2), compared by squares, is a loss or a growth; else no change is seen.
Change change_of(const Rate &rate, base::Decimal band);

/// At the mean of the governing rate, and at the greatest upper rate of those known: a long steady term may hide a short doubtful one.
Life life_to(const std::string &criterion, Length limit, Length judged, const Place &place);
/// The greatest upper rate of a place that has one, nm a year.
double upper_rate(const Place &place);

/// A margin against what a horizon takes: see RateCriterion. Exact.
assess::Verdict keeps(Length margin, const Rate &rate, Ratio horizon, base::Decimal band);

} // namespace strakebook::years
