#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "amended.h"
#include "strakebook/compose/chapters.h"

// What changed, as the page that says so prints it. Amendments: ISO/IEC 17025:2017, 7.8.8 (the change identified, the reason given,
// the report that is replaced named).

using namespace strakebook;
using sample::contains;

namespace {

std::string changes_text(const sample::TwoIssues &both) { return sample::section_text(both.composed(), "changes"); }

const content::Table &table_of(const std::vector<content::Block> &blocks, const std::string &id) {
  const content::Table *found = nullptr;
  const auto look = [&](const auto &self, const std::vector<content::Block> &all) -> void {
    for (const auto &block : all) {
      if (block.id == id) found = &std::get<content::Table>(block.what);
      if (const auto *columns = std::get_if<content::Columns>(&block.what))
        for (const auto &cell : columns->cells) self(self, cell);
    }
  };
  look(look, blocks);
  REQUIRE(found != nullptr);
  return *found;
}

const std::vector<content::Block> &blocks_of(const content::Document &document, const std::string &section) {
  return std::ranges::find(document.sections, compose::section_id(section), &content::Section::id)->blocks;
}

content::Emphasis emphasis_of(const content::Cell &cell) { return std::get<content::Text>(cell.text.front()).emphasis; }

bool has_section(const content::Document &document, const std::string &id) {
  return std::ranges::find(document.sections, compose::section_id(id), &content::Section::id) != document.sections.end();
}

} // namespace

TEST_CASE("the lead counts what changed, and says whether a decision did") {
  auto both = sample::two_issues();
  CHECK(contains(changes_text(both), "One decision changed. One reading and one pit were corrected. Every change"));
  auto &all = both.amended.changes.all;
  all.erase(all.begin());
  CHECK(contains(changes_text(both), "No decision changed. One reading and one pit were corrected."));
  all.push_back({.kind = amend::Kind::text, .subject = "vessel"});
  CHECK(contains(changes_text(both), "were corrected. One other thing is not as it was."));
  all = {{.kind = amend::Kind::recommendation, .subject = "item 1", .differences = {{"class", "C", "A"}}},
         {.kind = amend::Kind::answer, .subject = "answer", .differences = {{"refloat", "yes", "no"}}}};
  CHECK(contains(changes_text(both), "One item and the answer on page one changed."));
  all = {{.kind = amend::Kind::recommendation, .subject = "item 1", .differences = {{"reason", "It is thin.", "It is thin, there."}}}};
  CHECK(contains(changes_text(both), "No decision changed. One other thing is not as it was."));
  all.clear();
  CHECK(contains(changes_text(both), "Nothing changed but the number and the date of the report."));
}

TEST_CASE("what is replaced is named with number, date and digest, on page one and beside the lead") {
  const auto both = sample::two_issues();
  const auto document = both.composed();
  CHECK(contains(sample::section_text(document, "answer"), "Issue 2 replaces issue 1 of 16 October 2026 (3fa9 12c4 77b0 …): a decision changed."));
  CHECK(contains(changes_text(both), "Issue 1 was dated 16 October 2026. It is kept unaltered."));
  CHECK(contains(changes_text(both), "SHA-256 of its file: 3fa9 12c4 77b0 aaaa"));
  CHECK(contains(sample::text_of(document.furniture.head_right), "supersedes issue 1"));
}

TEST_CASE("decisions stand first, old struck, new strong, with the reason; one that stands has no bar") {
  const auto both = sample::two_issues();
  const auto document = both.composed();
  const auto &table = table_of(blocks_of(document, "changes"), "table/decisions-changed");
  const auto &rows = table.groups.front().rows;
  REQUIRE(rows.size() == 2);
  CHECK(sample::text_of(rows[0].cells[0].text) == "Decision W, wind-and-water");
  CHECK(sample::text_of(rows[0].cells[1].text) == "Clean and recoat, by 4.0 mm remaining");
  CHECK(emphasis_of(rows[0].cells[1]) == content::Emphasis::struck);
  CHECK(sample::text_of(rows[0].cells[2].text) == "Weld build-up, by 4.0 mm remaining");
  CHECK(emphasis_of(rows[0].cells[2]) == content::Emphasis::strong);
  CHECK(sample::text_of(rows[0].cells[3].text) == "SW 6 keeps 3.8.");
  CHECK(rows[0].changed);
  CHECK(sample::text_of(rows[1].cells[0].text) == "Zone B, bottom: the decision stands");
  CHECK(sample::text_of(rows[1].cells[3].text) == "Nothing under it moved.");
  CHECK_FALSE(rows[1].changed);
}

TEST_CASE("a corrected reading stands with both figures, both plates and its reason") {
  const auto both = sample::two_issues();
  const auto document = both.composed();
  const auto &rows = table_of(blocks_of(document, "changes"), "table/readings-changed").groups.front().rows;
  REQUIRE(rows.size() == 2);
  CHECK(sample::text_of(rows[0].cells[0].text) == "SW 6");
  CHECK(sample::text_of(rows[0].cells[1].text) == "5.8");
  CHECK(sample::text_of(rows[0].cells[2].text) == "3.8");
  REQUIRE(rows[0].cells[3].glyph);
  CHECK(contains(rows[0].cells[3].glyph->spoken, "5.8 mm before and 3.8 mm now"));
  CHECK(sample::text_of(rows[1].cells[0].text) == "P1/depth");
  CHECK(sample::text_of(rows[1].cells[1].text) == "4.4/1.2");
  CHECK(sample::text_of(rows[1].cells[2].text) == "4.0/1.6");
  for (const auto &row : rows) CHECK(row.changed);
}

TEST_CASE("a withdrawn reading stays listed with its last figure and the reason") {
  auto both = sample::two_issues();
  auto &change = both.amended.changes.all[1];
  change.how = amend::How::withdrawn;
  change.remaining_after.reset();
  change.why.text = "The probe stood on a weld.";
  auto &marks = both.now.survey.marks;
  std::erase_if(marks, [](const survey::Mark &mark) { return mark.id() == "SW 6"; });
  sample::assess_again(both.now);
  const auto document = both.composed();
  const auto &row = table_of(blocks_of(document, "changes"), "table/readings-withdrawn").groups.front().rows.front();
  CHECK(sample::text_of(row.cells[0].text) == "SW 6");
  CHECK(sample::text_of(row.cells[2].text) == "5.8");
  CHECK(sample::text_of(row.cells[3].text) == "The probe stood on a weld.");
  CHECK(contains(changes_text(both), "One reading was withdrawn."));
}

TEST_CASE("of long words the part that differs is shown, of short ones all") {
  auto both = sample::two_issues();
  auto &all = both.amended.changes.all;
  all.push_back({.kind = amend::Kind::text,
                 .subject = "vessel",
                 .differences = {{"history", "She lay afloat in the same place for nine years and was blacked twice in that time by her owner",
                                  "She lay afloat in the same place for eleven years and was blacked twice in that time by her owner"},
                                 {"use", "cruising", "a dwelling"}},
                 .why = {.text = "The owner wrote again."}});
  const auto document = both.composed();
  const auto &rows = table_of(blocks_of(document, "changes"), "table/others-changed").groups.front().rows;
  REQUIRE(rows.size() == 2);
  CHECK(sample::text_of(rows[0].cells[0].text) == "Vessel/history");
  CHECK(sample::text_of(rows[0].cells[1].text) == "… the same place for nine years and was blacked …");
  CHECK(sample::text_of(rows[0].cells[2].text) == "… the same place for eleven years and was blacked …");
  CHECK(sample::text_of(rows[0].cells[3].text) == "The owner wrote again.");
  CHECK(sample::text_of(rows[1].cells[0].text) == "use");
  CHECK(sample::text_of(rows[1].cells[2].text) == "a dwelling");
}

TEST_CASE("a change without a reason says so, and nothing is written for the surveyor") {
  auto both = sample::two_issues();
  both.amended.changes.all[1].why = {};
  CHECK(contains(changes_text(both), "not stated"));
  both.now.survey.report.state = survey::State::draft;
  CHECK(contains(changes_text(both), "not yet given"));
}

TEST_CASE("the cause, the check and everyone who had the issue before are printed") {
  const auto text = changes_text(sample::two_issues());
  for (const char *part : {"Figures were typed from the notebook.", "the buyer's underwriter, 18 October 2026",
                           "All readings were compared with the gauge's file.", "The buyer: told by letter, 19 October 2026; acknowledged 20 October 2026.",
                           "The yard: not told yet."}) {
    INFO(part);
    CHECK(contains(text, part));
  }
}

TEST_CASE("figures that follow are struck where they differ, and verdicts that moved stand beside them") {
  const auto both = sample::two_issues();
  const auto document = both.composed();
  const auto &blocks = blocks_of(document, "changes");
  int differ = 0;
  for (const auto &row : table_of(blocks, "table/figures-changed").groups.front().rows) {
    const bool differs = sample::text_of(row.cells[1].text) != sample::text_of(row.cells[2].text);
    CHECK((emphasis_of(row.cells[1]) == content::Emphasis::struck) == differs);
    CHECK_FALSE(row.changed); // they follow from the rows above, which have the bars
    differ += differs;
  }
  CHECK(differ >= 2); // the worst remaining, and a place that falls short
  const auto &moved = table_of(blocks, "table/verdicts-moved").groups.front().rows.front();
  CHECK(sample::text_of(moved.cells[3].text) == "[meets]meets");
  CHECK(sample::text_of(moved.cells[4].text) == "[falls-short]falls short");
}

TEST_CASE("a first issue has no page of changes and no notice; sections keep their numbers") {
  const auto both = sample::two_issues();
  const auto first = compose::compose(both.before.source()), second = both.composed();
  CHECK_FALSE(has_section(first, "changes"));
  REQUIRE(has_section(second, "changes"));
  CHECK(second.sections[1].id == compose::section_id("changes"));
  CHECK_FALSE(contains(sample::section_text(first, "answer"), "replaces"));
  CHECK(first.names.at("table/blocks") == second.names.at("table/blocks"));
}

TEST_CASE("where the issue before cannot be read, the surveyor's reasons are printed and nothing is said to be compared") {
  auto sample = sample::two_issues().now;
  sample.survey.amendment->changes.push_back({.what = {{.text = "SW 6"}, {.text = "decision W"}}, .why = {.text = "Digits exchanged."}});
  const auto text = sample::section_text(compose::compose(sample.source()), "changes");
  CHECK(contains(text, "nothing was compared"));
  CHECK(contains(text, "SW 6 and decision W\nDigits exchanged."));
  CHECK(contains(text, "The buyer: told by letter"));
}

TEST_CASE("an issued copy carries issue, date and digest, and says so at its end; others say that they are not issued") {
  const auto both = sample::two_issues();
  const auto there = both.earlier();
  auto source = both.source(there);
  source.issued_digest = "1a2b 3c4d 5e6f";
  const auto document = compose::compose(source);
  CHECK(sample::text_of(document.furniture.head_right) == "Report TB 0001  Issue 2, final  supersedes issue 1");
  CHECK(sample::text_of(document.furniture.foot_left) == "Issued 20 October 2026. Inputs 1a2b 3c4d 5e6f. Thickness in mm unless said.");
  CHECK(contains(sample::section_text(document, "appendices"), "End of report TB 0001, issue 2. Inputs 1a2b 3c4d 5e6f."));
  CHECK(contains(sample::section_text(document, "issue-record"), "begins with 1a2b 3c4d 5e6f."));
  for (const auto &section : document.sections) CHECK_FALSE(contains(sample::text_of(section.blocks), "not issued"));
  CHECK(contains(sample::section_text(both.composed(), "appendices"), "End of the report"));
  CHECK(contains(sample::text_of(both.composed().furniture.head_right), "not issued"));
}

TEST_CASE("the record has every issue that went out, with its digest and recipients, and what the survey says of it") {
  const auto both = sample::two_issues();
  const auto document = both.composed();
  const auto &rows = table_of(blocks_of(document, "issue-record"), "table/issues").groups.front().rows;
  REQUIRE(rows.size() == 2);
  CHECK(sample::text_of(rows[0].cells[1].text) == "16 October 2026");
  CHECK(sample::text_of(rows[0].cells[2].text) == "3fa9 12c4 77b0");
  CHECK(sample::text_of(rows[0].cells[3].text) == "the buyer/the yard");
  CHECK(sample::text_of(rows[0].cells[4].text) == "first issue");
  CHECK(sample::text_of(rows[1].cells[4].text) == "a figure was wrong");
}

TEST_CASE("every reference of a corrected report leads to a block of it") {
  auto both = sample::two_issues();
  for (const char *subject : {"item 1", "schedule S1", "zone W", "row PW", "criterion absolute-4.0", "gauge ut", "limitation 1", "photo 1", "D1", "N1", "vessel",
                              "answer", "report", "instructed", "surveyor", "conditions", "datum", "coating", "afloat", "house", "previous-survey", "item 7",
                              "decision Q", "limitation 9", "P9", "acknowledged"})
    both.amended.changes.all.push_back({.kind = amend::Kind::text, .subject = subject, .differences = {{"a", "b", "c"}}});
  const auto document = both.composed();
  const auto links = sample::links_of(document);
  const std::set<std::string> ids(links.ids.begin(), links.ids.end());
  for (const auto &reference : links.references) {
    INFO(reference.target);
    CHECK(ids.contains(reference.target));
  }
}
