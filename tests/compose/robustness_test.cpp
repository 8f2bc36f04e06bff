#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using sample::contains;

namespace {

std::string pages(const sample::Composed &sample) { return sample::section_text(compose::compose(sample.source()), "assessment"); }

/// The words of the table called `id`, as one text; empty where there is none.
std::string table(const sample::Composed &sample, const std::string &id) {
  for (const auto &section : compose::compose(sample.source()).sections)
    for (const auto &block : section.blocks)
      if (block.id == id) return sample::text_of({block});
  return {};
}

sample::Composed governed_by(const std::string &criterion) {
  auto sample = sample::small_survey();
  for (auto &decision : sample.survey.decisions)
    if (decision.zone == "W") decision.criterion = criterion;
  sample::assess_again(sample);
  return sample;
}

} // namespace

TEST_CASE("a decision page shows the verdict under every combination, margin by margin") {
  const auto grid = table(governed_by("absolute-4.0"), "table/robustness/W");
  for (const char *head : {"3.0", "3.5", "4.0", "20\u00A0%", "25\u00A0%", "30\u00A0%"}) CHECK(contains(grid, head));
  // P1: 5.6 less 1.2 is 4.4; of 6 mm 20 % leaves 4.8, of 7.1 (EN 10029:1991 A) 5.68; twice the doubt of two gauges of 0.10 is 0.47
  for (const char *figure : {"P1", "4.4", "+1.40", "+0.40", "2 u (0.47)", "\u22120.40", "5.6", "7.1", "\u22121.28"}) {
    INFO(figure << " in " << grid);
    CHECK(contains(grid, figure));
  }
}

TEST_CASE("one sentence says what moves the verdict and over which ranges it holds") {
  // 4.4 of 4.0, doubt 0.23: met, and at twice the doubt too close
  const auto absolute = pages(governed_by("absolute-4.0"));
  INFO(absolute);
  CHECK(contains(absolute, "Under 4.0 mm remaining the verdict is “meets”. It becomes “too close to call” with the doubt taken 2 times; "
                           "it holds for every limit from 3.0 mm to 4.0 mm."));
  // 4.4 of 4.8: short by 0.40; of 25 %, 4.50, too close; of 5.6, 4.48, too close; at twice the doubt too close
  const auto share = pages(governed_by("percent-20"));
  INFO(share);
  CHECK(contains(share, "the verdict is “falls short”. It becomes “too close to call” at 25 %"));
  CHECK(contains(share, "with an original of 5.6 mm"));
}

TEST_CASE("where every combination gives one verdict a sentence says so in place of the grid") {
  auto sample = sample::small_survey();
  sample.survey.pits.clear();
  for (auto &mark : sample.survey.marks)
    for (auto &repeat : mark.repeats) repeat.value = base::Length::millimetres(2);
  sample::assess_again(sample);
  CHECK(table(sample, "table/robustness/W").empty());
  CHECK(contains(pages(sample), "The verdict, “falls short”, is the same for every limit from 3.0 mm to 4.0 mm, the doubt taken 0.5 to 2 times and "
                                "20 % to 30 % lost of an original of 5.6 to 7.1 mm."));
}

TEST_CASE("where every criterion is met and nothing turns the verdict a sentence counts what the grid would show") {
  auto sample = governed_by("absolute-4.0");
  sample.survey.pits.clear();
  sample::assess_again(sample);
  CHECK(table(sample, "table/robustness/W").empty());
  // the lowest plate, 5.5, falls short of 20 % of 7.1, 5.68, by more than the doubt of 0.16, and of nothing else
  CHECK(contains(pages(sample), "for every limit from 3.0 mm to 4.0 mm and the doubt taken 0.5 to 2 times. "
                                "Of all 18 combinations of limit, share lost, original and doubt tried, 1 give another."));
}

TEST_CASE("a zone to which no criterion applies shows no combination") {
  auto sample = sample::small_survey();
  sample.survey.criteria = {{.id = "percent-20"}}; // the bottom's original is the owner's word
  sample::assess_again(sample);
  CHECK(table(sample, "table/robustness/B").empty());
}

TEST_CASE("originals that rest on what was told are signed") {
  auto sample = governed_by("absolute-4.0");
  const auto sign = house::word(sample.house.wording, "told.sign").substr(2); // the blank before it apart
  CHECK_FALSE(contains(table(sample, "table/robustness/W"), sign));
  sample.survey.zones.front().original.source.text = "told, owner";
  sample::assess_again(sample);
  CHECK(contains(table(sample, "table/robustness/W"), "7.1 " + sign));
}
