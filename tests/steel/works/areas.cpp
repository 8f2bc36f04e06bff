#include "steel/works/reckoned.h"

// How places are gathered: a convention of this program, no source. Ends half-way to the neighbour that meets: common practice,
// no source.
using namespace strakebook;
using sample::length;
using works::Area;
using Ids = std::vector<std::string>;

namespace {

const std::vector<std::string> sound = {"5", "5", "5", "5", "5", "5", "5"};

std::vector<Area> areas(const survey::Survey &survey) { return sample::reckoned(survey).areas; }
Area only(const sample::SurveyBuilder &survey) {
  const auto found = areas(survey.made);
  REQUIRE(found.size() == 1);
  return found[0];
}

} // namespace

TEST_CASE("areas: a run ends half-way to the stations that meet") {
  const auto area = only(sample::side().marks("PU", sound).marks("PW", {"5", "5", "3.2", "3.0", "5", "5", "5"}));
  CHECK(area.id == "A1");
  CHECK(area.rows == Ids{"PW"});
  CHECK(area.along.from == length("2.5 m"));
  CHECK(area.along.to == length("4.5 m"));
  CHECK(area.breadth == length("300"));
  CHECK(*area.area_m2 == Approx(0.6));
  CHECK(area.places == Ids{"PW 3", "PW 4"});
  CHECK(area.least == length("3.0"));
  CHECK(area.at == "PW 4");
}

TEST_CASE("areas: without a neighbour that meets, a run ends at the last planned mark") {
  const auto area = only(sample::side().marks("PW", {"3.0", "3.0", "5"}));
  CHECK(area.along.from == length("1 m"));
  CHECK(area.along.to == length("2.5 m"));
  auto open = sample::side().marks("PW", {"5", "3.0"});
  open.unread("PW", survey::Status::no_access);
  CHECK(only(open).along.to == length("3 m"));
  CHECK(only(open).unseen == 1);
}

TEST_CASE("areas: what was not read ends no run, and is counted") {
  auto survey = sample::side().marks("PW", {"5", "3.0"});
  survey.unread("PW", survey::Status::no_echo).on_doubler("PW", "4.8").marks("PW", {"3.0", "5"});
  const auto area = only(survey);
  CHECK(area.along.from == length("1.5 m"));
  CHECK(area.along.to == length("5.5 m"));
  CHECK(area.unseen == 2);
  CHECK(area.places == Ids{"PW 2", "PW 5"});
}

TEST_CASE("areas: half of an odd nanometre goes outwards") {
  auto survey = sample::side().mark("PW", "1", "5").mark("PW", "2.000000001", "3.0").mark("PW", "3", "5");
  CHECK(only(survey).along.from == base::Length::nanometres(1'500'000'000));
  CHECK(only(survey).along.to == base::Length::nanometres(2'500'000'001));
}

TEST_CASE("areas: too close to call stands apart, and each ends the other") {
  const auto found = areas(sample::side().marks("PW", {"5", "3.0", "4.1", "5"}).made);
  REQUIRE(found.size() == 2);
  CHECK(found[0].kind == Area::Kind::falls_short);
  CHECK(found[0].along.to == length("2.5 m"));
  CHECK(found[1].kind == Area::Kind::too_close);
  CHECK(found[1].along.from == length("2.5 m"));
  CHECK(found[1].along.to == length("3.5 m"));
}

TEST_CASE("areas: a pit between marks that meet is an area between them, and a pit that meets ends none") {
  auto survey = sample::side().marks("PW", sound).pit("P1", "PW", "3.2", "5", "2.5");
  CHECK(only(survey).along.from == length("3.1 m"));
  CHECK(only(survey).along.to == length("3.6 m"));
  CHECK(only(survey).at == "P1");
  auto beside = sample::side().marks("PW", {"5", "3.0", "3.0", "5"}).pit("P1", "PW", "2.5", "5", "0.1");
  CHECK(only(beside).places == Ids{"PW 2", "PW 3"});
  auto at_mark = sample::side().marks("PW", sound).pit("P1", "PW", "3", "5", "2.5");
  CHECK(only(at_mark).along.from == length("2.5 m"));
}

TEST_CASE("areas: runs that lie over each other on adjoining rows are one, and their breadths add") {
  auto survey = sample::side().marks("PU", {"5", "3.1", "3.1", "5", "5"}).marks("PW", {"5", "5", "3.0", "3.0", "5"});
  const auto area = only(survey);
  CHECK(area.rows == Ids{"PU", "PW"});
  CHECK(area.along.from == length("1.5 m"));
  CHECK(area.along.to == length("4.5 m"));
  CHECK(area.breadth == length("600"));
  CHECK(area.places == Ids{"PU 2", "PU 3", "PW 3", "PW 4"});
  SECTION("runs that only touch are two") {
    CHECK(areas(sample::side().marks("PU", {"3.0", "5", "5", "5"}).marks("PW", {"5", "3.0", "5", "5"}).made).size() == 2);
  }
  SECTION("port and starboard are two, even where one follows the other in the survey") {
    CHECK(areas(sample::side().marks("PW", {"5", "3.0", "5"}).marks("SW", {"5", "3.0", "5"}).made).size() == 2);
  }
  SECTION("a row that does not say what it stands for leaves the breadth open") {
    survey.made.rows[0].stands_for.reset();
    CHECK_FALSE(only(survey).breadth);
    CHECK_FALSE(only(survey).area_m2);
    CHECK(sample::reckoned(survey.made).options.empty());
  }
}

TEST_CASE("areas: a run may join two that were apart") {
  auto survey = sample::side().marks("PU", {"3.0", "5", "5", "5", "3.0"}).marks("PW", {"3.0", "3.0", "3.0", "3.0", "3.0"});
  CHECK(only(survey).places.size() == 7);
}

TEST_CASE("areas: which items cover one, and which of its places none does") {
  auto survey = sample::side().marks("PW", {"5", "3.0", "3.0", "3.0", "5"});
  CHECK(only(survey).uncovered == Ids{"PW 2", "PW 3", "PW 4"});
  survey.made.steelwork = {{.id = "S1", .at = sample::reach({"PW"}, "1.8", "2.2")}};
  survey.made.recommendations = {{.id = "1", .at = sample::reach({"PW"}, "3", "3")}, {.id = "2", .at = sample::reach({"SW"}, "1", "5")}};
  CHECK(only(survey).covered_by == Ids{"S1"});
  CHECK(only(survey).recommended_by == Ids{"1"});
  CHECK(only(survey).uncovered == Ids{"PW 4"});
  survey.made.recommendations.push_back({.id = "3"}); // no place was written: it covers nothing that is known
  CHECK(only(survey).uncovered == Ids{"PW 4"});
}

TEST_CASE("areas: what the ladder names there, and nothing where the readings are too few for an opinion") {
  CHECK(only(sample::side().marks("PW", {"5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5", "3.0", "5"})).suggested == Ids{"weld build-up", "pad weld"});
  CHECK(only(sample::side().marks("PW", {"5", "3.0", "3.0", "5"})).suggested == Ids{"overplate", "insert"});
  CHECK(only(sample::side().marks("PW", {"5", "3.0"})).suggested.empty());
  // the worst of the zone is isolated on its rung; the other area is not, on its own
  const auto two = areas(sample::side().marks("PU", {"5", "2.9", "5", "5", "5", "5", "5", "5", "5", "5", "5", "5"})
                             .marks("SW", {"5", "5", "3.2", "3.2", "3.2", "5", "5", "5", "5", "5", "5", "5"}).made);
  REQUIRE(two.size() == 2);
  CHECK(two[0].suggested == Ids{"pad weld", "insert"});
  CHECK(two[1].suggested == Ids{"overplate", "insert"});
}
