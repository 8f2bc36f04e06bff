#include "strakebook/report/kept.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <set>
#include <sstream>

#include "report/examples_support.h"
#include "strakebook/base/digest.h"
#include "strakebook/report/opening.h"
#include "support/temp_folder.h"

using namespace strakebook;
namespace fs = std::filesystem;

namespace {

fs::path example(const std::string &name) { return fs::path(STRAKEBOOK_ROOT) / "example-surveys" / name; }

Case opened_at(const fs::path &file) {
  base::Diagnostics sink;
  auto found = open_case(file, installed_resources(), sink);
  INFO(base::terminal_text(sink));
  REQUIRE(found);
  REQUIRE(sink.ok());
  return std::move(*found);
}

Case opened_kept(const base::FileSet &files) {
  base::Diagnostics sink;
  auto found = open_kept(files, {}, sink);
  INFO(base::terminal_text(sink));
  REQUIRE(found);
  REQUIRE(sink.ok());
  return std::move(*found);
}

MadeReport made(const base::FileSet &files) {
  base::Diagnostics sink;
  auto report = make_report(files, installed_resources(), sink);
  INFO(base::terminal_text(sink));
  REQUIRE(report);
  return std::move(*report);
}

page::Document pages_of(const Case &the_case) {
  base::Diagnostics sink;
  return set_pages(the_case, installed_resources(), sink).value().pages;
}

std::string text_of(const page::Document &document) {
  std::string text;
  for (const auto &page : document.pages)
    for (const auto &item : page.items)
      if (const auto *run = std::get_if<page::Run>(&item.what)) text += run->text + '\n';
  return text;
}

std::string whole(const fs::path &file) {
  std::ostringstream out;
  out << std::ifstream(file, std::ios::binary).rdbuf();
  return out.str();
}

void replace_in(const fs::path &file, const std::string &was, const std::string &now) {
  auto text = whole(file);
  const auto at = text.find(was);
  REQUIRE(at != text.npos);
  std::ofstream(file, std::ios::binary) << text.replace(at, was.size(), now);
}

} // namespace

TEST_CASE("what is kept of every example makes the same report again, to the byte") {
  for (const auto &name : examples::names()) {
    INFO(name);
    const auto live = opened_at(example(name) / "survey.yaml");
    base::Diagnostics sink;
    REQUIRE(can_be_kept(live, sink));
    const auto files = kept_inputs(live);
    const auto again = opened_kept(files);
    CHECK(kept_inputs(again) == files);
    CHECK(again.photos.size() == live.photos.size());
    for (const auto &[digest, image] : live.images) CHECK(again.images.at(digest).data == image.data);
    const auto first = made(files);
    CHECK(made(kept_inputs(again)).pdf == first.pdf);
    CHECK(first.manifest == issue::text_of(issue::manifest_of(files, live.survey.report.number.text, live.survey.report.issue, 0, makers())));
  }
}

TEST_CASE("the pages of what is kept are the pages of the survey, but for the digests of files as they are kept") {
  for (const auto &name : examples::names()) {
    INFO(name);
    auto live = opened_at(example(name) / "survey.yaml");
    const auto again = opened_kept(kept_inputs(live));
    REQUIRE(again.inputs.size() == live.inputs.size());
    for (std::size_t i = 0; i < live.inputs.size(); ++i) {
      auto &was = live.inputs[i];
      const auto &is = again.inputs[i];
      CHECK((is.kind == was.kind && is.path == was.path && is.lines == was.lines && is.marks == was.marks));
      if (is.kind == "photograph") CHECK((is.digest == was.digest && is.bytes == was.bytes));
      was = is;
    }
    CHECK(page::dump(pages_of(again)) == page::dump(pages_of(live)));
  }
}

TEST_CASE("the report tells the digest of each file that is kept with it") {
  const auto files = kept_inputs(opened_at(example("clean-boat") / "survey.yaml"));
  const auto again = opened_kept(files);
  const auto text = text_of(pages_of(again));
  int count = 0;
  for (const auto &input : again.inputs) {
    if (input.kind == "photograph") continue;
    const auto installed = input.path.substr(std::string("layouts/").size());
    const auto &bytes = files.contains(input.path) ? files.at(input.path) : files.at("installed/" + installed);
    CHECK(input.digest == base::sha256_hex(bytes));
    CHECK(input.bytes == bytes.size());
    for (std::size_t i = 0; i < input.digest.size(); i += 4) CHECK(text.find(input.digest.substr(i, 4)) != text.npos);
    ++count;
  }
  CHECK(count > 10);
}

TEST_CASE("remarks, private notes and metadata of photographs are not kept, and change nothing") {
  const support::TempFolder folder;
  fs::copy(example("clean-boat"), folder.path, fs::copy_options::recursive);
  const auto survey = folder.path / "survey.yaml";
  const auto plain = kept_inputs(opened_at(survey));
  std::ofstream(survey, std::ios::app) << "# planted remark\nprivate:\n  planted note: the owner's planted words\n";
  for (const auto &entry : fs::recursive_directory_iterator(folder.path / "readings")) {
    const auto text = whole(entry.path());
    std::ofstream(entry.path(), std::ios::binary) << "# planted line\r\n" << text << "# planted end\n";
  }
  const auto photo = folder.path / "photos" / "side.jpg";
  std::ofstream(photo, std::ios::binary | std::ios::app) << "planted behind the end of the picture";
  const auto with = kept_inputs(opened_at(survey));
  for (const auto &[path, bytes] : with) {
    INFO(path);
    CHECK(bytes.find("planted") == bytes.npos);
    CHECK(bytes.find("Exif") == bytes.npos);
    if (path != "photographs.yaml") CHECK(plain.at(path) == bytes);
  }
  CHECK(with.size() == plain.size());
}

TEST_CASE("a layout beside the survey is kept without remarks") {
  const support::TempFolder folder;
  fs::copy(example("clean-boat"), folder.path, fs::copy_options::recursive);
  replace_in(folder.path / "survey.yaml", "house: river-desk", "house: ours");
  folder.write("layouts/ours.yaml", "# planted\nlayout: 1\nextends: base\nfirm: Another desk # planted\nissue: {inputs: beside}\n");
  const auto live = opened_at(folder.path / "survey.yaml");
  const auto files = kept_inputs(live);
  CHECK(files.at("layouts/ours.yaml") == "layout: 1\nextends: base\nfirm: Another desk\nissue:\n  inputs: beside\n");
  const auto again = opened_kept(files);
  CHECK(again.house.wording.firm == "Another desk");
  CHECK(again.house.issue.inputs_beside);
  CHECK(kept_inputs(again) == files);
}

TEST_CASE("another report stands in another file; a file that is missing or altered is told") {
  const auto files = kept_inputs(opened_at(example("clean-boat") / "survey.yaml"));
  const auto first = made(files);
  for (const auto &[path, bytes] : files) {
    INFO(path);
    auto without = files;
    without.erase(path);
    base::Diagnostics sink;
    const auto report = make_report(without, installed_resources(), sink);
    CHECK((!report || report->pdf != first.pdf));
    if (!report) CHECK_FALSE(sink.ok());
  }
}

TEST_CASE("a survey that names a file as kept inputs name theirs is refused at that place") {
  const support::TempFolder folder;
  fs::copy(example("clean-boat"), folder.path, fs::copy_options::recursive);
  fs::create_directories(folder.path / "before");
  fs::rename(folder.path / "photos" / "side.jpg", folder.path / "before" / "side.jpg");
  replace_in(folder.path / "survey.yaml", "photos/side.jpg", "before/side.jpg");
  const auto live = opened_at(folder.path / "survey.yaml");
  base::Diagnostics sink;
  CHECK_FALSE(can_be_kept(live, sink));
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all().front().code == base::Code::issuing_failed);
  CHECK(sink.all().front().span.line > 0);
  CHECK_THROWS_AS(kept_inputs(live), std::logic_error);
}

TEST_CASE("the issue before and the list of issues are kept with the one that replaces it") {
  const auto survey = example("clean-boat") / "survey.yaml";
  const auto before = std::make_shared<const Case>(opened_at(survey));
  const amend::PastIssue first{.issue = 1, .date = base::Date{2026, 10, 21}, .digest = std::string(64, 'a'), .recipients = {{{"the buyer, \"A\"\nand more", {}}, {"by letter", {}}, {}}, {{"the yard", {}}, {}, {}}}};
  base::Diagnostics sink;
  const auto now = opened(survey, installed_resources(), {.history = [&](const auto &, auto &) { return History{{first}, before}; }}, sink);
  REQUIRE(now);
  REQUIRE(now->amended);
  CHECK(now->amended->replaces.digest == first.digest);
  const auto files = kept_inputs(*now);
  CHECK(files.at("before/survey.yaml") == files.at("survey.yaml"));
  base::Diagnostics found; // it says nothing of what went wrong, and review may ask
  const auto read = open_kept(files, "3fa9 12c4 77b0", found);
  REQUIRE(read);
  const auto &again = *read;
  CHECK(again.issued_digest == "3fa9 12c4 77b0");
  REQUIRE(again.before);
  CHECK(again.before->survey.report.number.text == before->survey.report.number.text);
  REQUIRE(again.past.size() == 1);
  CHECK(again.past[0].date == first.date);
  REQUIRE(again.past[0].recipients.size() == 2);
  CHECK(again.past[0].recipients[0].who.text == "the buyer, \"A\"\nand more");
  CHECK(again.past[0].recipients[1].how.text.empty());
  CHECK(again.amended);
  CHECK(kept_inputs(again) == files);
  const auto manifest = issue::manifest_of(files, "RD 1", 2, 0, makers());
  const auto lying = issue::laid_down(files, manifest);
  CHECK(lying.size() < files.size() / 2 + 5); // the same files are not laid down twice
  CHECK(issue::taken_up(manifest, lying) == files);
}

TEST_CASE("lists that are kept are read to the byte or not at all") {
  auto files = kept_inputs(opened_at(example("clean-boat") / "survey.yaml"));
  for (const std::string name : {"photographs.yaml", "past.yaml"}) {
    auto altered = files;
    altered[name] += "# a remark\n";
    base::Diagnostics sink;
    CHECK_FALSE(open_kept(altered, {}, sink));
    REQUIRE_FALSE(sink.all().empty());
    CHECK(sink.all().front().code == base::Code::not_a_report);
  }
}

TEST_CASE("the program says what its PDFs depend on") {
  const auto by = makers();
  CHECK(by.tool.starts_with(tool_name() + " of sources "));
  CHECK(by.tool.size() == tool_name().size() + std::string(" of sources ").size() + 64);
  std::set<std::string> names;
  for (const auto &library : by.libraries) names.insert(library.substr(0, library.find(' ')));
  CHECK(names.size() == by.libraries.size());
  for (const char *name : {"harfbuzz", "libharu", "zlib", "libpng", "yaml-cpp", "compiler", "boost", "glibc"}) CHECK(names.contains(name));
}
