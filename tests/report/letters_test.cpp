#include <catch2/catch.hpp>

#include "report/examples_support.h"
#include "strakebook/report/letters.h"
#include "support/survey_builder.h"

using namespace strakebook;
using sample::words;

namespace {

Case boat() {
  base::Diagnostics sink;
  auto found = open_case(std::filesystem::path(STRAKEBOOK_ROOT) / "example-surveys" / "five-years-on" / "survey.yaml", installed_resources(), sink);
  REQUIRE(found);
  return std::move(*found);
}

/// Issue 2 of the boat, with so many readings corrected and one decision changed.
Case corrected(int readings) {
  auto one = boat();
  one.survey.report.issue = 2;
  one.issued_digest = "3fa9 12c4 77b0";
  one.survey.amendment = survey::Amendment{.cause = words("Figures were typed from the notebook."), .found_by = words("the owner's underwriter"),
                                           .checked = words("Every reading was compared with the gauge's file.")};
  amend::Amended amended{.replaces = {.issue = 1, .date = base::Date{2026, 10, 13}, .digest = std::string(64, 'c'), .recipients = {}}, .changes = {}};
  amended.changes.all.push_back({.kind = amend::Kind::decision, .how = amend::How::changed, .subject = "decision W",
                                 .differences = {{"action", "continue", "clean and recoat"}}, .why = words("P1 was read again.")});
  for (int i = 0; i < readings; ++i)
    amended.changes.all.push_back({.kind = amend::Kind::reading, .how = amend::How::changed, .subject = "PW " + std::to_string(1 + i % 16),
                                   .differences = {{"reading", "6.4", "4.6"}}, .why = words("Digits exchanged in typing; the gauge's file says 4.6.")});
  one.amended = std::move(amended);
  return one;
}

const survey::Recipient owner{.who = words("the owner"), .how = words("by letter")};

int pages_of(const std::string &pdf) {
  int count = 0;
  for (auto at = pdf.find("/Type /Page\n"); at != std::string::npos; at = pdf.find("/Type /Page\n", at + 1)) ++count;
  return count;
}

std::string pdf_of_notice(int readings) {
  base::Diagnostics sink;
  const auto pdf = recall_notice(corrected(readings), owner, installed_resources(), sink);
  INFO(base::terminal_text(sink));
  REQUIRE(pdf);
  return *pdf;
}

Case repaired(int readings) {
  auto one = boat();
  survey::ClosedItem first{.item = "1", .outcome = survey::Closing::closed, .on = base::Located<base::Date>{{2026, 10, 28}, {}},
                           .evidence = words("Two coats over bright plate, seen and photographed.")};
  for (int i = 1; i <= readings; ++i)
    first.readings.push_back({.at = {.row = "PW", .station = sample::station(std::to_string(i))}, .reading = sample::mm("5.4")});
  one.survey.addenda = {{.id = "1", .inspected = base::Located<base::Date>{{2026, 10, 29}, {}}, .issued = base::Located<base::Date>{{2026, 10, 30}, {}},
                         .by = words("the surveyor"), .how = words("on keel blocks"), .gauge = "ut", .block = words("5.0 shown on 5.0"),
                         .closes = {first, {.item = "2", .outcome = survey::Closing::open, .left = words("To be looked at in 2027.")}}}};
  return one;
}

std::optional<page::Document> addendum_of(const Case &one, const std::string &id, base::Diagnostics &sink) {
  return addendum_pages(one, id, installed_resources(), sink);
}

std::string text_on(const page::Page &page) {
  std::string text;
  for (const auto &item : page.items)
    if (const auto *run = std::get_if<page::Run>(&item.what)) text += run->text;
  return text;
}

} // namespace

TEST_CASE("a notice is one page, however much was corrected") {
  for (const int readings : {0, 2, 12, 200}) {
    INFO(readings);
    CHECK(pages_of(pdf_of_notice(readings)) == 1);
  }
}

TEST_CASE("the same notice has the same bytes") { CHECK(pdf_of_notice(2) == pdf_of_notice(2)); }

TEST_CASE("a notice of nothing replaced is a fault of the program") {
  base::Diagnostics sink;
  CHECK_THROWS_AS(recall_notice(boat(), owner, installed_resources(), sink), std::logic_error);
  CHECK_THROWS_AS(superseded_stamp(boat(), installed_resources(), sink), std::logic_error);
}

TEST_CASE("the stamp is one page") {
  base::Diagnostics sink;
  const auto pdf = superseded_stamp(corrected(1), installed_resources(), sink);
  REQUIRE(pdf);
  CHECK(pages_of(*pdf) == 1);
}

TEST_CASE("a short addendum takes two pages at the most, and each says what it belongs to and which page of how many") {
  const auto one = repaired(3);
  base::Diagnostics sink;
  const auto set = addendum_of(one, "1", sink);
  REQUIRE(set);
  CHECK(set->pages.size() <= 2);
  for (std::size_t i = 0; i < set->pages.size(); ++i) {
    const auto text = text_on(set->pages[i]);
    CHECK(text.find("Issue 1, addendum 1") != std::string::npos);
    CHECK(text.find("page " + std::to_string(i + 1) + " of " + std::to_string(set->pages.size())) != std::string::npos);
    CHECK(text.find("not issued") != std::string::npos);
  }
  CHECK(text_on(set->pages.back()).find("End of addendum 1") != std::string::npos);
  CHECK(set->attachments.empty());
}

TEST_CASE("an addendum goes on to as many pages as its readings need") {
  base::Diagnostics sink;
  const auto set = addendum_of(repaired(140), "1", sink);
  INFO(base::terminal_text(sink));
  REQUIRE(set);
  CHECK(set->pages.size() > 3);
}

TEST_CASE("an addendum that the survey does not have is refused with what was asked for") {
  const auto one = repaired(1);
  base::Diagnostics sink;
  CHECK_FALSE(addendum_of(one, "7", sink));
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].code == base::Code::dangling_reference);
  CHECK(sink.all()[0].message == "the survey has no addendum 7");
}

TEST_CASE("the JSON of an assessment has addenda where there are some") {
  CHECK(assessment_json(repaired(1)).find("\"addenda\"") != std::string::npos);
  CHECK(assessment_json(boat()).find("\"addenda\"") == std::string::npos);
}
