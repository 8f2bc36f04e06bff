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
                 std::regex(R"re((?:say|tell|with_page)\(\s*(?:scope,\s*)?"([a-z0-9.-]+)")re"));
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
  const auto unseen = matches(rooms / "compose", std::regex(R"re([.>](?:say|tell)\(\s*([^"\s]))re"));
  CHECK(unseen.empty());
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
  const std::string looks = whole(rooms / "compose" / "looks.h");
  const std::regex named(R"re(= "([a-z-]+)";)re");
  int count = 0;
  for (std::sregex_iterator at(looks.begin(), looks.end(), named), end; at != end; ++at, ++count) {
    INFO((*at)[1]);
    CHECK(known.count((*at)[1]) == 1);
  }
  CHECK(count > 25);
}
