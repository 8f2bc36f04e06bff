#include <catch2/catch.hpp>

#include <map>

#include "support/house_sample.h"

using namespace strakebook;
using sample::length;

namespace {

using Rows = std::vector<std::array<std::string, 4>>;

std::pair<policy::Length, policy::Length> delivered(const policy::Tolerance &table, const std::string &nominal) {
  const auto *band = policy::band_for(table, length(nominal));
  REQUIRE(band);
  return {length(nominal) + band->lower, length(nominal) + band->upper};
}

Rows with(const std::vector<std::array<std::string, 2>> &limits) {
  const std::vector<std::array<std::string, 2>> ranges = {{"3", "5"}, {"5", "8"}, {"8", "15"}, {"15", "25"}, {"25", "40"}};
  Rows rows;
  for (std::size_t i = 0; i < ranges.size(); ++i) rows.push_back({ranges[i][0], ranges[i][1], limits[i][0], limits[i][1]});
  return rows;
}

// EN 10029:1991 Table 1, as published summary sheets give it.
const std::map<std::string, Rows> edition_1991 = {
    {"A", with({{"-0.4", "0.8"}, {"-0.4", "1.1"}, {"-0.5", "1.2"}, {"-0.6", "1.3"}, {"-0.8", "1.4"}})},
    {"B", with({{"-0.3", "0.9"}, {"-0.3", "1.2"}, {"-0.3", "1.4"}, {"-0.3", "1.6"}, {"-0.3", "1.9"}})},
    {"C", with({{"0", "1.2"}, {"0", "1.5"}, {"0", "1.7"}, {"0", "1.9"}, {"0", "2.2"}})},
    {"D", with({{"-0.60", "0.60"}, {"-0.75", "0.75"}, {"-0.85", "0.85"}, {"-0.95", "0.95"}, {"-1.10", "1.10"}})}};

// EN 10029:2010 Table 1: values from memory, not seen.
const std::map<std::string, Rows> edition_2010 = {
    {"A", with({{"-0.3", "0.7"}, {"-0.4", "0.8"}, {"-0.5", "0.9"}, {"-0.6", "1.0"}, {"-0.7", "1.3"}})},
    {"B", with({{"-0.3", "0.7"}, {"-0.3", "0.9"}, {"-0.3", "1.1"}, {"-0.3", "1.3"}, {"-0.3", "1.7"}})},
    {"C", with({{"0", "1.0"}, {"0", "1.2"}, {"0", "1.4"}, {"0", "1.6"}, {"0", "2.0"}})},
    {"D", with({{"-0.5", "0.5"}, {"-0.6", "0.6"}, {"-0.7", "0.7"}, {"-0.8", "0.8"}, {"-1.0", "1.0"}})}};

} // namespace

TEST_CASE("tolerance: nominal 6 under EN 10029:1991 Table 1, each class") {
  struct Case { const char *klass, *lower, *upper; };
  const auto c = GENERATE(Case{"A", "5.60", "7.10"}, Case{"B", "5.70", "7.20"}, Case{"C", "6.00", "7.50"}, Case{"D", "5.25", "6.75"});
  const auto interval = delivered(sample::tolerance(c.klass, edition_1991.at(c.klass)), "6");
  CHECK(interval.first == length(c.lower));
  CHECK(interval.second == length(c.upper));
}

TEST_CASE("tolerance: 5.0 belongs to 5-8 and 8.0 to 8-15; outside the table there is none") {
  const auto table = sample::tolerance("A", edition_1991.at("A"));
  CHECK(policy::band_for(table, length("4.999999"))->upper == length("0.8"));
  CHECK(policy::band_for(table, length("5.0"))->upper == length("1.1"));
  CHECK(policy::band_for(table, length("7.999999"))->upper == length("1.1"));
  CHECK(policy::band_for(table, length("8.0"))->upper == length("1.2"));
  CHECK(policy::band_for(table, length("2.999999")) == nullptr);
  CHECK(policy::band_for(table, length("39.999999")) != nullptr);
  CHECK(policy::band_for(table, length("40")) == nullptr);
}

TEST_CASE("tolerance: in each row of EN 10029 all classes are equally wide, B's minus is 0.3, C's 0, D is symmetric") {
  for (const auto *edition : {&edition_1991, &edition_2010})
    for (const char *nominal : {"4", "6", "10", "20", "30"}) {
      CAPTURE(nominal);
      const auto of = [&](const char *klass) {
        return *policy::band_for(sample::tolerance(klass, edition->at(klass)), length(nominal));
      };
      const auto a = of("A"), b = of("B"), c = of("C"), d = of("D");
      const auto width = a.upper - a.lower;
      CHECK(b.upper - b.lower == width);
      CHECK(c.upper - c.lower == width);
      CHECK(d.upper - d.lower == width);
      CHECK(b.lower == length("-0.3"));
      CHECK(c.lower == length("0"));
      CHECK(d.lower == -d.upper);
    }
}
