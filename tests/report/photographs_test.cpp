#include <catch2/catch.hpp>

#include "strakebook/report.h"
#include "support/temp_folder.h"

namespace fs = std::filesystem;
using namespace strakebook;

TEST_CASE("a photograph that is not in the folder is a warning and leaves a placeholder") {
  const support::TempFolder folder;
  fs::copy(fs::path(STRAKEBOOK_ROOT) / "example-surveys" / "clean-boat", folder.path, fs::copy_options::recursive);
  fs::remove(folder.path / "photos" / "side.jpg");
  base::Diagnostics sink;
  const auto opened = open_case(folder.path / "survey.yaml", installed_resources(), sink);
  REQUIRE(opened);
  CHECK(opened->photos.empty());
  REQUIRE_FALSE(sink.all().empty());
  CHECK(sink.all().front().code == base::Code::photo_missing);
  CHECK(sink.all().front().severity == base::Severity::warning);
}
