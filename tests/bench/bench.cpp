#include <algorithm>
#include <cstdio>
#include <ctime>
#include <functional>
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

double median_ms(const std::function<void()> &work) {
  std::vector<double> took;
  for (int i = 0; i < runs; ++i) {
    const double begin = cpu_ms();
    work();
    took.push_back(cpu_ms() - begin);
  }
  std::ranges::sort(took);
  return took[took.size() / 2];
}

/// Everything that setting needs, read once.
struct Bench {
  const style::Style &style;
  std::filesystem::path fonts;
  content::Document document;
  base::Diagnostics sink;

  typeset::FontSet fresh_fonts() { return typeset::FontSet::load(fonts, style.faces, sink).value(); }
};

/// Each block of one kind laid by itself on endless paper.
template <class Kind> void lay_all(Bench &bench, const typeset::FontSet &fonts) {
  const typeset::Places places;
  const std::vector<typeset::ContentsLine> contents;
  typeset::Memo memo;
  const typeset::Context context{bench.style, fonts, bench.sink, places, bench.document.names, bench.document.labels,
                                 contents, memo, 1, {}, "bench", {}};
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
  return typeset::typeset(bench.document, bench.style, fonts, bench.sink);
}

void print_line(const char *what, double ms, double whole) { fmt::print("  {:<44} {:8.1f} ms  {:5.2f}\n", what, ms, ms / whole); }

void print_parts(Bench &bench) {
  const auto words = bench::words_of(bench.document);
  const auto fonts = bench.fresh_fonts();
  const auto pages = set(bench, fonts);
  const double laid = median_ms([&] { set(bench, fonts); });
  const double written = median_ms([&] { output::pdf(pages, {}, bench.sink); });
  const double whole = laid + written;
  fmt::print("{} rows, {} words, {} pages; median of {} runs, CPU time, share of the whole\n", rows_of_a_long_report,
             words.size(), pages.pages.size(), runs);
  std::vector<typeset::FontSet> cold;
  for (int i = 0; i < runs; ++i) cold.push_back(bench.fresh_fonts());
  std::size_t next = 0;
  print_line("shaping, no word known yet", median_ms([&] { shape_all(cold[next++], words); }), whole);
  print_line("shaping, every word known", median_ms([&] { shape_all(fonts, words); }), whole);
  print_line("paragraphs: shape, break, draw; once", median_ms([&] { lay_all<content::Paragraph>(bench, fonts); }), whole);
  print_line("tables: measure, shape, lay; once", median_ms([&] { lay_all<content::Table>(bench, fonts); }), whole);
  print_line("layout: all rounds, with furniture", laid, whole);
  print_line("PDF: content, fonts, navigation, writing", written, whole);
  print_line("whole: layout and PDF", whole, whole);
}

void print_scale(Bench &bench) {
  double first = 0;
  fmt::print("layout by number of rows\n");
  for (int times : {1, 2, 4}) {
    bench.document = bench::sample_document(rows_of_a_long_report * times);
    const auto fonts = bench.fresh_fonts();
    const double laid = median_ms([&] { set(bench, fonts); });
    if (times == 1) first = laid;
    fmt::print("  {:6} rows {:8.1f} ms  {:.2f} times the first, by the row {:.2f}\n", rows_of_a_long_report * times, laid,
               laid / first, laid / first / times);
  }
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
