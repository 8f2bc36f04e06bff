#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/assess/pitting.h"

// Bounds of the extent rule: common practice, no source. Pitting factor: ASTM G46. Five deepest pits: ESP Code.
using namespace strakebook;
using assess::Extent;
using base::Ratio;
using sample::length;

namespace {

Extent extent(const std::string &count, const std::string &m2, const std::string &share,
              std::optional<base::Length> spacing = std::nullopt) {
  auto survey = sample::SurveyBuilder().zone("W", "6").pitting(count, m2, share);
  return assess::pitting_extent(survey.made.zones[0], true, spacing, sample::house().extent);
}

/// A side of 6 mm, five marks at 5.4: a mean loss of 0.6.
sample::SurveyBuilder side(const std::string &basis = "mill certificate", const std::string &reading = "5.4") {
  return sample::SurveyBuilder().zone("W", "6", basis).row("PW", "W").row("SW", "W")
      .marks("PW", {reading, reading, reading, reading, reading}).criteria({"absolute-4.0"});
}

const assess::Pitting pitting(const sample::SurveyBuilder &survey) { return sample::assessed(survey.made).zones.at(0).pitting; }

} // namespace

TEST_CASE("extent: isolated is at most three a square metre, under five per cent and 100 mm apart") {
  CHECK(extent("6", "2", "4.9") == Extent::isolated);
  CHECK(extent("7", "2", "4.9") == Extent::scattered);
  CHECK(extent("6", "2", "5") == Extent::scattered);
  CHECK(extent("0.5", "0.1", "1") == Extent::scattered);
  CHECK(extent("6", "2", "4.9", length("100")) == Extent::isolated);
  CHECK(extent("6", "2", "4.9", length("99.999999")) == Extent::scattered);
}

TEST_CASE("extent: extensive begins at fifteen per cent of the area, however few the pits") {
  CHECK(extent("20", "2", "14.9") == Extent::scattered);
  CHECK(extent("20", "2", "15") == Extent::extensive);
  CHECK(extent("1", "20", "15", length("9999")) == Extent::extensive);
}

TEST_CASE("extent: four pits in twenty square metres are isolated") {
  const auto zone = sample::assessed(sample::thick_bottom().made).zones.at(0);
  CHECK(zone.extent == Extent::isolated);
  CHECK(*zone.pitting.per_m2 == Ratio{1, 5});
  CHECK(*zone.pitting.spacing == length("1000"));
}

TEST_CASE("extent: pits without a declaration are not declared, no pits are none") {
  const auto zone = sample::SurveyBuilder().zone("W", "6").made.zones[0];
  CHECK(assess::pitting_extent(zone, true, {}, sample::house().extent) == Extent::not_declared);
  CHECK(assess::pitting_extent(zone, false, {}, sample::house().extent) == Extent::none);
}

TEST_CASE("spacing: the least along one row, and never more than what is declared") {
  auto survey = side().pitting("3", "20", "1").pit("P1", "PW", "1.0", "5.4", "0.4").pit("P2", "SW", "1.05", "5.4", "0.4");
  CHECK_FALSE(pitting(survey).spacing); // side by side on two rows: how far apart is not known
  survey.pit("P3", "PW", "1.25", "5.4", "0.4").pit("P4", "PW", "3", "5.4", "0.4");
  CHECK(*pitting(survey).spacing == length("250"));
  survey.made.zones[0].pitting->spacing = sample::mm("300");
  CHECK(*pitting(survey).spacing == length("250"));
  survey.made.zones[0].pitting->spacing = sample::mm("80");
  CHECK(*pitting(survey).spacing == length("80"));
  CHECK(sample::assessed(survey.made).zones[0].extent == Extent::scattered);
}

// ASTM G46: deepest penetration over mean loss; 1.8 mm over 0.6 mm is 3.0.
TEST_CASE("pitting factor: deepest over mean loss, both from the original surface") {
  auto survey = side().pit("P1", "PW", "1.4", "5.4", "1.2").pit("P2", "PW", "2.4", "5.4", "1.1");
  CHECK(*pitting(survey).factor == Ratio{3, 1}); // 4.2 left of 6: 1.8 gone
  CHECK(pitting(survey).no_factor.empty());
}

TEST_CASE("pitting factor: not computable without pits, on a weak basis, and without a mean loss") {
  CHECK(pitting(side()).no_factor == "no-pits");
  CHECK(pitting(side("owner's word").pit("P1", "PW", "1.4", "5.4", "1.2")).no_factor == "weak-basis");
  CHECK(pitting(side("mill certificate", "6.0").pit("P1", "PW", "1.4", "6.0", "1.2")).no_factor == "no-mean-loss");
  CHECK(pitting(side("mill certificate", "6.1").pit("P1", "PW", "1.4", "6.0", "1.2")).no_factor == "no-mean-loss");
  CHECK_FALSE(pitting(side("mill certificate", "6.1").pit("P1", "PW", "1.4", "6.0", "1.2")).factor);
}

TEST_CASE("pitting over fifteen per cent asks for the five deepest pits") {
  auto survey = side().pitting("4", "1", "15");
  for (const char *at : {"1.1", "1.4", "1.7", "2.0"}) survey.pit(std::string("P") + at, "PW", at, "5.4", "0.4");
  CHECK_FALSE(pitting(survey).few_measured); // not over it
  survey.made.pits.front().share_percent = sample::decimal("15.1");
  CHECK(pitting(survey).few_measured);
  CHECK(*pitting(survey).intensity_percent == sample::decimal("15.1"));
  survey.pit("P5", "PW", "2.3", "5.4", "0.4");
  CHECK_FALSE(pitting(survey).few_measured);
}

TEST_CASE("general, local and pit wastage are three figures, each with what it is taken from") {
  auto survey = side().marks("SW", {"4.8"}).pit("P1", "PW", "1.4", "5.4", "1.2").pit("P2", "PW", "2.4", "5.4", "0.2");
  const auto zone = sample::assessed(survey.made).zones.at(0);
  CHECK(zone.general->n == 6);
  CHECK(zone.general->share->nominal == Ratio{7, 60}); // mean 5.3
  CHECK(zone.local->n == 6);
  CHECK(zone.local->at == "SW 1");
  CHECK(zone.local->share->nominal == Ratio{1, 5});
  CHECK(zone.under_pit->n == 2);
  CHECK(zone.under_pit->at == "P1");
  CHECK(zone.under_pit->share->nominal == Ratio{3, 10});
  CHECK_FALSE(sample::assessed(side().made).zones[0].under_pit);
}
