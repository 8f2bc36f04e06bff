#include <catch2/catch.hpp>

#include <algorithm>

#include "house/layouts.h"
#include "strakebook/base/text.h"

using namespace strakebook;

namespace {

house::House loaded(const std::string &name) {
  base::Diagnostics sink;
  auto house = test::shipped(name, sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  REQUIRE(sink.all().empty());
  return *house;
}

std::vector<std::string> section_ids(const house::House &house) {
  std::vector<std::string> ids;
  for (const auto &section : house.wording.sections)
    ids.push_back(section.id);
  return ids;
}

/// The parts of the base; its own file comes on top.
std::size_t files_of_the_base() {
  namespace fs = std::filesystem;
  return static_cast<std::size_t>(std::distance(
      fs::directory_iterator(fs::path(STRAKEBOOK_ROOT) / "layouts/base"), fs::directory_iterator{}));
}

} // namespace

TEST_CASE("the base loads without a word and its 23 sections stand in the order of the report") {
  const auto house = loaded("base");
  CHECK(section_ids(house) ==
        std::vector<std::string>{
            "answer",     "changes",         "identity",        "scope",        "vessel",    "conditions",  "instruments",
            "datum",      "original",        "criteria",     "map",       "results",     "comparison",
            "assessment", "recommendations", "steelwork",    "coating",   "limitations", "safety",
            "basis",      "photographs",     "issue-record", "appendices"});
  CHECK(house.wording.sections[10].master == "map");
  CHECK(house.wording.months[9] == "October");
  CHECK(house.inputs.size() == files_of_the_base() + 1);
  CHECK(house.inputs.front().path == "layouts/base.yaml");
  CHECK(house.inputs[1].path == "layouts/base/policy.yaml");
  for (const auto &input : house.inputs)
    CHECK((input.kind == "layout" && input.bytes > 0 && input.digest.size() == 64));
}

TEST_CASE("wording is found by its dotted key, and a key no layout gives is a fault that names it") {
  const auto house = loaded("base");
  CHECK(house::word(house.wording, "labels.foot") == "page {page} of {pages}");
  CHECK(house::word(house.wording, "labels.page-short") == "p.\u00A0{page}");
  CHECK_THROWS_WITH(house::word(house.wording, "labels.fooot"), Catch::Contains("labels.fooot"));
}

TEST_CASE("the house that extends the base adds and tightens, and keeps the rest") {
  const auto base = loaded("base"), house = loaded("river-desk");
  CHECK(house.wording.firm == "River Desk Hull Surveyors");
  CHECK(house.wording.sections.front().title != base.wording.sections.front().title);

  auto ids = section_ids(house);
  const auto added = std::find(ids.begin(), ids.end(), "house-rules");
  REQUIRE(added != ids.end());
  CHECK(*(added - 1) == "safety");
  CHECK(house.wording.sections[added - ids.begin()].text.size() == 2);
  ids.erase(added);
  CHECK(ids == section_ids(base));

  CHECK(house.wording.cautions.size() == base.wording.cautions.size() + 2);
  for (const auto &field : base.policy.required_fields)
    CHECK(std::count(house.policy.required_fields.begin(), house.policy.required_fields.end(), field) == 1);
  CHECK(house.policy.required_fields.size() == base.policy.required_fields.size() + 1);
  CHECK(house.policy.least_marks > base.policy.least_marks);
  CHECK(house.policy.neighbour_jump < base.policy.neighbour_jump);
  CHECK(house.policy.criteria_order == base.policy.criteria_order);
  CHECK(house.inputs.size() == base.inputs.size() + 1);
  CHECK(house.inputs.back().path == "layouts/river-desk.yaml");
}
