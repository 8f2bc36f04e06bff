#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/steel/survey/closing.h"

using namespace strakebook;
using survey::Closing;

namespace {

survey::Survey with_addenda() {
  survey::Survey made;
  made.recommendations = {{.id = "1"}, {.id = "2"}, {.id = "3"}};
  made.addenda = {{.id = "1", .closes = {{.item = "1", .outcome = Closing::partly}, {.item = "2", .outcome = Closing::closed}}},
                  {.id = "2", .closes = {{.item = "1", .outcome = Closing::closed}}}};
  return made;
}

std::vector<std::string> open_after(std::string_view addendum) {
  std::vector<std::string> ids;
  const auto made = with_addenda();
  for (const auto *item : survey::open_items(made, addendum)) ids.push_back(item->id);
  return ids;
}

} // namespace

TEST_CASE("the last addendum that speaks of an item says what became of it") {
  const auto made = with_addenda();
  CHECK(survey::outcome_of(made, "1").closed());
  CHECK(survey::outcome_of(made, "1").addendum->id == "2");
  CHECK(survey::outcome_of(made, "1", "1").item->outcome == Closing::partly);
  CHECK(survey::outcome_of(made, "2", "2").addendum->id == "1");
  CHECK(survey::outcome_of(made, "3").addendum == nullptr);
}

TEST_CASE("what is partly closed, or not spoken of, is open") {
  CHECK(open_after("1") == std::vector<std::string>{"1", "3"});
  CHECK(open_after("2") == std::vector<std::string>{"3"});
  CHECK(open_after("") == std::vector<std::string>{"3"});
}

TEST_CASE("a carried item goes on unless it was closed or overtaken") {
  CHECK(survey::still_open({.id = "1"}));
  CHECK(survey::still_open({.id = "1", .now = survey::Became::open}));
  CHECK(survey::still_open({.id = "1", .now = survey::Became::not_seen}));
  CHECK_FALSE(survey::still_open({.id = "1", .now = survey::Became::closed}));
  CHECK_FALSE(survey::still_open({.id = "1", .now = survey::Became::overtaken}));
}

TEST_CASE("an earlier report's words point at its own places, and what is found of them at this survey's") {
  const auto readings = survey::testing::inline_readings("{PW: {1: 5.0}}", 1);
  const survey::testing::Folder folder;
  const auto found = [&](const std::string &told) {
    return survey::testing::run(folder.write("survey.yaml", survey::testing::small_survey(readings, "carried: {1: {from: \"report B 88, issue 1\", item: 1, " + told + "}}\n"))).found;
  };
  CHECK(found("title: Fill P11, deadline: before P12 is through").ok());
  CHECK(found("title: Fill it, found: P11 is filled.").errors() == 1);
}

TEST_CASE("addenda, carried items, recipients and what a corrected issue says are read as they stand") {
  const auto survey = survey::testing::run(survey::testing::here / "whole/survey.yaml").survey;
  REQUIRE(survey.addenda.size() == 1);
  const auto &item = survey.addenda[0].closes.at(0);
  CHECK(survey.addenda[0].id == "1");
  CHECK(item.outcome == Closing::partly);
  CHECK(item.readings.at(0).reading.value == base::Length::micrometres(5900));
  CHECK(item.photos == std::vector<std::string>{"1"});
  CHECK(survey.carried.at(0).now == survey::Became::overtaken);
  CHECK(survey.carried.at(0).evidence == std::vector<std::string>{"N1"});
  CHECK(survey.recipients.at(0).how.text == "by letter");
  REQUIRE(survey.amendment);
  CHECK(survey.amendment->changes.at(0).what.size() == 2);
  CHECK(survey.amendment->told.at(0).acknowledged->value == base::Date{2026, 10, 23});
  CHECK(survey.private_notes.at(0).name == "ask");
}
