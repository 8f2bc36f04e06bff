#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/base/files.h"
#include "strakebook/steel/survey/texts.h"

using namespace strakebook;
using namespace strakebook::survey;
using namespace strakebook::survey::testing;

namespace {

/// The one text that holds a reference to nothing.
constexpr std::string_view nowhere = "see photo 99";

std::string whole_text() {
  base::Diagnostics sink;
  const auto file = base::read_source(here / "whole/survey.yaml", "survey.yaml", {}, sink);
  REQUIRE(file);
  return file->text;
}

void each_scalar(const base::YamlNode &node, const std::string &path, const std::function<void(const base::YamlNode &, const std::string &)> &see) {
  if (node.kind == base::YamlNode::Kind::scalar) see(node, path);
  for (const auto &item : node.items) each_scalar(item, path + " -", see);
  for (const auto &entry : node.entries) each_scalar(entry.value, path + " " + entry.key, see);
}

/// The file with one of its values put in another's place: the rest of a line up to what closes it, or a block text.
std::string with_value(const std::string &text, const base::YamlNode &node) {
  std::size_t at = 0;
  for (int line = 1; line < node.span.line; ++line) at = text.find('\n', at) + 1;
  at += static_cast<std::size_t>(node.span.column) - 1;
  std::size_t length = node.text.size();
  std::string value = '"' + std::string(nowhere) + '"';
  if (text[at] == '"') length += 2;
  if (text[at] == '|') {
    length = text.find('\n', at) - at;
    value = "|\n      " + std::string(nowhere);
    const auto next = text.find_first_not_of(' ', text.find('\n', at) + 1); // the block's own lines go
    const auto indent = next - text.rfind('\n', next) - 1;
    auto end = text.find('\n', at);
    while (text.compare(end + 1, indent, std::string(indent, ' ')) == 0) end = text.find('\n', end + 1);
    length = end - at;
  }
  return std::string(text).replace(at, length, value);
}

/// What an earlier report said of an item, and what changed since an earlier issue, points at places there.
bool speaks_of_another_report(const std::string &path) {
  for (const char *key : {"from", "item", "title", "deadline"})
    if (path == std::string(" carried 1 ") + key) return true;
  return path == " amendment changes - what -" || path == " amendment changes - why";
}

} // namespace

TEST_CASE("whatever text of a survey can be written freely, a reference to nothing in it is found, and found there") {
  const Folder folder;
  std::filesystem::copy(here / "whole/readings", folder.path / "readings");
  std::filesystem::copy(here / "whole/earlier", folder.path / "earlier");
  const std::string text = whole_text();
  base::Diagnostics sink;
  const auto root = base::parse_yaml(std::make_shared<const base::SourceFile>(base::SourceFile{"survey.yaml", text}), sink);
  REQUIRE(sink.ok());
  int tried = 0, free = 0;
  each_scalar(root, "", [&](const base::YamlNode &node, const std::string &path) {
    INFO(path);
    ++tried;
    Run one;
    const auto house = house_words();
    one.survey = read_survey(folder.write("survey.yaml", with_value(text, node)), house, one.found);
    if (!one.found.ok()) return; // a number, a date, a name or a closed word: refused by itself
    ++free;
    check_survey(one.survey, house, one.found);
    const auto lost = [&](const base::Diagnostic &d) {
      return d.code == base::Code::dangling_reference && d.message == "\"photo 99\" leads nowhere";
    };
    const auto &all = one.found.all();
    if (speaks_of_another_report(path)) {
      CHECK(std::none_of(all.begin(), all.end(), lost));
      return;
    }
    REQUIRE(std::count_if(all.begin(), all.end(), lost) == 1);
    const auto &found = *std::find_if(all.begin(), all.end(), lost);
    CHECK((found.span.line == node.span.line || found.span.line == node.span.line + 1)); // a block text begins a line below
  });
  CHECK(tried > 200);
  CHECK(free > 110);
}

TEST_CASE("a remark in a readings file is a text too") {
  const Folder folder;
  folder.write("long.csv", "mark, reading mm, remark\nPW 3, 4.6,\nPW 4, 5.0 rejected, as in photo 9\n");
  const auto one = run(folder.write("survey.yaml", small_survey(
      "readings: {file: long.csv, form: long, separator: comma, lines: 2, unit: mm, marks: 2, surface: bare, gauge: ut, reduce: least of repeats}\n")));
  INFO(base::terminal_text(one.found));
  REQUIRE(one.found.all().size() == 1);
  CHECK(one.found.all()[0].code == base::Code::dangling_reference);
  CHECK(one.found.all()[0].span.file->path.ends_with("long.csv"));
  CHECK(one.found.all()[0].span.line == 3);
}
