#include <catch2/catch.hpp>

#include "letters_support.h"
#include "strakebook/compose/notice.h"
#include "strakebook/compose/stamp.h"

using namespace strakebook;
using compose::NoticeDetail;
using sample::contains;

namespace {

struct Notice {
  sample::Composed sample = sample::small_survey();
  amend::Amended amended = sample::corrected();
  std::string digest = "3fa9 12c4 77b0";
  survey::Recipient recipient{.who = sample::words("the yard"), .how = sample::words("by hand")};

  Notice() { sample.survey.amendment = sample::amendment(); }
  compose::Source source() const {
    auto out = sample.source();
    out.amended = &amended;
    out.issued_digest = digest;
    return out;
  }
  content::Document document(NoticeDetail detail = NoticeDetail::every_change) const { return compose::notice(source(), recipient, detail); }
  std::string text(NoticeDetail detail = NoticeDetail::every_change) const { return sample::text_of(document(detail).sections[0].blocks); }
};

} // namespace

TEST_CASE("a notice is written to its recipient and names the issue replaced by number, date and every digit of its digest") {
  const auto text = Notice().text();
  CHECK(contains(text, "to\nthe yard\nsent\nby hand\n"));
  CHECK(contains(text, "issue 1 of 16 October 2026"));
  CHECK(contains(text, "aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa"));
  CHECK(contains(text, "issue 2 of 20 October 2026"));
  CHECK(contains(text, "Issue 1 of report TB 0001 is replaced by issue 2."));
}

TEST_CASE("a notice says whether a decision changed") {
  Notice notice;
  CHECK(contains(notice.text(), "A decision changed. Decisions, items and answers that differ: 1; readings and pits: 1; anything else: 1."));
  notice.amended.changes.all.erase(notice.amended.changes.all.begin());
  CHECK(contains(notice.text(), "No decision changed."));
}

TEST_CASE("a notice tells decisions first, old beside new, each with its reason") {
  const auto text = Notice().text();
  const auto decision = text.find("decision W, wind-and-water\naction: continue in use\naction: weld build-up\nPW 3 was read again.");
  const auto stands = text.find("bottom\nthe same\nIt rested on BC 4.");
  const auto reading = text.find("PW 3, port wind-and-water\nreading: 6.4\nreading: 4.6\nDigits exchanged in typing.");
  const auto other = text.find("vessel\nbuilt: 1989\nbuilt: 1998\nThe owner's letter.");
  INFO(text);
  REQUIRE(other != std::string::npos);
  CHECK(decision < stands);
  CHECK(stands < reading);
  CHECK(reading < other);
}

TEST_CASE("what a change added or withdrew has no other side") {
  Notice notice;
  notice.amended.changes.all[1].how = amend::How::withdrawn;
  notice.amended.changes.all[2].how = amend::How::added;
  CHECK(contains(notice.text(), "reading: 6.4\nwithdrawn\n"));
  CHECK(contains(notice.text(), "vessel\nnot there\nbuilt: 1998\n"));
}

TEST_CASE("of a pit the steel that is left is told, too") {
  Notice notice;
  notice.amended.changes.all[1] = {.kind = amend::Kind::pit, .how = amend::How::changed, .subject = "P1", .differences = {{"adjacent", "5.9", "5.6"}},
                                   .remaining_before = sample::length("4.7"), .remaining_after = sample::length("4.4")};
  CHECK(contains(notice.text(), "P1, PW 3.4, port wind-and-water\nadjacent: 5.9/left: 4.7\nadjacent: 5.6/left: 4.4\n"));
}

TEST_CASE("with less detail a notice keeps the decisions, then the counts, and says that more is in the report") {
  const Notice notice;
  const auto most = notice.text(NoticeDetail::decisions_and_readings);
  CHECK(contains(most, "reading: 4.6"));
  CHECK_FALSE(contains(most, "built: 1998"));
  const auto decisions = notice.text(NoticeDetail::decisions), counts = notice.text(NoticeDetail::counts);
  CHECK(contains(decisions, "action: weld build-up"));
  CHECK_FALSE(contains(decisions, "reading: 4.6"));
  CHECK_FALSE(contains(counts, "action: weld build-up"));
  for (const auto &text : {most, decisions, counts}) {
    CHECK(contains(text, "Not every change is listed here"));
    CHECK(contains(text, "A decision changed."));
  }
  CHECK_FALSE(contains(notice.text(), "Not every change"));
}

TEST_CASE("a notice asks for the old copy to be marked, says who was told, and how a copy is checked") {
  const auto text = Notice().text();
  CHECK(contains(text, "Mark every copy of issue 1 as replaced"));
  CHECK(contains(text, "do not rely on it any longer"));
  CHECK(contains(text, "the buyer\nletter and telephone\n19 October 2026\n20 October 2026\nthe yard\nletter\n19 October 2026\n–\n"));
  CHECK(contains(text, "strakebook verify FILE"));
  CHECK(contains(text, "the underwriter, 18 October 2026"));
}

TEST_CASE("every page of a notice names report, issue and digest, and its end is marked") {
  const auto document = Notice().document();
  CHECK(sample::text_of(document.furniture.head_right) == "Report TB 0001  Notice: issue 1 is replaced");
  CHECK(contains(sample::text_of(document.furniture.foot_left), "With issue 2, inputs 3fa9 12c4 77b0."));
  CHECK(document.furniture.foot_right == "page {page} of {pages}");
  CHECK(contains(sample::text_of(document.sections[0].blocks), "End of the notice. Report TB 0001, issue 1 is replaced; inputs 3fa9 12c4 77b0."));
  CHECK(document.date == "2026-10-20");
}

TEST_CASE("a notice that is only looked at says that nothing is issued") {
  Notice notice;
  notice.digest.clear();
  notice.amended.replaces.digest.clear();
  CHECK(contains(notice.text(), "not issued"));
  CHECK(contains(notice.text(), "not in the register"));
}

TEST_CASE("nothing in a notice leads anywhere") {
  CHECK(sample::links_of(Notice().document()).references.empty());
}

TEST_CASE("the stamp says by which issue and when, at head and foot") {
  const auto document = compose::stamp(Notice().source());
  REQUIRE(document.sections.size() == 1);
  const std::string words = "SUPERSEDED by issue 2 of 20 October 2026. This is issue 1 of report TB 0001: do not rely on it.\n";
  CHECK(sample::text_of(document.sections[0].blocks) == words + words);
}
