#include <catch2/catch.hpp>

#include <fstream>
#include <regex>

#include "report/examples_support.h"
#include "strakebook/issuing.h"
#include "support/survey_builder.h"
#include "support/temp_folder.h"

namespace fs = std::filesystem;
using namespace strakebook;

namespace {

Case example(const std::string &name) {
  base::Diagnostics sink;
  auto found = open_case(fs::path(STRAKEBOOK_ROOT) / "example-surveys" / name / "survey.yaml", installed_resources(), sink);
  REQUIRE(found);
  return std::move(*found);
}

bool has(const std::string &text, const std::string &part) { return text.find(part) != std::string::npos; }

/// What a surveyor writes after a key that is left empty.
std::string filled(std::string text) {
  const std::pair<const char *, const char *> answers[] = {
      {"  number:  #[^\n]*", "  number: NX 1"}, {"  issue:  #[^\n]*", "  issue: 1"}, {"  state:  #[^\n]*", "  state: draft\n  inspected: 2031-10-06"},
      {"strakebook:  #[^\n]*", "strakebook: 1"}};
  for (const auto &[blank, answer] : answers) text = std::regex_replace(text, std::regex(blank), answer, std::regex_constants::format_first_only);
  const auto readings = text.find("\nreadings:");
  const auto after = text.find("\n\n", readings + 1);
  text.replace(readings, after - readings,
               "\ngauges: {ut: {name: a gauge, u: 0.10, u-basis: as certified}}\nreadings: {inline: {ROW: {1: 5.0}}, unit: mm, marks: 1, surface: bare, "
               "gauge: ut, reduce: least of repeats}");
  return text;
}

/// The skeleton filled in, in a folder with the readings that it asks for.
base::Diagnostics read_next(const Case &last, const std::string &skeleton, const std::string &readings) {
  const support::TempFolder folder;
  fs::create_directories(folder.path / "earlier");
  for (const auto &entry : fs::directory_iterator(*last.folder.on_disk()))
    if (entry.path().filename() == "earlier") fs::copy(entry.path(), folder.path / "earlier", fs::copy_options::recursive);
  std::ofstream(folder.path / "earlier" / "2026.csv") << readings;
  std::string text = filled(skeleton);
  text.replace(text.find("ROW"), 3, last.survey.rows[0].id);
  std::ofstream(folder.path / "survey.yaml") << text;
  base::Diagnostics sink;
  const auto opened = open_case(folder.path / "survey.yaml", installed_resources(), sink);
  INFO(base::terminal_text(sink));
  CHECK(sink.ok());
  REQUIRE(opened);
  CHECK(opened->survey.vessel.name.text == last.survey.vessel.name.text);
  CHECK(opened->survey.rows.size() == last.survey.rows.size());
  CHECK(opened->survey.zones.size() == last.survey.zones.size());
  CHECK(opened->survey.earlier.size() == last.survey.earlier.size() + 1);
  CHECK(opened->survey.carried.size() == last.survey.recommendations.size() + last.survey.carried.size());
  return sink;
}

std::string bytes_of(const fs::path &file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// The lines of the grid that the skeleton prints as remarks.
std::string grid_in(const std::string &skeleton) {
  std::string out;
  for (auto at = skeleton.find("# station "); skeleton.compare(at, 2, "# ") == 0; at = skeleton.find('\n', at) + 1)
    out += skeleton.substr(at + 2, skeleton.find('\n', at) - at - 1);
  return out;
}

} // namespace

TEST_CASE("the next survey starts from the last, and is read once its blanks are filled") {
  for (const auto &name : {"clean-boat", "five-years-on", "thick-bottom", "long-chines"}) {
    INFO(name);
    const auto last = example(name);
    const auto skeleton = next_skeleton(last);
    INFO(skeleton);
    if (has(skeleton, "# copy readings/hull.csv of"))
      read_next(last, skeleton, bytes_of(*last.folder.on_disk() / "readings" / "hull.csv"));
    else
      read_next(last, skeleton, grid_in(skeleton));
  }
}

TEST_CASE("nothing that was measured, seen or judged is carried over but as an earlier survey") {
  const auto skeleton = next_skeleton(example("five-years-on"));
  CHECK(has(skeleton, "# The next survey after report RD 2688, issue 1."));
  CHECK_FALSE(has(skeleton, "share-percent: 0.01"));
  CHECK_FALSE(has(skeleton, "general-order: sound"));
  CHECK_FALSE(has(skeleton, "claim: The"));
  CHECK(has(skeleton, "#   ut:\n#     name: ultrasonic thickness gauge\n"));
}

TEST_CASE("what no addendum closed is carried on, under the report that it stands in") {
  auto last = example("five-years-on");
  last.survey.addenda = {{.id = "1", .closes = {{.item = "1", .outcome = survey::Closing::closed}}}};
  last.survey.carried = {{.id = "4", .from = sample::words("report CB 311, issue 1"), .item = sample::words("2"), .title = sample::words("Renew the fenders"),
                          .now = survey::Became::not_seen}};
  const auto skeleton = next_skeleton(last);
  CHECK(has(skeleton, "carried:\n  1:\n    from: report CB 311, issue 1\n    item: 2\n    title: Renew the fenders\n"));
  CHECK(has(skeleton, "  2:\n    from: report RD 2688, issue 1\n    item: 2\n    title: Look at P1 again, out of the water\n    class: B\n"));
  CHECK_FALSE(has(skeleton, "Clean P1 and the strake"));
  last.survey.addenda[0].closes.push_back({.item = "2", .outcome = survey::Closing::closed});
  last.survey.carried[0].now = survey::Became::overtaken;
  CHECK(has(next_skeleton(last), "# nothing was left open\n"));
}

TEST_CASE("a survey whose readings are not one grid prints them as one, without the marks on doublers") {
  auto last = example("overplated");
  const auto skeleton = next_skeleton(last);
  const auto grid = grid_in(skeleton);
  INFO(skeleton);
  CHECK(has(skeleton, "# save these lines, without the signs before them, as earlier/2026.csv"));
  const auto doubled = std::ranges::count_if(last.survey.marks, [](const auto &mark) { return mark.plate == survey::Plate::doubler; });
  REQUIRE(doubled > 0);
  CHECK(has(skeleton, "marks: " + std::to_string(std::ssize(last.survey.marks) - doubled)));
  CHECK(has(grid, "none-planned"));
}
