#include <catch2/catch.hpp>

#include <regex>

#include "helpers.h"
#include "strakebook/compose/statements.h"

using namespace strakebook;
using sample::contains;

namespace {

std::string section(const sample::Composed &sample, const std::string &id) {
  return sample::section_text(compose::compose(sample.source()), id);
}

/// Texts of the statements whose side column says "computed".
void computed_in(const std::vector<content::Block> &blocks, std::vector<std::string> &out) {
  for (const auto &block : blocks) {
    const auto *columns = std::get_if<content::Columns>(&block.what);
    if (columns == nullptr || columns->cells.size() != 2)
      continue;
    if (contains(sample::text_of(columns->cells[1]), "[computed]"))
      out.push_back(sample::text_of(columns->cells[0]));
  }
}

} // namespace

TEST_CASE("page one gives advice, the worst steel with its limit and margin, and the items") {
  const auto text = section(sample::small_survey(), "answer");
  CHECK(contains(text, "Sedge Warden"));
  CHECK(contains(text, "With conditions\nOnce item 1 is done.\n"));
  // 5.6 - 1.2 = 4.4 under the pit; doubt 1.645 sqrt(0.1^2 + 0.1^2) = 0.2326; 4.4 - 4.0 = 0.40 in hand
  CHECK(contains(text, "4.4 mm [meets]"));
  CHECK(contains(text, "under pit P1, PW 3.4, port wind-and-water. The limit that governs is 4.0 mm "
                       "remaining: it is met with 0.40 mm in hand; the doubt is 0.23."));
  CHECK(contains(text, "by 14 October 2028; 24 months"));
  CHECK(contains(text, "The bottom over the blocks: the hull stood on blocks."));
  CHECK(contains(text, "Build up the pit P1\nthe owner\nPW 3–4\n1 April 2027"));
  CHECK(contains(text, "17 marks planned: 15 read, 1 rejected, 1 not read. Pits measured: 1."));
}

TEST_CASE("readings noted in another unit stand with their unit, and in mm beside it; one held for query is not used") {
  auto sample = sample::small_survey();
  CHECK_FALSE(contains(section(sample, "results"), "as noted"));
  auto &marks = sample.survey.marks;
  base::MeasuredError wrong;
  marks[0].repeats = {base::parse_measured(".187", base::Unit::inch, wrong).value()};
  marks[1].repeats = {base::parse_measured("5/16", base::Unit::inch, wrong).value()};
  marks[1].repeats[0].raw = "5/16?";
  marks[1].status = survey::Status::queried;
  marks[1].why.text = "a misread";
  assess_again(sample);
  const auto text = section(sample, "results");
  INFO(text);
  CHECK(contains(text, ".187 in\n4.7498\n4.75\n"));
  CHECK(contains(text, "5/16? in\n7.9375\n–\n"));
  CHECK(contains(text, "held for query · a misread"));
  CHECK(contains(text, "5.6 mm  5.6 mm  5.7 mm\n5.6  5.6  5.7\n"));
  CHECK(contains(section(sample, "appendices"), "held for query\na misread"));
}

TEST_CASE("a doubler says what is behind it: not proven, or one reading that stands alone") {
  auto sample = sample::small_survey();
  CHECK(contains(section(sample, "results"), "4.0–4.0, 2\nnot proven"));
  auto &inner = sample.survey.doublers[0].from_inside.emplace();
  inner.reading = sample.survey.doublers[0].outer.value();
  inner.at.row = "SW";
  inner.at.station = sample.survey.marks[1].station;
  inner.gauge = "ut";
  CHECK(contains(section(sample, "results"), "4.0 mm from inside at SW 2, gauge ut; elsewhere not proven"));
}

TEST_CASE("a pit on a doubler is said to be in the outer plate") {
  auto sample = sample::small_survey();
  sample.survey.pits[0].at.row = "SW";
  sample.survey.pits[0].at.station = sample.survey.doublers[0].over.to.value();
  assess_again(sample);
  const auto text = section(sample, "results");
  CHECK(contains(text, "on D1"));
  CHECK(contains(text, "P1: in the outer plate of a doubler."));
}

TEST_CASE("page one says where no opinion is given, and how much of the shell was read") {
  auto sample = sample::small_survey();
  CHECK_FALSE(contains(section(sample, "answer"), "No opinion is given"));
  sample.survey.decisions[1].action = "no opinion";
  for (auto &mark : sample.survey.marks)
    if (mark.row == "BC") {
      mark.status = survey::Status::no_access;
      mark.repeats.clear();
    }
  sample.survey.zones[0].area_m2 = base::parse_decimal("16.2");
  sample.survey.zones[1].area_m2 = base::parse_decimal("57.2");
  assess_again(sample);
  const auto text = section(sample, "answer");
  INFO(text);
  CHECK(contains(text, "No opinion is given on bottom. Steel was read in zones of 16.2 of 73.4 m² of the shell, 22 %."));
  CHECK(text.find("No opinion is given") < text.find("Worst remaining"));
}

TEST_CASE("page one says when nothing usable was read") {
  auto sample = sample::small_survey();
  for (auto &mark : sample.survey.marks) {
    mark.status = survey::Status::no_access;
    mark.repeats.clear();
  }
  sample.survey.pits.clear();
  sample.survey.photos.front().at.row = "PW";
  sample.survey.decisions.clear();
  sample.survey.recommendations.clear();
  sample.survey.steelwork.clear();
  sample.survey.answer.reason.text = "Nothing was read.";
  sample.survey.notes.clear();
  assess_again(sample);
  const auto text = section(sample, "answer");
  CHECK(contains(text, "No usable reading was taken."));
  CHECK(contains(text, "There are no recommendations."));
}

TEST_CASE("a decision page shows criteria, the conflict and its answer, the ladder and the departure") {
  const auto text = section(sample::small_survey(), "assessment");
  CHECK(contains(text, "Decision for wind-and-water: weld build-up"));
  CHECK(contains(text, "Criteria in conflict"));
  // 20 % of 6.0 may go: 4.80 must remain; 4.4 is 0.40 under it, outside the doubt of 0.23
  CHECK(contains(text, "20 % of original lost\n4.80\n4.4\n\u22120.40\nunder 1 %\n[falls-short]falls short"));
  // 25 % of 6.0 may go: 4.50 must remain; 4.4 is 0.10 under it, inside the doubt of 0.23
  CHECK(contains(text, "25 % of original lost\n4.50\n4.4\n\u22120.10\n23 %\n[too-close]too close to call"));
  CHECK(contains(text, "4.0 mm remaining (governs)\n4.00\n4.4\n+0.40\nover 99 %\n[meets]meets"));
}

TEST_CASE("a conflict that nobody answered is printed as open") {
  auto sample = sample::small_survey();
  sample.survey.report.state = survey::State::draft;
  for (auto &zone : sample.assessment.zones)
    zone.conflict = zone.zone == "W";
  CHECK(contains(section(sample, "assessment"), "4.0 mm remaining is preferred. Cover depends on"));
  sample.survey.decisions.front().conflict.reset();
  CHECK(contains(section(sample, "assessment"), "The answer to the conflict\nnot yet given"));
}

TEST_CASE("a percent criterion on a weak basis is not judged, and says why") {
  const auto text = section(sample::small_survey(), "assessment");
  CHECK(contains(text, "original not known well enough"));
}

TEST_CASE("no computed sentence holds an action") {
  const auto sample = sample::small_survey();
  const auto document = compose::compose(sample.source());
  std::vector<std::string> computed;
  for (const auto &part : document.sections)
    computed_in(part.blocks, computed);
  REQUIRE(computed.size() >= 5);
  for (const auto &[id, action] : sample.house.policy.actions)
    for (const auto &text : computed) {
      INFO(text);
      CHECK_FALSE(contains(text, id));
      CHECK_FALSE(contains(text, action.name));
    }
  for (const auto &text : computed) {
    INFO(text);
    CHECK_FALSE(std::regex_search(
        text, std::regex("\\b(renew|repair|weld|coat|refloat|must|should|replace)", std::regex::icase)));
  }
}

TEST_CASE("what was not written stands in its place: not yet given in a draft, not stated in a final") {
  auto sample = sample::small_survey();
  sample.survey.previous_survey = {};
  CHECK(contains(section(sample, "comparison"), "not stated"));
  sample.survey.report.state = survey::State::draft;
  CHECK(contains(section(sample, "comparison"), "not yet given"));
  CHECK_FALSE(contains(section(sample::small_survey(), "comparison"), "not yet given"));
  CHECK(contains(section(sample::small_survey(), "comparison"), "No previous survey is known."));
}

TEST_CASE("cautions come by their trigger, and none can be dropped by a survey") {
  auto sample = sample::small_survey();
  const auto has = [&](const char *title) { return contains(section(sample, "safety"), title); };
  CHECK(has("Hot work."));                  // weld build-up is asked for
  CHECK(has("A doubler is a compromise.")); // D1
  CHECK_FALSE(has("Surveyed afloat."));
  CHECK_FALSE(has("Gauge in doubt."));
  CHECK(contains(section(sample, "safety"), "Source, where a caution names none: common practice, no published source."));

  sample.survey.conditions.out_of_water->value = false;
  CHECK(has("Surveyed afloat."));
  sample.survey.gauges.front().after.reset();
  assess_again(sample);
  CHECK(has("Gauge in doubt."));

  // whatever a survey leaves out, the general ones stay
  sample.survey.recommendations.clear();
  sample.survey.steelwork.clear();
  sample.survey.decisions.clear();
  sample.survey.doublers.clear();
  CHECK_FALSE(has("Hot work."));
  for (const auto &caution : sample.house.wording.cautions)
    if (caution.when == "always")
      CHECK(has(caution.title.c_str()));
}

TEST_CASE("a caution whose trigger the survey cannot decide is printed") {
  auto sample = sample::small_survey();
  sample.house.wording.cautions.push_back(
      {.id = "new", .when = "never-heard-of", .title = "New", .text = "Mind it.", .source = "ask locally"});
  CHECK(contains(section(sample, "safety"), "New. Mind it."));
}

TEST_CASE("a recommendation shows its ladder row and whether it follows it, its cautions and its deadline") {
  const auto text = section(sample::small_survey(), "recommendations");
  CHECK(contains(text, "Class B  before the next season, by 1 April 2027"));
  CHECK(contains(text, "wind-and-water, "));
  CHECK(contains(text, "Lining near the work."));
  CHECK(contains(text, "Hot work: ->caution/hot-work"));
}

TEST_CASE("appendices list every mark left out with its reason, and every file by its digest in fours") {
  const auto sample = sample::small_survey();
  const auto text = section(sample, "appendices");
  CHECK(contains(text, "PW 4\nno echo"));
  CHECK(contains(text, "SW 5\nrejected\nthe probe rocked on a weld bead"));
  CHECK(contains(text, "SW 2\non a doubler, outer plate only"));
  for (const auto &file : sample.survey.inputs) {
    CHECK(contains(text, file.digest.substr(0, 4) + " " + file.digest.substr(4, 4)));
    CHECK(contains(text, std::to_string(file.bytes)));
  }
}

TEST_CASE("what was taken where the survey is silent is listed among the rules used, and stands in its chapter") {
  auto sample = sample::small_survey();
  CHECK(contains(section(sample, "vessel"), "double bottom and wing voids\nnot stated"));
  CHECK_FALSE(contains(section(sample, "appendices"), "taken"));

  sample.survey.criteria.push_back({.id = "inland-rule"});
  sample.survey.pits.front().gauge.clear();
  assess_again(sample);
  CHECK(contains(section(sample, "vessel"), "double bottom and wing voids\nnot stated, taken as none"));
  const auto text = section(sample, "appendices");
  CHECK(contains(text, "double bottom and wing voids\nnot stated, taken as none"));
  CHECK(contains(text, "depth gauge\nnot stated for every pit; the most doubtful is taken: pit depth gauge, u 0.10 mm"));
}

TEST_CASE("a computed statement names its rule in the margin") {
  const auto text = section(sample::small_survey(), "assessment");
  CHECK(contains(text, "[computed]computed/least of the repeats at each mark; loss of the nominal, ->mark/"));
  CHECK(contains(text, "[computed]computed/adjacent less depth, ->pit/P1"));
  CHECK(contains(text, "[computed]computed/guard band, one-sided 95 %, JCGM 106:2012, "));
  CHECK(contains(text, "[computed]computed/the extent rule, "));
  CHECK(contains(text, "[computed]computed/sizes that fit the thickest reading, "));
}

TEST_CASE("nothing looked for and not found is said in a sentence, without a heading over nothing") {
  const auto sample = sample::small_survey();
  REQUIRE(sample.survey.none_found.empty());
  const auto text = section(sample, "results");
  CHECK_FALSE(contains(text, "Looked for and not found"));
  CHECK(contains(text, "The survey does not state what was looked for and not found.\n"));
}

TEST_CASE("a warning is printed with its answer, or as open") {
  auto sample = sample::small_survey();
  sample.findings.add({.severity = base::Severity::warning,
                       .code = base::Code::neighbour_jump,
                       .message = "a jump",
                       .subject = "neighbour-jump BC 4"});
  CHECK(contains(section(sample, "appendices"), "neighbour-jump BC 4\na jump\nnot stated"));
  sample.survey.acknowledgements.push_back(
      {.subject = "neighbour-jump BC 4", .reason = {.text = "The plate changes there."}});
  CHECK(contains(section(sample, "appendices"), "neighbour-jump BC 4\na jump\nThe plate changes there."));
}
