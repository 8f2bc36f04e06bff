#include <catch2/catch.hpp>

#include "helpers.h"

// What somebody told is signed wherever a figure rests on it.

using namespace strakebook;
using sample::contains;

namespace {

std::string section(const sample::Composed &sample, const std::string &id) {
  return sample::section_text(compose::compose(sample.source()), id);
}

/// The small survey with the side's original told by the owner.
sample::Composed told_by_owner() {
  auto sample = sample::small_survey();
  sample.survey.zones.front().original.source.text = "told, owner";
  assess_again(sample);
  return sample;
}

const std::string legend = "† rests on what was told, not measured: owner.";

} // namespace

TEST_CASE("an original that was told is signed in its table, beside every percent and at every limit that is a share of it") {
  const auto sample = told_by_owner();
  CHECK(contains(section(sample, "original"), "wind-and-water\n6.0 †\n"));
  CHECK(contains(section(sample, "original"), legend));
  CHECK(contains(section(sample, "criteria"), "4.80 †"));
  CHECK_FALSE(contains(section(sample, "criteria"), "4.00 †"));
  const auto results = section(sample, "results");
  CHECK(contains(results, "6 mm † plate"));
  CHECK(contains(results, "wind-and-water †\n")); // the pits' group
  CHECK(contains(results, legend));
  const auto assessment = section(sample, "assessment");
  CHECK(contains(assessment, "20 % of original lost\n4.80 †\n4.4\n"));
  CHECK(contains(assessment, "P1 falls short of 20 % of original lost †."));
  CHECK(contains(assessment, "27 % (21 to 38) †"));
}

TEST_CASE("page one signs the worst loss of an original that was told, and says who told") {
  const auto text = section(told_by_owner(), "answer");
  CHECK(contains(text, "26.7 % † at P1"));
  CHECK(contains(text, legend));
}

TEST_CASE("nothing is signed where an original is documented") {
  auto sample = sample::small_survey();
  sample.survey.zones.at(1).original.source.text = "document, drawing 15";
  assess_again(sample);
  for (const char *id : {"answer", "original", "criteria", "results", "assessment"})
    CHECK_FALSE(contains(section(sample, id), "†"));
}

TEST_CASE("hull figures that were told are signed in the working of the rule and at its limit") {
  auto sample = sample::small_survey();
  sample.survey.criteria.push_back({.id = "inland-rule"});
  assess_again(sample);
  const auto criteria = section(sample, "criteria");
  CHECK(contains(criteria, "length 18.0 m, draught 0.70 m †, frame spacing 500 mm †."));
  CHECK(contains(criteria, legend));
  CHECK(contains(section(sample, "assessment"), "European inland rule minimum\n3.00 †\n"));

  sample.survey.vessel.draught->from = sample.survey.vessel.length.from;
  sample.survey.vessel.frame_spacing->from = sample.survey.vessel.length.from;
  assess_again(sample);
  CHECK_FALSE(contains(section(sample, "criteria"), "†"));
}

TEST_CASE("a reading above its original is printed by the original with the surveyor's answer, or as open") {
  auto sample = sample::small_survey();
  sample.findings.add({.severity = base::Severity::warning,
                       .code = base::Code::reading_over_original,
                       .message = "PW 2 reads 7.4, more than the original 6.0 and its tolerance",
                       .subject = "over-original PW 2"});
  CHECK(contains(section(sample, "original"), "and its tolerance. The surveyor: not stated"));
  sample.survey.acknowledgements.push_back(
      {.subject = "over-original PW 2", .reason = {.text = "The plate is an insert of 7 mm."}});
  CHECK(contains(section(sample, "original"), "and its tolerance. The surveyor: The plate is an insert of 7 mm."));
}
