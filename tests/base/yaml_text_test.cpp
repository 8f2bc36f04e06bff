#include "strakebook/base/yaml_text.h"

#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/base/text.h"
#include "strakebook/base/yaml_tree.h"

using namespace strakebook::base;
using testing::source_of;

namespace {

namespace fs = std::filesystem;
using Kind = YamlNode::Kind;

YamlNode scalar(std::string text) { return {.kind = Kind::scalar, .text = std::move(text)}; }
YamlNode list(std::vector<YamlNode> items) { return {.kind = Kind::list, .items = std::move(items)}; }
YamlNode map(std::vector<YamlNode::Entry> entries) { return {.kind = Kind::map, .entries = std::move(entries)}; }

/// Everything of a tree but its places and quotes.
std::string shape(const YamlNode &node) {
  switch (node.kind) {
  case Kind::empty: return "nothing";
  case Kind::scalar: return std::to_string(node.text.size()) + ":" + node.text;
  case Kind::list: {
    std::string out = "[";
    for (const auto &item : node.items) out += shape(item) + ",";
    return out + "]";
  }
  case Kind::map: {
    std::string out = "{";
    for (const auto &entry : node.entries) out += std::to_string(entry.key.size()) + ":" + entry.key + "=" + shape(entry.value) + ",";
    return out + "}";
  }
  }
  return {};
}

void check_read_back(const YamlNode &tree) {
  const auto text = yaml_text(tree);
  Diagnostics sink;
  const auto again = parse_yaml(source_of(text), sink);
  INFO(text);
  INFO(terminal_text(sink));
  CHECK(sink.ok());
  CHECK(shape(again) == shape(tree));
  CHECK(yaml_text(again) == text);
}

/// A text in every place where one can stand.
YamlNode everywhere(const std::string &text) {
  return map({{text, {}, scalar(text)},
              {"in a list", {}, list({scalar(text), list({scalar(text), scalar("next")}), map({{text, {}, scalar(text)}, {"next", {}, scalar(text)}})})},
              {"in a map", {}, map({{"first", {}, scalar(text)}, {"last " + text, {}, map({{text, {}, list({scalar(text)})}})}})}});
}

std::string whole(const fs::path &file) {
  std::ostringstream out;
  out << std::ifstream(file, std::ios::binary).rdbuf();
  return out.str();
}

} // namespace

TEST_CASE("a tree is written a key a line, plainly where that means the same") {
  const auto tree = map({{"name", {}, scalar("Sedge, a boat (18 m)")},
                         {"when", {}, scalar("")},
                         {"nothing", {}, {}},
                         {"none", {}, list({})},
                         {"rows", {}, list({scalar("PW"), map({{"id", {}, scalar("SW: 1")}, {"at", {}, scalar("-1.5")}})})},
                         {"text", {}, scalar("one # two\n\n  three\nfour")}});
  CHECK(yaml_text(tree) == "name: Sedge, a boat (18 m)\n"
                           "when: \"\"\n"
                           "nothing: ~\n"
                           "none: []\n"
                           "rows:\n"
                           "  - PW\n"
                           "  - id: \"SW: 1\"\n"
                           "    at: -1.5\n"
                           "text: |-\n"
                           "  one # two\n"
                           "\n"
                           "    three\n"
                           "  four\n");
  check_read_back(tree);
}

TEST_CASE("remarks, quotes, folding and flow leave no trace") {
  Diagnostics sink;
  const auto one = parse_yaml(source_of("# a remark\na: {b: 'c d', e: [f, \"g\"]} # another\nlong: one\n  two\n"), sink);
  const auto other = parse_yaml(source_of("a:\n    b: c d\n    e:\n    - f\n    - 'g'\n'long': \"one two\"\n"), sink);
  REQUIRE(sink.ok());
  CHECK(yaml_text(one) == yaml_text(other));
  CHECK(yaml_text(one) == "a:\n  b: c d\n  e:\n    - f\n    - g\nlong: one two\n");
}

TEST_CASE("texts that mean something else without quotes are read back as they were") {
  for (const std::string text :
       {"", " ", "~", "null", "Null", "NULL", "yes", "0x10", "010", "1e3", "-", "--", "---", "...", "?", "? a", ":", "a:", "a: b", "a :b", "a:b", "#", "a#b", "a #b",
        "- a", "-a", "[", "]", "[a]", "{", "}", "{a: b}", ",", "a, b", "&a", "*a", "!a", "!", "|", ">", "'", "''", "\"", "\"\"", "a\"b", "\\", "\\n", "%a", "@a", "`a", "<<",
        " a", "a ", "\t", "\ta", "a\tb", "\n", "\n\n", "a\n", "a\n\n", "a\nb", "a\nb\n", "a\nb\n\n", "\na", " a\nb", "a\n b", "a \nb ", "a\n\tb", "a\r\nb", "a\rb", "a\n# b",
        "a\n--- b\n...", "\x01", "\x7f", "caf\u00e9", "\u00e9", "\u0085", "a\u0085b", "\u00a0", "a\u2028b", "\ufeff", "a\ufeff", "\U0001F6A4", "4.8 mm", "1/2", "\u00bd in", "+1", "+", "(",
        "2026-10-21", "12:30", "a: \n b"}) {
    INFO(text);
    check_read_back(everywhere(text));
    check_read_back(scalar(text));
  }
  check_read_back(everywhere(std::string(1, '\0')));
  check_read_back(everywhere(std::string(3000, 'k')));
  check_read_back(everywhere(std::string(3000, '\n') + "x"));
}

TEST_CASE("trees of any texts are read back as they were") {
  std::mt19937 random(20261128);
  const auto below = [&](unsigned count) { return static_cast<unsigned>(random() % count); };
  const std::u32string letters = U"abz09 \n\t:#-?,[]{}&*!|>'\"%@`\\~<.+(\u00e9\u2028\ufeff";
  const auto text = [&] {
    std::string out;
    for (unsigned left = below(9); left > 0; --left) out += utf8(letters[below(static_cast<unsigned>(letters.size()))]);
    return out;
  };
  const std::function<YamlNode(int)> node = [&](int depth) {
    const unsigned kind = below(depth > 3 ? 3 : 6);
    if (kind == 0) return YamlNode{};
    if (kind < 3) return scalar(text());
    auto out = kind == 3 ? list({}) : map({});
    for (unsigned left = below(4); left > 0; --left) {
      if (kind == 3) out.items.push_back(node(depth + 1));
      else if (const auto key = text(); !out.find(key)) out.entries.push_back({key, {}, node(depth + 1)});
    }
    return out;
  };
  for (int i = 0; i < 3000; ++i) check_read_back(map({{"tree", {}, node(0)}}));
}

TEST_CASE("every survey and layout here is read back as it was") {
  int count = 0;
  for (const char *folder : {"/example-surveys", "/layouts", "/tests/steel/survey/whole", "/tests/outside/surveys"})
    for (const auto &entry : fs::recursive_directory_iterator(std::string(STRAKEBOOK_ROOT) + folder)) {
      if (entry.path().extension() != ".yaml") continue;
      Diagnostics sink;
      const auto tree = parse_yaml(source_of(whole(entry.path())), sink);
      if (!sink.ok()) continue;
      INFO(entry.path());
      ++count;
      check_read_back(tree);
    }
  CHECK(count > 20);
}
