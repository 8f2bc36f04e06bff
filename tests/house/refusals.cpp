#include <catch2/catch.hpp>

#include "house/layouts.h"

using namespace strakebook;
using base::Code;
using base::Diagnostics;

namespace {

/// One change to the shipped base, and what is said about it.
void spoiled(const std::string &file, const std::string &was, const std::string &now, Code code,
             const std::string &part = {}) {
  INFO(now);
  const test::Layouts layouts;
  layouts.change(file, was, now);
  Diagnostics sink;
  CHECK_FALSE(layouts.read("base", sink));
  test::check_only(sink, code, part);
  if (!sink.all().empty())
    CHECK(sink.all().front().span.file->path.find(file) != std::string::npos);
}

} // namespace

TEST_CASE("lengths, shares, numbers and tones are written one way") {
  spoiled("base/policy.yaml", "limit: 3.5 mm", "limit: 3.5", Code::bad_length, "3.5 mm");
  spoiled("base/policy.yaml", "limit: 3.5 mm", "limit: 3,5 mm", Code::bad_length);
  spoiled("base/policy.yaml", "most-loss: 30 %", "most-loss: thirty", Code::bad_number);
  spoiled("base/policy.yaml", "most-loss: 30 %", "most-loss: 130 %", Code::out_of_range);
  spoiled("base/policy.yaml", "band: 1.645", "band: 1.645e0", Code::bad_number);
  spoiled("base/policy.yaml", "least-marks: 5 ", "least-marks: 5.5 ", Code::out_of_range);
  spoiled("base/page.yaml", "grid: 13pt", "grid: 13", Code::bad_length, "9.5pt");
  spoiled("base/type.yaml", "'#9AA3A8'", "'#9AA3AG'", Code::bad_number);
  spoiled("base/policy.yaml", "overplate (doubler), adverse: yes", "overplate (doubler), adverse: true",
          Code::unknown_word, "yes, no");
  spoiled("base/policy.yaml", "confidence: 95 %", "confidence: 100 %", Code::out_of_range, "less than 100 %");
  spoiled("base/policy.yaml", "percentile: 10 %", "percentile: 0 %", Code::out_of_range, "more than 0 %");
  spoiled("base/policy.yaml", "percentile-type: 6", "percentile-type: 5", Code::unknown_word, "6, 7, 8");
  spoiled("base/forms.yaml", "abreast: 2", "abreast: 0", Code::out_of_range, "1 or more");
}

TEST_CASE("a decision rule and its band go together") {
  spoiled("base/policy.yaml", "band: 1.645", "band: 0", Code::rule_and_band, "1.645");
  spoiled("base/policy.yaml", "    band: 1.645\n", "", Code::rule_and_band, "1.645");
  spoiled("base/policy.yaml", "rule: guard-band", "rule: simple-acceptance", Code::rule_and_band, "guard-band");
  spoiled("base/policy.yaml", "band: 1.645", "band: -1", Code::out_of_range);
  spoiled("base/policy.yaml", "rule: guard-band", "rule: guard-bend", Code::unknown_word, "guard-band");
}

TEST_CASE("a criterion is written with the keys of its kind, and bound by words that are known") {
  spoiled("base/policy.yaml", "declared: passengers", "declared: passenger", Code::unknown_word, "passengers");
  spoiled("base/policy.yaml", "original-at-most: 4 mm", "original-at-most: 4", Code::bad_length, "4 mm");
  spoiled("base/policy.yaml", "      most-loss: 20 %\n      substantial-from: 75 %\n", "      most-loss: 20 %\n", Code::missing_key,
          "substantial-from");
  spoiled("base/policy.yaml", "        length-factor: 0.55\n", "", Code::missing_key, "length-factor");
  spoiled("base/policy.yaml", "limit: 3.5 mm", "limit: 3.5 mm\n      substantial-from: 75 %", Code::unknown_key, "limit");
}

TEST_CASE("ordered values are in order") {
  spoiled("base/policy.yaml", "below: 3.0 mm", "below: 2.4 mm", Code::layout_order, "thin");
  spoiled("base/policy.yaml", "[4 mm, 5 mm, 6 mm,", "[4 mm, 6 mm, 5 mm,", Code::layout_order,
          "from thin to thick");
  spoiled("base/type.yaml", "ramp-4: '#C6D3D8'", "ramp-4: '#46687A'", Code::layout_order, "ramp-4");
  spoiled("base/tolerances.yaml", "{from: 5 mm, to: 8 mm, minus: 0.4 mm, plus: 1.1 mm}",
          "{from: 6 mm, to: 8 mm, minus: 0.4 mm, plus: 1.1 mm}", Code::layout_order, "5 mm");
  spoiled("base/tolerances.yaml", "{size: 6 mm, minus", "{size: 5 mm, minus", Code::layout_order, "from thin to thick");
}

TEST_CASE("a tolerance gives bands or sizes, one of the two") {
  spoiled("base/tolerances.yaml", "      sizes:\n", "      bands: [{from: 3 mm, to: 5 mm, minus: 0.4 mm, plus: 0.8 mm}]\n      sizes:\n",
          Code::unknown_key, "one of them");
  spoiled("base/tolerances.yaml", "      verified: no\n      sizes:\n        - {size: 5 mm, minus: 0.29 mm, plus: 0.29 mm}\n        - {size: 6 mm, minus: 0.31 mm, plus: 0.31 mm}\n        - {size: 10 mm, minus: 0.40 mm, plus: 0.40 mm}\n",
          "      verified: yes\n", Code::missing_key, "one of them");
}

TEST_CASE("names that a layout uses are names that it gives") {
  spoiled("base/policy.yaml", "actions: [insert], words: insert", "actions: [replate], words: insert",
          Code::unknown_word, "an action");
  spoiled("base/policy.yaml", "usual-tolerances: ['EN 10029:1991 A'", "usual-tolerances: ['EN 10029:1991 E'",
          Code::unknown_word, "a tolerance");
  spoiled("base/forms.yaml", "row-line: {stroke: rule-light,", "row-line: {stroke: rule-lite,",
          Code::unknown_word, "rule-light");
  spoiled("base/type.yaml", "upright: serif, strong", "upright: seriff, strong", Code::unknown_word, "serif");
  spoiled("base/forms.yaml", "label-width: 19mm", "label-width: 19mm, pad: 1mm", Code::unknown_key);
  spoiled("base/cautions.yaml", "when: hammer", "when: hamer", Code::unknown_word, "hammer");
}

TEST_CASE("what every page needs is there") {
  spoiled("base/page.yaml", "    block-gap: 6.5pt\n", "", Code::missing_key, "block-gap");
  spoiled("base/policy.yaml", "  steel-density: '7.85'", "  #", Code::missing_key, "steel-density");
  spoiled("base/policy.yaml", "      limit: 3.5 mm\n", "", Code::missing_key, "limit");
  spoiled("base/policy.yaml", "limit: 3.5 mm", "limit: 3.5 mm\n      most-loss: 20 %", Code::unknown_key,
          "limit");
}

TEST_CASE("columns fill a page, lines do not overlap, and nothing is set too small") {
  spoiled("base/page.yaml", "widths: [rest, 52mm], gutters: [6mm]}   #", "widths: [106mm, 50mm], gutters: [6mm]}   #", Code::out_of_range, "text-side");
  spoiled("base/page.yaml", "left: 24mm\n      right: 22mm\n      top: 26mm", "left: 190mm\n      right: 22mm\n      top: 26mm", Code::out_of_range);
  spoiled("base/type.yaml", "figure-label: {family: plain, size: 7.2pt",
          "figure-label: {family: plain, size: 6.7pt", Code::out_of_range, "6.8pt");
  spoiled("base/type.yaml", "size: 27pt, leading: 30pt", "size: 27pt, leading: 20pt", Code::out_of_range);
}

TEST_CASE("a layout that cannot be found names those that can") {
  const test::Layouts layouts;
  Diagnostics sink;
  CHECK_FALSE(layouts.read("river-desc", sink));
  REQUIRE(sink.all().size() == 1);
  CHECK(sink.all().front().code == Code::layout_unknown);
  CHECK(sink.all().front().expected.find("base, river-desk") != std::string::npos);
  CHECK(sink.all().front().write == "river-desk");
  Diagnostics escape;
  CHECK_FALSE(layouts.read("../installed/base", escape));
  CHECK(escape.all().front().code == Code::layout_unknown);
}

TEST_CASE("layouts that extend each other in a circle") {
  const test::Layouts layouts;
  layouts.install("one.yaml", "layout: 1\nextends: two\n");
  layouts.install("two.yaml", "layout: 1\nextends: one\n");
  Diagnostics sink;
  CHECK_FALSE(layouts.read("one", sink));
  test::check_only(sink, Code::layout_cycle, "one -> two -> one");
}

TEST_CASE("a layout beside the survey is found first and cannot leave the base behind") {
  const test::Layouts layouts;
  layouts.beside("mine.yaml", "layout: 1\nextends: river-desk\nfirm: Mine\n");
  Diagnostics good;
  const auto house = layouts.read("mine", good);
  REQUIRE(house);
  CHECK(house->wording.firm == "Mine");
  CHECK(house->wording.sections.size() == 24);

  layouts.beside("bare.yaml", "layout: 1\nfirm: Bare\n");
  Diagnostics sink;
  CHECK_FALSE(layouts.read("bare", sink));
  test::check_only(sink, Code::layout_loosens, "extends: base");
}

TEST_CASE("parts stay in the folder, say a thing once, and the format is declared") {
  const test::Layouts layouts;
  layouts.install("a.yaml", "layout: 1\nextends: base\nparts: [../outside.yaml]\n");
  layouts.install("b.yaml", "layout: 1\nextends: base\nparts: [part.yaml]\nfirm: Here\n");
  layouts.install("part.yaml", "firm: And here\n");
  layouts.install("c.yaml", "extends: base\n");
  layouts.install("d.yaml", "layout: 2\nextends: base\n");
  const auto only = [&](const char *name, Code code) {
    Diagnostics sink;
    CHECK_FALSE(layouts.read(name, sink));
    test::check_only(sink, code);
  };
  only("a", Code::path_escapes);
  only("b", Code::yaml_duplicate_key);
  only("c", Code::missing_key);
  only("d", Code::bad_version);
}
