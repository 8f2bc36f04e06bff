#include "strakebook/report/kept.h"

#include <catch2/catch.hpp>

#include "support/temp_folder.h"

using namespace strakebook;
namespace fs = std::filesystem;

namespace {

/// What is kept of the clean boat, under a house that attaches inputs or lays them beside.
base::FileSet kept(bool beside) {
  const support::TempFolder folder;
  fs::copy(fs::path(STRAKEBOOK_ROOT) / "example-surveys" / "clean-boat", folder.path, fs::copy_options::recursive);
  if (beside) folder.write("layouts/river-desk.yaml", "layout: 1\nextends: base\nissue: {inputs: beside}\n");
  base::Diagnostics sink;
  const auto found = open_case(folder.path / "survey.yaml", installed_resources(), sink);
  REQUIRE(found);
  REQUIRE(sink.ok());
  return kept_inputs(*found);
}

MadeReport made(const base::FileSet &files) {
  base::Diagnostics sink;
  auto report = make_report(files, installed_resources(), sink);
  REQUIRE(report);
  return std::move(*report);
}

void check_refused(const fs::path &pdf, const std::string &why) {
  base::Diagnostics sink;
  CHECK_FALSE(inputs_of_document(pdf, sink));
  REQUIRE(sink.all().size() == 1);
  CHECK(sink.all().front().code == base::Code::not_a_report);
  CHECK_THAT(sink.all().front().message, Catch::Contains(why));
}

} // namespace

TEST_CASE("the inputs of a PDF are those that it was made from") {
  const auto files = kept(false);
  const support::TempFolder folder;
  base::Diagnostics sink;
  CHECK(inputs_of_document(folder.write("report.pdf", made(files).pdf), sink) == files);
  CHECK(sink.all().empty());
}

TEST_CASE("inputs that lie beside a PDF are found there, if they are as its list says") {
  const auto files = kept(true);
  const auto report = made(files);
  const support::TempFolder folder;
  const auto pdf = folder.write("report.pdf", report.pdf);
  check_refused(pdf, "not all the inputs");
  for (const auto &[path, bytes] : issue::laid_down(files, issue::read_manifest(report.manifest).value())) folder.write("inputs/" + path, bytes);
  base::Diagnostics sink;
  CHECK(inputs_of_document(pdf, sink) == files);
  CHECK(sink.all().empty());
  folder.write("inputs/readings/hull.csv", "altered");
  check_refused(pdf, "not all the inputs");
}

TEST_CASE("a PDF that is none, or has no list of inputs, has none") {
  const support::TempFolder folder;
  check_refused(folder.write("text.pdf", "no PDF"), "no PDF that can be read");
  base::Diagnostics sink;
  const auto found = open_case(fs::path(STRAKEBOOK_ROOT) / "example-surveys" / "clean-boat" / "survey.yaml", installed_resources(), sink);
  REQUIRE(found);
  const auto pages = set_pages(*found, installed_resources(), sink);
  REQUIRE(pages);
  check_refused(folder.write("typeset.pdf", pdf_of(pages->pages, *found, sink)), "no list of kept inputs");
}
