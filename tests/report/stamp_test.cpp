#include <catch2/catch.hpp>

#include "report/examples_support.h"
#include "strakebook/compose/stamp.h"
#include "strakebook/paper/typeset/typeset.h"

using namespace strakebook;

// The stamp hides nothing: its words stand where no page of any example has anything.

namespace {

struct Edges {
  double top = 1e9, bottom = 0; ///< of ink, in points from the top of the sheet
};

/// What is above the highest and under the lowest thing on a page, by the runs' size.
Edges ink_of(const page::Page &page) {
  Edges found;
  for (const auto &item : page.items)
    if (const auto *run = std::get_if<page::Run>(&item.what)) {
      found.top = std::min(found.top, run->origin.y.v - run->size.v);
      found.bottom = std::max(found.bottom, run->origin.y.v + run->size.v / 4);
    }
  return found;
}

page::Document stamp_over(const Case &one) {
  const auto resources = installed_resources();
  amend::Amended amended{.replaces = {.issue = 1, .date = {}, .digest = {}, .recipients = {}}, .changes = {}};
  base::Diagnostics sink;
  const auto fonts = *typeset::FontSet::load(resources.fonts, one.house.style.faces, sink);
  const auto hyphenation = *typeset::Hyphenation::load(resources.fonts, one.house.wording.language, sink);
  const auto blocks = compose::stamp({.survey = one.survey, .assessment = one.assessment, .outlook = one.outlook, .house = one.house,
                                      .findings = sink, .tool = tool_name(), .amended = &amended});
  auto pages = typeset::typeset(blocks, one.house.style, fonts, hyphenation, sink);
  REQUIRE(sink.all().empty());
  return pages;
}

} // namespace

TEST_CASE("the bands of the stamp stand in margins that no page uses, on sheets either way up") {
  const examples::Example example("thick-bottom");
  const auto stamp = stamp_over(example.the_case);
  REQUIRE(stamp.pages.size() == 1);
  std::vector<double> baselines;
  double size = 0;
  for (const auto &item : stamp.pages[0].items)
    if (const auto *run = std::get_if<page::Run>(&item.what)) {
      baselines.push_back(run->origin.y.v);
      size = run->size.v;
    }
  const auto [head, foot] = std::ranges::minmax(baselines);
  const double sheet = stamp.pages[0].size.height.v;
  for (const auto &page : example.pages.pages) {
    const auto ink = ink_of(page);
    CHECK(head + size / 4 < ink.top);
    CHECK(sheet - (foot - size) < page.size.height.v - ink.bottom); // counted from the lower edge, as it is laid
    CHECK(head - size > 0);
    CHECK(foot + size / 4 < sheet);
  }
}
