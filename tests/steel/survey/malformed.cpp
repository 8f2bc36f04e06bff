#include <algorithm>
#include <set>

#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/base/files.h"

using namespace strakebook;
using namespace strakebook::survey::testing;

namespace {

/// What a file says it should give: remarks at its end, "# expect: 3:33 SB0201", or "# expect:
/// readings/hull.csv:3:5 SB0304".
std::vector<std::string> expectations(const std::filesystem::path &file) {
  constexpr std::string_view mark = "# expect: ";
  std::vector<std::string> out;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);)
    if (line.starts_with(mark))
      out.push_back(line.substr(mark.size()));
  std::sort(out.begin(), out.end());
  return out;
}

std::vector<std::string> places_and_codes(const base::Diagnostics &found, const std::filesystem::path &file) {
  std::vector<std::string> out;
  for (const auto &d : found.all()) {
    REQUIRE(d.span.file);
    const auto in = std::filesystem::path(d.span.file->path);
    const auto where = in == file ? "" : in.lexically_relative(file.parent_path()).string() + ":";
    out.push_back(fmt::format("{}{}:{} {}", where, d.span.line, d.span.column, base::number_of(d.code)));
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::vector<std::filesystem::path> bad_files() {
  std::vector<std::filesystem::path> files;
  for (const auto &entry : std::filesystem::directory_iterator(here / "bad"))
    if (entry.path().extension() == ".yaml")
      files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

} // namespace

TEST_CASE("every malformed survey gives the diagnostics written in it, and no other") {
  const auto files = bad_files();
  CHECK(files.size() >= 30);
  for (const auto &file : files) {
    const auto one = run(file);
    INFO(file.filename().string() << "\n" << base::terminal_text(one.found));
    CHECK(places_and_codes(one.found, file) == expectations(file));
    for (const auto &d : one.found.all())
      CHECK_FALSE(d.message.empty());
  }
}

TEST_CASE("every code of the reader and of the checks stands in a malformed survey") {
  std::set<std::string> seen;
  for (const auto &file : bad_files())
    for (const auto &line : expectations(file))
      seen.insert(line.substr(line.rfind(' ') + 1));
  using base::Code;
  for (const auto code : {Code::file_unreadable,     Code::path_escapes,
                          Code::yaml_duplicate_key,  Code::yaml_forbidden,
                          Code::unknown_key,         Code::missing_key,
                          Code::wrong_kind,          Code::empty_value,
                          Code::unknown_word,        Code::bad_number,
                          Code::bad_length,          Code::bad_date,
                          Code::out_of_range,        Code::bad_version,
                          Code::csv_syntax,          Code::csv_header,
                          Code::csv_count,           Code::csv_reading,
                          Code::duplicate_mark,      Code::dangling_reference,
                          Code::pit_one_figure,      Code::pit_not_closed,
                          Code::reading_implausible, Code::doubler_on_doubler,
                          Code::photo_unused,        Code::reading_over_original,
                          Code::neighbour_jump,      Code::unequal_repeats,
                          Code::pit_count,           Code::pits_unmeasured,
                          Code::pit_blocks_count,    Code::pit_blocks_area,
                          Code::pit_blocks_deep,
                          Code::layout_loosens,      Code::doubt_unclear,
                          Code::velocity_unclear,    Code::coating_unused,
                          Code::doubler_figures,     Code::digits_swapped,
                          Code::mirror_differs,      Code::readings_repeated,
                          Code::row_shifted,         Code::pit_swapped,
                          Code::other_unit}) {
    INFO(base::number_of(code) << " " << base::description_of(code));
    CHECK(seen.contains(std::string(base::number_of(code))));
  }
}

// A pit noted as one figure: as a depth it leaves 1.3, as a remainder 3.3, and the file has to say which.
TEST_CASE("the refusal of a pit with one figure, as the surveyor sees it") {
  Folder folder;
  const auto file = folder.write("survey.yaml", small_survey(inline_readings("{PW: {5: 4.6 4.6 4.7}}", 1),
                                                             "pits:\n  P1: {at: PW 5, pit: 3.3}\n"));
  auto text = base::terminal_text(run(file).found);
  text.erase(0, file.parent_path().string().size() + 1);
  CHECK(
      text ==
      R"(survey.yaml:14:23: error SB0402: pit P1 at PW 5: adjacent and depth are missing, and 3.3 alone means two things: as a depth it leaves 1.3 of the 4.6 read at PW 5; as a remainder it leaves 3.3
  14 |   P1: {at: PW 5, pit: 3.3}
     |                       ^^^
  expected: two figures: adjacent, the thickness of the plate beside it, and depth, below that surface
  write: P1: {at: PW 5, adjacent: ..., depth: ...}; the depth is 3.3, or adjacent less 3.3 if that is what is left

1 error
)");
}

TEST_CASE("missing required keys are reported in the order of the report") {
  Folder folder;
  const auto one = run(folder.write("survey.yaml", "strakebook: 1\n"));
  std::vector<std::string> messages;
  for (const auto &d : one.found.all())
    messages.push_back(d.message);
  CHECK(messages == std::vector<std::string>{"house is missing", "report is missing", "vessel is missing",
                                             "datum is missing", "zones is missing", "rows is missing",
                                             "readings is missing"});
}

TEST_CASE("the layout is named even where other things are wrong, and its absence is said once") {
  Folder folder;
  base::Diagnostics found;
  const auto named = survey::house_named(folder.write("survey.yaml", "house: river\nhouse: sea\n"), found);
  REQUIRE(named);
  CHECK(named->value == "river");
  CHECK(found.ok()); // the second house is reported when the survey is read
  CHECK_FALSE(survey::house_named(folder.write("none.yaml", "strakebook: 1\n"), found));
  REQUIRE(found.all().size() == 1);
  CHECK(found.all().front().code == base::Code::missing_key);
  CHECK_FALSE(survey::house_named(folder.write("broken.yaml", "house: [\n"), found));
  CHECK(found.errors() > 1);
}
