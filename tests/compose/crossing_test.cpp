#include <catch2/catch.hpp>

#include <set>

#include "helpers.h"
#include "strakebook/compose/crossing.h"

using namespace strakebook;
using sample::contains;

namespace {

struct Desk {
  sample::Composed sample = sample::small_survey();
  compose::Source source = sample.source();
  house::SectionPlan plan;
  compose::Scope scope{source, plan, {}};
};

std::set<std::string> targets(const content::Inlines &text) {
  std::set<std::string> out;
  for (const auto &part : text)
    if (const auto *reference = std::get_if<content::Reference>(&part))
      out.insert(reference->target);
  return out;
}

} // namespace

TEST_CASE("a recommendation rests on what its words and evidence cite, and on the photographs of that") {
  Desk desk;
  auto &survey = desk.sample.survey;
  survey.recommendations.front().evidence = {"PW 3"};
  survey.recommendations.front().reason.text = "P1 is deep.";
  survey.photos.front().at = {"PW", survey.marks.front().station};
  survey.photos.front().at.station.raw = "3";
  const auto items = compose::items_by_subject(desk.scope);
  const auto &id = survey.recommendations.front().id;
  const auto has = [&](const std::string &subject) {
    const auto &at = compose::items_at(items, subject);
    return std::find(at.begin(), at.end(), id) != at.end();
  };
  CHECK(has("mark/PW 3"));
  CHECK(has("pit/P1"));
  CHECK(has("photo/" + survey.photos.front().id));
  CHECK_FALSE(has("mark/PW 4"));
  CHECK(compose::any_item_at(items, "mark/"));
  CHECK(targets(compose::photos_of_item(desk.scope, id)).count("photo/" + survey.photos.front().id) == 1);
  const auto back = targets(compose::ways_from_photo(desk.scope, survey.photos.front(), items));
  CHECK(back.count("mark/PW 3") == 1);
  CHECK(back.count("item/" + id) == 1);
  CHECK(back.count("map/photo/" + survey.photos.front().id) == 1);
}

TEST_CASE("steelwork and its recommendation lead to each other") {
  Desk desk;
  for (const auto &one : desk.sample.survey.steelwork)
    CHECK(targets(compose::steelwork_of_item(desk.scope, one.recommendation)).count("steelwork/" + one.id) == 1);
  CHECK(compose::steelwork_of_item(desk.scope, "no such item").empty());
}

TEST_CASE("rows of marks in figures end with what the whole shell comes to") {
  Desk desk;
  const auto text = sample::section_text(compose::compose(desk.source), "results");
  CHECK(contains(text, "\nall\n\n17\n15\n"));
}
