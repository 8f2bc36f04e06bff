#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"

using namespace strakebook;
using What = assess::Default::What;

namespace {

struct Taken {
  What what;
  std::string pit, gauge;
  bool operator==(const Taken &) const = default;
};

std::vector<Taken> taken(const survey::Survey &survey) {
  std::vector<Taken> all;
  for (const auto &one : sample::assessed(survey).defaults) all.push_back({one.what, one.pit, one.gauge});
  return all;
}

survey::Survey with_pit() {
  return sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5", "5"}).pit("P1", "PW", "1.2", "5", "1").made;
}

} // namespace

TEST_CASE("wing voids that are not written are a default where a rule formula is used, and only there") {
  auto survey = with_pit();
  CHECK(taken(survey).empty());
  survey.criteria = {{.id = "inland-rule"}};
  CHECK(taken(survey) == std::vector<Taken>{{What::wing_voids, "", ""}});
  for (const bool there : {false, true}) {
    survey.vessel.wing_voids = base::Located<bool>{there};
    CHECK(taken(survey).empty());
    CHECK(sample::assessed(survey).workings.at("inland-rule/side").c == (there ? base::Ratio{19, 20} : base::Ratio{1, 1}));
  }
}

TEST_CASE("a pit that does not say what took its depth takes the most doubtful gauge, and says so") {
  auto survey = with_pit();
  survey.gauges.push_back({.id = "poor", .u = sample::length("0.4")});
  survey.pits[0].gauge.clear();
  CHECK(taken(survey) == std::vector<Taken>{{What::pit_gauge, "P1", "poor"}});
  auto outer = survey; // in the plate of a doubler nothing judges it
  outer.doublers = {{.id = "D1", .over = {.rows = {"PW"}, .from = sample::station("1"), .to = sample::station("2")}}};
  CHECK(taken(outer).empty());
  // 1.645 sqrt(0.1^2 + 0.4^2) = 0.678251...
  CHECK(sample::assessed(survey).zones[0].subjects[1].band_nm == assess::Length::nanometres(678'251));
}

TEST_CASE("where several gauges read the row of a pit, the most doubtful is taken for the steel beside it") {
  auto survey = with_pit();
  survey.gauges.push_back({.id = "poor", .u = sample::length("0.4")});
  survey.marks[1].gauge = "poor";
  CHECK(taken(survey) == std::vector<Taken>{{What::gauge_beside, "P1", "poor"}});
  survey.marks[1].status = survey::Status::rejected; // it read nothing of use
  CHECK(taken(survey).empty());
}
