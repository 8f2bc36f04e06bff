#include "strakebook/base/diagnostic.h"

#include <set>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "helpers.h"

using namespace strakebook::base;
using testing::source_of;

namespace {

Diagnostics two_findings() {
  const auto file = source_of("strakebook: 1\nvessel:\n\tbeam: 2,08 m\n");
  Diagnostics sink;
  sink.error(Code::bad_length, {file, 3, 8, 6}, "\"2,08 m\" is not a length", "a length such as 2.08 m",
             "2.08 m");
  sink.warning(Code::neighbour_jump, {file, 1, 1, 10}, "neighbour-jump PW 9",
               "PW 9 is 0.9 mm under PW 8 and PW 10", "at most 0.5 mm", "another reading,\nor a reason");
  return sink;
}

} // namespace

TEST_CASE(
    "the terminal form shows the place, the line, carets under it, what was expected and what to write") {
  CHECK(terminal_text(two_findings()) ==
        "survey.yaml:3:8: error SB0207: \"2,08 m\" is not a length\n"
        "  3 | \tbeam: 2,08 m\n"
        "    | \t      ^^^^^^\n"
        "  expected: a length such as 2.08 m\n"
        "  write: 2.08 m\n"
        "\n"
        "survey.yaml:1:1: warning SB0412: PW 9 is 0.9 mm under PW 8 and PW 10\n"
        "  1 | strakebook: 1\n"
        "    | ^^^^^^^^^^\n"
        "  expected: at most 0.5 mm\n"
        "  write: another reading,\n"
        "         or a reason\n"
        "  id: neighbour-jump PW 9\n"
        "\n"
        "1 error, 1 warning\n");
}

TEST_CASE("a finding without a place names its file, and nothing found is said") {
  Diagnostics sink;
  sink.error(Code::output_failed, {source_of("", "out.pdf"), 0, 0, 1}, "the file was not written");
  sink.error(Code::layout_unknown, {}, "no layout is named");
  CHECK(terminal_text(sink) == "out.pdf: error SB0901: the file was not written\n\n"
                               "strakebook: error SB0701: no layout is named\n\n"
                               "2 errors\n");
  CHECK(terminal_text({}) == "no errors\n");
}

TEST_CASE("carets count characters, stay inside the line and never vanish") {
  const auto marks = [](std::string line, int column, int length) {
    Diagnostics sink;
    sink.error(Code::bad_number, {source_of(std::move(line)), 1, column, length}, "m");
    const std::string text = terminal_text(sink);
    const std::size_t at = text.rfind("    | ") + 6;
    return text.substr(at, text.find('\n', at) - at);
  };
  CHECK(marks("\u00e9\u00e9: x\n", 5, 1) == "    ^");
  CHECK(marks("abc\n", 2, 99) == " ^^");
  CHECK(marks("abc\n", 9, 3) == "   ^");
  CHECK(marks("abc\n", 1, 0) == "^");
  CHECK(marks("\n", 1, 1) == "^");
  CHECK(marks("ca\xFF"
              "b\n",
              3, 1) == "  ^");
  CHECK(marks(std::string(400, 'a') + "\n", 300, 2) == std::string(80, ' ') + "^^");
}

TEST_CASE("a source line cannot send commands to the terminal, nor flood it") {
  Diagnostics sink;
  sink.error(Code::bad_number, {source_of("a\x1B[31m" + std::string(100'000, 'b')), 1, 1, 1}, "m");
  const std::string text = terminal_text(sink);
  CHECK(text.find('\x1B') == text.npos);
  CHECK(text.size() < 1000);
}

TEST_CASE("the JSON form carries the same content") {
  const auto j = nlohmann::json::parse(json_text(two_findings()));
  CHECK(j["errors"] == 1);
  CHECK(j["warnings"] == 1);
  CHECK(j["diagnostics"][0] == nlohmann::json({{"file", "survey.yaml"},
                                               {"line", 3},
                                               {"column", 8},
                                               {"length", 6},
                                               {"severity", "error"},
                                               {"code", "SB0207"},
                                               {"name", "bad_length"},
                                               {"message", "\"2,08 m\" is not a length"},
                                               {"expected", "a length such as 2.08 m"},
                                               {"write", "2.08 m"},
                                               {"source_line", "\tbeam: 2,08 m"},
                                               {"subject", ""}}));
  CHECK(j["diagnostics"][1]["subject"] == "neighbour-jump PW 9");
  CHECK(json_text({}) == "{\n  \"diagnostics\": [],\n  \"errors\": 0,\n  \"warnings\": 0\n}\n");
}

TEST_CASE("JSON is well-formed even when the source line is not UTF-8") {
  Diagnostics sink;
  sink.error(Code::not_utf8, {source_of("caf\xE9"), 1, 4, 1}, "m");
  CHECK(nlohmann::json::parse(json_text(sink))["diagnostics"][0]["source_line"] == "caf\uFFFD");
}

TEST_CASE("every code has its own number and words") {
  std::set<std::string_view> numbers, names;
  for (const Code code : all_codes()) {
    CHECK(number_of(code).size() == 6);
    CHECK(numbers.insert(number_of(code)).second);
    CHECK(names.insert(name_of(code)).second);
    CHECK_FALSE(description_of(code).empty());
  }
  CHECK(number_of(Code::yaml_duplicate_key) == "SB0103");
  CHECK(name_of(Code::yaml_duplicate_key) == "yaml_duplicate_key");
}
