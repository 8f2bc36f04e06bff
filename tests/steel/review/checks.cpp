#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using sample::mm;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::words;

TEST_CASE("block check: a tenth off is still in agreement, a nanometre more is not") {
  auto survey = sample::complete_final();
  survey.gauges[0].before = mm("4.90");
  CHECK(reviewed(survey).empty());
  survey.gauges[0].before = mm("4.899999");
  CHECK(says(only(reviewed(survey), Code::block_check_failed), "the check before shows 4.899999"));
  survey.gauges[0].before = mm("5.100001");
  only(reviewed(survey), Code::block_check_failed);
}

TEST_CASE("block check: missing before, high after, and the limitation that covers it") {
  auto survey = sample::complete_final();
  survey.gauges[0].before.reset();
  survey.gauges[0].after = mm("5.20");
  const auto found = only(reviewed(survey), Code::block_check_failed);
  CHECK(says(found, "gauge ut: the check before is missing and the check after shows 5.20 on the block of 5.00"));
  CHECK(found.span.line == 30);
  SECTION("by the word") { survey.limitations[0].why = words("the gauge read high on its block"); }
  SECTION("by its id") { survey.limitations[0].area = words("all readings taken with ut, which read high"); }
  CHECK(reviewed(survey).empty());
}

TEST_CASE("block check: a word that only contains the gauge's id is no limitation of it") {
  auto survey = sample::complete_final();
  survey.gauges[0].block.reset();
  survey.limitations[0].why = words("shut off from the yard, without gauges");
  only(reviewed(survey), Code::block_check_failed);
}

TEST_CASE("single echoes through a coating of unknown thickness want a limitation that speaks of them") {
  auto survey = sample::complete_final();
  survey.marks[1].surface = survey.marks[3].surface = survey::Surface::coated_single_echo;
  const auto found = only(reviewed(survey), Code::single_echo_open);
  CHECK(says(found, "2 marks were read single echo, BC 2 the first"));
  SECTION("a limitation") { survey.limitations[0].why = words("two marks were read by a single echo through paint"); }
  SECTION("the thickness") { survey.marks[1].coating = survey.marks[3].coating = mm("200 um"); }
  SECTION("a doubler's plate is not judged") { 
    survey.marks[1].plate = survey.marks[3].plate = survey::Plate::doubler;
    survey.decisions[0].opinion_on_few = words("The marks that are left are spread over the whole zone.");
  }
  CHECK(reviewed(survey).empty());
}

TEST_CASE("a budget says by itself how the uncertainty was arrived at") {
  auto survey = sample::complete_final();
  auto house = sample::house();
  house.required_fields = {"gauges.u-basis"};
  survey.gauges[1].u_basis = words("from its scale");
  CHECK(says(only(reviewed(survey, house), Code::required_missing), "gauge ut"));
  survey.gauges[0].u.reset();
  survey.gauges[0].doubt = {{.id = "block", .u = mm("0.1")}};
  CHECK(reviewed(survey, house).empty());
}

TEST_CASE("block check: a depth gauge is held to its block only if it gives one") {
  auto survey = sample::complete_final();
  CHECK_FALSE(survey.gauges[1].block);
  CHECK(reviewed(survey).empty());
  survey.gauges[1].block = mm("2.00");
  CHECK(says(only(reviewed(survey), Code::block_check_failed), "gauge depth"));
}

TEST_CASE("a recommendation gives class, deadline, reason, feasibility and proof") {
  auto survey = sample::complete_final();
  survey.recommendations = {{.id = "1", .action = "clean and recoat"}};
  const auto found = only(reviewed(survey), Code::recommendation_incomplete);
  CHECK(says(found, "recommendation 1 lacks class, deadline or by, reason, feasible and proof"));
  auto &item = survey.recommendations[0];
  item.klass = "B";
  item.reason = words("old pits");
  item.feasible = words("on the same blocks");
  item.proof = words("photographs");
  CHECK(says(only(reviewed(survey), Code::recommendation_incomplete), "lacks deadline or by"));
  SECTION("in words") { item.deadline = words("before refloating"); }
  SECTION("by a day") { item.by = base::Located<base::Date>{{2027, 4, 30}}; }
  SECTION("at next maintenance") { item.klass = "C"; }
  CHECK(reviewed(survey).empty());
}

TEST_CASE("no doubler over a doubler") {
  auto survey = sample::complete_final();
  survey.doublers = {{.id = "D1", .over = {.rows = {"BC"}, .from = sample::station("4"), .to = sample::station("6")}}};
  survey.steelwork = {sample::sound_plate("overplate")};
  survey.steelwork[0].at = {.rows = {"BC"}, .from = sample::station("5"), .to = sample::station("8"), .span = sample::at_line(60)};
  const auto found = only(reviewed(survey), Code::doubler_on_doubler);
  CHECK(says(found, "schedule item S1: \"overplate\" would lie over the doubler D1"));
  CHECK(found.span.line == 60);
  SECTION("another action") { survey.steelwork[0].action = "weld build-up"; }
  SECTION("clear of it") { survey.steelwork[0].at.from = sample::station("6.1"); }
  CHECK(reviewed(survey).empty());
}

TEST_CASE("no doubler over a doubler, where the recommendation names the zone") {
  auto survey = sample::complete_final();
  survey.doublers = {{.id = "D1", .over = {.rows = {"BC"}}}};
  survey.decisions[0].conflict.reset(); // the pits are in the outer plate then
  survey.recommendations = {{.id = "1", .action = "pad weld", .at = {.zone = "B"}, .klass = "A", .deadline = words("now"),
                             .reason = words("thin"), .feasible = words("yes"), .proof = words("photographs")}};
  survey.recommendations[0].alternative = words("an insert");
  survey.recommendations[0].evidence = {"P2"};
  survey.answer.refloat = words("with conditions");
  survey.answer.refloat_conditions = words("after item 1");
  CHECK(says(only(reviewed(survey), Code::doubler_on_doubler), "recommendation 1"));
}

TEST_CASE("no doubler over a doubler by a decision, unless an item places it clear of all of them") {
  auto survey = sample::complete_final();
  survey.doublers = {{.id = "D1", .over = {.rows = {"BC"}, .from = sample::station("4"), .to = sample::station("6")}}};
  auto &decision = survey.decisions[0];
  decision.action = "overplate";
  decision.evidence = {"P2"};
  decision.instead_of = {{"insert", words("an insert costs more")}};
  decision.departure = words("Reasons are given.");
  const auto found = only(reviewed(survey), Code::doubler_on_doubler);
  CHECK(says(found, "the decision on zone B: \"overplate\" would lie over the doubler D1"));
  CHECK(found.span.line == 50);
  survey.steelwork = {sample::sound_plate("overplate")};
  SECTION("an item without a place places nothing") { CHECK(reviewed(survey).size() == 2); }
  SECTION("an item clear of it") {
    survey.steelwork[0].at = {.rows = {"BC"}, .from = sample::station("7"), .to = sample::station("8")};
    CHECK(reviewed(survey).empty());
  }
}

TEST_CASE("a doubler without a place is refused where there are doublers") {
  auto survey = sample::complete_final();
  survey.steelwork = {sample::sound_plate("pad weld")};
  CHECK(reviewed(survey).empty());
  survey.doublers = {{.id = "D1", .over = {.rows = {"BC"}}}};
  survey.decisions[0].conflict.reset(); // the pits are in the outer plate then
  CHECK(says(only(reviewed(survey), Code::doubler_on_doubler), "schedule item S1: \"pad weld\" has no place"));
}

TEST_CASE("refloat advice does not contradict a class A item, an afloat survey or a decision") {
  auto survey = sample::complete_final();
  REQUIRE(survey.answer.refloat.text == "yes");
  SECTION("class A") {
    survey.recommendations = {{.id = "1", .action = "monitor", .at = {.zone = "B"}, .klass = "A", .deadline = words("now"),
                               .reason = words("thin"), .feasible = words("yes"), .proof = words("photographs")}};
  }
  SECTION("afloat") { survey.conditions.out_of_water = base::Located<bool>{false, {}}; }
  CHECK(says(only(reviewed(survey), Code::decision_incomplete), "refloat"));
}

TEST_CASE("a certificate that ran out before the inspection wants a limitation") {
  auto survey = sample::complete_final();
  survey.gauges[0].certificate_until = base::Located<base::Date>{survey.report.inspected->value, {}};
  CHECK(reviewed(survey).empty());
  survey.gauges[0].certificate_until->value.year -= 1;
  CHECK(says(only(reviewed(survey), Code::block_check_failed), "certificate"));
}
