#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "strakebook/report.h"
#include "support/temp_folder.h"

namespace fs = std::filesystem;
using namespace strakebook;

namespace {

const fs::path example = fs::path(STRAKEBOOK_ROOT) / "example-surveys" / "clean-boat";

std::string text_of(const fs::path &file) {
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

/// The example with one of its words put in another's place.
base::Diagnostics set_with(const std::string &was, const std::string &now) {
  const support::TempFolder folder;
  fs::copy(example, folder.path, fs::copy_options::recursive);
  std::string text = text_of(example / "survey.yaml");
  REQUIRE(text.find(was) != std::string::npos);
  const auto file = folder.write("survey.yaml", text.replace(text.find(was), was.size(), now));
  base::Diagnostics sink;
  const auto opened = open_case(file, installed_resources(), sink);
  REQUIRE(opened);
  REQUIRE(sink.ok());
  CHECK_FALSE(set_pages(*opened, installed_resources(), sink));
  return sink;
}

int line_of(const std::string &part) {
  const std::string text = text_of(example / "survey.yaml");
  return static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(text.find(part)), '\n')) + 1;
}

} // namespace

TEST_CASE("a character that no face has is refused where it is written, to the column") {
  const auto sink = set_with("dry, 14 degrees", "dry \u4E2D, 14 degrees");
  REQUIRE(sink.all().size() == 1);
  const auto &found = sink.all()[0];
  CHECK(found.code == base::Code::glyph_missing);
  CHECK(found.message.find("U+4E2D") != std::string::npos);
  CHECK(found.span.line == line_of("dry, 14 degrees"));
  CHECK(found.span.column == 16); // two blanks, "weather: ", "dry "
}

TEST_CASE("in a block text it is found on its own line") {
  const auto sink = set_with("No limit is near anywhere.", "No limit is \u4E2D near.");
  REQUIRE(sink.all().size() == 1);
  CHECK(sink.all()[0].span.line == line_of("No limit is near anywhere."));
}
