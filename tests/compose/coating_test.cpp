#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using sample::contains;

namespace {

base::Decimal decimal(const std::string &text) { return base::parse_decimal(text).value(); }
base::Measured measured(const std::string &text) {
  base::MeasuredError wrong;
  return base::parse_measured(text, base::Unit::millimetre, wrong).value();
}

std::string coating(sample::Composed &sample) {
  assess_again(sample);
  return sample::section_text(compose::compose(sample.source()), "coating");
}

survey::AnodePlan plan() {
  return {.metal = {.text = "magnesium"}, .area_m2 = decimal("40"), .bare_percent = decimal("5"), .current_ma_m2 = decimal("30"),
          .years = decimal("4"), .net_kg = decimal("2.5"), .stands_out = measured("60 mm"), .source = {.text = "the surveyor's own"}};
}

} // namespace

TEST_CASE("a scheme shows what it is reckoned from and its litres, or what is missing") {
  auto sample = sample::small_survey();
  sample.survey.coating.schemes = {
      {.id = "1", .at = {.zone = "W"}, .coating = {.text = "two-pack"}, .area_m2 = decimal("100"), .blast = {.text = "Sa 2 1/2"},
       .dry_film = measured("125 um"), .solids_percent = decimal("65"), .loss_percent = decimal("0")},
      {.id = "2", .at = {.zone = "B"}, .coating = {.text = "bitumen"}, .area_m2 = decimal("30"), .recoat = {.text = "every spring"}}};
  const auto text = coating(sample);
  INFO(text);
  CHECK(contains(text, "two-pack/prepared to Sa 2 1/2\n125\n100\n65\n0\n19.3\n–\n"));
  CHECK(contains(text, "bitumen\n–\n30\n–\n–\n–\nevery spring\n"));
  CHECK(contains(text, "the house's holds: at each docking"));
  CHECK(contains(text, "Scheme 2: not given, and so no volume: dry film, solids by volume and loss."));
}

TEST_CASE("anodes planned show current, mass and a count rounded up") {
  auto sample = sample::small_survey();
  sample.survey.coating.plan = plan();
  auto text = coating(sample);
  INFO(text);
  // 40 x 30 x 5 % = 0.06 A; 0.06 x 4 x 8760 / (0.90 x 1100) = 2.12 kg: one of 2.5 kg
  CHECK(contains(text, "magnesium\n40\n5\n30\n4\n0.060\n2.1\n2.5\n1\n60\n"));
  CHECK(contains(text, "Current density: the surveyor's own."));
  CHECK(contains(text, "90 % of the mass of an anode"));
  sample.survey.coating.plan->years.reset();
  text = coating(sample);
  CHECK(contains(text, "Not given, and so what turns on it is not reckoned: years."));
}

TEST_CASE("the beam over all is said against the narrowest place, passed or not, or not given") {
  auto sample = sample::small_survey();
  sample.survey.coating.plan = plan();
  CHECK(contains(coating(sample), "Her beam over all would be 2200 mm: 2080 mm, with 60 mm standing out to port and 60 mm to starboard "
                                  "(the anodes planned). The narrowest lock or bridge that she has to pass is not given."));
  sample.survey.vessel.narrowest = survey::LengthFact{.length = measured("2130 mm")};
  CHECK(contains(coating(sample), "She would not pass the narrowest lock or bridge on her waters, which is 2130 mm."));
  sample.survey.vessel.narrowest = survey::LengthFact{.length = measured("2.3 m")};
  CHECK(contains(coating(sample), "The narrowest lock or bridge that she has to pass is 2.3 m."));
  CHECK(contains(sample::section_text(compose::compose(sample.source()), "vessel"), "narrowest lock or bridge"));
}

TEST_CASE("anodes that were on her: what was written, and what their metal and wear are a sign of") {
  auto sample = sample::small_survey();
  sample.survey.afloat.water.text = "fresh";
  sample.survey.coating.fitted =
      survey::AnodesFitted{.count = 4, .metal = {.text = "zinc"}, .on = base::Located<base::Date>{{2024, 3, 1}, {}},
                           .worn_percent = decimal("2"), .bonded = {.text = "not tested"}, .answer = {.text = "Painted over."}};
  const auto text = coating(sample);
  INFO(text);
  CHECK(contains(text, "4 in number, of zinc, fitted 1 March 2024, 2 % of their mass gone, bond sound: not tested"));
  CHECK(contains(text, "Painted over."));
  CHECK(contains(text, "are of zinc, which suits salt and brackish water. She floats in fresh water."));
  CHECK(contains(text, "the anodes had lost 2 % of their mass by 14 October 2026. Less than 5 % after 12 months or more is a sign of a "
                       "bad bond to the hull."));
}
