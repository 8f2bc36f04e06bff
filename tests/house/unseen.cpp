#include <catch2/catch.hpp>

#include "house/layouts.h"

using namespace strakebook;
using base::Code;

namespace {

void refused(const std::string &values, Code code) {
  INFO(values);
  const test::Layouts layouts;
  base::Diagnostics sink;
  CHECK_FALSE(layouts.extended("policy: {unseen: {" + values + "}}", sink));
  test::check_only(sink, code);
}

} // namespace

TEST_CASE("how little an extreme value may rest on is a layout's, and moves the strict way only, with its authority") {
  const test::Layouts layouts;
  base::Diagnostics sink;
  const auto house = layouts.extended("policy: {unseen: {least-blocks: 20, significance: 10 %, source: a book}}", sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  CHECK(house->policy.unseen.least_blocks == 20);
  CHECK(house->policy.unseen.significance == base::Ratio{1, 10});
  refused("least-blocks: 9, source: a book", Code::layout_loosens);
  refused("confidence: 90 %, source: a book", Code::layout_loosens);
  refused("significance: 1 %, source: a book", Code::layout_loosens);
  refused("least-blocks: 20", Code::missing_key);
  refused("confidence: 100 %, source: a book", Code::out_of_range);
}
