#include "strakebook/base/csv.h"

#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook::base;
using testing::places_and_codes;
using testing::source_of;

namespace {

using Found = std::vector<std::string>;

Found found_in(std::string text, char separator = ',') {
  Diagnostics sink;
  parse_csv(source_of(std::move(text), "hull.csv"), separator, sink);
  return places_and_codes(sink);
}

} // namespace

TEST_CASE("a grid is read cell by cell with the place of each") {
  const auto file =
      source_of("# noted on site\nstation m, PW ,\u00e9, PC\r\n1,5.8 5.8 5.9,,\tno-echo\n", "hull.csv");
  Diagnostics sink;
  const auto lines = parse_csv(file, ',', sink);
  REQUIRE(sink.ok());
  REQUIRE(lines.size() == 2);
  CHECK(lines[0].line == 2);
  CHECK(lines[0].cells[1].text == "PW");
  CHECK(lines[0].cells[1].column == 12);
  CHECK(lines[0].cells[3].text == "PC");
  CHECK(lines[0].cells[3].column == 19);
  CHECK(lines[1].cells[1].text == "5.8 5.8 5.9");
  CHECK(lines[1].cells[2].text.empty());
  CHECK(lines[1].cells[2].column == 15);
  CHECK(lines[1].cells[3].text == "no-echo");
  CHECK(lines[1].cells[0].text.data() ==
        file->text.data() + file->text.find("1,5.8")); // points into the file
}

TEST_CASE("each separator splits, and only that one") {
  Diagnostics sink;
  CHECK(parse_csv(source_of("a;b,c\n"), ';', sink)[0].cells[1].text == "b,c");
  CHECK(parse_csv(source_of("a\tb \t\n"), '\t', sink)[0].cells.size() == 3);
  CHECK(sink.ok());
}

TEST_CASE("a broken line is named and left out, and the rest is read") {
  const auto file = source_of("s,PW,PM\n1,5.8\n2,5.8,5.7,5.6\n\n3,\"5.8\",5.7\n4,5.8,5.7\n", "hull.csv");
  Diagnostics sink;
  const auto lines = parse_csv(file, ',', sink);
  CHECK(places_and_codes(sink) == Found{"2:1 SB0301", "3:11 SB0301", "4:1 SB0301", "5:3 SB0301"});
  CHECK(sink.all()[0].expected == "3 cells, as in line 1");
  CHECK(sink.all()[0].span.length == 5);
  REQUIRE(lines.size() == 2);
  CHECK(lines[1].line == 6);
}

TEST_CASE("a file cut short, empty, or not plain text is refused") {
  CHECK(found_in("a,b\n1,2") == Found{"2:1 SB0301"});
  CHECK(found_in("") == Found{"1:1 SB0301"});
  CHECK(found_in("\xEF\xBB\xBF"
                 "a,b\n") == Found{"1:1 SB0301"});
  CHECK(found_in("a,b\rc,d\n") == Found{"1:4 SB0301"});
  CHECK(found_in("a,b\n1,\xE9\n2,3\n") == Found{"2:3 SB0002"});
  CHECK(found_in(std::string("a,\0b\n", 5)) == Found{"1:3 SB0301"});
  CHECK(found_in("a,b\n \t\n") == Found{"2:1 SB0301"});
  CHECK(found_in("a,b\n1,2\n").empty());
}
