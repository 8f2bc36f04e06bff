#include <catch2/catch.hpp>

#include <limits>

#include "paper/output/sample.h"
#include "strakebook/paper/output/output.h"

namespace output = strakebook::output;
using namespace sample;

namespace {

/// Whether both backends take a page of 200 x 100 pt with this one item.
bool taken(decltype(page::Item::what) what) {
  page::Document one;
  one.fonts = fonts();
  one.pages = {{.size = {{200}, {100}},
                .frames = {},
                .items = {item(tag(page::Role::figure), "the/item", std::move(what))}}};
  base::Diagnostics sink;
  bool pdf = true, png = true;
  try {
    output::pdf(one, images(), sink);
  } catch (const std::logic_error &fault) {
    pdf = false;
    CHECK_THAT(fault.what(), Catch::Contains("page 1") && Catch::Contains("the/item"));
  }
  try {
    output::png(one, 0, images(), 36);
  } catch (const std::logic_error &) {
    png = false;
  }
  CHECK(pdf == png);
  return pdf;
}

constexpr double not_finite = std::numeric_limits<double>::quiet_NaN(),
                 infinite = std::numeric_limits<double>::infinity();

page::Run word() { return run(sans, 10, 20, 50, "plate"); }

} // namespace

TEST_CASE("a place on the edge of the sheet is taken, one beyond is not") {
  CHECK(taken(line(0, 0, 200, 100)));
  CHECK_FALSE(taken(line(0, 0, 200.01, 100)));
  CHECK_FALSE(taken(line(0, -0.01, 200, 100)));
  CHECK(taken(page::Anchor{{{200}, {0}}}));
  CHECK_FALSE(taken(page::Anchor{{{200}, {101}}}));
  CHECK(taken(page::Picture{picture(8, 6).ref, {{{0}, {0}}, {{200}, {100}}}}));
  CHECK_FALSE(taken(page::Picture{picture(8, 6).ref, {{{0}, {1}}, {{200}, {100}}}}));
  CHECK_FALSE(taken(page::Picture{picture(8, 6).ref, {{{20}, {20}}, {{-5}, {5}}}}));
}

TEST_CASE("a number that is not finite is not drawn") {
  for (double bad : {not_finite, infinite, -infinite}) {
    CHECK_FALSE(taken(line(0, 0, bad, 10)));
    CHECK_FALSE(taken(page::Anchor{{{bad}, {0}}}));
    auto run = word();
    run.glyphs[2].advance.v = bad;
    CHECK_FALSE(taken(run));
    run = word();
    run.glyphs[2].offset.y.v = bad;
    CHECK_FALSE(taken(run));
    run = word();
    run.size.v = bad;
    CHECK_FALSE(taken(run));
    auto dashed = line(0, 0, 10, 10);
    dashed.stroke->dash[0].v = bad;
    CHECK_FALSE(taken(dashed));
  }
}

TEST_CASE("text ends on the sheet, also turned text") {
  CHECK(taken(word()));
  auto long_run = word();
  long_run.glyphs.back().advance.v += 200;
  CHECK_FALSE(taken(long_run));
  auto turned = word();
  turned.upright = false;
  CHECK(taken(turned));
  turned.origin.y = {15};
  CHECK_FALSE(taken(turned));
}

TEST_CASE("glyphs stand for the whole text in its order") {
  auto disordered = word();
  std::swap(disordered.glyphs[1].cluster, disordered.glyphs[2].cluster);
  CHECK_FALSE(taken(disordered));
  auto beyond = word();
  beyond.glyphs.back().cluster = 5;
  CHECK_FALSE(taken(beyond));
  auto headless = word();
  headless.glyphs.erase(headless.glyphs.begin());
  CHECK_FALSE(taken(headless));
}

TEST_CASE("colours, fonts and paths that cannot be are refused") {
  auto run = word();
  run.colour = {0, 1.01, 0};
  CHECK_FALSE(taken(run));
  run = word();
  run.font = 2;
  CHECK_FALSE(taken(run));
  CHECK_FALSE(taken(page::Path{.steps = {page::Line{{{1}, {1}}}}, .fill = page::Colour{}, .stroke = {}}));
  auto solid_gap = line(0, 0, 9, 9);
  solid_gap.stroke->dash = {{0}, {0}};
  CHECK_FALSE(taken(solid_gap));
}

TEST_CASE("a sheet of impossible size is refused") {
  base::Diagnostics sink;
  page::Document empty;
  empty.pages = {{.size = {{not_finite}, {100}}, .frames = {}, .items = {}}};
  CHECK_THROWS_AS(output::pdf(empty, {}, sink), std::logic_error);
  empty.pages[0].size = {{2.9}, {100}};
  CHECK_THROWS_AS(output::pdf(empty, {}, sink), std::logic_error);
  CHECK_THROWS_AS(output::pdf(page::Document{}, {}, sink), std::logic_error);
}
