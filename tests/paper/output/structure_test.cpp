#include <catch2/catch.hpp>

#include "paper/output/pdf_bytes.h"
#include "paper/output/sample.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/paper/output/pdf_colour.h"
#include "strakebook/paper/output/tag_tree.h"

namespace output = strakebook::output;
using namespace sample;
using Catch::Contains;
using page::Role;

namespace {

std::string written(const page::Document &document, output::PdfKind kind = output::PdfKind::report) {
  base::Diagnostics sink;
  return output::pdf(document, images(), sink, kind);
}

page::Document one_page(std::vector<page::Item> items) {
  auto only = document();
  only.outline.clear();
  only.pages = {page::Page{.size = {{200}, {100}}, .frames = {}, .items = std::move(items)}};
  return only;
}

page::Item word(page::TagPath tag, const std::string &text, double x = 20) {
  return item(std::move(tag), "text", run(sans, 8, x, 50, text));
}

std::string content_of(const page::Document &document) { return pdf_bytes::stream_with(written(document), " Tm\n"); }

} // namespace

TEST_CASE("neighbours of one element are one piece of marked content, whatever object their tag is") {
  const auto content = content_of(one_page({word(tag(Role::paragraph), "one"), word(tag(Role::paragraph), "two", 60),
                                            word(tag(Role::paragraph, 1), "three", 90)}));
  CHECK_THAT(content, Contains("/P <</MCID 0>> BDC\n") && Contains("/P <</MCID 1>> BDC\n"));
  CHECK_THAT(content, !Contains("/MCID 2>>"));
  CHECK(pdf_bytes::count(content, "EMC\n") == pdf_bytes::count(content, " BDC\n"));
}

TEST_CASE("what has no element is an artifact: of the page, or repeated from page to page") {
  const auto bytes = written(one_page({item({}, "", line(10, 10, 20, 20)), word(page::furniture(), "page 1 of 1")}));
  const auto content = pdf_bytes::stream_with(bytes, " Tm\n");
  CHECK_THAT(content, Contains("/Artifact <</Type /Layout>> BDC\n") && Contains("/Artifact <</Type /Pagination>> BDC\n"));
  CHECK_THAT(content, !Contains("MCID"));
}

TEST_CASE("an element that goes on over pages is one, and says on which page each part of it is") {
  auto over = one_page({word(tag(Role::paragraph), "begins")});
  over.pages.push_back(over.pages.front());
  const auto bytes = written(over);
  CHECK(pdf_bytes::count(bytes, "/S /P\n") == 1);
  CHECK(pdf_bytes::count(bytes, "/Type /MCR") == 1);
}

TEST_CASE("an item that draws nothing keeps the place of its element") {
  const auto row = tag(Role::table_row);
  const auto cell = [&](int key) { return page::under(row, {.role = Role::cell, .key = key}); };
  const auto bytes = written(one_page({word(cell(0), "5.8"), item(cell(1), "", page::Path{}), word(cell(2), "5.9", 60)}));
  CHECK(pdf_bytes::count(bytes, "/S /TD\n") == 3);
}

TEST_CASE("heads say what they speak for, figures and signs what is seen, notes have a name") {
  const auto bytes = written(one_page(
      {word(page::under({}, {.role = Role::head_cell, .across = 4, .heads = page::Heads::column}), "mm"),
       word(page::under({}, {.role = Role::figure, .spoken = "A plate"}), "6"), word(tag(Role::note), "Used"),
       word(page::under({}, {.role = Role::list, .numbered = true}), "1.")}));
  CHECK_THAT(bytes, Contains("/A <</O /Table /Scope /Column /ColSpan 4>>") && Contains("/Alt <4120706c617465>") &&
                        Contains("/ID (note-00000001)") && Contains("/IDTree") && Contains("/ListNumbering /Decimal"));
}

TEST_CASE("a figure says which part of its page it covers") {
  const auto figure = page::under({}, {.role = Role::figure, .spoken = "A line"});
  const auto bytes = written(one_page({item(figure, "", line(10, 20, 60, 30)), item(figure, "", line(40, 25, 90, 25)), word({}, "mm")}));
  CHECK_THAT(bytes, Contains("/BBox [10 70 90 80 ]")); // the sheet is 100 high, and y counts from its foot
}

TEST_CASE("a link is a kid of its element and says what is printed in it") {
  const auto link = page::under(tag(Role::paragraph), {.role = Role::link, .key = 1});
  const auto bytes = written(one_page({item({}, "part/1", page::Anchor{{{5}, {5}}}), word(link, "Table 4"),
                                       item(link, "", page::Link{{{{20}, {42}}, {{30}, {10}}}, "part/1", "Table 4"})}));
  CHECK_THAT(bytes, Contains("/Type /OBJR") && Contains("/Contents <5461626C652034>") && Contains("/StructParent 1\n"));
}

TEST_CASE("more kids than a reader's arrays hold become several elements of one kind") {
  std::vector<page::Item> rows;
  const auto body = page::under(tag(Role::table), {.role = Role::table_body});
  for (int i = 0; i < 9'000; ++i)
    rows.push_back(item(page::under(body, {.role = Role::table_row, .key = i}), "", page::Path{}));
  const auto bytes = written(one_page(rows));
  CHECK(pdf_bytes::count(bytes, "/S /TR\n") == 9'000);
  CHECK(pdf_bytes::count(bytes, "/S /TBody\n") == 3);
  CHECK(pdf_bytes::count(bytes, "/S /Table\n") == 1);
}

TEST_CASE("words of one element that stand apart are kept apart by a blank, unless a word goes on") {
  const auto shown = [](const std::string &first, const std::string &second) {
    auto below = word(tag(Role::paragraph), second);
    std::get<page::Run>(below.what).origin.y = {62};
    return pdf_bytes::count(content_of(one_page({word(tag(Role::paragraph), first), below})), "]TJ\n");
  };
  CHECK(shown("one", "two") == 3);
  CHECK(shown("one ", "two") == 2);
  CHECK(shown("thick-", "ness") == 2);
  CHECK(shown("5.5\xE2\x80\x93", "12.5") == 2);
  CHECK(shown("plate \xE2\x80\x93", "and") == 3);
}

TEST_CASE("furniture is no element: a link in it is a mistake of the program") {
  const auto bad = one_page({item({}, "part/1", page::Anchor{{{5}, {5}}}),
                             item(page::furniture(), "", page::Link{{{{20}, {42}}, {{30}, {10}}}, "part/1"})});
  CHECK_THROWS_WITH(written(bad), Contains("furniture"));
}

TEST_CASE("whatever stands inside furniture is furniture, and a path reads from the outside in") {
  CHECK(page::under(page::furniture(), {.role = Role::cell}) == page::furniture());
  CHECK(page::text_of(page::under(tag(Role::section, 3), {.role = Role::table_row, .key = 5})) == "section.3/row.5");
  CHECK(page::text_of({}) == "-");
  CHECK(page::name_of(Role::furniture) == "furniture");
}

TEST_CASE("the file says that it is tagged, in which order, and how its pages are called") {
  const auto bytes = written(document());
  CHECK_THAT(bytes, Contains("/Marked true") && Contains("/Tabs /S") && Contains("/PageLabels") &&
                        Contains("/StructParents 1\n") && Contains("/ParentTree") && Contains("/OutputIntents"));
  CHECK_THAT(bytes, !Contains("pdfaid:part"));
}

TEST_CASE("the archival kind keeps to PDF 1.4") {
  const auto bytes = written(document(), output::PdfKind::archival);
  CHECK(bytes.starts_with("%PDF-1.4\n"));
  CHECK_THAT(bytes, Contains("/CIDSet") && Contains("<pdfaid:part>1</pdfaid:part>") && !Contains("/Tabs"));
}

TEST_CASE("the colour profile is sRGB: 0.5 of the device is 0.2140 of the light") { // IEC 61966-2-1, its formula at 0.5
  const auto profile = output::srgb_profile();
  const auto number = [&](std::size_t at) {
    return static_cast<unsigned char>(profile[at]) << 8 | static_cast<unsigned char>(profile[at + 1]);
  };
  REQUIRE(number(2) == static_cast<int>(profile.size()));
  const auto curve = profile.find("curv") + 12;
  CHECK((number(curve + 2 * 511) + number(curve + 2 * 512)) / 2.0 / 65535 == Approx(0.2140).margin(0.0001));
  CHECK(number(curve) == 0);
  CHECK(number(curve + 2 * 1023) == 65535);
}
