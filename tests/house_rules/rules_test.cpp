#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <regex>
#include <set>

#include "house_rules/source_files.h"

using namespace house_rules;

namespace {

using Rooms = std::set<std::string>;

/// The room table of DEVELOPERS.md: a room may include itself and these.
const std::map<std::string, Rooms> table = {
    {"base", {}},
    {"steel/policy", {"base"}},
    {"paper/style", {"base"}},
    {"paper/media", {"base"}},
    {"paper/content", {"base"}},
    {"paper/page", {"base"}},
    {"steel/survey", {"base", "steel/policy"}},
    {"steel/assess", {"base", "steel/policy", "steel/survey"}},
    {"steel/quantity", {"base"}},
    {"steel/unseen", {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity"}},
    {"steel/years", {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity"}},
    {"steel/robustness", {"base", "steel/policy", "steel/survey", "steel/assess"}},
    {"steel/works", {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity"}},
    {"steel/afloat", {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity", "steel/works"}},
    {"steel/protection", {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity"}},
    {"steel/outlook",
     {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity", "steel/unseen", "steel/years", "steel/robustness", "steel/works", "steel/afloat",
      "steel/protection"}},
    {"steel/amend",
     {"base", "steel/policy", "steel/survey", "steel/assess", "steel/quantity", "steel/unseen", "steel/years", "steel/robustness", "steel/works", "steel/afloat",
      "steel/protection", "steel/outlook"}},
    {"steel/review",
     {"base", "steel/amend", "steel/policy", "steel/survey", "steel/assess", "steel/quantity", "steel/unseen", "steel/years", "steel/robustness", "steel/works", "steel/afloat",
      "steel/protection", "steel/outlook"}},
    {"paper/file", {"base"}},
    {"issue", {"base", "paper/file"}},
    {"house", {"base", "steel/policy", "paper/style"}},
    {"compose", {"base", "house", "steel/amend", "steel/policy", "steel/survey", "steel/assess",
      "steel/quantity", "steel/unseen", "steel/years", "steel/robustness", "steel/works", "steel/afloat", "steel/protection",
      "steel/outlook", "steel/review", "paper/content"}},
    {"paper/typeset", {"base", "paper/style", "paper/content", "paper/page"}},
    {"paper/output", {"base", "paper/page", "paper/media"}},
    {"report",
     {"base", "steel/amend", "paper/file", "issue", "steel/policy", "steel/survey", "steel/assess",
      "steel/quantity", "steel/unseen", "steel/years", "steel/robustness", "steel/works", "steel/afloat", "steel/protection",
      "steel/outlook", "steel/review",
      "paper/style", "paper/content",
      "paper/page", "paper/media", "paper/typeset", "paper/output", "house", "compose"}},
    {"cli", {"base", "report"}}};

/// The room of a path as an include line writes it.
std::string room_of(const std::string &path) {
  if (path.rfind("cli/", 0) == 0) return "cli";
  const auto inner = path.substr(std::string("strakebook/").size());
  const auto slash = inner.find('/');
  if (slash == std::string::npos) return "report";
  const auto first = inner.substr(0, slash);
  if (first != "steel" && first != "paper") return first;
  return inner.substr(0, inner.find('/', slash + 1));
}

std::string name_of(const fs::path &path) { return fs::relative(path, root / "src").generic_string(); }

/// Files under src in which a line holds `pattern`.
std::set<std::string> files_with(const std::string &pattern) {
  std::set<std::string> found;
  const std::regex wanted(pattern);
  for (const auto &path : files_under(root / "src", true))
    for (const auto &line : lines_of(read(path)))
      if (std::regex_search(line, wanted)) found.insert(name_of(path));
  return found;
}

/// Functions longer than `limit` lines, by their first line: from a line that opens a body at some indent to the brace that
/// closes it at the same indent. Members of a class count one by one.
std::vector<std::string> long_functions(const fs::path &path, std::size_t limit) {
  std::vector<std::string> found;
  const std::regex opening(R"(^( {0,2})(?!inline constexpr|namespace|class|struct|enum|union|if|for|while|switch|else|do)[A-Za-z~\[][^=]*\{$)");
  const auto lines = lines_of(read(path));
  std::smatch match;
  for (std::size_t at = 0; at < lines.size(); ++at) {
    if (!std::regex_search(lines[at], match, opening)) continue;
    const std::string closing = match[1].str() + "}";
    std::size_t end = at + 1;
    while (end < lines.size() && lines[end].rfind(closing, 0) != 0) ++end;
    if (end - at + 1 > limit) found.push_back(name_of(path) + ":" + std::to_string(at + 1));
    at = end;
  }
  return found;
}

std::vector<fs::path> judging_files() {
  std::vector<fs::path> all;
  for (const char *room : {"survey", "assess", "unseen", "years", "robustness", "works", "afloat", "protection", "amend", "review"})
    for (auto &path : files_under(root / "src/strakebook/steel" / room, true)) all.push_back(std::move(path));
  return all;
}

/// Code without its comments, line by line; without the insides of its texts too where `without_texts`.
std::string bare_code(const std::string &code, bool without_texts) {
  std::string out;
  bool text = false;
  for (std::size_t i = 0; i < code.size(); ++i) {
    const bool comment = !text && code.compare(i, 2, "//") == 0;
    if (comment) i = std::min(code.find('\n', i), code.size() - 1);
    const char c = code[i];
    if (text && c == '\\') {
      if (!without_texts) out += code.substr(i, 2);
      ++i;
      continue;
    }
    const bool quote = c == '"' && (i == 0 || code[i - 1] != '\'');
    if (quote) text = !text;
    if (!text || quote || !without_texts) out += c;
  }
  return out;
}

std::vector<std::string> string_literals(const std::string &code) {
  std::vector<std::string> all;
  const std::regex literal(R"re("((?:[^"\\]|\\.)*)")re");
  for (std::sregex_iterator at(code.begin(), code.end(), literal), end; at != end; ++at) all.push_back((*at)[1]);
  return all;
}

/// Ids of the actions in the shipped policy, read as text: the keys of `actions:`.
std::set<std::string> shipped_actions() {
  std::set<std::string> found;
  bool inside = false;
  const std::regex entry(R"(^    ([a-z -]+): \{name:)");
  for (const auto &line : lines_of(read(root / "layouts/base/policy.yaml"))) {
    if (line == "  actions:") inside = true;
    std::smatch match;
    if (inside && std::regex_search(line, match, entry)) found.insert(match[1]);
    else if (inside && !found.empty()) break;
  }
  return found;
}

} // namespace

TEST_CASE("every include keeps to the room table") {
  const std::regex include(R"re(^\s*#include "((strakebook|cli)/[^"]+)")re");
  for (const auto &path : files_under(root / "src", true)) {
    const auto from = room_of(name_of(path));
    INFO(name_of(path) << ": room " << from << " is not in the table");
    REQUIRE(table.count(from) == 1);
    for (const auto &line : lines_of(read(path))) {
      std::smatch match;
      if (!std::regex_search(line, match, include)) continue;
      const auto to = room_of(match[1]);
      INFO(name_of(path) << ": room " << from << " may not include " << to << ": " << line);
      CHECK((from == to || table.at(from).count(to) == 1));
    }
  }
}

TEST_CASE("libraries stay in their rooms") {
  for (const auto &file : files_with("#include <yaml-cpp")) {
    INFO("yaml-cpp in " << file);
    CHECK((file == "strakebook/base/yaml_tree.cpp" || file == "strakebook/base/yaml_tree.h"));
  }
  for (const auto &file : files_with("#include <(hpdf|cairo)")) {
    INFO("hpdf or cairo in " << file);
    CHECK(file.rfind("strakebook/paper/output/", 0) == 0);
  }
  for (const auto &file : files_with("#include <qpdf")) {
    INFO("qpdf in " << file);
    CHECK(file.rfind("strakebook/paper/file/", 0) == 0);
  }
  CHECK(files_with("#include <hyphen") == std::set<std::string>{"strakebook/paper/typeset/hyphenation.cpp"});
}

TEST_CASE("no number or locale function of the C library") {
  CHECK(files_with(R"(\b(stod|stof|strtod|strtof|atof|setlocale)\s*\()") == std::set<std::string>{});
}

TEST_CASE("files and functions keep to their lengths") {
  for (const auto &path : files_under(root / "src", true)) {
    INFO(name_of(path));
    CHECK(lines_of(read(path)).size() <= 400);
    CHECK(long_functions(path, 60) == std::vector<std::string>{});
  }
}

TEST_CASE("no figure that judges stands in the rooms that judge") {
  // Lengths that no hull has and no gauge shows, so that a slip is refused; everything that judges is a layout's.
  // And the last decimal of a printed probability, which judges nothing.
  const std::set<std::string> named = {"strakebook/steel/assess/conformance.cpp: step",
                                       "strakebook/steel/survey/values.h: thickest_plate",
                                       "strakebook/steel/survey/values.h: thinnest_reading"};
  std::set<std::string> seen;
  const std::regex figure(R"((^|[^\w.])([0-9]+\.[0-9]*|\.[0-9]+|[0-9]+e-?[0-9]+)|(milli|micro|nano)metres\([0-9])"), name(R"((\w+) = )");
  for (const auto &path : judging_files())
    for (const auto &line : lines_of(bare_code(read(path), true))) {
      std::smatch match;
      if (!std::regex_search(line, figure)) continue;
      const auto constant = std::regex_search(line, match, name) ? match[1].str() : line;
      seen.insert(name_of(path) + ": " + constant);
    }
  CHECK(seen == named);
}

TEST_CASE("no action of the shipped policy is written in the rooms that judge, but the one that its header documents") {
  const auto actions = shipped_actions();
  REQUIRE(actions.size() > 5);
  REQUIRE(actions.count("no opinion") == 1);
  // What programs are given as the names of the two ways to cover an area; no action is looked up by them.
  const std::set<std::string> named = {"strakebook/steel/afloat/afloat.cpp: insert", "strakebook/steel/afloat/afloat.cpp: overplate",
                                       "strakebook/steel/works/works_json.cpp: insert", "strakebook/steel/works/works_json.cpp: overplate"};
  for (const auto &path : judging_files())
    for (const auto &text : string_literals(bare_code(read(path), false)))
      for (const auto &action : actions) {
        if (action == "no opinion" || named.count(name_of(path) + ": " + text) == 1) continue;
        INFO(name_of(path) << " writes " << text);
        CHECK_FALSE(std::regex_search(text, std::regex("\\b" + action + "\\b")));
      }
}

TEST_CASE("every diagnostic code is expected by some test") {
  std::string tests;
  for (const auto &path : files_under(root / "tests", false))
    if (path.string().find("house_rules") == std::string::npos) tests += read(path);
  const auto codes = read(root / "src/strakebook/base/codes.h");
  const std::regex entry(R"re(X\((\w+), "(SB\d{4})")re");
  std::size_t count = 0;
  for (std::sregex_iterator at(codes.begin(), codes.end(), entry), end; at != end; ++at, ++count) {
    const auto name = (*at)[1].str(), number = (*at)[2].str();
    INFO(number << " " << name << " appears in no test");
    CHECK((tests.find(number) != std::string::npos || std::regex_search(tests, std::regex("[Cc]odes?::" + name + "\\b"))));
  }
  CHECK(count > 0);
}

TEST_CASE("the top level holds only what was agreed") {
  const std::set<std::string> agreed = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "src",
                                        "layouts",        "fonts",     "tests",         "example-surveys"};
  std::set<std::string> seen;
  for (const auto &entry : fs::directory_iterator(root)) {
    const auto name = entry.path().filename().string();
    if (name[0] != '.' && name != "build" && name != "report.pdf") seen.insert(name);
  }
  CHECK(seen == agreed);
}

TEST_CASE("the list of fonts names files that are there, and every face is listed") {
  std::set<std::string> listed;
  for (const auto &line : lines_of(read(root / "fonts/SHA256SUMS"))) {
    INFO(line);
    REQUIRE(line.size() > 66);
    listed.insert(line.substr(66));
    CHECK(fs::is_regular_file(root / "fonts" / line.substr(66)));
  }
  CHECK_FALSE(listed.empty());
  for (const auto &path : files_under(root / "fonts", false))
    if (path.extension() == ".ttf" || path.extension() == ".otf" || path.extension() == ".dic") CHECK(listed.count(path.filename().string()) == 1);
}
