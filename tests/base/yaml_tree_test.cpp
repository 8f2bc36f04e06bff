#include "strakebook/base/yaml_tree.h"

#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook::base;
using testing::places_and_codes;
using testing::source_of;

namespace {

using Kind = YamlNode::Kind;
using Found = std::vector<std::string>;

std::string place(const SourceSpan &s) { return fmt::format("{}:{}+{}", s.line, s.column, s.length); }

Found found_in(std::string text, YamlLimits limits = {}) {
  Diagnostics sink;
  parse_yaml(source_of(std::move(text)), sink, limits);
  return places_and_codes(sink);
}

std::string nested(int depth) {
  return std::string(static_cast<std::size_t>(depth), '[') +
         std::string(static_cast<std::size_t>(depth), ']');
}

} // namespace

TEST_CASE("a document becomes a tree that knows where everything stands") {
  Diagnostics sink;
  const YamlNode root = parse_yaml(source_of("# remark\n"
                                             "name: Sedge \u00c9lan  # boat\n"
                                             "\"caf\u00e9\": {length: 18.0 m, q: '5.8'}\n"
                                             "rows: [PW, \"P M\"]\n"
                                             "why: |\n"
                                             "  two\n"
                                             "  lines\n"
                                             "long: one\n"
                                             "  two\n"
                                             "pits:\n"
                                             "  - at: PW 9.4\n"
                                             "    depth: 0.6"),
                                   sink);
  REQUIRE(sink.ok());
  REQUIRE(root.kind == Kind::map);
  REQUIRE(root.entries.size() == 6);
  CHECK(place(root.span) == "2:1+5");
  CHECK(root.entries[1].key == "caf\u00e9");
  CHECK(place(root.entries[1].key_span) == "3:1+6");

  const YamlNode &name = *root.find("name");
  CHECK(name.text == "Sedge \u00c9lan");
  CHECK_FALSE(name.quoted);
  CHECK(place(name.span) == "2:7+10");
  const YamlNode &vessel = *root.find("caf\u00e9");
  CHECK(place(vessel.span) == "3:1+6"); // a map is found at the key that holds it
  CHECK(place(vessel.find("length")->span) == "3:18+6");
  CHECK(vessel.find("q")->text == "5.8");
  CHECK(vessel.find("q")->quoted);
  CHECK(place(vessel.find("q")->span) == "3:29+5");
  CHECK(root.find("rows")->items[1].text == "P M");
  CHECK(root.find("why")->text == "two\nlines\n");
  CHECK(root.find("why")->quoted);
  CHECK(root.find("long")->text == "one two");
  CHECK(place(root.find("long")->span) == "8:7+3");
  CHECK(root.find("pits")->items[0].find("depth")->text == "0.6");
  CHECK(place(root.find("pits")->items[0].find("depth")->span) == "12:12+3");
  CHECK(root.find("absent") == nullptr);
}

TEST_CASE("scalars keep their raw text: no number, truth or octal is read into them") {
  Diagnostics sink;
  const YamlNode root = parse_yaml(source_of("a: 010\nb: 5.80\nc: yes\nd: .nan\ne: 1_000\nf: 12:30\n"), sink);
  REQUIRE(sink.ok());
  Found texts;
  for (const auto &entry : root.entries)
    texts.push_back(entry.value.text);
  CHECK(texts == Found{"010", "5.80", "yes", ".nan", "1_000", "12:30"});
}

TEST_CASE("nothing, ~ and null are empty; the same in quotes is text") {
  Diagnostics sink;
  const YamlNode root = parse_yaml(
      source_of(
          "a:\nb: ~\nc: null\nd: ''\ne: \"null\"\nf:\n  - x\n  -\n  - ~\ng: {h: , i: 1}\nnull-count: 0\n"),
      sink);
  REQUIRE(sink.ok());
  for (const char *key : {"a", "b", "c"})
    CHECK(root.find(key)->kind == Kind::empty);
  CHECK(place(root.find("a")->span) == "1:1+1"); // at its key, not at the next token
  CHECK(place(root.find("b")->span) == "2:4+1");
  CHECK(place(root.find("c")->span) == "3:4+4");
  CHECK(root.find("d")->kind == Kind::scalar);
  CHECK(root.find("e")->text == "null");
  CHECK(root.find("f")->items[1].kind == Kind::empty);
  CHECK(place(root.find("f")->items[1].span) == "8:3+1"); // its dash
  CHECK(place(root.find("f")->items[2].span) == "9:5+1");
  CHECK(place(root.find("g")->find("h")->span) == "10:5+1");
}

TEST_CASE("of a key written twice the first is kept, and other maps do not matter") {
  Diagnostics sink;
  const YamlNode root = parse_yaml(source_of("a: 1\nb: {a: 2}\na: {c: 3, c: 4}\n"), sink);
  CHECK(places_and_codes(sink) == Found{"3:1 SB0103", "3:11 SB0103"});
  CHECK(sink.all()[0].expected == "each key once; the first is in line 1");
  CHECK(root.find("a")->text == "1");
  CHECK(root.entries.size() == 2);
}

TEST_CASE("one fault does not hide the next") {
  CHECK(found_in("a: &x 1\nb: *x\n<<: *x\nc: !!str d\ne: ! f\n[g]: h\ni: 1\ni: 2\n") ==
        Found{"1:4 SB0104", "2:4 SB0104", "3:1 SB0104", "3:5 SB0104", "4:4 SB0104", "5:4 SB0104",
              "6:1 SB0101", "8:1 SB0103"});
  CHECK(found_in("\"<<\": 1\na: '*x'\nb: \"&x\"\nc: '!x'\nd: x & y * z !\n").empty());
  CHECK(found_in("a: &l [*l]\n") == Found{"1:4 SB0104", "1:8 SB0104"});
  CHECK(found_in("a: *nobody\n") == Found{"1:4 SB0104"});
}

TEST_CASE("exactly one document, read to its end") {
  CHECK(found_in("a: 1\n---\nb: 2\n") == Found{"2:1 SB0102"});
  CHECK(found_in("a: 1\n---\n") == Found{"2:1 SB0102"});
  CHECK(found_in("'a' b\n") == Found{"1:5 SB0102"});
  CHECK(found_in("") == Found{"1:1 SB0102"});
  CHECK(found_in("# only a remark\n") == Found{"1:1 SB0102"});
  CHECK(found_in("%YAML 1.2\n---\na: 1\n...\n").empty());
  CHECK(found_in("a: 1\n...\nb: 2\n") == Found{"3:1 SB0102"});
}

TEST_CASE("a quote that is not closed is found at the quote, not where the damage shows") {
  CHECK(found_in("a: 1\nb: \"open\nc: 2\n") == Found{"2:4 SB0106"});
  CHECK(found_in("a: 1\nb: 'open") == Found{"2:4 SB0106"});
  CHECK(found_in("a: {b: \"open}\n") == Found{"1:8 SB0106"});
  CHECK(found_in("b: \"open\nc: \"x\"\n") == Found{"1:4 SB0106"});
  CHECK(found_in("a: 'it''s'\nb: \"say \\\"x\\\"\"\nc: 'two\n  lines'\n").empty());
}

TEST_CASE("bytes are looked at before they are parsed") {
  CHECK(found_in("a: 1\nb: caf\xE9 x\n") == Found{"2:7 SB0002"});
  CHECK(found_in("a: 1\nb: \x04 2\n") ==
        Found{"2:4 SB0101"}); // the parser takes this byte for the end of the file
  CHECK(found_in(std::string("a: \0b\n", 6)) == Found{"1:4 SB0101"});
  CHECK(found_in("\xEF\xBB\xBF"
                 "a: 1\n") == Found{"1:1 SB0101"});
  CHECK(found_in("a: 1\rb: 2\n") == Found{"1:5 SB0101"});
  CHECK(found_in("a: 1\r\nb: 2\r\n").empty());
  CHECK(found_in("a: \"\xC2\x85\"\n") == Found{"1:5 SB0101"});
}

TEST_CASE("depth, size and number of values are bounded, on both sides of the bound") {
  CHECK(found_in(nested(32)).empty());
  CHECK(found_in(nested(33)) == Found{"1:33 SB0105"});
  CHECK(found_in(nested(100'000)) == Found{"1:33 SB0105"});
  CHECK(found_in("a: 1\n", {32, 5, 100}).empty());
  CHECK(found_in("a: 12\n", {32, 5, 100}) == Found{"0:0 SB0003"});
  CHECK(found_in("[a, b]", {32, 100, 3}).empty());
  CHECK(found_in("[a, b, c]", {32, 100, 3}) == Found{"1:8 SB0003"});
}

TEST_CASE("columns count characters, not bytes, whatever stands before") {
  Diagnostics sink;
  const YamlNode root = parse_yaml(source_of("{\u00e9\u20ac\U0001F6A2: x, y: '\u00e9', z: w}\n"), sink);
  REQUIRE(root.entries.size() == 3);
  CHECK(place(root.entries[0].key_span) == "1:2+3");
  CHECK(place(root.find("y")->span) == "1:13+3");
  CHECK(place(root.find("z")->span) == "1:21+1");
}

TEST_CASE("an open bracket is told with the line that opened it") {
  Diagnostics sink;
  parse_yaml(source_of("a: 1\nb:\n  - [1, [2, 3], 4\nc: 5\n"), sink);
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].expected == "] for the [ of line 3");
}

TEST_CASE("a text that cannot be read to its end gives an empty node") {
  Diagnostics sink;
  const YamlNode root = parse_yaml(source_of("a: 1\nb: [1\n"), sink);
  CHECK_FALSE(sink.ok());
  CHECK(root.kind == Kind::empty);
}
