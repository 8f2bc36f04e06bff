#include <catch2/catch.hpp>

#include "support/house_sample.h"

using namespace strakebook;
using sample::length;

// EN 10029:1991 Table 1, class A, as published summary sheets give it; the whole table is checked in the shipped layout.
TEST_CASE("tolerance: 5.0 belongs to 5-8 and 8.0 to 8-15; outside the table there is none") {
  const auto table = sample::en10029_1991_a();
  CHECK(policy::band_for(table, length("4.999999"))->upper == length("0.8"));
  CHECK(policy::band_for(table, length("5.0"))->upper == length("1.1"));
  CHECK(policy::band_for(table, length("7.999999"))->upper == length("1.1"));
  CHECK(policy::band_for(table, length("8.0"))->upper == length("1.2"));
  CHECK(policy::band_for(table, length("2.999999")) == nullptr);
  CHECK(policy::band_for(table, length("39.999999")) != nullptr);
  CHECK(policy::band_for(table, length("40")) == nullptr);
}

TEST_CASE("tolerance: a size seen by itself is reached exactly, and nothing beside it") {
  const auto table = sample::en10051();
  CHECK(policy::band_for(table, length("6"))->upper == length("0.31"));
  CHECK(policy::band_for(table, length("5.999999")) == nullptr);
  CHECK(policy::band_for(table, length("6.000001")) == nullptr);
}
