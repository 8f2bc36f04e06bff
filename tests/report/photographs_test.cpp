#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>

#include "strakebook/report.h"

namespace fs = std::filesystem;
using namespace strakebook;

TEST_CASE("a photograph that is not in the folder is a warning and leaves a placeholder") {
  const fs::path folder = fs::temp_directory_path() / "strakebook-report-test";
  fs::remove_all(folder);
  fs::copy(fs::path(STRAKEBOOK_ROOT) / "example-surveys" / "clean-boat", folder, fs::copy_options::recursive);
  fs::remove(folder / "photos" / "side.jpg");
  base::Diagnostics sink;
  const auto opened = open_case(folder / "survey.yaml", installed_resources(), sink);
  REQUIRE(opened);
  CHECK(opened->photos.empty());
  REQUIRE_FALSE(sink.all().empty());
  CHECK(sink.all().front().code == base::Code::photo_missing);
  CHECK(sink.all().front().severity == base::Severity::warning);
  fs::remove_all(folder);
}
