#include "strakebook/base/text.h"

#include <catch2/catch.hpp>

#include "strakebook/base/digest.h"
#include "strakebook/base/source.h"

using namespace strakebook::base;

TEST_CASE("only well-formed UTF-8 passes") {
  CHECK_FALSE(first_invalid_utf8("plate \u00e9 \u20ac \U0001F6A2"));
  struct Case {
    std::string bytes;
    std::size_t at;
  };
  const Case cases[] = {{"ab\xFF", 2},           {"\xC0\xAF", 0}, {"a\xE0\x80\x80", 1}, {"\xED\xA0\x80", 0},
                        {"\xF4\x90\x80\x80", 0}, {"caf\xE9", 3},  {"\xE2\x82", 0},      {"\x80", 0},
                        {"\xF0\x8F\xBF\xBF", 0}};
  for (const Case &c : cases)
    CHECK(first_invalid_utf8(c.bytes) == c.at);
  CHECK(code_points("\u00e9a") == U"\u00e9a");
  CHECK(code_points("a\xFF"
                    "b") == U"a\uFFFDb");
  for (const char32_t c : {U'a', U'\u00e9', U'\u20ac', U'\U0001F6A2'})
    CHECK(code_points(utf8(c)) == std::u32string(1, c));
  CHECK_THROWS_AS(utf8(0xD800), std::invalid_argument);
  CHECK(code_point_count("\u20aca") == 2);
}

TEST_CASE("text is trimmed, split and joined at blanks") {
  CHECK(trimmed(" \ta b\t ") == "a b");
  CHECK(trimmed(" \t").empty());
  CHECK(words("  PW 9\r\n PM\t") == std::vector<std::string_view>{"PW", "9", "PM"});
  CHECK(words(" ").empty());
  const std::vector<std::string> parts{"a", "b", "c"};
  CHECK(joined(parts, ", ") == "a, b, c");
  CHECK(joined({}, ", ").empty());
}

TEST_CASE("patterns are filled by name, once, and a hole is an error") {
  const std::vector<Fill> values{{"n", "17"}, {"of", "{n}"}};
  CHECK(filled("page {n} of {of}.", values) == "page 17 of {n}.");
  CHECK(filled("plain", {}) == "plain");
  for (const char *wrong : {"{x}", "{n", "n}", "{n{of}}", "{"}) {
    INFO(wrong);
    CHECK_THROWS_AS(filled(wrong, values), std::invalid_argument);
  }
}

TEST_CASE("a slip finds the nearest known word, a different word finds none") {
  const std::vector<std::string> known{"stations", "status", "side", "PW"};
  CHECK(nearest("statoins", known) == "stations");
  CHECK(nearest("sied", known) == "side");
  CHECK(nearest("PV", known) == "PW");
  CHECK_FALSE(nearest("rows", known));
  CHECK_FALSE(nearest("sxxe", known)); // two letters of four
  CHECK_FALSE(nearest("side", {}));
}

TEST_CASE("SHA-256 gives the published digests") {
  // FIPS 180-4 example "abc" and the empty message, as printed in the NIST example values.
  CHECK(sha256_hex("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(sha256_hex("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("a line is found with either line end") {
  const SourceFile file{"f", "one\r\ntwo\n\nfour"};
  CHECK(line_text(file, 1) == "one");
  CHECK(line_text(file, 2) == "two");
  CHECK(line_text(file, 3).empty());
  CHECK(line_text(file, 4) == "four");
  CHECK(line_text(file, 5).empty());
  CHECK(line_text(file, 0).empty());
}
