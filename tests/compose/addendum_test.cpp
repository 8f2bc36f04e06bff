#include <catch2/catch.hpp>

#include "letters_support.h"
#include "strakebook/compose/addendum.h"

using namespace strakebook;
using sample::contains;
using sample::words;

namespace {

struct Made {
  sample::Composed sample = sample::small_survey();
  std::vector<amend::PastIssue> past = {{.issue = 2, .date = base::Date{2026, 10, 21}, .digest = std::string(64, 'b'), .recipients = {}}};
  std::string digest = "3fa9 12c4 77b0";

  Made() {
    sample.survey.addenda = {sample::first_addendum()};
    sample.survey.recommendations.push_back({.id = "2", .title = words("Renew two anodes"), .action = "monitor", .at = {.zone = "B"}, .klass = "C"});
  }
  content::Document document() const {
    auto source = sample.source();
    source.issued_digest = digest;
    source.past = past;
    return compose::addendum(source, sample.survey.addenda.back());
  }
  std::string text() const { return sample::text_of(document().sections[0].blocks); }
  survey::ClosedItem &item() { return sample.survey.addenda[0].closes[0]; }
};

} // namespace

TEST_CASE("an addendum names report, issue, date and digest, who looked, when, how she lay, and the gauge with its block") {
  const auto text = Made().text();
  CHECK(contains(text, "Addendum 1 to report TB 0001, issue 2\nSedge Warden\n"));
  CHECK(contains(text, "TB 0001, issue 2 of 21 October 2026\n"));
  CHECK(contains(text, "bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb bbbb"));
  CHECK(contains(text, "inspected\n28 November 2026\nissued\n30 November 2026\nwho looked\nthe surveyor\nhow she lay\non keel blocks, from outside\n"));
  CHECK(contains(text, "ultrasonic thickness gauge, works calibration\non its block\n5.00 shown on the block of 5.00\n"));
  CHECK(contains(text, "Issue 2 stands"));
}

TEST_CASE("an addendum tells each item with class, deadline, outcome, day and evidence") {
  Made made;
  const auto text = made.text();
  CHECK(contains(text, "Build up the pit P1\nPW 3–4\noutcome\nclosed, done 26 November 2026\nevidence\nThe pit is filled and ground flush.\n"));
  CHECK(contains(text, "Class B  before the next season, by 1 April 2027\nProof asked for: yard invoice\n"));
  CHECK_FALSE(contains(text, "left to do"));
  made.item().outcome = survey::Closing::partly;
  made.item().left = words("One coat.");
  CHECK(contains(made.text(), "partly closed, done 26 November 2026"));
  CHECK(contains(made.text(), "left to do\nOne coat.\n"));
}

TEST_CASE("new readings stand beside the limit of their zone and their exact verdict") {
  const auto text = Made().text();
  INFO(text);
  CHECK(contains(text, "PW 3.4, port wind-and-water\n5.9 mm\n4.00\n4.0 mm remaining\n+1.90\n[meets]meets\nover the filled pit\n"));
  CHECK(contains(text, "Verdicts count a doubt of the gauge of 0.16 mm"));
}

TEST_CASE("a verdict is the program's own: one too close is called so") {
  Made made;
  made.item().readings[0].reading = sample::mm("4.16");
  CHECK(contains(made.text(), "+0.160\n[too-close]too close to call"));
  made.item().readings[0].reading = sample::mm("3.8");
  CHECK(contains(made.text(), "\u22120.20\n[falls-short]falls short"));
}

TEST_CASE("a reading on a plate laid over is judged by no limit") {
  Made made;
  made.sample.survey.recommendations[0].action = made.sample.survey.steelwork[0].action = "overplate";
  CHECK(contains(made.text(), "5.9 mm\n–\n–\n–\n[not-applicable]outer plate, judged by no limit\n"));
}

TEST_CASE("items that stay open are listed, counted up to this addendum") {
  Made made;
  CHECK(contains(made.text(), "Of 2 items of the report, closed: 1; partly closed: 0; open: 1."));
  CHECK(contains(made.text(), "Items of the report that stay open\n"));
  CHECK(contains(made.text(), "2\nC\nRenew two anodes\n"));
  made.sample.survey.recommendations.pop_back();
  CHECK(contains(made.text(), "Items of the report that stay open\nNone.\n"));
}

TEST_CASE("an addendum carries cautions, the surveyor's declaration and a line to sign on") {
  const auto text = Made().text();
  CHECK(contains(text, "Cautions\n"));
  CHECK(contains(text, "Hot work. "));
  CHECK(contains(text, "Declaration\nThe readings are as found on the day, and the opinions are mine.\n"));
  CHECK(contains(text, "A. Surveyor"));
}

TEST_CASE("every page of an addendum names report, issue, addendum and digest, and its end is marked") {
  Made made;
  const auto document = made.document();
  CHECK(sample::text_of(document.furniture.head_right) == "Report TB 0001  Issue 2, addendum 1");
  CHECK(contains(sample::text_of(document.furniture.foot_left), "Issued 30 November 2026, inputs 3fa9 12c4 77b0."));
  CHECK(contains(made.text(), "End of addendum 1 to report TB 0001, issue 2; inputs 3fa9 12c4 77b0."));
  CHECK(document.date == "2026-11-30");
  CHECK(sample::links_of(document).references.empty());
  made.digest.clear();
  CHECK(contains(sample::text_of(made.document().furniture.foot_left), "not issued"));
}

TEST_CASE("in the report the outcome of an item stands beside it, and on page one") {
  Made made;
  const auto document = compose::compose(made.sample.source());
  CHECK(contains(sample::section_text(document, "recommendations"), "\nclosed 26 November 2026, addendum 1\n"));
  CHECK(contains(sample::section_text(document, "answer"), "Build up the pit P1 (closed 26 November 2026, addendum 1)"));
  made.sample.survey.addenda.clear();
  CHECK_FALSE(contains(sample::section_text(compose::compose(made.sample.source()), "recommendations"), "addendum"));
}

TEST_CASE("items open from earlier reports are printed with what became of them") {
  auto sample = sample::small_survey();
  CHECK_FALSE(contains(sample::section_text(compose::compose(sample.source()), "recommendations"), "earlier reports"));
  sample.survey.carried = {{.id = "1", .from = words("report TB 0000, issue 1"), .item = words("3"), .title = words("Renew the anodes"), .klass = "B",
                            .deadline = words("before the season"), .now = survey::Became::overtaken, .found = words("All four are to be renewed."),
                            .evidence = {"N1"}},
                           {.id = "2", .from = words("report TB 0000, issue 1"), .item = words("4"), .title = words("Paint the bottom")}};
  const auto document = compose::compose(sample.source());
  const auto text = sample::section_text(document, "recommendations");
  CHECK(contains(text, "report TB 0000, issue 1, item 3\nRenew the anodes\nB\nbefore the season\novertaken\nAll four are to be renewed. N1\n"));
  CHECK(contains(text, "report TB 0000, issue 1, item 4\nPaint the bottom\n–\nnot stated\nnot stated\n"));
  CHECK(document.names.at("table/carried") == "Table\u00A014.1");
  sample.survey.recommendations.clear();
  sample.survey.steelwork.clear();
  CHECK(contains(sample::section_text(compose::compose(sample.source()), "recommendations"), "There are no recommendations.\n"));
}
