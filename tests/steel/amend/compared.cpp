#include <algorithm>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "opened.h"
#include "strakebook/steel/amend/json.h"
#include "support/survey_builder.h"

using namespace strakebook;
using namespace strakebook::amend;
using namespace strakebook::amend::testing;
using sample::length;
using sample::mm;
using sample::station;
using sample::words;

namespace {

/// Two zones of side plating, each with its decision. The limits of 4.0 and 3.0 mm and the ladder are the sample house's: common
/// practice, no source.
survey::Survey issue_one() {
  auto made = sample::SurveyBuilder()
                  .zone("S", "6").row("SL", "S").marks("SL", {"5.9", "5.8", "5.9", "6.0", "4.7", "6.4", "4.8"})
                  .zone("P", "5").row("PL", "P").marks("PL", {"4.9", "4.9", "4.2", "4.8"})
                  .pit("P1", "PL", "2.4", "4.9", "0.4")
                  .criteria({"absolute-4.0", "absolute-3.0"})
                  .decide("S", "clean and recoat", "absolute-4.0").decide("P", "clean and recoat", "absolute-4.0").made;
  made.report.issue = 1;
  return made;
}

survey::Mark &mark(survey::Survey &survey, std::string_view id) {
  return *std::ranges::find_if(survey.marks, [&](const survey::Mark &one) { return one.id() == id; });
}

const Change &only(const Changes &changes) {
  REQUIRE(changes.all.size() == 1);
  return changes.all.front();
}

Changes compared(const survey::Survey &before, const survey::Survey &after) { return testing::compared(State(before), State(after)); }

survey::ChangeReason reason(std::vector<std::string> what, const std::string &why) {
  survey::ChangeReason made{.why = words(why)};
  for (const auto &one : what) made.what.push_back(words(one));
  return made;
}

} // namespace

TEST_CASE("figures exchanged in typing: what was printed, what stands now, and the verdicts that follow") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "SL 6").repeats = {mm("4.6")};
  mark(after, "PL 3").repeats = {mm("3.2")};
  const auto found = compared(before, after);
  REQUIRE(subjects(found) == std::vector<std::string>{"SL 6", "PL 3"});
  CHECK(found.all[0].kind == Kind::reading);
  CHECK(found.all[0].how == How::changed);
  REQUIRE(found.all[0].differences.size() == 1);
  CHECK(found.all[0].differences[0] == Difference{"reading", "6.4", "4.6"});
  CHECK(found.all[0].remaining_before == length("6.4"));
  CHECK(found.all[0].remaining_after == length("4.6"));
  CHECK_FALSE(found.decision_changed());

  // 3.2 is 0.8 under 4.0 and 0.2 over 3.0, with a doubt of 1.645 x 0.1.
  REQUIRE(found.moved.size() == 1);
  CHECK(found.moved[0].zone == "P");
  CHECK(found.moved[0].criterion == "absolute-4.0");
  CHECK(found.moved[0].subject == "PL 3");
  CHECK(found.moved[0].before == assess::Verdict::meets);
  CHECK(found.moved[0].after == assess::Verdict::falls_short);
  // S keeps its verdicts: 4.6 meets 4.0 as 4.7 did. What the ladder suggests of 4.6 is what it suggested of 4.7.
  REQUIRE(found.stands.size() == 1);
  CHECK(found.stands[0].zone == "P");
  CHECK_FALSE(found.stands[0].why.given());
}

TEST_CASE("a decision that changes does not stand; changes come decisions first") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "PL 3").repeats = {mm("3.2")};
  after.decisions[1].action = "overplate";
  after.answer.reason = words("Another reason.");
  after.recommendations = {{.id = "1", .title = words("Overplate it"), .action = "overplate"}};
  after.pits[0].depth = mm("0.5");
  after.vessel.name = words("Sedge Warden");
  const auto found = compared(before, after);
  CHECK(subjects(found) == std::vector<std::string>{"decision P", "item 1", "answer", "PL 3", "P1", "vessel"});
  CHECK(found.decision_changed());
  CHECK(found.stands.empty());
  CHECK(found.all[0].differences == std::vector<Difference>{{"action", "clean and recoat", "overplate"}});
  CHECK(found.all[1].how == How::added);
  CHECK(found.all[4].remaining_before == length("4.5"));
  CHECK(found.all[4].remaining_after == length("4.4"));
}

TEST_CASE("a decision stands where its action and criterion are the same, whatever its words say") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "PL 3").repeats = {mm("3.2")};
  after.decisions[1].why = words("Another reason than before.");
  CHECK(compared(before, after).stands.size() == 1);
  after.decisions[1].claim = words("Clean and recoat the port side.");
  CHECK(compared(before, after).stands.size() == 1);
  after.decisions[1].action = "overplate";
  CHECK(compared(before, after).stands.empty());
}

TEST_CASE("another rung of the ladder is asked after too, though no verdict moved") {
  const auto before = issue_one();
  auto after = before;
  for (auto *survey : {&after}) mark(*survey, "PL 3").repeats = {mm("5.0")}; // 4.2 was under four fifths of the original, 4.5 of P1 is not
  auto lower = after;
  mark(lower, "PL 3").repeats = {mm("4.3")};
  CHECK(compared(lower, after).moved.size() == 0);
  CHECK(State(lower).assessment.zones[1].rung == State(after).assessment.zones[1].rung);
  CHECK(compared(lower, after).stands.empty());
  mark(lower, "PL 3").repeats = {mm("3.9")};
  CHECK(State(lower).assessment.zones[1].rung != State(after).assessment.zones[1].rung);
  CHECK(compared(lower, after).stands.size() == 1);
}

TEST_CASE("one more nought is a change; the unit that was implied is not") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "SL 2").repeats = {mm("5.80")};
  CHECK(only(compared(before, after)).differences == std::vector<Difference>{{"reading", "5.8", "5.80"}});
  mark(after, "SL 2").repeats = {mm("5.8 mm")};
  CHECK(compared(before, after).all.empty());
}

TEST_CASE("a mark that lost its reading is withdrawn with its last figure, and back it is added") {
  const auto before = issue_one();
  auto after = before;
  auto &lost = mark(after, "SL 6");
  SECTION("rejected") {
    lost.status = survey::Status::rejected;
    lost.why = words("The probe rocked.");
    const auto found = compared(before, after);
    CHECK(only(found).differences == std::vector<Difference>{{"status", "", "rejected"}, {"why", "", "The probe rocked."}});
  }
  SECTION("not read") {
    lost.status = survey::Status::no_echo;
    lost.repeats.clear();
    CHECK(only(compared(before, after)).differences == std::vector<Difference>{{"reading", "6.4", ""}, {"status", "", "no-echo"}});
  }
  SECTION("gone") { std::erase_if(after.marks, [](const survey::Mark &one) { return one.id() == "SL 6"; }); }
  const auto found = compared(before, after);
  CHECK(only(found).how == How::withdrawn);
  CHECK(only(found).subject == "SL 6");
  CHECK(only(found).remaining_before == length("6.4"));
  CHECK_FALSE(only(found).remaining_after);
  const auto back = compared(after, before);
  CHECK(only(back).how == How::added);
  CHECK(only(back).remaining_after == length("6.4"));
}

TEST_CASE("the same station with one more nought is the same mark, and its name has changed") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "SL 2").station = station("2.0");
  const auto found = compared(before, after);
  CHECK(only(found).how == How::changed);
  CHECK(only(found).subject == "SL 2.0");
  CHECK(only(found).differences == std::vector<Difference>{{"station", "2", "2.0"}});
}

TEST_CASE("a doubler noted brings the plate of its marks with it; a plate that the mark says itself is listed") {
  const auto before = issue_one();
  auto after = before;
  for (const auto *at : {"SL 2", "SL 3"}) mark(after, at).plate = survey::Plate::doubler;
  CHECK(subjects(compared(before, after)) == std::vector<std::string>{"SL 2", "SL 3"});
  after.doublers = {{.id = "D1", .over = {.rows = {"SL"}, .from = station("2"), .to = station("3"), .span = {.line = 9}}}};
  CHECK(subjects(compared(before, after)) == std::vector<std::string>{"D1"});
}

TEST_CASE("swapped, the same things are listed, mirrored") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "PL 3").repeats = {mm("3.2")};
  mark(after, "SL 1").status = survey::Status::unstable;
  after.decisions[1].action = "overplate";
  after.pits.clear();
  after.notes = {{.id = "N1", .at = {.zone = "S", .span = {.line = 4}}, .text = words("rust"), .photos = {"1", "2"}}};
  after.zones[0].original.nominal = mm("6.3");
  after.limitations = {{.id = "1", .area = words("the bottom"), .why = words("blocks"), .prevents = words("an opinion"), .cure = words("move them")}};
  const auto there = compared(before, after), back = compared(after, before);
  auto one = subjects(there), other = subjects(back);
  CHECK(one.size() == 7);
  std::ranges::sort(one);
  std::ranges::sort(other);
  CHECK(one == other);
  for (const auto &change : there.all) {
    const auto &mirror = *std::ranges::find(back.all, change.subject, &Change::subject);
    CHECK(mirror.kind == change.kind);
    CHECK(mirror.how == (change.how == How::added ? How::withdrawn : change.how == How::withdrawn ? How::added : How::changed));
    CHECK(mirror.remaining_before == change.remaining_after);
    CHECK(mirror.remaining_after == change.remaining_before);
    REQUIRE(mirror.differences.size() == change.differences.size());
    for (const auto &difference : change.differences)
      CHECK(std::ranges::count(mirror.differences, Difference{difference.field, difference.after, difference.before}) == 1);
  }
  REQUIRE(there.moved.size() == back.moved.size());
  for (std::size_t i = 0; i < there.moved.size(); ++i) CHECK(there.moved[i].before == back.moved[i].after);
}

TEST_CASE("of statements and questions only those that differ are shown; a list of marks is shown whole") {
  auto before = issue_one();
  before.decisions[0].facts = {{.kind = survey::StatementKind::seen, .text = words("Sound.")}, {.kind = survey::StatementKind::told, .text = words("Old.")}};
  before.decisions[0].evidence = {"SL 1", "SL 2"};
  auto after = before;
  after.decisions[0].facts[1].text = words("New.");
  after.decisions[0].evidence.push_back("SL 6");
  CHECK(only(compared(before, after)).differences ==
        std::vector<Difference>{{"facts", "told: Old.", "told: New."}, {"evidence", "SL 1, SL 2", "SL 1, SL 2, SL 6"}});
  after = before;
  std::swap(after.decisions[0].facts[0], after.decisions[0].facts[1]);
  CHECK(only(compared(before, after)).differences == std::vector<Difference>{{"facts", "seen: Sound.; told: Old.", "told: Old.; seen: Sound."}});
}

TEST_CASE("a photograph is known by its file's digest, the house by those of its layouts") {
  auto survey = issue_one();
  survey.house = "river-desk";
  survey.photos = {{.id = "4", .file = words("photos/4.jpg"), .at = {.row = "SL", .station = station("2")}}};
  const auto inputs = [](const std::string &photo, const std::string &layout) {
    return std::vector<base::InputFile>{{.kind = "layout", .path = "layouts/base.yaml", .digest = layout}, {.kind = "photograph", .path = "photos/4.jpg", .digest = photo},
                                        {.kind = "survey", .path = "survey.yaml", .digest = photo + layout}};
  };
  const State before(survey, inputs("aa", "bb"));
  CHECK(testing::compared(before, State(survey, inputs("aa", "bb"))).all.empty());
  const auto photo = testing::compared(before, State(survey, inputs("ac", "bb")));
  CHECK(only(photo).subject == "photo 4");
  CHECK(only(photo).kind == Kind::photograph);
  CHECK(only(photo).differences == std::vector<Difference>{{"picture", "aa", "ac"}});
  const auto layout = testing::compared(before, State(survey, inputs("aa", "bd")));
  CHECK(only(layout).subject == "house");
  CHECK(only(layout).differences == std::vector<Difference>{{"layouts/base.yaml", "bb", "bd"}});
}

TEST_CASE("the facts of a zone are listed as its original where they are that") {
  const auto before = issue_one();
  auto after = before;
  after.zones[0].general_order = words("sound");
  CHECK(only(compared(before, after)).kind == Kind::text);
  after.zones[0].original.basis = "owner's word";
  CHECK(only(compared(before, after)).kind == Kind::original);
  CHECK(only(compared(before, after)).subject == "zone S");
}

TEST_CASE("a reason is given to everything that it names, the first that names it") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "SL 6").repeats = {mm("4.6")};
  mark(after, "PL 3").repeats = {mm("3.2")};
  after.amendment = survey::Amendment{.changes = {reason({"SL  6", "PL 2"}, "Typed wrongly."), reason({"SL 6"}, "Another.")}, .stands = {reason({"zone P"}, "As it was.")}};
  const auto found = compared(before, after);
  CHECK(found.all[0].why.text == "Typed wrongly.");
  CHECK_FALSE(found.all[1].why.given());
  CHECK(found.stands[0].why.text == "As it was.");
}

TEST_CASE("a criterion that comes into use moves the verdicts of every zone") {
  const auto before = issue_one();
  auto after = before;
  after.criteria.push_back({.id = "percent-20", .asked_by = words("the underwriter")});
  const auto found = compared(before, after);
  CHECK(only(found).subject == "criterion percent-20");
  CHECK(only(found).kind == Kind::criterion);
  REQUIRE(found.moved.size() == 2);
  CHECK(found.moved[0].before == assess::Verdict::not_applicable);
  CHECK(found.stands.size() == 2);
}

TEST_CASE("as JSON") {
  const auto before = issue_one();
  auto after = before;
  mark(after, "PL 3").repeats = {mm("3.2")};
  after.amendment = survey::Amendment{.changes = {reason({"PL 3"}, "Typed wrongly.")}};
  CHECK(json(compared(before, after)) == nlohmann::ordered_json::parse(R"({
    "changes": [{"kind": "reading", "how": "changed", "subject": "PL 3", "differences": [{"field": "reading", "before": "4.2", "after": "3.2"}],
                 "remaining_before": "4.2", "remaining_after": "3.2", "why": "Typed wrongly."}],
    "moved": [{"zone": "P", "criterion": "absolute-4.0", "subject": "PL 3", "before": "meets", "after": "falls-short"}],
    "stands": [{"zone": "P", "why": null}], "decision_changed": false})"));
}
