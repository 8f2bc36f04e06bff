#include <catch2/catch.hpp>

#include "compared.h"
#include "strakebook/steel/years/rates.h"

using namespace strakebook;
using namespace strakebook::sample;
using assess::Verdict;
using years::Change;
using years::Governs;

namespace {

constexpr double nm = 1e6; // in a millimetre
constexpr double inch = 25.4 * nm;

/// The three dated surveys of one mark: 1983, 1993 and 2003, in inches, read to 0.001 in.
survey::Survey three_dated(const std::string &first, const std::string &second, const std::string &third) {
  auto builder = side_plate();
  auto &made = builder.made;
  made.report.inspected->value = day("2003-06-01");
  made.gauges.front().u = length("0.0254"); // 0.001 in
  builder.mark("PW", "9", third + " in");
  for (const auto &[id, date, figure] : {std::tuple{"A", "1983-06-01", first}, std::tuple{"B", "1993-06-01", second}}) {
    made.earlier.push_back(earlier_survey(id, date, "0.0254"));
    read_then(made.earlier.back(), "PW", "9", std::string(figure) + " in");
  }
  return made;
}

} // namespace

// API 570 section 7.1, a published example: nominal 0.395 in, measured new 0.375 (1983), 0.295 (1993), 0.255 (2003): long-term
// 0.006 in a year, and 0.007 if the nominal is wrongly taken for the first measurement. Short-term there is 0.004.
TEST_CASE("the long-term rate is from the earliest measurement and not from the nominal") {
  auto survey = three_dated("0.375", "0.295", "0.255");
  survey.vessel.built = survey::Fact{.text = {"1983", {}}};
  survey.zones.front().original.tolerances = {"EN 10029:1991 A"};
  const auto history = history_of(survey);
  REQUIRE(history.places.size() == 1);
  const auto &place = history.places.front();
  CHECK(place.long_term->years == base::Ratio{20, 1});
  CHECK(place.long_term->per_year == base::Ratio{152'400, 1}); // 0.006 in
  CHECK(place.short_term->per_year == base::Ratio{101'600, 1}); // 0.004 in
  CHECK(place.governs == Governs::long_term);
  CHECK_FALSE(place.as_built);
}

// API 570 section 7.1, the second: short-term 0.010, long-term 0.005, required 0.150, actual 0.210: 6 years, 12 with the wrong rate.
TEST_CASE("the larger of short and long term governs, and the remaining life follows from it") {
  auto survey = three_dated("0.310", "0.310", "0.210"); // 0.100 in 20 years and in 10
  auto policy = house_of_years();
  policy.criteria["required"] = {.id = "required", .name = "required", .limit = mm("0.150 in").value};
  policy.criteria_order.push_back("required");
  survey.criteria = {{.id = "required"}};
  const auto history = history_of(survey, policy);
  const auto &place = history.places.front();
  CHECK(place.short_term->per_year == base::Ratio{254'000, 1}); // 0.010 in
  CHECK(place.long_term->per_year == base::Ratio{127'000, 1});  // 0.005 in
  CHECK(place.governs == Governs::short_term);
  CHECK(life_to(place, "required").mean.value() == Approx(6.0));
  const double upper = 0.010 * inch + 1.645 * std::sqrt(2.0) * 0.001 * inch / 10; // u is 0.001 in on either side
  CHECK(life_to(place, "required").upper.value() == Approx(0.060 * inch / upper));
  CHECK(history.zones.front().greatest == base::Ratio{254'000, 1});
}

TEST_CASE("a place is found by where it lies, never by its number") {
  auto builder = side_plate();
  for (const char *figure : {"4.4", "4.4", "5.8"}) builder.marks("PW", {figure}); // PW 1, 2, 3 from the stem
  auto then = earlier_survey("V21", "2021-10-14");
  then.datum.counts = survey::Counts::forward;
  then.datum.zero = station("4 m"); // so its 1, 2, 3 are this survey's 3, 2, 1
  for (const auto &[at, figure] : {std::pair{"1", "5.9"}, {"2", "5.4"}, {"3", "5.2"}}) read_then(then, "PW", at, figure);
  builder.made.earlier = {then};
  const auto history = history_of(builder.made);
  REQUIRE(history.places.size() == 3);
  const auto &first = history.places.front();
  CHECK(first.id == "PW 1");
  CHECK(first.earlier.front().id == "PW 3");
  CHECK(first.earlier.front().position == length("1000"));
  CHECK(first.short_term->lost == length("0.8")); // by number it would be 1.5, from 5.9
  CHECK(history.places.at(2).short_term->lost == length("0.1")); // by number it would have grown, from 5.2 to 5.8
  CHECK(history.zones.front().grown == 0);
}

TEST_CASE("frames and feet are distances like any other") {
  auto builder = side_plate();
  builder.mark("PW", "3.048", "5.0").mark("PW", "6", "5.0");
  auto in_feet = earlier_survey("FEET", "2016-10-14");
  in_feet.marks.push_back({.row = "PW", .station = mm("10 ft"), .repeats = {mm("5.5")}});
  auto in_frames = earlier_survey("FRAMES", "2021-10-14");
  in_frames.datum.counts = survey::Counts::forward;
  in_frames.datum.zero = station("18 m");
  const base::Measured frame{.value = length("500") * 24, .raw = "24"};
  in_frames.marks.push_back({.row = "PW", .station = frame, .repeats = {mm("5.4")}});
  builder.made.earlier = {in_feet, in_frames};
  const auto history = history_of(builder.made);
  REQUIRE(history.places.size() == 2);
  CHECK(history.places.at(0).earlier.front().survey == "FEET");
  CHECK(history.places.at(0).earlier.front().off == base::Length{});
  CHECK(history.places.at(1).earlier.front().survey == "FRAMES");
  CHECK(history.places.at(1).earlier.front().at == "24");
  CHECK(history.places.at(1).earlier.front().position == length("6000"));
}

TEST_CASE("pits are compared with pits, and marks with marks") {
  auto builder = side_plate();
  builder.mark("PW", "9", "5.4").pit("P3", "PW", "9.05", "5.4", "1.5");
  auto then = earlier_survey("V21", "2021-10-14");
  read_then(then, "PW", "9", "5.6");
  then.pits.push_back({.id = "P1", .at = {.row = "PW", .station = station("9.1")}, .adjacent = mm("5.6"), .depth = mm("1.0")});
  builder.made.earlier = {then};
  const auto history = history_of(builder.made);
  REQUIRE(history.places.size() == 2);
  const auto &pit = history.places.at(1);
  CHECK(pit.id == "P3");
  CHECK(pit.earlier.front().id == "P1");
  CHECK(pit.short_term->lost == length("0.7")); // 4.6 then, 3.9 now
  CHECK(pit.short_term->spread == Approx(0.2 * nm / 5)); // four doubts of 0.1: the root of 0.04, over five years
  CHECK(history.places.at(0).short_term->spread == Approx(std::sqrt(0.02) * nm / 5));
}

TEST_CASE("growth beyond the doubt is flagged, and within it no change is seen: neither is a life") {
  auto builder = side_plate();
  builder.marks("PW", {"5.5", "5.7", "5.0"});
  auto then = earlier_survey("V21", "2021-10-14"); // doubt of both 1.645 * 0.141 = 0.2326
  for (const auto &[at, figure] : {std::pair{"1", "5.1"}, {"2", "5.6"}, {"3", "5.5"}}) read_then(then, "PW", at, figure);
  builder.made.earlier = {then};
  const auto history = history_of(builder.made);
  REQUIRE(history.places.size() == 3);
  const auto &grown = history.places.at(0), &within = history.places.at(1), &lost = history.places.at(2);
  CHECK(grown.change == Change::grown);
  CHECK_FALSE(life_to(grown, "absolute-4.0").mean);
  CHECK_FALSE(life_to(grown, "absolute-4.0").upper);
  CHECK(within.change == Change::within_doubt); // 0.1 more, and 0.2326 may be doubt
  CHECK_FALSE(life_to(within, "absolute-4.0").mean);
  CHECK(life_to(within, "absolute-4.0").upper.value() == Approx(1.7 / ((-0.1 + 0.232638) / 5)).epsilon(1e-4));
  CHECK(lost.change == Change::lost);
  const auto &zone = history.zones.front();
  CHECK(zone.matched == 3);
  CHECK(zone.lost == 1);
  CHECK(zone.within_doubt == 1);
  CHECK(zone.grown == 1);
  // the mean of the one that lost; of gains and losses together it would be nought: (-0.4 - 0.1 + 0.5) / 3
  CHECK(zone.mean_lost.value() == base::Ratio{100'000, 1});
  CHECK(zone.greatest_at == "PW 3");
}

// Worked by hand: the doubt is 1.645 * sqrt(0.03^2 + 0.04^2) = 1.645 * 0.05 = 0.08225 exactly.
TEST_CASE("a change by exactly the doubt is within it, a nanometre more is not") {
  const auto change = [](const std::string &then) {
    const years::Known was{length(then), {policy::square(length("0.03").nm()), 1}};
    const years::Known now{length("5"), {policy::square(length("0.04").nm()), 1}};
    return years::change_of(years::rate_since("V", was, now, {5, 1}, decimal("1.645")), decimal("1.645"));
  };
  CHECK(change("5.082250") == Change::within_doubt);
  CHECK(change("5.082251") == Change::lost);
  CHECK(change("4.917750") == Change::within_doubt);
  CHECK(change("4.917749") == Change::grown);
}

TEST_CASE("what no earlier survey has is from as built, where the original is known") {
  auto builder = side_plate();
  builder.mark("PW", "9", "5.0").mark("PW", "12", "5.5");
  auto &made = builder.made;
  made.vessel.built = survey::Fact{.text = {"1998", {}}};
  made.earlier = {earlier_survey("V21", "2021-10-14")};
  read_then(made.earlier.front(), "PW", "9", "5.5");
  // no delivery interval is named: the original is taken as the nominal
  CHECK(history_of(made).places.at(1).as_built->spread * 28.2877 == Approx(0.1 * nm).epsilon(1e-4));
  made.zones.front().original.tolerances = {"EN 10029:1991 A"}; // 5.6 to 7.1
  const auto history = history_of(made);
  REQUIRE(history.places.size() == 2);
  const auto &place = history.places.at(1);
  CHECK(place.governs == Governs::as_built);
  CHECK_FALSE(place.change);
  CHECK(place.as_built->years == base::Ratio{28 * 365 + 105, 365}); // 1 July 1998 to 14 October 2026
  CHECK(place.as_built->lost == length("0.5"));
  CHECK(place.as_built->spread * 28.2877 == Approx(std::sqrt(0.01 + 0.75 * 0.75 / 3) * nm).epsilon(1e-4)); // half the width / sqrt(3)
  CHECK(history.unmatched_here == std::vector<std::string>{"PW 12"});
  CHECK(history.zones.front().matched == 1);

  made.zones.front().original.basis = "owner's word"; // weak
  CHECK(history_of(made).places.at(1).governing() == nullptr);
  made.zones.front().original.basis = "mill certificate";
  made.vessel.built->text.text = "about 1998";
  const auto unknown = history_of(made);
  CHECK(unknown.places.at(1).governing() == nullptr);
  CHECK_FALSE(life_to(unknown.places.at(1), "absolute-4.0").upper);
}

TEST_CASE("neither many small losses nor a growth after a loss is hidden by the survey before") {
  auto builder = side_plate();
  builder.marks("PW", {"5.0", "5.2", "5.2"});
  auto first = earlier_survey("A", "2006-10-14"), middle = earlier_survey("M", "2016-10-14"), last = earlier_survey("B", "2024-10-14");
  for (const char *at : {"1", "2", "3"}) read_then(first, "PW", at, "6.0");
  read_then(middle, "PW", "3", "4.6");
  read_then(last, "PW", "1", "5.1");
  read_then(last, "PW", "2", "4.6");
  read_then(last, "PW", "3", "5.3");
  builder.made.earlier = {last, first, middle}; // the order of the file says nothing
  const auto history = history_of(builder.made);
  const auto &small = history.places.at(0), &back = history.places.at(1);
  CHECK(small.earlier.front().survey == "B");
  CHECK(small.short_term->lost == length("0.1")); // within the doubt of 0.2326
  CHECK(small.change == Change::lost);
  CHECK(back.change == Change::grown);
  CHECK(back.governs == Governs::long_term); // and what it lost in twenty years still ends it
  CHECK(life_to(back, "absolute-4.0").mean.value() == Approx(1.2 / 0.04));
  CHECK(years::grown_since(back).survey == "B");
  CHECK(history.places.at(2).change == Change::grown); // since the one between them, whose rate is never taken
  CHECK(years::grown_since(history.places.at(2)).survey == "M");
  CHECK(history.zones.front().mean_lost == small.governing()->per_year);
}

TEST_CASE("marks not read and places on doublers are nobody's match, and what is not found again is listed") {
  auto builder = side_plate();
  builder.marks("PW", {"5.5", "5.5"}).on_doubler("PW", "4.0").unread("PW", survey::Status::no_echo);
  auto then = earlier_survey("V21", "2021-10-14");
  for (const char *at : {"1", "3", "4", "25"}) read_then(then, "PW", at, "5.6");
  then.marks.push_back({.row = "PW", .station = station("2"), .status = survey::Status::no_access});
  builder.made.earlier = {then};
  const auto history = history_of(builder.made);
  CHECK(history.places.size() == 2);
  CHECK(history.places.at(1).earlier.empty());
  CHECK(history.unmatched_here == std::vector<std::string>{"PW 2"});
  CHECK(history.surveys.front().unmatched == std::vector<std::string>{"PW 3", "PW 4", "PW 25"});
  CHECK(history.surveys.front().beyond == std::vector<std::string>{"PW 25"}); // the hull is 18 m long
}

TEST_CASE("without an earlier survey there is no history") {
  auto builder = side_plate();
  builder.marks("PW", {"5.5"});
  const auto history = history_of(builder.made);
  CHECK(history.places.empty());
  CHECK(history.zones.front().matched == 0);
  CHECK_FALSE(history.next_look);
}
