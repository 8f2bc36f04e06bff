#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "helpers.h"
#include "strakebook/compose/chapters.h"

using namespace strakebook;
using sample::contains;

TEST_CASE("every section of the house's plan has a chapter, and the report keeps the plan's order") {
  const auto sample = sample::small_survey();
  const auto document = compose::compose(sample.source());
  auto plan = sample.house.wording.sections;
  for (const auto &section : plan) CHECK(compose::chapters().count(section.id) == 1);
  CHECK(compose::chapters().size() == plan.size());
  std::erase_if(plan, [](const house::SectionPlan &section) { return section.id == "changes"; }); // nothing is replaced
  REQUIRE(document.sections.size() == plan.size());
  for (std::size_t i = 0; i < plan.size(); ++i) {
    CHECK(document.sections[i].id == "section/" + plan[i].id);
    CHECK_FALSE(document.sections[i].blocks.empty());
  }
}

TEST_CASE("a section that a house adds is printed in its own words, numbered in its place") {
  auto sample = sample::small_survey();
  auto &plan = sample.house.wording.sections;
  plan.insert(
      plan.begin() + 2,
      {.id = "house-rules", .title = "House rules", .master = "page", .text = {"Two people read this."}});
  const auto document = compose::compose(sample.source());
  CHECK(contains(sample::text_of(document.sections[1].blocks), "2\nHouse rules\nTwo people read this.\n"));
  CHECK(contains(sample::text_of(document.sections[2].blocks), "3\nThis report\n"));
}

TEST_CASE("a section without a chapter is a fault, not a gap") {
  auto sample = sample::small_survey();
  sample.house.wording.sections.front().id = "unheard-of";
  CHECK_THROWS_AS(compose::compose(sample.source()), std::out_of_range);
}

TEST_CASE("every reference leads to a block of the document, and every label asked for has a name") {
  const auto sample = sample::small_survey();
  const auto document = compose::compose(sample.source());
  const auto links = sample::links_of(document);
  const std::set<std::string> ids(links.ids.begin(), links.ids.end());
  for (const auto &id : links.ids) {
    INFO(id);
    CHECK(std::ranges::count(links.ids, id) == 1);
  }
  CHECK(links.references.size() > 40);
  using Form = content::Reference::Form;
  for (const auto &reference : links.references) {
    INFO(reference.target);
    CHECK(ids.count(reference.target) == 1);
    if (reference.form == Form::label || reference.form == Form::label_page)
      CHECK(document.names.count(reference.target) == 1);
  }
}

TEST_CASE("every mark and pit has one place that links lead to") {
  const auto sample = sample::small_survey();
  const auto links = sample::links_of(compose::compose(sample.source()));
  for (const auto &mark : sample.survey.marks)
    CHECK(std::ranges::count(links.ids, "mark/" + mark.id()) == 1);
  for (const auto &pit : sample.survey.pits)
    CHECK(std::ranges::count(links.ids, "pit/" + pit.id) == 1);
  for (const char *id : {"item/1", "limitation/1", "zone/W", "zone/B", "steelwork/S1"})
    CHECK(std::ranges::count(links.ids, id) == 1);
}

TEST_CASE("no id of one block is another's, and labels are counted by section") {
  const auto document = compose::compose(sample::small_survey().source());
  CHECK(document.names.at("table/blocks") == "Table\u00A06.1");
  CHECK(document.names.at("table/datum-rows") == "Table\u00A07.1");
  CHECK(document.names.at("figure/datum") == "Figure\u00A07.1");
  CHECK(document.names.at("item/1") == "item\u00A01");
}

TEST_CASE("the head says on every page that the copy is not issued") {
  auto sample = sample::small_survey();
  auto head = [&] { return sample::text_of(compose::compose(sample.source()).furniture.head_right); };
  auto foot = [&] { return sample::text_of(compose::compose(sample.source()).furniture.foot_left); };
  CHECK(head() == "Report TB 0001  Issue 2, final  not issued  supersedes issue 1");
  CHECK(contains(foot(), "Not issued. Dated 20 October 2026."));

  sample.survey.report.state = survey::State::preliminary;
  CHECK(contains(head(), "Issue 2, preliminary  not issued"));
  CHECK(contains(foot(), "figures may change"));

  sample.survey.report.state = survey::State::draft;
  CHECK(contains(head(), "DRAFT  not issued"));
  CHECK_FALSE(contains(head(), "Issue 2, draft"));
}

TEST_CASE("the foot of a draft says what is outstanding, each kind once") {
  auto sample = sample::small_survey();
  sample.survey.report.state = survey::State::draft;
  for (const auto code :
       {base::Code::required_missing, base::Code::conflict_unanswered, base::Code::required_missing})
    sample.findings.add({.severity = base::Severity::warning, .code = code, .message = "m"});
  const auto document = compose::compose(sample.source());
  CHECK(sample::text_of(document.furniture.foot_left) ==
        "Draft, not to be relied on. Outstanding: required answers, answer to criteria in conflict.");
}

TEST_CASE("the document carries its date from the survey, never from a clock") {
  auto sample = sample::small_survey();
  CHECK(compose::compose(sample.source()).date == "2026-10-20");
  sample.survey.report.issued.reset();
  CHECK(compose::compose(sample.source()).date.empty());
}
