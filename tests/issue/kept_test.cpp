#include "strakebook/issue/kept.h"

#include <catch2/catch.hpp>

#include "strakebook/base/digest.h"

using namespace strakebook;
using namespace strakebook::issue;

namespace {

base::FileSet files() {
  return {{"before/survey.yaml", "name: one\n"}, {"before/readings/hull.csv", "s,PW\n"}, {"readings/hull.csv", "s,PW\n"}, {"survey.yaml", "name: two\n"}, {"empty", ""}};
}

Manifest manifest() { return manifest_of(files(), "RD 2644", 2, 0, {"strakebook 0.1.0 of sources 12", {"harfbuzz 6.0.0", "zlib 1.2.13"}}); }

bool equal(const Manifest &a, const Manifest &b) {
  return a.report == b.report && a.issue == b.issue && a.addendum == b.addendum && a.makers == b.makers && a.files == b.files;
}

} // namespace

TEST_CASE("the manifest is plain text, a file a line") {
  // SHA-256 of nothing: FIPS 180-4, as every table of it has it
  const auto text = text_of(manifest());
  CHECK(text.starts_with("strakebook kept inputs 1\nreport: RD 2644\nissue: 2\ntool: strakebook 0.1.0 of sources 12\nlibrary: harfbuzz 6.0.0\nlibrary: zlib 1.2.13\nfile: "));
  CHECK(text.find("\nfile: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855 0 empty\n") != text.npos);
  CHECK(text.find(" 10 survey.yaml\n") != text.npos);
}

TEST_CASE("a manifest is read back as it was, whatever names hold") {
  for (const std::string name : {"RD 2644", "a\nfile: b", "back\\slash", "\\n", "tab\t", " blank ", "caf\u00e9", "\x01", "\\x01"}) {
    INFO(name);
    auto with = files();
    with["photos/" + name] = "x";
    const auto made = manifest_of(with, name, 3, 1, {name, {name, name}});
    const auto again = read_manifest(text_of(made));
    REQUIRE(again);
    CHECK(equal(*again, made));
  }
}

TEST_CASE("what is not a manifest to the byte is none") {
  const auto text = text_of(manifest());
  CHECK(read_manifest(text));
  CHECK_FALSE(read_manifest(""));
  CHECK_FALSE(read_manifest(text + "x"));
  CHECK_FALSE(read_manifest(text + "\n"));
  CHECK_FALSE(read_manifest(" " + text));
  for (std::size_t cut = 1; cut < text.size(); ++cut)
    if (text[cut - 1] != '\n') CHECK_FALSE(read_manifest(text.substr(0, cut)));
  auto spaced = text;
  spaced.replace(text.find("issue: 2"), 8, "issue: 02");
  CHECK_FALSE(read_manifest(spaced));
}

TEST_CASE("a file that is kept twice lies there once, and is found for both") {
  const auto list = manifest();
  const auto lying = laid_down(files(), list);
  CHECK(lying.size() == files().size()); // one less, and the manifest
  CHECK(lying.contains("before/readings/hull.csv"));
  CHECK_FALSE(lying.contains("readings/hull.csv"));
  CHECK(lying.at("manifest.txt") == text_of(list));
  CHECK(taken_up(list, lying) == files());
}

TEST_CASE("a file that was altered is not taken up") {
  auto lying = laid_down(files(), manifest());
  lying["survey.yaml"][0] = 'N';
  auto without = files();
  without.erase("survey.yaml");
  CHECK(taken_up(manifest(), lying) == without);
}

TEST_CASE("the short digest is twelve digits in fours") {
  CHECK(short_digest(base::sha256_hex("")) == "e3b0 c442 98fc");
}
