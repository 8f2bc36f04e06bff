#include "strakebook/base/csv_text.h"

#include <catch2/catch.hpp>

#include <array>

using namespace strakebook::base;

namespace {

std::string line(std::initializer_list<CsvText> cells) { return csv_line(std::vector<CsvText>(cells)); }

} // namespace

// RFC 4180, sections 2.5 to 2.7
TEST_CASE("a cell with a comma, a quote or a line end stands in quotes, its quotes doubled, and lines end with CRLF") {
  CHECK(line({{"S1"}, {"insert"}}) == "S1,insert\r\n");
  CHECK(line({{"S1, port"}, {"3\" plate"}, {"a\nb"}, {""}}) == "\"S1, port\",\"3\"\" plate\",\"a\nb\",\r\n");
}

// What spreadsheets take for a formula: OWASP, CSV injection
TEST_CASE("a text that a spreadsheet would take for a formula is guarded") {
  for (const std::string hostile : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "=HYPERLINK(\"http://x\",\"y\")"}) {
    INFO(hostile);
    CHECK(guarded(hostile) == "'" + hostile);
  }
  CHECK(line({{"=cmd|' /C calc'!A0"}, {"=1,2"}}) == "'=cmd|' /C calc'!A0,\"'=1,2\"\r\n");
  CHECK(guarded("S1 = 2") == "S1 = 2");
  CHECK(guarded("") == "");
}

TEST_CASE("a figure of ours is not guarded, so that a negative one stays a number") {
  CHECK(line({{"-12.5", true}, {"-12.5"}}) == "-12.5,'-12.5\r\n");
}
