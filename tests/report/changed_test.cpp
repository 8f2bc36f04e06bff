#include <catch2/catch.hpp>

#include <cmath>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

#include "report/examples_support.h"

using namespace strakebook;

// Bars beside what changed, on finished pages: an example, and the same with one figure of it corrected.

namespace {

namespace fs = std::filesystem;

base::FileSet files_of(const std::string &example) {
  base::FileSet files;
  const fs::path folder = fs::path(STRAKEBOOK_ROOT "/example-surveys") / example;
  for (const auto &entry : fs::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    std::ifstream in(entry.path(), std::ios::binary);
    files[fs::relative(entry.path(), folder).generic_string()] = std::string(std::istreambuf_iterator<char>(in), {});
  }
  return files;
}

Case opened(const base::FileSet &files) {
  base::Diagnostics sink;
  auto found = open_case(base::FileInFolder(base::Folder::kept(files), "survey.yaml"), installed_resources(), sink);
  INFO(base::terminal_text(sink));
  REQUIRE(found);
  REQUIRE(sink.ok());
  return std::move(*found);
}

/// `now` as an issue that replaces `before`, with these changes.
Case corrected(Case now, const Case &before, std::vector<amend::Change> changes) {
  now.before = std::make_shared<const Case>(before);
  now.amended = amend::Amended{{.issue = 1, .date = base::Date{2026, 10, 16}, .digest = std::string(64, 'b'), .recipients = {}}, {}};
  now.amended->changes.all = std::move(changes);
  now.past = {now.amended->replaces};
  return now;
}

page::Document pages_of(const Case &the_case) {
  base::Diagnostics sink;
  auto proof = set_pages(the_case, installed_resources(), sink);
  INFO(base::terminal_text(sink));
  REQUIRE(proof);
  return std::move(proof->pages);
}

struct Bar {
  double top = 0, bottom = 0;
};

/// Filled boxes of a page that stand where the style puts change bars.
std::vector<Bar> bars_of(const page::Page &page, const style::Style &style) {
  const double left = page.frames.front().box.at.x.v - style::measure(style, "change-bar-offset").v;
  std::vector<Bar> bars;
  for (const auto &item : page.items) {
    const auto *path = std::get_if<page::Path>(&item.what);
    if (!path || !path->fill || path->steps.size() < 4) continue;
    const auto *first = std::get_if<page::Move>(&path->steps[0]);
    const auto *third = std::get_if<page::Line>(&path->steps[2]);
    if (first && third && std::abs(first->to.x.v - left) < 0.01) bars.push_back({first->to.y.v, third->to.y.v});
  }
  return bars;
}

std::size_t count_bars(const page::Document &pages, const style::Style &style) {
  std::size_t count = 0;
  for (const auto &page : pages.pages) count += bars_of(page, style).size();
  return count;
}

/// What a row of the tables says, by its id, without the pages it names.
std::map<std::string, std::string> row_texts(const page::Document &pages) {
  static const std::regex page_name("p\\.\u00A0[0-9]+");
  std::map<std::string, std::string> texts;
  for (const auto &page : pages.pages)
    for (const auto &item : page.items)
      if (const auto *run = std::get_if<page::Run>(&item.what); run && (item.id.starts_with("mark/") || item.id.starts_with("pit/")))
        texts[item.id] += run->text + "|";
  for (auto &[id, text] : texts) text = std::regex_replace(text, page_name, "p.");
  return texts;
}

/// Rows of marks and pits, those that a bar stands beside, and where each stands: rows of tables that stand twice beside themselves share
/// a line, and the bar in the margin.
struct Rows {
  std::set<std::string> barred, all;
  std::map<std::string, std::pair<const page::Page *, long>> lines;
};

Rows rows_of(const page::Document &pages, const style::Style &style) {
  Rows rows;
  for (const auto &page : pages.pages) {
    const auto bars = bars_of(page, style);
    for (const auto &item : page.items) {
      const auto *anchor = std::get_if<page::Anchor>(&item.what);
      if (!anchor || !(item.id.starts_with("mark/") || item.id.starts_with("pit/"))) continue;
      rows.all.insert(item.id);
      rows.lines[item.id] = {&page, std::lround(anchor->at.y.v)};
      const double at = anchor->at.y.v + 1;
      if (std::ranges::any_of(bars, [&](const Bar &bar) { return bar.top < at && at < bar.bottom; })) rows.barred.insert(item.id);
    }
  }
  return rows;
}

const std::string example = "thick-bottom";

} // namespace

TEST_CASE("a report that says the same as the issue before has no bar, though all its pages moved") {
  const Case one = opened(files_of(example));
  const auto pages = pages_of(corrected(one, one, {}));
  CHECK(pages.pages.size() > pages_of(one).pages.size());
  CHECK(count_bars(pages, one.house.style) == 0);
}

TEST_CASE("every row that reads otherwise has a bar, and no other row") {
  const auto files = files_of(example);
  const Case before = opened(files);
  const auto &mark = before.survey.marks.at(3);
  const Case now = [&] {
    Case out = opened(files);
    base::MeasuredError wrong;
    for (auto &one : out.survey.marks.at(3).repeats) one = base::parse_measured("10.1", base::Unit::millimetre, wrong).value();
    base::Diagnostics sink;
    out.assessment = assess::assess(out.survey, out.house.policy, sink);
    out.outlook = outlook::outlook(out.survey, out.assessment, out.house.policy);
    return out;
  }();
  const Case both = corrected(now, before, {{.kind = amend::Kind::reading, .how = amend::How::changed, .subject = mark.id()}});
  const auto pages = pages_of(both);
  const auto rows = rows_of(pages, before.house.style);
  const auto texts = row_texts(pages), texts_before = row_texts(pages_of(before));
  CHECK(rows.barred.contains("mark/" + mark.id()));
  CHECK(rows.all.size() > 20);
  std::set<std::pair<const page::Page *, long>> changed_lines;
  for (const auto &id : rows.all)
    if (texts.at(id) != texts_before.at(id)) changed_lines.insert(rows.lines.at(id));
  CHECK(changed_lines.size() < rows.all.size() / 4);
  for (const auto &id : rows.all) {
    INFO(id << ": " << texts.at(id) << " / " << texts_before.at(id));
    CHECK(rows.barred.contains(id) == changed_lines.contains(rows.lines.at(id)));
  }
}

TEST_CASE("page one of a corrected report is one page and says what it replaces") {
  for (const auto &name : examples::names()) {
    const Case one = opened(files_of(name));
    const auto pages = pages_of(corrected(one, one, {{.kind = amend::Kind::decision, .how = amend::How::changed, .subject = "decision W", .differences = {{"action", "monitor", "insert"}}}}));
    std::string first;
    for (const auto &item : pages.pages.front().items)
      if (const auto *run = std::get_if<page::Run>(&item.what)) first += run->text;
    INFO(name);
    CHECK(first.find("replaces") != std::string::npos);
    CHECK(first.find("a decision changed") != std::string::npos);
    const auto &second = pages.pages.at(1).items;
    CHECK(std::ranges::any_of(second, [](const page::Item &item) { return item.id == "section/changes"; }));
  }
}
