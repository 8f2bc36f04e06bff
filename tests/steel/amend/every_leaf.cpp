#include <algorithm>
#include <map>
#include <set>

#include "strakebook/base/text.h"
#include "whole_survey.h"

using namespace strakebook;
using namespace strakebook::amend;
using namespace strakebook::amend::testing;

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }

/// What a value can be changed to: another digit in a figure, another word that some key knows, and for all else longer words.
std::vector<std::string> others(const std::string &text) {
  static const std::vector<std::string> words = {
      "yes", "no", "bottom", "side", "round", "port", "starboard", "seen", "hammer", "inside", "active", "old", "forward", "aft", "A", "B", "percent-25",
      "absolute-3.0", "pit", "ut", "monitor", "insert", "W", "B", "SW", "BC", "PW 3", "N1", "photo 1", "2", "bare", "coated echo-to-echo",
      "mean of repeats", "least of repeats", "told, somebody", "passengers", "not tested", "against stations", "not applicable", "owner's word",
      "closed", "not seen", "EN 10051", "EN 10029:1991 A", "salt", "zinc", "draft", "builder's drawing", "0.8"};
  std::vector<std::string> all;
  for (auto at = text.find_first_of("0123456789"); at < text.size(); at = text.find_first_of("0123456789", at + 1)) {
    all.push_back(text);
    all.back()[at] = text[at] == '2' ? '1' : '2';
  }
  const bool figure = digit(text.front());
  all.insert(figure ? all.end() : all.begin(), text + " also");
  all.insert(all.end(), words.begin(), words.end());
  std::erase(all, text);
  return all;
}

/// What stands for something else in the file, so that it cannot be changed alone: counts, forms and names of files, units that every
/// figure would follow, a pit that has to close, names of which there is one.
const std::set<std::string> not_alone = {
    "strakebook", "datum/station-unit", "readings/-/file", "readings/-/form", "readings/-/separator", "readings/-/stations", "readings/-/marks",
    "readings/-/unit", "readings/-/surface", "pits/P1/remaining", "own-criteria/absolute-5.0-bottom/kind", "steelwork/S1/recommendation",
    "answer/most-important-limitation", "earlier-surveys/V21/datum/stations-in", "earlier-surveys/V21/readings/file",
    "earlier-surveys/V21/readings/separator", "earlier-surveys/V21/readings/stations", "earlier-surveys/V21/readings/marks",
    "earlier-surveys/V21/readings/unit", "addenda/1/closes/-/item"};

/// What each issue has of its own: no change is listed. Readings are compared mark by mark, so how their file is laid out is none either.
bool of_the_issue(const Path &path) {
  static const std::set<std::string> keys = {"recipients", "amendment", "addenda", "issue-record", "private"},
                                     fields = {"report/issue", "report/issued", "report/state", "report/supersedes", "surveyor/signed-on"};
  return keys.contains(path[0]) || fields.contains(text_of(path));
}

/// The one name that a change of this value is listed by.
std::string subject_of(const Path &path) {
  static const std::map<std::string, std::string> before_id = {
      {"decisions", "decision "}, {"recommendations", "item "}, {"steelwork", "schedule "}, {"criteria", "criterion "}, {"own-criteria", "criterion "},
      {"zones", "zone "},         {"rows", "row "},             {"pits", ""},              {"doublers", ""},           {"notes", ""},
      {"limitations", "limitation "}, {"photos", "photo "},     {"gauges", "gauge "},      {"earlier-surveys", "earlier "}, {"carried", "carried "}};
  const auto found = before_id.find(path[0]);
  return found == before_id.end() ? path[0] : found->second + path[1];
}

/// Of a set of readings: its cells and reasons belong to a mark, the rest to every mark that it holds.
std::string mark_of_reading(const Path &path) {
  const auto at = std::ranges::find_if(path, [](const std::string &key) { return key == "inline" || key == "rejected" || key == "queried"; });
  if (at == path.end()) return {};
  return *at == "inline" ? *(at + 1) + " " + *(at + 2) : *(at + 1);
}

void check_readings(const Path &path, const Changes &changes) {
  const auto mark = mark_of_reading(path);
  for (const auto &change : changes.all) {
    CHECK(change.kind == Kind::reading);
    if (!mark.empty()) CHECK(change.subject == mark);
  }
  if (!mark.empty()) CHECK(changes.all.size() == 1);
}

void check_leaf(const Path &path, const Changes &changes) {
  if (!of_the_issue(path) && path[0] == "readings") return check_readings(path, changes);
  CHECK(subjects(changes) == (of_the_issue(path) ? std::vector<std::string>{} : std::vector{subject_of(path)}));
}

/// A pit's remainder repeats its other two figures, which could not be changed beside it.
YamlNode without_remainder(YamlNode tree) {
  const auto find = [](YamlNode &node, std::string_view key) -> YamlNode & { return std::ranges::find(node.entries, key, &YamlNode::Entry::key)->value; };
  std::erase_if(find(find(tree, "pits"), "P1").entries, [](const YamlNode::Entry &entry) { return entry.key == "remaining"; });
  return tree;
}

struct Whole {
  base::FileSet files = whole_files();
  YamlNode tree = without_remainder(tree_of(files.at("survey.yaml")));
  std::unique_ptr<const State> state = read(with_survey(files, tree));
};

} // namespace

TEST_CASE("every value of the file that is changed is listed, once, by the name of what it belongs to") {
  Whole whole;
  REQUIRE(whole.state);
  int changed = 0;
  std::set<std::string> stuck;
  each_leaf(whole.tree, [&](YamlNode &, YamlNode &leaf, const Path &at) {
    if (not_alone.contains(text_of(at))) return;
    const auto as_it_was = leaf.text;
    std::unique_ptr<const State> other;
    for (const auto &text : others(as_it_was)) {
      leaf.text = text;
      other = read(with_survey(whole.files, whole.tree));
      if (other) break;
    }
    INFO(text_of(at) << ": " << as_it_was << " -> " << leaf.text);
    if (other) check_leaf(at, compared(*whole.state, *other));
    other ? void(++changed) : void(stuck.insert(text_of(at)));
    leaf.text = as_it_was;
  });
  CHECK(changed > 280);
  CHECK(stuck == std::set<std::string>{});
}

TEST_CASE("every value of the file that is left out is listed, once") {
  Whole whole;
  REQUIRE(whole.state);
  int left_out = 0;
  each_leaf(whole.tree, [&](YamlNode &holder, YamlNode &, const Path &at) {
    if (at.back() == "-") return;
    auto without = holder.entries;
    std::erase_if(without, [&](const YamlNode::Entry &entry) { return entry.key == at.back(); });
    std::swap(without, holder.entries);
    const auto other = read(with_survey(whole.files, whole.tree));
    INFO(text_of(at) << " left out");
    if (other) {
      ++left_out;
      check_leaf(at, compared(*whole.state, *other));
    }
    std::swap(without, holder.entries);
  });
  CHECK(left_out > 120);
}

TEST_CASE("every cell of a file of readings that is changed is listed, once, by its mark") {
  Whole whole;
  REQUIRE(whole.state);
  const std::string name = "readings/hull.csv";
  const std::vector<std::string> rows = {"PW", "SW", "BC"};
  int changed = 0;
  std::vector<std::string> lines;
  for (std::size_t from = 0, to; (to = whole.files[name].find('\n', from)) != std::string::npos; from = to + 1) lines.push_back(whole.files[name].substr(from, to - from));
  const auto first = 1 + static_cast<std::size_t>(std::ranges::find_if(lines, [](const auto &line) { return line.starts_with("station"); }) - lines.begin());
  for (std::size_t line = first; line < lines.size(); ++line) {
    std::vector<std::string> cells;
    for (std::size_t from = 0, to; from <= lines[line].size(); from = to + 1) {
      to = std::min(lines[line].find(',', from), lines[line].size());
      cells.push_back(lines[line].substr(from, to - from));
    }
    for (std::size_t column = 1; column < cells.size(); ++column)
      for (const std::string cell : {"5.1", "5.1 5.2", "no-echo", "unstable"}) {
        auto other_cells = cells;
        other_cells[column] = cell;
        auto other_lines = lines;
        other_lines[line] = base::joined(other_cells, ",");
        auto files = whole.files;
        files[name] = base::joined(other_lines, "\n") + "\n";
        const auto other = read(files);
        if (!other) continue; // a mark more than was planned, or a reason for one that is not rejected
        const auto same = std::string(base::trimmed(cells[column])) == cell;
        const std::vector<std::string> mark = {rows[column - 1] + " " + cells[0]};
        INFO(mark[0] << ": " << cells[column] << " -> " << cell);
        CHECK(subjects(compared(*whole.state, *other)) == (same ? std::vector<std::string>{} : mark));
        ++changed;
      }
  }
  CHECK(changed > 50);
}

TEST_CASE("quotes, folding, remarks and the order of keys are no change; a grid may become a long file") {
  Whole whole;
  REQUIRE(whole.state);
  CHECK(subjects(compared(*whole.state, *read(with_survey(whole.files, whole.tree)))).empty());
  std::function<void(YamlNode &)> turn = [&](YamlNode &node) {
    std::ranges::reverse(node.entries);
    for (auto &entry : node.entries) turn(entry.value);
    for (auto &item : node.items) turn(item);
  };
  turn(whole.tree);
  const auto turned = read(with_survey(whole.files, whole.tree));
  REQUIRE(turned);
  CHECK(subjects(compared(*whole.state, *turned)).empty());
}
