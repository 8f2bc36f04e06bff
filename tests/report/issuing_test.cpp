#include "strakebook/issuing.h"

#include <catch2/catch.hpp>

#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"
#include "strakebook/issue/issued_folder.h"
#include "strakebook/report/kept.h"
#include "support/temp_folder.h"

using namespace strakebook;

namespace fs = std::filesystem;

namespace {

const Resources resources{fs::path(STRAKEBOOK_ROOT "/layouts"), STRAKEBOOK_ROOT "/fonts"};

std::string bytes_of(const fs::path &file) {
  base::Diagnostics sink;
  return base::read_file(file, 64u << 20, {}, sink).value_or("(not there)");
}

/// A small final survey without photographs, with recipients.
struct Desk {
  support::TempFolder temp;
  fs::path survey = temp.path / "survey.yaml", readings = temp.path / "readings/notebook.csv";
  base::Diagnostics sink;

  Desk() {
    fs::copy(STRAKEBOOK_ROOT "/example-surveys/imperial-notes", temp.path, fs::copy_options::recursive);
    write(survey, bytes_of(survey) + "\nrecipients:\n  - {who: the owner, how: by letter}\n  - {who: the yard}\n");
  }
  void write(const fs::path &file, const std::string &text) { temp.write(fs::relative(file, temp.path), text); }
  void edit(const fs::path &file, const std::string &old, const std::string &now) {
    auto text = bytes_of(file);
    REQUIRE(text.find(old) != text.npos);
    write(file, text.replace(text.find(old), old.size(), now));
  }
  std::optional<Delivered> issue() {
    sink = {};
    return issue_report(survey, resources, nullptr, sink);
  }
  /// The next issue, with one figure corrected.
  void correct(const std::string &changes = "    - {what: SC 3, why: The notebook says .202.}\n") {
    edit(survey, "  issue: 1\n", "  issue: 2\n");
    edit(survey, "issued: 2026-08-18", "issued: 2026-08-21");
    edit(survey, "supersedes: none", "supersedes: issue 1");
    edit(readings, ".201", ".202");
    write(survey, bytes_of(survey) + "\namendment:\n  cause: A figure was copied wrongly from the notebook.\n  found-by: the surveyor\n"
                                     "  found-on: 2026-08-20\n  checked: Every line of the table was held against the notebook.\n  changes:\n" +
                      changes + "  told:\n    - {who: the owner, on: 2026-08-21}\n    - {who: the yard, on: 2026-08-21}\n");
  }
  issue::Register registered() {
    base::Diagnostics found;
    auto all = issue::register_in(temp.path, found);
    REQUIRE(found.all().empty());
    return std::move(*all);
  }
  std::vector<base::Code> errors() const {
    std::vector<base::Code> codes;
    for (const auto &one : sink.all())
      if (one.severity == base::Severity::error) codes.push_back(one.code);
    return codes;
  }
  void refused(const std::vector<base::Code> &codes) {
    const auto before = fs::exists(temp.path / "issued") ? bytes_of(temp.path / "issued/register.txt") : "";
    CHECK_FALSE(issue());
    INFO(base::terminal_text(sink));
    CHECK(errors() == codes);
    for (const auto &one : sink.all())
      if (one.severity == base::Severity::error) CHECK((one.span.file && !one.write.empty()));
    CHECK((fs::exists(temp.path / "issued") ? bytes_of(temp.path / "issued/register.txt") : "") == before);
  }
};

} // namespace

TEST_CASE("a report is issued once, and the same again changes nothing") {
  Desk desk;
  const auto first = desk.issue();
  INFO(base::terminal_text(desk.sink));
  REQUIRE(first);
  CHECK_FALSE(first->again);
  CHECK(first->document == desk.temp.path / "issued/RD-2644-issue-1/RD-2644-issue-1.pdf");
  CHECK(first->beside.empty());
  const auto all = desk.registered();
  REQUIRE(all.entries.size() == 1);
  const auto &entry = all.entries[0];
  CHECK(entry.report == "RD 2644");
  CHECK(base::iso(entry.date) == "2026-08-18");
  CHECK(entry.state == "final");
  CHECK(entry.document.digest == base::sha256_hex(bytes_of(first->document)));
  CHECK(entry.unsigned_document == entry.document);
  CHECK(entry.recipients == std::vector<issue::Sent>{{"the owner", "by letter"}, {"the yard", ""}});
  CHECK(entry.replaces.empty());
  CHECK(entry.makers == makers());

  CHECK(is_issued(desk.survey, first->document));
  CHECK(is_issued(desk.survey, desk.temp.path / "issued/another.pdf"));
  CHECK(is_issued(desk.temp.path / "elsewhere/survey.yaml", first->document));
  CHECK_FALSE(is_issued(desk.survey, desk.temp.path / "issued.pdf"));
  CHECK_FALSE(is_issued(desk.survey, desk.temp.path / "issued/../report.pdf"));

  // A remark in the file is no other input.
  desk.write(desk.survey, "# read once more\n" + bytes_of(desk.survey));
  const auto again = desk.issue();
  REQUIRE(again);
  CHECK(again->again);
  CHECK(again->document == first->document);
  CHECK(desk.registered().text == all.text);

  desk.edit(desk.survey, "place: Withy Basin slip", "place: Withy Basin");
  desk.refused({base::Code::already_issued});
  CHECK(base::sha256_hex(bytes_of(first->document)) == entry.document.digest);

  desk.edit(desk.survey, "place: Withy Basin", "place: Withy Basin slip");
  desk.write(first->document, bytes_of(first->document) + "\n");
  CHECK_FALSE(desk.issue());
  CHECK(desk.errors() == std::vector{base::Code::not_a_report});
}

TEST_CASE("an issue that would replace the one before for nothing is refused") {
  Desk desk;
  REQUIRE(desk.issue());
  desk.edit(desk.survey, "  issue: 1\n", "  issue: 2\n");
  desk.edit(desk.survey, "issued: 2026-08-18", "issued: 2026-08-21");
  desk.edit(desk.survey, "supersedes: none", "supersedes: issue 1");
  desk.write(desk.survey, bytes_of(desk.survey) + "\namendment:\n  cause: None.\n  found-by: nobody\n  found-on: 2026-08-20\n  checked: Everything.\n"
                              "  told:\n    - {who: the owner, on: 2026-08-21}\n    - {who: the yard, on: 2026-08-21}\n");
  desk.refused({base::Code::already_issued});
}

TEST_CASE("what lies where an issue would lie is not driven away") {
  Desk desk;
  desk.temp.write("issued/RD-2644-issue-1/note.txt", "mine");
  CHECK_FALSE(desk.issue());
  CHECK(desk.errors() == std::vector{base::Code::issuing_failed});
  CHECK(bytes_of(desk.temp.path / "issued/RD-2644-issue-1/note.txt") == "mine");
  CHECK_FALSE(fs::exists(desk.temp.path / "issued/register.txt"));
  fs::remove_all(desk.temp.path / "issued/RD-2644-issue-1");
  CHECK(desk.issue());
}

TEST_CASE("only a final that says when it goes out and to whom") {
  SECTION("a draft") {
    Desk desk;
    desk.edit(desk.survey, "state: final", "state: draft");
    desk.refused({base::Code::not_final});
  }
  SECTION("to nobody") {
    Desk desk;
    const auto text = bytes_of(desk.survey);
    desk.write(desk.survey, text.substr(0, text.find("\nrecipients:")));
    desk.refused({base::Code::recipients_missing});
  }
  SECTION("a final that review does not pass") {
    Desk desk;
    desk.edit(desk.survey, "  qualification:", "  body:");
    CHECK_FALSE(desk.issue());
    CHECK_FALSE(desk.errors().empty());
    CHECK_FALSE(fs::exists(desk.temp.path / "issued"));
  }
}

TEST_CASE("an issue after the first needs the one before it") {
  Desk desk;
  desk.correct();
  desk.refused({base::Code::before_unknown});
  CHECK_FALSE(fs::exists(desk.temp.path / "issued"));
}

TEST_CASE("a corrected issue replaces the one before, which stays as it was") {
  Desk desk;
  const auto first = desk.issue();
  REQUIRE(first);
  const auto old = bytes_of(first->document);

  SECTION("not without its reasons") {
    desk.correct("    - {what: SC 4, why: Another one.}\n");
    desk.refused({base::Code::change_unreasoned, base::Code::reason_for_nothing});
    return;
  }
  SECTION("not where the old document is not what went out") {
    desk.correct();
    desk.write(first->document, old + "\n");
    desk.refused({base::Code::before_unknown});
    return;
  }
  desk.correct();
  const auto second = desk.issue();
  INFO(base::terminal_text(desk.sink));
  REQUIRE(second);
  const fs::path folder = desk.temp.path / "issued/RD-2644-issue-2";
  CHECK(second->document == folder / "RD-2644-issue-2.pdf");
  CHECK(second->beside == std::vector{folder / "recall-of-issue-1-to-the-owner.pdf", folder / "recall-of-issue-1-to-the-yard.pdf",
                                      folder / "RD-2644-issue-1-superseded.pdf"});
  CHECK(bytes_of(first->document) == old);
  const auto all = desk.registered();
  REQUIRE(all.entries.size() == 2);
  CHECK(all.entries[1].replaces == all.entries[0].document.digest);
  CHECK(all.entries[1].reasons == std::vector<std::string>{"SC 3: The notebook says .202."});
  for (const auto &file : all.entries[1].beside) CHECK(base::sha256_hex(bytes_of(folder / file.path)) == file.digest);
  REQUIRE(desk.issue());
  CHECK(desk.issue()->again);

  desk.edit(desk.survey, "  issue: 2\n", "  issue: 4\n");
  desk.refused({base::Code::before_unknown});
}

TEST_CASE("inputs lie beside a document where the house keeps them so") {
  Desk desk;
  desk.temp.write("layouts/own-desk.yaml", "layout: 1\nextends: river-desk\nissue: {inputs: beside}\n");
  desk.edit(desk.survey, "house: river-desk", "house: own-desk");
  const auto issued = desk.issue();
  INFO(base::terminal_text(desk.sink));
  REQUIRE(issued);
  const fs::path inputs = issued->document.parent_path() / "inputs";
  const auto entry = desk.registered().entries[0];
  CHECK(base::sha256_hex(bytes_of(inputs / "manifest.txt")) == entry.manifest);
  REQUIRE_FALSE(entry.inputs.empty());
  for (const auto &file : entry.inputs) CHECK(base::sha256_hex(bytes_of(inputs / file.path)) == file.digest);
  desk.correct();
  REQUIRE(desk.issue());
}

TEST_CASE("an addendum is to an issue that went out, as it went out") {
  Desk desk;
  const std::string addendum = "\naddenda:\n  1:\n    inspected: 2026-09-01\n    issued: 2026-09-02\n    by: the surveyor\n    how: on the slip, by eye and gauge\n"
                               "    gauge: ut\n    block: 5.00 read as 5.00\n    closes:\n      - {item: 1, outcome: closed, on: 2026-08-30, evidence: The new plate was seen and measured.}\n";
  const auto without = bytes_of(desk.survey);
  desk.write(desk.survey, without + addendum);
  base::Diagnostics sink;
  CHECK_FALSE(issue_addendum(desk.survey, "1", resources, nullptr, sink));
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all().back().code == base::Code::before_unknown);

  desk.write(desk.survey, without);
  REQUIRE(desk.issue());
  desk.write(desk.survey, without + addendum);
  sink = {};
  CHECK_FALSE(issue_addendum(desk.survey, "2", resources, nullptr, sink));
  CHECK(sink.all().back().code == base::Code::addendum_incomplete);
  sink = {};
  const auto issued = issue_addendum(desk.survey, "1", resources, nullptr, sink);
  INFO(base::terminal_text(sink));
  REQUIRE(issued);
  CHECK(issued->document == desk.temp.path / "issued/RD-2644-issue-1-addendum-1/RD-2644-issue-1-addendum-1.pdf");
  CHECK(base::iso(desk.registered().entries[1].date) == "2026-09-02");
  CHECK(issue_addendum(desk.survey, "1", resources, nullptr, sink)->again);

  const auto refused_with = [&](const char *number, base::Code code) {
    sink = {};
    CHECK_FALSE(issue_addendum(desk.survey, number, resources, nullptr, sink));
    INFO(base::terminal_text(sink));
    CHECK(sink.all().back().code == code);
  };
  SECTION("what it said stays said") {
    desk.edit(desk.survey, "was seen and measured", "was seen");
    refused_with("1", base::Code::already_issued);
    desk.refused({base::Code::already_issued});
    desk.write(desk.survey, without);
    desk.refused({base::Code::already_issued});
  }
  SECTION("the next has the next number, and a day that can be") {
    const auto second = [](const char *number, const char *day) {
      return std::string("  ") + number + ":\n    inspected: 2026-08-18\n    issued: " + day + "\n    by: the surveyor\n    how: on the slip\n    closes:\n      - {item: 2, outcome: open, left: all of it}\n";
    };
    desk.write(desk.survey, without + addendum + second("3", "2026-09-09"));
    refused_with("3", base::Code::already_issued);
  }
  SECTION("a report tells of none that never went out") {
    desk.write(desk.survey, bytes_of(desk.survey) + "  2:\n    inspected: 2026-08-17\n    issued: 2026-08-18\n    by: the surveyor\n    how: on the slip\n    closes:\n      - {item: 2, outcome: open, left: all of it}\n");
    CHECK_FALSE(desk.issue());
    CHECK(desk.errors().back() == base::Code::addendum_incomplete);
  }

  desk.write(desk.survey, without + addendum);
  desk.edit(desk.readings, ".201", ".202");
  sink = {};
  CHECK_FALSE(issue_addendum(desk.survey, "1", resources, nullptr, sink));
  CHECK(sink.all().back().code == base::Code::already_issued);
  CHECK(sink.all().back().message.find("SC 3") != std::string::npos);
}
