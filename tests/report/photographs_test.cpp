#include <catch2/catch.hpp>

#include <fstream>

#include "strakebook/report.h"
#include "support/temp_folder.h"

namespace fs = std::filesystem;
using namespace strakebook;

namespace {

/// The clean boat with these bytes for its photograph, opened.
base::Diagnostics opened_with(const std::string &bytes) {
  const support::TempFolder folder;
  fs::copy(fs::path(STRAKEBOOK_ROOT) / "example-surveys" / "clean-boat", folder.path, fs::copy_options::recursive);
  std::ofstream(folder.path / "photos" / "side.jpg", std::ios::binary) << bytes;
  base::Diagnostics sink;
  open_case(folder.path / "survey.yaml", installed_resources(), sink);
  return sink;
}

} // namespace

TEST_CASE("a photograph that does not decode is refused at its file's line") {
  const auto found = opened_with("\xFF\xD8\xFF\xE0 no more");
  REQUIRE(found.errors() == 1);
  const auto &refusal = found.all().front();
  CHECK(refusal.code == base::Code::photo_unreadable);
  CHECK(refusal.span.line == 146);
  CHECK(refusal.message.find("photos/side.jpg") != std::string::npos);
}

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
