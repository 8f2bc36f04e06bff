#include "strakebook/steel/assess/budget.h"

#include <cmath>
#include <stdexcept>

#include <boost/math/distributions/students_t.hpp>
#include <boost/multiprecision/cpp_int.hpp>

namespace strakebook::assess {

namespace {

using Exact = boost::multiprecision::cpp_rational; // fourth powers of nanometres do not fit into 128 bits
using Whole = boost::multiprecision::cpp_int;

constexpr std::int64_t as_good_as_infinite = 1'000'000'000;

Exact exact(const policy::Fraction &value) { return {Whole(value.num), Whole(value.den)}; }
Exact exact(const Ratio &value) { return {Whole(value.num), Whole(value.den)}; }

policy::Fraction squared(policy::Fraction value) { return value * value; }

policy::Fraction variance_of(const survey::DoubtComponent &component, Length thickest) {
  if (component.u) return squared({component.u->value.nm(), 1});
  if (component.half_width) return squared({component.half_width->value.nm(), 1}) * policy::Fraction{1, 3};
  if (!component.share) throw std::logic_error("a component of doubt without a figure: " + component.id);
  return squared(policy::fraction(component.share->ratio()) * policy::lowest(thickest.nm(), 100));
}

DoubtPart part(std::string component, policy::Fraction u2, std::optional<base::Decimal> degrees) {
  return {.component = std::move(component), .u2 = u2, .degrees = degrees, .u = Length::nanometres(policy::root_up(u2))};
}

} // namespace

std::vector<DoubtPart> doubt_parts(const survey::Gauge &gauge, Length thickest) {
  if (gauge.u) return {part({}, squared({gauge.u->nm(), 1}), std::nullopt)};
  if (gauge.doubt.empty()) throw std::logic_error("a gauge without a doubt: " + gauge.id);
  std::vector<DoubtPart> parts;
  for (const survey::DoubtComponent &component : gauge.doubt)
    parts.push_back(part(component.id, variance_of(component, thickest), component.degrees));
  return parts;
}

Length combined(std::span<const DoubtPart> parts) {
  policy::Fraction sum;
  for (const DoubtPart &part : parts) sum = sum + part.u2;
  return Length::nanometres(policy::root_up(sum));
}

std::optional<std::int64_t> effective_degrees(std::span<const DoubtPart> parts) {
  Exact sum, weighted;
  for (const DoubtPart &part : parts) {
    const Exact u2 = exact(part.u2);
    sum += u2;
    if (part.degrees) weighted += u2 * u2 / exact(part.degrees->ratio());
  }
  if (weighted == 0) return std::nullopt;
  const Exact effective = sum * sum / weighted;
  if (effective >= as_good_as_infinite) return std::nullopt;
  return static_cast<std::int64_t>(Whole(numerator(effective) / denominator(effective)));
}

base::Decimal student_factor(Ratio coverage, std::int64_t degrees) {
  constexpr int places = 3;
  const boost::math::students_t student(static_cast<double>(degrees));
  const double share = static_cast<double>(coverage.num) / static_cast<double>(coverage.den);
  const double quantile = boost::math::quantile(student, share);
  return {.digits = static_cast<std::int64_t>(std::ceil(quantile * static_cast<double>(base::power_of_ten(places)))),
          .places = places};
}

base::Decimal factor_for(const policy::DecisionRule &rule, std::optional<std::int64_t> degrees) {
  if (!degrees || rule.band.digits == 0) return rule.band;
  const base::Decimal student = student_factor(rule.coverage, *degrees);
  return student.ratio() > rule.band.ratio() ? student : rule.band;
}

} // namespace strakebook::assess
