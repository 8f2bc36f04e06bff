#include <algorithm>
#include <fstream>
#include <iterator>

#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "strakebook/issuing.h"
#include "strakebook/report/opening.h"
#include "support/temp_folder.h"

using namespace strakebook;
namespace fs = std::filesystem;

namespace {

std::string text_of(const fs::path &file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void edit(const fs::path &file, const std::string &old, const std::string &now) {
  auto text = text_of(file);
  REQUIRE(text.find(old) != std::string::npos);
  std::ofstream(file, std::ios::binary) << text.replace(text.find(old), old.size(), now);
}

/// The clean boat, and a second issue of it in which a figure, a name and the layout of the file are another.
struct TwoIssues {
  TwoIssues() {
    fs::copy(STRAKEBOOK_ROOT "/example-surveys/clean-boat", folder.path / "two", fs::copy_options::recursive);
    edit(after, "  issue: 1\n", "  issue: 2\n");
    edit(after, "  supersedes: none\n", "  supersedes: issue 1\n");
    edit(after, "  name: Alder Moon\n", "  name: \"Alder Sun\"   # her name now\n");
    edit(folder.path / "two/readings/hull.csv", "5.9 5.9 6.0,", "5.9 5.9 6.00,");
  }
  support::TempFolder folder;
  fs::path before = STRAKEBOOK_ROOT "/example-surveys/clean-boat/survey.yaml", after = folder.path / "two/survey.yaml";
};

} // namespace

TEST_CASE("two surveys compared: in words, and for programs") {
  const TwoIssues surveys;
  base::Diagnostics sink;
  const auto found = compare_reports(surveys.before, surveys.after, installed_resources(), sink);
  REQUIRE(found);
  CHECK(comparison_text(*found) == "RD 2541 issue 1 -> RD 2541 issue 2: 2 changes, no decision among them\n\n"
                                   "PW 1: changed\n    reading: 5.9 5.9 6.0 -> 5.9 5.9 6.00\n    remaining: 5.9 mm -> 5.9 mm\n\n"
                                   "vessel: changed\n    name: Alder Moon -> Alder Sun\n");
  const auto json = nlohmann::json::parse(comparison_json(*found));
  CHECK(json["before"] == "RD 2541 issue 1");
  CHECK(json["after"] == "RD 2541 issue 2");
  CHECK(json["decision_changed"] == false);
  REQUIRE(json["changes"].size() == 2);
  CHECK(json["changes"][1]["subject"] == "vessel");
  CHECK(json["changes"][1]["why"].is_null());
}

TEST_CASE("what stands against a survey is told and does not stop a comparison; a file that cannot be read does") {
  const TwoIssues surveys;
  edit(surveys.after, "  by: the owner\n", "");
  base::Diagnostics sink;
  CHECK(compare_reports(surveys.before, surveys.after, installed_resources(), sink));
  CHECK(sink.ok());
  CHECK(std::ranges::count(sink.all(), base::Code::required_missing, &base::Diagnostic::code) == 1);
  CHECK_FALSE(compare_reports(surveys.before, surveys.folder.path / "nowhere.yaml", installed_resources(), sink));
  CHECK_FALSE(sink.ok());
}

TEST_CASE("the same survey has no change") {
  const TwoIssues surveys;
  base::Diagnostics sink;
  const auto found = compare_reports(surveys.before, surveys.before, installed_resources(), sink);
  REQUIRE(found);
  CHECK(comparison_text(*found) == "RD 2541 issue 1 -> RD 2541 issue 1: no change\n");
}

TEST_CASE("what a case replaces stands in its assessment, in the form of a comparison") {
  const TwoIssues surveys;
  base::Diagnostics sink;
  const auto before = open_case(surveys.before, installed_resources(), sink);
  auto after = open_case(surveys.after, installed_resources(), sink);
  REQUIRE((before && after));
  CHECK_FALSE(nlohmann::json::parse(assessment_json(*after)).contains("amended"));
  after->amended = amend::Amended{.replaces = {.issue = 1}, .changes = changes_between(*before, *after)};
  const auto amended = nlohmann::json::parse(assessment_json(*after))["amended"];
  CHECK(amended == nlohmann::json::parse(comparison_json({"RD 2541 issue 1", "RD 2541 issue 2", after->amended->changes})));
}
