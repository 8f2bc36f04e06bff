#include <catch2/catch.hpp>

#include "paper/output/pdf_bytes.h"
#include "paper/output/sample.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/paper/output/pdf_navigation.h"

namespace output = strakebook::output;
using namespace sample;
using Catch::Contains;

namespace {

std::string written(const page::Document &document) {
  base::Diagnostics sink;
  return output::pdf(document, images(), sink);
}

} // namespace

TEST_CASE("a link covers its box and leads to the place of its anchor") {
  const auto bytes = written(document());
  CHECK(pdf_bytes::count(bytes, "/Subtype /Link") == 2);
  CHECK_THAT(
      bytes,
      Contains("/Rect [ 68 711.89001 128 723.89001 ]")); // 841.89 - 130 and - 118, as 32-bit numbers print
  CHECK_THAT(bytes, Contains("/XYZ 60 515.28003 null"));
}

TEST_CASE("a link or bookmark to nowhere is a mistake of the program") {
  auto lost = document();
  lost.pages[1].items.push_back(
      item(tag(page::Role::link), "link/9", page::Link{{{{10}, {10}}, {{5}, {5}}}, "part/9"}));
  CHECK_THROWS_WITH(written(lost), Contains("part/9"));
  lost = document();
  lost.outline[1].target = "part/8";
  CHECK_THROWS_WITH(written(lost), Contains("part/8"));
}

TEST_CASE("bookmarks form a tree with the outermost seen") {
  const auto bytes = written(document());
  CHECK(pdf_bytes::count(bytes, "/Parent ") == 2 + 3); // two pages, three bookmarks
  CHECK(pdf_bytes::count(bytes, "/Next") == 1);
  CHECK(pdf_bytes::count(bytes, "/Prev") == 1);
  CHECK_THAT(bytes, Contains("/Count 2\n") && Contains("/Count -1\n") && Contains("/PageMode /UseOutlines"));
  CHECK_THAT(bytes, Contains("<FEFF004D006100700020201300200073")); // "Map – s", not ASCII
}

TEST_CASE("an outline may not skip a level") {
  auto skipping = document();
  skipping.outline[1].level = 3;
  CHECK_THROWS_WITH(written(skipping), Contains("skips a level"));
  skipping.outline[1].level = 0;
  CHECK_THROWS_AS(written(skipping), std::logic_error);
}

TEST_CASE("where an anchor comes twice, the first counts") {
  auto twice = document();
  twice.pages[1].items.push_back(item(tag(page::Role::heading), "part/1", page::Anchor{{{5}, {5}}}));
  CHECK(output::places_of(twice).at("part/1").page == 0);
}

TEST_CASE("named destinations are sorted and split into leaves") {
  auto many = document();
  for (int i = 999; i >= 300; --i)
    many.pages[0].items.push_back(
        item(tag(page::Role::cell), "mark/" + std::to_string(i), page::Anchor{{{9}, {9}}}));
  const auto bytes = written(many);
  CHECK(pdf_bytes::count(bytes, "/Limits [ <") == 3);                             // 702 names in leaves of 256
  CHECK(bytes.find("<6D61726B2F333030>") < bytes.find("<6D61726B2F333031>")); // mark/300 before mark/301
}

TEST_CASE("metadata stand in both places, and the only date is the report's") {
  const auto bytes = written(document());
  CHECK_THAT(bytes, Contains("/CreationDate <443A32303236313032313030303030305A>")); // D:20261021000000Z
  CHECK_THAT(bytes, Contains("<xmp:CreateDate>2026-10-21T00:00:00Z</xmp:CreateDate>"));
  CHECK_THAT(bytes, Contains("Hull &lt;plate&gt; &amp; \xC2\xBD"));
  CHECK_THAT(bytes, Contains("/DisplayDocTitle true") && Contains("/Lang <656E2D4742>"));

  auto undated = document();
  undated.metadata.date.clear();
  CHECK_THAT(written(undated), !Contains("CreationDate") && !Contains("CreateDate") && !Contains("ModDate"));
  undated.metadata.date = "21.10.2026";
  CHECK_THROWS_AS(written(undated), std::logic_error);
}
