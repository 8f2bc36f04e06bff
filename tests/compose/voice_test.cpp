#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using base::Length;

namespace {

struct Fixture {
  sample::Composed sample = sample::small_survey();
  compose::Source source = sample.source();
  house::SectionPlan plan;
  compose::Scope scope{source, plan, "11"};
};

} // namespace

TEST_CASE("figures are tied to their units and the minus is a minus") {
  CHECK(compose::tied("5.8", "mm") == "5.8\u00A0mm");
  CHECK(compose::with_minus("-0.20") == "\u22120.20");
  CHECK(compose::with_sign("0.20") == "+0.20");
  CHECK(compose::with_sign("-0.20") == "\u22120.20");
}

TEST_CASE("a length stands as it was written, and in mm with every digit of the conversion") {
  Fixture f;
  base::MeasuredError wrong;
  const auto of = [&](const char *text, base::Unit unit) { return base::parse_measured(text, unit, wrong).value(); };
  CHECK(compose::as_written(of(".187", base::Unit::inch)) == ".187\u00A0in");
  CHECK(compose::as_written(of("1 1/4", base::Unit::inch)) == "1\u00A01/4\u00A0in");
  CHECK(compose::as_written(of("12 ft 6 in", base::Unit::foot)) == "12\u00A0ft\u00A06\u00A0in");
  CHECK(compose::as_written(of("4.6 mm", base::Unit::inch)) == "4.6\u00A0mm");
  CHECK(compose::in_mm(of(".187", base::Unit::inch)) == "4.7498");
  CHECK(compose::in_mm(of("60 thou", base::Unit::inch)) == "1.524");
  CHECK(compose::in_mm(of("4.60 mm", base::Unit::inch)) == "4.60");
  CHECK(compose::with_mm(f.scope, of("60 thou", base::Unit::inch)) == "60\u00A0thou (1.524\u00A0mm)");
  CHECK(compose::with_mm(f.scope, of("5.80", base::Unit::millimetre)) == "5.80\u00A0mm");
}

TEST_CASE("a limit is printed in full or rounded up, never down") {
  CHECK(compose::limit_text(Length::millimetres(4)) == "4.00");
  CHECK(compose::limit_text(Length::micrometres(3225)) == "3.225");
  CHECK(compose::limit_text(Length::nanometres(3'225'001)) == "3.226");
}

TEST_CASE("a margin never rounds on to nought") {
  assess::CriterionResult result{
      .criterion = "x", .limit = Length::micrometres(3225), .margin = Length::nanometres(800)};
  CHECK(compose::margin_text(result, Length::micrometres(232)) == "+0.001"); // 3.2258 against 3.225
  result = {.criterion = "x", .limit = Length::millimetres(4), .margin = Length::micrometres(-4)};
  CHECK(compose::margin_text(result, Length::micrometres(164)) == "\u22120.004");
}

TEST_CASE("a percent stays clear of the percent criteria in use") {
  Fixture f;
  CHECK(compose::percent(f.scope, {234, 1000}) == "23\u00A0%");
  CHECK(compose::percent(f.scope, {246, 1000}) == "24.6\u00A0%"); // whole, it would read 25, the limit
  CHECK(compose::percent(f.scope, {25, 100}) == "25\u00A0%");
}

TEST_CASE("dates and lists are in words") {
  Fixture f;
  CHECK(compose::date(f.scope, {2026, 10, 14}) == "14\u00A0October 2026");
  CHECK(compose::join_and(f.scope, std::vector<std::string>{}) == "");
  CHECK(compose::join_and(f.scope, std::vector<std::string>{"a"}) == "a");
  CHECK(compose::join_and(f.scope, std::vector<std::string>{"a", "b", "c"}) == "a, b and c");
}

TEST_CASE("places say row, station and where that is") {
  Fixture f;
  CHECK(compose::mark_place(f.scope, "PW 3") == "PW\u00A03, port wind-and-water");
  CHECK(compose::mark_place(f.scope, "BC 2") == "BC\u00A02, bottom centreline");
  CHECK(compose::reach_words(f.scope, {.rows = {"PW", "SW"}}) == "PW and SW");
  CHECK(compose::reach_words(f.scope, {.zone = "W"}) == "wind-and-water");
  CHECK(compose::reach_words(f.scope, {}) == "whole shell");
}

TEST_CASE("prose becomes links, ties its units and keeps no line ends") {
  Fixture f;
  const auto made = compose::prose(f.scope, "See P1 and PW 3:\nit keeps 4.4 mm, *not* more.\n");
  std::vector<std::string> targets;
  for (const auto &one : made)
    if (const auto *reference = std::get_if<content::Reference>(&one))
      targets.push_back(reference->target);
  CHECK(targets == std::vector<std::string>{"pit/P1", "mark/PW 3"});
  CHECK(sample::text_of(made) == "See P1 and PW 3: it keeps 4.4 mm, not more.");
  const auto *last = std::get_if<content::Text>(&made[made.size() - 2]);
  REQUIRE(last != nullptr);
  CHECK(last->emphasis == content::Emphasis::strong);
}

TEST_CASE("words of the layout take links in their place holders, and refuse one that nothing fills") {
  Fixture f;
  f.sample.house.wording.words["test.key"] = "At {place}: *sure*.";
  const auto made = f.scope.tell("test.key", {{"place", compose::link("mark/PW 3", "PW 3")}});
  REQUIRE(made.size() == 5);
  CHECK(std::get<content::Text>(made[3]).emphasis == content::Emphasis::strong);
  CHECK_THROWS_AS(f.scope.tell("test.key"), std::invalid_argument);
  CHECK_THROWS_AS(f.scope.say("test.nowhere"), std::out_of_range);
}
