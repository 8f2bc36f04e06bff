#include <catch2/catch.hpp>

#include "house/layouts.h"

using namespace strakebook;
using base::Code;
using base::Diagnostics;

namespace {

constexpr double mm = 72 / 25.4;

const std::string letter = "style: {masters: {page: {sheet: [215.9mm, 279.4mm]}, map: {sheet: [279.4mm, 215.9mm]}}";

} // namespace

TEST_CASE("another sheet is one value: columns that share the rest follow it") {
  const test::Layouts layouts;
  Diagnostics sink;
  const auto house = layouts.extended(letter + "}", sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  const auto body = [&](const std::string &name) { return style::body_width(style::master(house->style, name)); };
  CHECK(body("page").v == Approx(169.9 * mm));
  for (const auto &[name, lattice] : house->style.lattices) {
    INFO(name);
    base::Pt sum{};
    for (const auto width : lattice.widths)
      sum += width;
    for (const auto gutter : lattice.gutters)
      sum += gutter;
    CHECK(sum.v == Approx(body(name == "map-legend" ? "map" : "page").v));
  }
  CHECK(house->style.lattices.at("text-side").widths[1].v == Approx(52 * mm));
  CHECK(house->style.lattices.at("halves").widths[0].v == Approx((169.9 - 6) / 2 * mm));
}

TEST_CASE("fixed columns that do not come to the body are refused with both sums") {
  const auto refused = [](const std::string &body, const std::string &part) {
    const test::Layouts layouts;
    Diagnostics sink;
    CHECK_FALSE(layouts.extended(body, sink));
    test::check_only(sink, Code::out_of_range, part);
  };
  refused(letter + ", lattices: {halves: {widths: [79mm, 79mm]}}}", "\"halves\" come to 164.0 mm, the body of \"page\" is 169.9 mm wide");
  refused("style: {lattices: {text-side: {widths: [rest, 158mm]}}}", "\"text-side\" come to 164.0 mm, the body of \"page\" is 164.0 mm wide");
  refused("style: {lattices: {halves: {widths: [rest, rest, rest]}}}", "one gutter fewer");
}

TEST_CASE("widths are a list of lengths") {
  for (const auto &[written, code] : {std::pair{"52mm", Code::wrong_kind}, std::pair{"[rest, 52]", Code::bad_length}}) {
    const test::Layouts layouts;
    Diagnostics sink;
    CHECK_FALSE(layouts.extended("style: {lattices: {text-side: {widths: " + std::string(written) + "}}}", sink));
    test::check_only(sink, code);
  }
}

TEST_CASE("a lattice names a master that there is") {
  const test::Layouts layouts;
  Diagnostics sink;
  CHECK_FALSE(layouts.extended("style: {lattices: {halves: {on: pages}}}", sink));
  test::check_only(sink, Code::unknown_word, "page");
}
