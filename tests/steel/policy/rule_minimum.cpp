#include <catch2/catch.hpp>

#include "support/house_sample.h"

using namespace strakebook;
using policy::Plating;
using sample::length;

namespace {

policy::HullFigures hull(const std::string &l, const std::string &a, const std::string &t) {
  return {.length = length(l), .draught = length(t), .spacing = length(a)};
}
policy::Length limit(const policy::HullFigures &figures, Plating plating) {
  return policy::rule_minimum(sample::inland_rule(), figures, plating).limit;
}

} // namespace

// Formula: Directive 2006/87/EC Annex II Art. 3.02. Figures computed from it by hand.
TEST_CASE("rule minimum: worked cases of Directive 2006/87/EC Annex II Art. 3.02") {
  struct Case { const char *l, *a, *t, *plain, *bilge; };
  const auto c = GENERATE(Case{"38.5 m", "500", "1.8 m", "3.81", "4.7625"}, Case{"17 m", "450", "0.7 m", "3.0", "3.15"},
                          Case{"80 m", "500", "2.8 m", "5.5", "6.875"}, Case{"18 m", "500", "0.7 m", "3.0", "3.225"});
  const auto figures = hull(c.l, c.a, c.t);
  CAPTURE(c.l);
  CHECK(limit(figures, Plating::bottom) == length(c.plain));
  CHECK(limit(figures, Plating::side) == length(c.plain));
  CHECK(limit(figures, Plating::bilge) == length(c.bilge));
}

TEST_CASE("rule minimum: the working shows the raw values and the floor") {
  const auto working = policy::rule_minimum(sample::inland_rule(), hull("17 m", "450", "0.7 m"), Plating::side);
  CHECK(working.by_length == length("2.52"));
  CHECK(policy::rule_minimum(sample::inland_rule(), hull("18 m", "500", "0.7 m"), Plating::side).by_length == length("2.58"));
  CHECK(working.floored);
  CHECK_FALSE(policy::rule_minimum(sample::inland_rule(), hull("17 m", "450", "0.7 m"), Plating::bilge).floored);
}

TEST_CASE("rule minimum: both lines give 3.9 at 40 m, and the floor bites below 25 m") {
  CHECK(limit(hull("40 m", "500", "1 m"), Plating::side) == length("3.9"));
  CHECK(limit(hull("40.000001 m", "500", "1 m"), Plating::side) == length("3.900001")); // 3.90000004, rounded up
  CHECK(limit(hull("25 m", "500", "1 m"), Plating::side) == length("3.0"));
  CHECK(limit(hull("24.9 m", "500", "1 m"), Plating::side) == length("3.0"));
  CHECK(policy::rule_minimum(sample::inland_rule(), hull("24.9 m", "500", "1 m"), Plating::side).floored);
  CHECK_FALSE(policy::rule_minimum(sample::inland_rule(), hull("25 m", "500", "1 m"), Plating::side).floored);
  CHECK(limit(hull("25.1 m", "500", "1 m"), Plating::side) == length("3.006"));
}

// With the published figures both lines meet at the split; another split shows which side it belongs to.
TEST_CASE("rule minimum: at the split the shorter line and the floor hold, beyond it neither does") {
  auto rule = sample::inland_rule();
  const auto at = [&](const char *l) { return policy::rule_minimum(rule, hull(l, "500", "0.1 m"), Plating::side); };
  rule.split = length("20 m");
  CHECK(at("20 m").by_length == length("2.7"));
  CHECK(at("20 m").limit == length("3.0"));
  CHECK(at("20.01 m").by_length == length("3.1004"));
  rule.split = length("10 m");
  CHECK(at("11 m").limit == length("2.74"));
  CHECK_FALSE(at("11 m").floored);
}

TEST_CASE("rule minimum: f is 1 up to 500 mm and grows from there") {
  const auto f = [](const char *a) { return policy::rule_minimum(sample::inland_rule(), hull("38.5 m", a, "1 m"), Plating::side).f; };
  CHECK(f("450") == base::Ratio{1, 1});
  CHECK(f("500") == base::Ratio{1, 1});
  CHECK(f("600") == base::Ratio{113, 100});
}

TEST_CASE("rule minimum: wing voids take off five per cent, never under the floor") {
  auto figures = hull("38.5 m", "500", "1 m");
  figures.wing_voids = true;
  CHECK(limit(figures, Plating::side) == length("3.6195"));
  figures.length = length("18 m");
  CHECK(limit(figures, Plating::side) == length("3.0"));
}

// 0.005 a sqrt(T) with a = 800, T = 1.8: 5.366563145999... (computed independently with decimal arithmetic).
TEST_CASE("rule minimum: a root that is not whole is rounded up to the next nanometre") {
  const auto working = policy::rule_minimum(sample::inland_rule(), hull("18 m", "800", "1.8 m"), Plating::side);
  CHECK(working.by_draught == policy::Length::nanometres(5'366'564));
  const auto whole = policy::rule_minimum(sample::inland_rule(), hull("18 m", "800", "2.25 m"), Plating::side);
  CHECK(whole.by_draught == length("6.0"));
  CHECK(whole.limit == length("6.0"));
}

TEST_CASE("rule minimum: the bilge is never under bottom and side, whatever its factor") {
  auto rule = sample::inland_rule();
  rule.bilge_factor = sample::decimal("0.5");
  const auto figures = hull("80 m", "500", "2.8 m");
  CHECK(policy::rule_minimum(rule, figures, Plating::bilge).limit == length("5.5"));
}

TEST_CASE("rule minimum: absurd figures are refused, not wrapped round") {
  auto rule = sample::inland_rule();
  rule.draught_factor = {.digits = 999'999'999'999'999, .places = 0};
  CHECK_THROWS_AS(policy::rule_minimum(rule, hull("900 m", "900 m", "900 m"), Plating::side), std::overflow_error);
}

TEST_CASE("rule minimum: f is continuous at 500 mm") {
  const auto at = [](const char *a) { return policy::rule_minimum(sample::inland_rule(), hull("80 m", a, "1 m"), Plating::side); };
  CHECK(at("499.999999").f == base::Ratio{1, 1});
  CHECK(at("500.000001").f > base::Ratio{1, 1});
  CHECK(at("500.000001").limit - at("500").limit < policy::Length::nanometres(10));
}

namespace {

/// What another reading of the text asks; nullopt where it makes no difference.
std::optional<policy::Length> read_as(policy::RuleReading reading, const char *l, const char *t, Plating plating) {
  for (const auto &other : policy::rule_minimum(sample::inland_rule(), hull(l, "500", t), plating).others)
    if (other.reading == reading) return other.limit;
  return std::nullopt;
}

} // namespace

// Disputed in Art. 3.02: whether the floor is multiplied by b, whether ten per cent of local wear may go under the limit, and
// under the floor. Worked by hand.
TEST_CASE("rule minimum: the readings that are not judged by are worked beside it") {
  using policy::RuleReading;
  const auto times_b = [](const char *l, const char *t, Plating p) { return read_as(RuleReading::floor_times_b, l, t, p); };
  const auto worn = [](const char *l, const char *t, Plating p) { return read_as(RuleReading::local_wear, l, t, p); };
  const auto worn_under = [](const char *l, const char *t, Plating p) { return read_as(RuleReading::local_wear_under_floor, l, t, p); };
  CHECK(times_b("18 m", "0.7 m", Plating::bilge) == length("3.75")); // 3.0 x 1.25, where 3.225 is judged by
  CHECK_FALSE(times_b("18 m", "0.7 m", Plating::side));
  CHECK_FALSE(times_b("38.5 m", "1.8 m", Plating::bilge)); // 4.7625 is above 3.75 already
  CHECK_FALSE(times_b("80 m", "2.8 m", Plating::bilge));   // no floor beyond the split
  CHECK(worn("38.5 m", "1.8 m", Plating::side) == length("3.429")); // 3.81 less a tenth
  CHECK_FALSE(worn_under("38.5 m", "1.8 m", Plating::side));
  CHECK(worn("18 m", "0.7 m", Plating::bilge) == length("3.0"));          // 2.9025 is under the floor
  CHECK(worn_under("18 m", "0.7 m", Plating::bilge) == length("2.9025"));
  CHECK_FALSE(worn("18 m", "0.7 m", Plating::side));
  CHECK(worn_under("18 m", "0.7 m", Plating::side) == length("2.7"));
}
