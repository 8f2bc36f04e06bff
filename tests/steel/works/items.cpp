#include "steel/works/reckoned.h"

using namespace strakebook;
using sample::length;

namespace {

works::Item item(const survey::SteelworkItem &written, sample::SurveyBuilder survey = sample::side().marks("PW", {"5", "3.0", "3.2", "3.4", "5"})) {
  survey.made.steelwork = {written};
  return sample::reckoned(survey.made).items.at(0);
}

} // namespace

// Density of steel 7.85 kg per m2 and mm: plate tables, 6 mm 47.10 kg/m2; the whole figures are worked from it by hand.
TEST_CASE("weight: a square metre of 6 mm, twenty of them, and sides of 32.4 m2 in 4 mm") {
  CHECK(*item(sample::plate("overplate", "1 m", "1 m", "6")).weight_kg == Approx(47.10));
  CHECK(*item(sample::plate("overplate", "5 m", "4 m", "6")).weight_kg == Approx(942.0));
  CHECK(*item(sample::plate("overplate", "18 m", "1.8 m", "4")).weight_kg == Approx(1017.36));
}

// Geometry of a rectangle with rounded corners; worked by hand: R 100 mm takes (4 - pi) / 100 m2 off, and (8 - 2 pi) / 10 m.
TEST_CASE("weight and weld: rounded corners take off what they take off") {
  auto written = sample::plate("overplate", "1200", "500", "5");
  CHECK(*item(written).plate_m2 == Approx(0.6));
  CHECK(*item(written).weld_m == Approx(3.4));
  written.radius = sample::mm("100");
  CHECK(*item(written).plate_m2 == Approx(0.6 - 0.0085840735).epsilon(1e-9));
  CHECK(*item(written).weld_m == Approx(3.4 - 0.1716814693).epsilon(1e-9));
  written.radius = sample::mm("250"); // two half circles and straights of 700 mm
  CHECK(*item(written).plate_m2 == Approx(0.7 * 0.5 + 3.14159265358979 * 0.0625).epsilon(1e-12));
  CHECK(*item(written).weld_m == Approx(1.4 + 3.14159265358979 * 0.5).epsilon(1e-12));
  written.radius = sample::mm("251");
  CHECK_FALSE(item(written).plate_m2);
}

TEST_CASE("weight: a plate laid over adds all of itself, an insert what it is heavier by") {
  const auto over = item(sample::plate("overplate", "2 m", "500", "5"));
  CHECK(*over.net_kg == Approx(39.25));
  CHECK_FALSE(over.removed_kg);
  const auto in = item(sample::plate("insert", "2 m", "500", "5"));
  CHECK(in.removed_marks == 3);
  CHECK(*in.mean_removed_mm == Approx(3.2));
  CHECK(*in.removed_kg == Approx(25.12));
  CHECK(*in.net_kg == Approx(14.13));
}

TEST_CASE("weight: what is not given is not reckoned") {
  auto written = sample::plate("insert", "2 m", "500", "5");
  SECTION("no thickness") { written.thickness.reset(); CHECK_FALSE(item(written).weight_kg); CHECK_FALSE(item(written).plate_m2); }
  SECTION("no breadth") { written.breadth.reset(); CHECK_FALSE(item(written).plate_m2); }
  SECTION("nothing was read where the insert goes") {
    written.at = sample::reach({"PW"}, "2.2", "2.8");
    CHECK(item(written).weight_kg);
    CHECK_FALSE(item(written).net_kg);
  }
  SECTION("weld build-up adds no plate") { written.action = "weld build-up"; CHECK_FALSE(item(written).net_kg); }
}

// Grid of about 300 mm, where broader than 350 mm: common practice, no source.
TEST_CASE("plugs: rows as few as keep them within the pitch, on a doubler over the bound") {
  auto written = sample::plate("overplate", "1200", "500", "5");
  CHECK_FALSE(item(written).plugs);
  written.plug_pitch = sample::mm("300");
  CHECK(item(written).plugs->along == 3);  // 300 apart, and from the edges
  CHECK(item(written).plugs->across == 1); // 250 from either edge
  CHECK(item(written).plugs->count() == 3);
  written.length = sample::mm("1200.000001");
  CHECK(item(written).plugs->along == 4);
  written.breadth = sample::mm("350");
  CHECK_FALSE(item(written).plugs);
  written.breadth = sample::mm("351");
  written.action = "insert";
  CHECK_FALSE(item(written).plugs);
}

TEST_CASE("place: the middle of the reach, and the frame that it is nearest to") {
  auto survey = sample::side().marks("PW", {"5", "5"});
  survey.made.datum.frame_zero = sample::station("0.5");
  survey.made.datum.frames_run = sample::words("with stations");
  const auto found = item(sample::plate("overplate", "1200", "500", "5"), survey);
  CHECK(*found.centre == length("3 m"));
  CHECK(found.frame->number == 5);
  CHECK(found.frame->off == length("0"));
  auto open = sample::plate("overplate", "1200", "500", "5");
  open.at.to.reset();
  CHECK_FALSE(item(open, survey).centre);
}

TEST_CASE("options: a plate let in adds what it is heavier by, a plate laid over all of itself") {
  auto survey = sample::side().marks("PW", {"5", "3.0", "3.2", "3.4", "5"});
  const auto found = sample::reckoned(survey.made);
  REQUIRE(found.options.size() == 2);
  CHECK(found.options[0].kind == works::Option::Kind::insert);
  CHECK(found.options[0].thickness == length("6")); // the nominal: no item covers it
  CHECK(found.options[0].net_kg == Approx(0.9 * 7.85 * (6 - 3.2)));
  CHECK(found.options[1].kind == works::Option::Kind::overplate);
  CHECK(found.options[1].net_kg == Approx(0.9 * 7.85 * 6));
  CHECK(found.options[1].centre == length("3 m"));
  survey.made.steelwork = {sample::plate("overplate", "2 m", "300", "5")};
  CHECK(sample::reckoned(survey.made).options[0].thickness == length("5"));
  CHECK(sample::reckoned(survey.made).options[0].thickness_from == "S1");
}

TEST_CASE("options: where only a pit fell short, nothing was read that an insert would take out") {
  auto survey = sample::side().marks("PW", {"5", "5", "5"}).pit("P1", "PW", "2.4", "5", "2.5");
  const auto found = sample::reckoned(survey.made);
  REQUIRE(found.options.size() == 1);
  CHECK(found.options[0].kind == works::Option::Kind::overplate);
}

TEST_CASE("quantities: each names its formula and what went in") {
  auto survey = sample::side().marks("PW", {"5", "3.0", "3.2", "3.4", "5"});
  auto written = sample::plate("overplate", "1200", "500", "5");
  written.plug_pitch = sample::mm("300");
  survey.made.steelwork = {written};
  std::vector<std::string> formulas;
  for (const auto &one : works::quantities(sample::reckoned(survey.made))) {
    formulas.push_back(one.of + " " + one.formula);
    CHECK_FALSE(one.inputs.empty());
  }
  CHECK(formulas == std::vector<std::string>{"S1 plate-area", "S1 steel-weight", "S1 weld-length", "S1 plug-count", "A1 plate-area",
                                             "A1 let in steel-weight", "A1 let in removed-weight", "A1 let in net-weight",
                                             "A1 laid over steel-weight"});
}
