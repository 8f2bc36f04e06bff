#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "helpers.h"

// The words stand in the layout and nowhere else: every key that a chapter says is there, and no key is left
// over.

using namespace strakebook;

namespace {

std::string whole(const std::filesystem::path &file) {
  std::ifstream in(file);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

std::set<std::string> matches(const std::filesystem::path &folder, const std::regex &pattern) {
  std::set<std::string> out;
  for (const auto &entry : std::filesystem::directory_iterator(folder)) {
    const std::string text = whole(entry.path());
    for (std::sregex_iterator at(text.begin(), text.end(), pattern), end; at != end; ++at)
      out.insert((*at)[1]);
  }
  return out;
}

const std::filesystem::path rooms = std::filesystem::path(STRAKEBOOK_ROOT) / "src" / "strakebook";

std::set<std::string> keys_said() {
  return matches(rooms / "compose",
                 std::regex(R"re((?:(?:say|tell)(?:_computed)?|with_page)\(\s*(?:scope,\s*)?"([a-z0-9.-]+)")re"));
}

/// Keys of the words that the program computes: only say_computed and tell_computed say them.
std::set<std::string> keys_computed() {
  return matches(rooms / "compose", std::regex(R"re((?:say|tell)_computed\(\s*"([a-z0-9.-]+)")re"));
}

/// Every layout that is shipped, by name.
std::vector<std::string> layouts_shipped() {
  std::vector<std::string> names;
  for (const auto &entry : std::filesystem::directory_iterator(std::filesystem::path(STRAKEBOOK_ROOT) / "layouts"))
    if (entry.path().extension() == ".yaml")
      names.push_back(entry.path().stem().string());
  return names;
}

} // namespace

TEST_CASE("every key that a chapter says is in the layout") {
  const auto sample = sample::small_survey();
  const auto said = keys_said();
  CHECK(said.size() > 300);
  for (const auto &key : said) {
    INFO(key);
    CHECK(sample.house.wording.words.count(key) == 1);
  }
}

TEST_CASE("no words of the layout are left unsaid") {
  const auto sample = sample::small_survey();
  const auto said = keys_said();
  for (const auto &[key, words] : sample.house.wording.words) {
    INFO(key);
    CHECK(said.count(key) == 1);
  }
}

TEST_CASE("keys are always written out where they are said, so that they can be counted") {
  // a key in a variable would escape the two tests above; the one place that passes one on is the definition
  // itself
  const auto unseen = matches(rooms / "compose", std::regex(R"re([.>](?:say|tell)(?:_computed)?\(\s*([^"\s]))re"));
  CHECK(unseen.empty());
}

TEST_CASE("no computed words of any shipped layout hold an action") {
  const std::regex acts(R"(\b(renew|replac|repair|weld|coat|refloat|crop|overplat|build up|must|should|needs?\b|recommend))",
                        std::regex::icase);
  const auto computed = keys_computed();
  CHECK(computed.size() > 25);
  const auto layouts = layouts_shipped();
  CHECK(layouts.size() >= 2);
  for (const auto &name : layouts) {
    base::Diagnostics sink;
    const auto house = house::read_house(name, std::filesystem::path(STRAKEBOOK_ROOT) / "layouts", rooms, {}, sink);
    INFO(base::terminal_text(sink));
    REQUIRE(house);
    for (const auto &key : computed) {
      const auto &words = house::word(house->wording, key);
      INFO(name << ": " << key << ": " << words);
      CHECK_FALSE(std::regex_search(words, acts));
      for (const auto &[id, action] : house->policy.actions) {
        CHECK_FALSE(sample::contains(words, id));
        CHECK_FALSE(sample::contains(words, action.name));
      }
    }
  }
}

TEST_CASE("a statement is called computed in one place, which takes nothing but computed sentences") {
  const auto files = [](const std::string &pattern) {
    std::set<std::string> out;
    for (const auto &entry : std::filesystem::directory_iterator(rooms / "compose"))
      if (std::regex_search(whole(entry.path()), std::regex(pattern)))
        out.insert(entry.path().filename().string());
    return out;
  };
  CHECK(files("Rests::computed") == std::set<std::string>{"statements.cpp"});
  CHECK(files("say_computed|tell_computed").size() > 5);
}

TEST_CASE("every look that a chapter names is one of the layout's") {
  const auto &style = sample::small_survey().house.style;
  std::set<std::string> known;
  for (const auto &[name, value] : style.text)
    known.insert(name);
  for (const auto &[name, value] : style.lattices)
    known.insert(name);
  for (const auto &[name, value] : style.tables)
    known.insert(name);
  for (const auto &[name, value] : style.keys)
    known.insert(name);
  for (const auto &[name, value] : style.meanings)
    known.insert(name);
  for (const auto &[name, value] : style.measures)
    known.insert(name);
  for (const auto &[name, value] : style.masters)
    known.insert(name);
  const std::string looks = whole(rooms / "compose" / "looks.h") + whole(rooms / "compose" / "letter_looks.h");
  const std::regex named(R"re(= "([a-z-]+)";)re");
  int count = 0;
  for (std::sregex_iterator at(looks.begin(), looks.end(), named), end; at != end; ++at, ++count) {
    INFO((*at)[1]);
    CHECK(known.count((*at)[1]) == 1);
  }
  CHECK(count > 25);
}
