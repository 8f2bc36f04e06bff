#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::words;
using survey::Became;
using survey::Closing;

namespace {

base::Located<base::Date> day(int year, int month, int of_month) { return {{year, month, of_month}, sample::at_line(91)}; }

/// A final with one item, and an addendum that closes it and lacks nothing.
survey::Survey with_addendum() {
  auto made = sample::complete_final();
  made.recommendations = {{.id = "1", .action = "clean and recoat", .at = {.zone = "B"}, .klass = "C", .reason = words("old pits"),
                           .feasible = words("yes"), .proof = words("photographs")}};
  survey::ClosedItem closed{.item = "1", .outcome = Closing::closed, .on = day(2026, 11, 26), .evidence = words("bright plate, two coats"),
                            .span = sample::at_line(92)};
  closed.readings = {{.at = {.row = "BC", .station = sample::station("2")}, .reading = sample::mm("11.5")}};
  made.addenda = {{.id = "1", .inspected = day(2026, 11, 28), .issued = day(2026, 11, 30), .by = words("the surveyor"),
                   .how = words("on the same blocks"), .gauge = "ut", .block = words("5.0 shown on 5.0"), .closes = {closed},
                   .span = sample::at_line(90)}};
  return made;
}

survey::CarriedItem carried_item() {
  return {.id = "1", .from = words("report T 0, issue 1"), .item = words("3"), .title = words("Renew the anodes"), .span = sample::at_line(80)};
}

} // namespace

TEST_CASE("a final says of each carried item what became of it") {
  auto survey = sample::complete_final();
  survey.carried = {carried_item()};
  const auto found = only(reviewed(survey), Code::carried_unanswered);
  CHECK(says(found, "carried 1, item 3 of report T 0, issue 1: nothing is said of it"));
  CHECK(found.span.line == 80);
  SECTION("found open, it needs no more words") {
    survey.carried[0].now = Became::open;
    CHECK(reviewed(survey).empty());
  }
  SECTION("closed only with evidence, and how that was found") {
    survey.carried[0].now = Became::closed;
    survey.carried[0].found = words("Six anodes, none worn.");
    CHECK(says(only(reviewed(survey), Code::carried_unanswered), "nothing shows that"));
    survey.carried[0].evidence = {"BC 2"};
    CHECK(reviewed(survey).empty());
    survey.carried[0].found = {};
    CHECK(says(only(reviewed(survey), Code::carried_unanswered), "not how that was found"));
  }
  SECTION("overtaken or not seen only with a reason") {
    survey.carried[0].now = GENERATE(Became::overtaken, Became::not_seen);
    CHECK(says(only(reviewed(survey), Code::carried_unanswered), "not how that was found"));
    survey.carried[0].found = words("She lay on it.");
    CHECK(reviewed(survey).empty());
  }
  SECTION("a draft is told the same") {
    survey.report.state = survey::State::draft;
    CHECK(only(reviewed(survey), Code::carried_unanswered).severity == base::Severity::warning);
  }
}

TEST_CASE("an addendum that says all it has to passes") { CHECK(reviewed(with_addendum()).empty()); }

TEST_CASE("an addendum says who looked, when, how she lay, and what became of something") {
  auto survey = with_addendum();
  SECTION("inspected") { survey.addenda[0].inspected.reset(); }
  SECTION("issued") { survey.addenda[0].issued.reset(); }
  SECTION("by") { survey.addenda[0].by = {}; }
  SECTION("how") { survey.addenda[0].how = {}; }
  SECTION("closes") { survey.addenda[0].closes.clear(); }
  const auto found = only(reviewed(survey), Code::addendum_incomplete);
  CHECK(says(found, "is missing"));
  CHECK(found.span.line == 90);
}

TEST_CASE("what an addendum calls closed has a day and evidence, and nothing left; the rest says what is left") {
  auto survey = with_addendum();
  auto &item = survey.addenda[0].closes[0];
  SECTION("the day") {
    item.on.reset();
    CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "item 1 lacks on"));
  }
  SECTION("evidence") {
    item.evidence = {};
    const auto found = only(reviewed(survey), Code::addendum_incomplete);
    CHECK(says(found, "item 1 lacks evidence"));
    CHECK(found.span.line == 92);
  }
  SECTION("partly closed") {
    item.outcome = Closing::partly;
    CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "item 1 lacks left"));
    item.left = words("The second coat.");
    CHECK(reviewed(survey).empty());
  }
  SECTION("open needs no evidence") {
    item.outcome = Closing::open;
    item.evidence = {};
    item.on.reset();
    item.left = words("All of it.");
    CHECK(reviewed(survey).empty());
  }
  SECTION("closed with something left") {
    item.left = words("The second coat.");
    CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "something is left of it"));
  }
}

TEST_CASE("new readings name the gauge and its block check") {
  auto survey = with_addendum();
  SECTION("gauge") { survey.addenda[0].gauge.clear(); }
  SECTION("block") { survey.addenda[0].block = {}; }
  CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "its check on the block"));
  survey.addenda[0].closes[0].readings.clear();
  CHECK(reviewed(survey).empty());
}

TEST_CASE("a certificate that ran out before the addendum wants a remark") {
  auto survey = with_addendum();
  survey.gauges[0].certificate_until = day(2026, 11, 28);
  CHECK(reviewed(survey).empty());
  survey.gauges[0].certificate_until->value.day = 27;
  CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "ran out on 2026-11-27"));
  survey.addenda[0].remarks = words("The certificate had run out: the readings are indicative.");
  CHECK(reviewed(survey).empty());
}

TEST_CASE("the days of an addendum follow each other") {
  auto survey = with_addendum();
  SECTION("inspected before the report's inspection") {
    survey.addenda[0].inspected = day(2026, 10, 13);
    survey.addenda[0].closes[0].on = day(2026, 10, 12);
  }
  SECTION("issued before it was inspected") { survey.addenda[0].issued = day(2026, 11, 27); }
  SECTION("work after the inspection") { survey.addenda[0].closes[0].on = day(2026, 11, 29); }
  CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "lies before"));
}

TEST_CASE("an item is closed once") {
  auto survey = with_addendum();
  SECTION("twice in one addendum") {
    survey.addenda[0].closes.push_back(survey.addenda[0].closes[0]);
    CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "speaks of item 1 twice"));
  }
  SECTION("again in a later one") {
    survey.addenda.push_back(survey.addenda[0]);
    survey.addenda[1].id = "2";
    CHECK(says(only(reviewed(survey), Code::addendum_incomplete), "addendum 2: item 1 was closed by an addendum before it"));
  }
  SECTION("what was only partly closed may be closed later") {
    survey.addenda.push_back(survey.addenda[0]);
    survey.addenda[1].id = "2";
    survey.addenda[0].closes[0].outcome = Closing::partly;
    survey.addenda[0].closes[0].left = words("The second coat.");
    CHECK(reviewed(survey).empty());
  }
}
