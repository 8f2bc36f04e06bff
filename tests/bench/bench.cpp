#include <algorithm>
#include <array>
#include <cstdio>
#include <ctime>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "bench/sample_document.h"
#include "strakebook/house/house.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/paper/typeset/layout.h"
#include "strakebook/paper/typeset/line.h"
#include "strakebook/paper/typeset/memo.h"
#include "strakebook/paper/typeset/typeset.h"

/// Where the time of setting a long report goes: CPU time of the whole and of parts done alone on the same document, as
/// medians of several runs. Parts are inclusive (a table is shaped as it is laid), and so add up to more than the whole.
using namespace strakebook;

namespace {

constexpr int rows_of_a_long_report = 2400, runs = 7;

double cpu_ms() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

double took_ms(const std::function<void()> &work) {
  const double begin = cpu_ms();
  work();
  return cpu_ms() - begin;
}

double median(std::vector<double> of) {
  std::ranges::sort(of);
  return of[of.size() / 2];
}

/// Everything that setting needs, read once.
struct Bench {
  const style::Style &style;
  std::filesystem::path fonts;
  content::Document document;
  base::Diagnostics sink;
  typeset::Hyphenation hyphenation = typeset::Hyphenation::load(fonts, document.language, sink).value();

  typeset::FontSet fresh_fonts() { return typeset::FontSet::load(fonts, style.faces, sink).value(); }
};

/// Each block of one kind laid by itself on endless paper.
template <class Kind> void lay_all(Bench &bench, const typeset::FontSet &fonts) {
  const typeset::Places places;
  const std::vector<typeset::ContentsLine> contents;
  typeset::Memo memo;
  const typeset::Context context{bench.style, fonts, bench.sink, places, bench.document.names, bench.document.labels,
                                 contents, memo, 1, {}, "bench", {}, &bench.hyphenation};
  const base::Pt endless{1e6};
  const typeset::Region region{style::body_width(style::master(bench.style, "page")), endless, endless};
  for (const auto &section : bench.document.sections)
    for (const auto &block : section.blocks)
      if (std::holds_alternative<Kind>(block.what)) typeset::lay(block, {}, region, context);
}

void shape_all(const typeset::FontSet &fonts, const std::vector<std::string> &words) {
  for (const auto &word : words) fonts.shape(0, {9.75}, word, true);
}

page::Document set(Bench &bench, const typeset::FontSet &fonts) {
  return typeset::typeset(bench.document, bench.style, fonts, bench.hyphenation, bench.sink);
}

/// What one part took in each run, and what share that was of the whole of the same run: a machine that is busy with other
/// things slows both.
struct Part {
  const char *name;
  std::function<void()> work;
  std::vector<double> took, share;
};

void print_parts(Bench &bench) {
  const auto words = bench::words_of(bench.document);
  const auto fonts = bench.fresh_fonts();
  auto pages = set(bench, fonts);
  std::optional<typeset::FontSet> cold;
  std::vector<Part> parts = {
      {"shaping, no word known yet", [&] { shape_all(*cold, words); }},
      {"shaping, every word known", [&] { shape_all(fonts, words); }},
      {"paragraphs: shape, break, draw; once", [&] { lay_all<content::Paragraph>(bench, fonts); }},
      {"tables: measure, shape, lay; once", [&] { lay_all<content::Table>(bench, fonts); }},
      {"layout: all rounds, with furniture", [&] { pages = set(bench, fonts); }},
      {"PDF: content, fonts, navigation, writing", [&] { output::pdf(pages, {}, bench.sink); }}};
  std::vector<double> wholes;
  for (int run = 0; run < runs; ++run) {
    cold.emplace(bench.fresh_fonts());
    for (auto &part : parts) part.took.push_back(took_ms(part.work));
    wholes.push_back(parts[4].took.back() + parts[5].took.back());
    for (auto &part : parts) part.share.push_back(part.took.back() / wholes.back());
  }
  fmt::print("{} rows, {} words, {} pages: medians of {} runs, CPU time and share of the whole of the same run\n",
             rows_of_a_long_report, words.size(), pages.pages.size(), runs);
  for (const auto &part : parts) fmt::print("  {:<42} {:8.1f} ms  {:5.2f}\n", part.name, median(part.took), median(part.share));
  fmt::print("  {:<42} {:8.1f} ms\n", "whole: layout and PDF", median(wholes));
}

/// Layout by itself at one, two and four times the rows, one after the other in each run.
void print_scale(Bench &bench) {
  const std::array times{1, 2, 4};
  std::array<std::vector<double>, 3> took, by_row;
  for (int run = 0; run < runs; ++run)
    for (std::size_t i = 0; i < times.size(); ++i) {
      bench.document = bench::sample_document(rows_of_a_long_report * times[i]);
      const auto fonts = bench.fresh_fonts();
      took[i].push_back(took_ms([&] { set(bench, fonts); }));
      by_row[i].push_back(took[i].back() / took[0].back() / times[i]);
    }
  fmt::print("layout, no word known yet, by number of rows\n");
  for (std::size_t i = 0; i < times.size(); ++i)
    fmt::print("  {:6} rows {:8.1f} ms, by the row {:.2f} of the first\n", rows_of_a_long_report * times[i], median(took[i]),
               median(by_row[i]));
}

} // namespace

int main() {
  const std::filesystem::path root = STRAKEBOOK_ROOT;
  base::Diagnostics sink;
  const auto house = house::read_house("base", root / "layouts", root, {}, sink);
  if (!house) {
    fmt::print(stderr, "{}", base::terminal_text(sink));
    return 1;
  }
  Bench bench{house->style, root / "fonts", bench::sample_document(rows_of_a_long_report), {}};
  print_parts(bench);
  print_scale(bench);
  fmt::print("{}", bench.sink.all().empty() ? "" : base::terminal_text(bench.sink));
  return bench.sink.ok() ? 0 : 1;
}
