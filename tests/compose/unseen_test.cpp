#include <catch2/catch.hpp>

#include "helpers.h"
#include "steel/unseen/blocks.h"

using namespace strakebook;
using sample::contains;

namespace {

std::string results_of(const sample::Composed &sample) {
  return sample::section_text(compose::compose(sample.source()), "results");
}

/// The bottom of the small survey, 40 m2 of it, looked over in blocks.
sample::Composed with_blocks(const std::vector<std::string> &deepest) {
  auto sample = sample::small_survey();
  auto &zone = sample.survey.zones.at(1);
  zone.area_m2 = sample::decimal("40");
  zone.pit_blocks = sample::blocks(deepest, "40").zones[0].pit_blocks;
  zone.pit_blocks->gauge = "pit";
  zone.pit_blocks->chosen = sample::words("every third bay");
  assess_again(sample);
  return sample;
}

content::Drawing plot_of(const sample::Composed &sample) {
  for (const auto &section : compose::compose(sample.source()).sections)
    for (const auto &block : section.blocks)
      if (const auto *figure = std::get_if<content::Figure>(&block.what); figure && block.id == "figure/deepest-B")
        return figure->panels.front().drawing;
  FAIL("no plot of the bottom");
  return {};
}

} // namespace

TEST_CASE("coverage stands by zone, and what no area is given for has a dash") {
  auto sample = sample::small_survey();
  auto text = results_of(sample);
  CHECK(contains(text, "What lies between the marks\n"));
  CHECK(contains(text, "wind-and-water\n–\n8 of 12\n–\n"));
  CHECK_FALSE(contains(text, "touched\n"));
  sample.survey.zones[0].area_m2 = sample::decimal("16.2");
  sample.survey.gauges[0].crystal = sample::mm("13");
  assess_again(sample);
  text = results_of(sample);
  // 8 over 16.2; 8 pi 0.013^2 / 4 over 16.2 is 0.0066 %, by hand.
  CHECK(contains(text, "wind-and-water\n16.2\n8 of 12\n0.5\n0.0066\n"));
}

TEST_CASE("what a tolerance limit means is said of each zone, and where there is none, why") {
  auto sample = sample::small_survey();
  CHECK(contains(results_of(sample), "No such limit is given for wind-and-water and bottom: fewer than 10 marks are used."));
  sample.house.policy.statistics.least_for_statistics = 8;
  assess_again(sample);
  CHECK(contains(results_of(sample), "95 % keep at least 5.28 mm (wind-and-water), with 95 % confidence, if they scatter normally"));
}

TEST_CASE("a zone with pits and without blocks is told that the deepest seen is not the deepest there may be") {
  CHECK(contains(results_of(sample::small_survey()), "Pits were measured (wind-and-water), and no blocks of equal area were looked over whole there"));
}

TEST_CASE("the deepest pit to expect is said with its bounds, beside the deepest seen, and never as measured") {
  const auto sample = with_blocks(sample::twelve_depths());
  const auto &found = sample.outlook.unseen.zones.at(1).pits->expected.value();
  const auto text = results_of(sample);
  const std::string level = base::to_text({std::llround(found.level * 100), 2});
  CHECK(contains(text, " m² of the zone is " + level + " mm, "));
  CHECK(contains(text, "The deepest in the blocks is 2.0 mm."));
  CHECK(contains(text, "63 % have a deeper one somewhere"));
  CHECK(contains(text, ": computed, never measured."));
  CHECK(contains(text, "The fit is not poor"));
  CHECK(contains(text, "every third bay. Depth of the deepest pit in each by the pit depth gauge, in mm: 1.4, 1.2, 1.9, 1.1, 1.6, 1.5, 1.3, 1.7, 1.4, 1.3, 1.2, 2.0."));
}

TEST_CASE("the plot has every block, and a line that ends at the whole zone") {
  const auto sample = with_blocks(sample::twelve_depths());
  const auto &found = sample.outlook.unseen.zones.at(1).pits->expected.value();
  const auto drawing = plot_of(sample);
  int spots = 0;
  double deepest = 0, end = 0;
  for (const auto &element : drawing.elements) {
    if (std::holds_alternative<content::Spot>(element)) ++spots;
    if (const auto *line = std::get_if<content::Outline>(&element); line && line->meaning == "axis") {
      deepest = line->points.back().y;
      end = line->points.back().x;
    }
  }
  CHECK(spots == 12);
  CHECK(deepest == Approx(found.level));
  CHECK(end == Approx(unseen::reduced_variate(160)));
}

TEST_CASE("a refusal is said in words, with what was seen") {
  auto depths = sample::twelve_depths();
  depths[4] = depths[7] = "0";
  auto text = results_of(with_blocks(depths));
  CHECK(contains(text, "2 of the 12 have no pit"));
  CHECK(contains(text, "The deepest pit in them, 2.0 mm, is the deepest seen and not the deepest there may be."));
  CHECK_FALSE(contains(text, "The deepest pit to expect in all"));
  depths.resize(9);
  CHECK(contains(results_of(with_blocks(depths)), "9 were looked over, and fewer than 10 say too little"));
  CHECK(contains(results_of(with_blocks(std::vector<std::string>(10, "1.3"))), "the 10 depths are all alike"));
  auto bare = with_blocks(sample::twelve_depths());
  bare.survey.zones[1].area_m2.reset();
  assess_again(bare);
  CHECK(contains(results_of(bare), "the area of the zone is not given"));
  bare.survey.zones[1].area_m2 = sample::decimal("3");
  assess_again(bare);
  CHECK(contains(results_of(bare), "is the deepest there is."));
}

TEST_CASE("a pit deeper than the law gives, or outside the blocks, is not hidden by it") {
  auto sample = with_blocks(sample::twelve_depths());
  sample.outlook.unseen.zones.at(1).pits->deepest_seen = sample::length("9.0");
  CHECK(contains(results_of(sample), "The deepest in the blocks, 9.0 mm, is deeper still"));
  sample.outlook.unseen.zones.at(1).pits->deeper_pit = "P1";
  CHECK(contains(results_of(sample), "P1, 1.2 mm deep, is deeper than any in the blocks and is not among them."));
}

TEST_CASE("page one does not say that no pits were found where blocks have them") {
  const auto answer = [](const sample::Composed &sample) { return sample::section_text(compose::compose(sample.source()), "answer"); };
  CHECK(contains(answer(sample::small_survey()), "none found"));
  CHECK_FALSE(contains(answer(with_blocks(sample::twelve_depths())), "none found"));
  CHECK(contains(answer(with_blocks(sample::twelve_depths())), "only in blocks"));
}

TEST_CASE("the crystal of a gauge stands with its particulars") {
  auto sample = sample::small_survey();
  sample.survey.gauges[0].crystal = sample::mm("13 mm");
  CHECK(contains(sample::section_text(compose::compose(sample.source()), "instruments"), "crystal across\n13 mm\n"));
}
