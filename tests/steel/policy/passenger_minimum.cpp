#include <catch2/catch.hpp>

#include "support/house_sample.h"

using namespace strakebook;
using policy::Length;
using sample::length;

namespace {

/// L is the length of the waterline.
policy::RuleWorking working(const char *l, const char *a, const char *t) {
  return policy::passenger_minimum(sample::passenger_rule(), {.length = length(l), .draught = length(t), .spacing = length(a)});
}

} // namespace

// Formula: Directive 2006/87/EC Annex II Art. 15.02. Figures computed from it independently, with decimal arithmetic.
TEST_CASE("passenger minimum: 30 m, 400 mm, 1.2 m is floored at 3.0, raw 2.62907") {
  const auto small = working("30 m", "400", "1.2 m");
  CHECK(small.by_draught == Length::nanometres(2'629'069)); // 0.006 x 400 x sqrt(1.2) = 2.629068276..., rounded up
  CHECK(base::mm_text(small.by_draught, 5) == "2.62907");
  CHECK(small.by_length == Length::nanometres(2'620'853)); // 0.87 x 0.55 x sqrt(30) = 2.620852437..., rounded up
  CHECK(small.floored);
  CHECK(small.limit == length("3.0"));
  CHECK(small.f == base::Ratio{87, 100});
  CHECK(small.b == base::Ratio{1, 1});
}

TEST_CASE("passenger minimum: whole roots are exact, the greater formula governs above the floor") {
  const auto by_length = working("81 m", "500", "2.25 m");
  CHECK(by_length.by_length == length("4.95"));
  CHECK(by_length.by_draught == length("4.5"));
  CHECK(by_length.limit == length("4.95"));
  CHECK_FALSE(by_length.floored);
  CHECK(working("36 m", "600", "2.25 m").limit == length("5.4")); // 0.006 x 600 x 1.5; by length 1.13 x 3.3 = 3.729
  CHECK(working("36 m", "600", "2.25 m").by_length == length("3.729"));
}

TEST_CASE("passenger minimum: f runs on below 500 mm, is continuous there, and stops at 400") {
  const auto f = [](const char *a) { return working("30 m", a, "1 m").f; };
  CHECK(f("600") == base::Ratio{113, 100});
  CHECK(f("500.000001") > base::Ratio{1, 1});
  CHECK(f("500") == base::Ratio{1, 1});
  CHECK(f("499.999999") < base::Ratio{1, 1});
  CHECK(f("450") == base::Ratio{935, 1000});
  CHECK(f("400") == base::Ratio{87, 100});
  CHECK(f("300") == base::Ratio{87, 100});
  CHECK(working("30 m", "300", "1.2 m").by_draught == working("30 m", "400", "1.2 m").by_draught);
  CHECK(working("30 m", "300", "1.2 m").spacing == length("400"));
}
