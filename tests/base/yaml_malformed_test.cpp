#include <filesystem>

#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/base/files.h"
#include "strakebook/base/text.h"
#include "strakebook/base/yaml_tree.h"

using namespace strakebook::base;

namespace {

/// What the file says it should give: remarks "# expect: 4:1 SB0103 words of the message", one for each
/// diagnostic.
std::vector<std::string> expectations(const SourceFile &file) {
  constexpr std::string_view mark = "# expect: ";
  std::vector<std::string> out;
  for (std::string_view rest = file.text; !rest.empty();) {
    const std::string_view line = rest.substr(0, rest.find('\n'));
    if (line.starts_with(mark))
      out.emplace_back(line.substr(mark.size()));
    rest.remove_prefix(std::min(line.size() + 1, rest.size()));
  }
  return out;
}

} // namespace

TEST_CASE("every malformed file gives the diagnostics written in it, and no other") {
  std::size_t files = 0;
  for (const auto &entry : std::filesystem::directory_iterator(STRAKEBOOK_TESTS "/base/malformed")) {
    ++files;
    Diagnostics sink;
    const auto file = read_source(entry.path(), entry.path().filename().string(), {}, sink);
    REQUIRE(file);
    parse_yaml(file, sink);
    std::vector<std::string> found;
    for (const Diagnostic &d : sink.all())
      found.push_back(fmt::format("{}:{} {} {}", d.span.line, d.span.column, number_of(d.code), d.message));
    INFO(terminal_text(sink));
    CHECK(found == expectations(*file));
  }
  CHECK(files >= 10);
}
