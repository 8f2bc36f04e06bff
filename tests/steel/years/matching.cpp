#include <catch2/catch.hpp>

#include "compared.h"
#include "strakebook/steel/years/matching.h"

using namespace strakebook;
using sample::length;
using sample::station;
using years::matched;
using years::Spot;

namespace {

std::vector<Spot> row(const std::vector<std::string> &stations) {
  std::vector<Spot> out;
  for (const auto &at : stations) out.push_back({"PW", station(at).value});
  return out;
}

using Found = std::vector<std::optional<std::size_t>>;

survey::EarlierDatum datum(survey::Counts counts, const std::string &zero) {
  return {.counts = counts, .zero = station(zero)};
}

} // namespace

TEST_CASE("a true position counts from the earlier zero, against this datum where the two run against each other") {
  survey::Datum from_stem, from_stern;
  from_stem.towards.text = "aft";
  from_stern.towards.text = "forward";
  const auto nine = station("9").value;
  using survey::Counts;
  CHECK(years::true_position(datum(Counts::aft, "0.5 m"), from_stem, nine) == length("9500"));
  CHECK(years::true_position(datum(Counts::forward, "18 m"), from_stem, nine) == length("9000"));
  CHECK(years::true_position(datum(Counts::aft, "18 m"), from_stern, nine) == length("9000"));
  CHECK(years::true_position(datum(Counts::forward, "-0.5 m"), from_stern, nine) == length("8500"));
}

TEST_CASE("the radius is part of the match, a nanometre more is not") {
  CHECK(matched(row({"9"}), row({"9.15"}), length("150")) == Found{0});
  CHECK(matched(row({"9"}), row({"8.85"}), length("150")) == Found{0});
  CHECK(matched(row({"9"}), row({"9.150000001"}), length("150")) == Found{std::nullopt});
}

TEST_CASE("only places of one row are the same place") {
  CHECK(matched({{"PW", length("9000")}}, {{"SW", length("9000")}}, length("150")) == Found{std::nullopt});
}

TEST_CASE("each place is matched once, the nearest pair first") {
  CHECK(matched(row({"9", "9.1"}), row({"9.12"}), length("150")) == Found{std::nullopt, 0});
  CHECK(matched(row({"9"}), row({"9.1", "8.95"}), length("150")) == Found{1});
  // the nearest pair takes 9.1 from 9.0, which is left with what is further off
  CHECK(matched(row({"9", "9.1"}), row({"9.08", "8.9"}), length("150")) == Found{1, 0});
}

TEST_CASE("of pairs equally near the lower position here comes first, then the lower there") {
  CHECK(matched(row({"9.2", "9"}), row({"9.1"}), length("150")) == Found{std::nullopt, 0});
  CHECK(matched(row({"9"}), row({"9.1", "8.9"}), length("150")) == Found{1});
}
