#include <catch2/catch.hpp>

#include "house/layouts.h"

using namespace strakebook;
using base::Code;

namespace {

void refused(const std::string &body, Code code, const std::string &part = {}) {
  INFO(body);
  const test::Layouts layouts;
  base::Diagnostics sink;
  CHECK_FALSE(layouts.extended(body, sink));
  test::check_only(sink, code, part);
}

} // namespace

TEST_CASE("floating and anodes: shipped figures") {
  base::Diagnostics sink;
  const auto house = test::shipped("base", sink);
  REQUIRE(house);
  const auto &policy = house->policy;
  // common practice, no source
  CHECK(policy.afloat.waters.at("fresh") == base::Decimal{1000, 3});
  CHECK(policy.afloat.waters.at("salt") == base::Decimal{1025, 3});
  // DNV-RP-B401: aluminium 2000 A h/kg, utilisation 0.90 of long slender anodes
  CHECK(policy.protection.metals.at("aluminium").capacity == base::Decimal{2000, 0});
  CHECK(policy.protection.utilisation == base::Decimal{90, 2});
}

TEST_CASE("floating and anodes move the strict way only") {
  refused("policy: {afloat: {source: ours, least-freeboard: 200 mm}}", Code::layout_loosens, "250 mm or more");
  refused("policy: {afloat: {source: ours, least-downflooding: 200 mm}}", Code::layout_loosens, "250 mm or more");
  refused("policy: {afloat: {source: ours, waters: {fresh: '1.020'}}}", Code::layout_loosens, "1.000 or less");
  refused("policy: {afloat: {least-freeboard: 300 mm}}", Code::missing_key, "source");
  refused("policy: {protection: {source: ours, utilisation: '0.95'}}", Code::layout_loosens, "0.90 or less");
  refused("policy: {protection: {source: ours, unworn-percent: '4'}}", Code::layout_loosens, "5 or more");
  refused("policy: {protection: {source: ours, unworn-months: 18}}", Code::layout_loosens, "12 or less");
  refused("policy: {protection: {source: ours, metals: {zinc: {source: ours, capacity: '800'}}}}", Code::layout_loosens, "780 or less");
}

TEST_CASE("which metal suits which water, and which action lays which plate, is not the house's to change") {
  refused("policy: {protection: {source: ours, metals: {magnesium: {source: ours, waters: [fresh, salt]}}}}", Code::layout_loosens,
          "fresh and nothing else");
  refused("policy: {works: {source: ours, pad: overplate}}", Code::layout_loosens, "pad weld and nothing else");
  refused("policy: {works: {source: ours, insert: overplate}}", Code::layout_loosens, "insert and nothing else");
}

TEST_CASE("a doubt that nobody tries is refused") {
  refused("policy: {robustness: {source: ours, doubts: ['0.0000000000001', '1']}}", Code::out_of_range, "0.01 to 100");
}

TEST_CASE("nothing is divided by nothing") {
  refused("policy: {afloat: {source: ours, waters: {fresh: '0'}}}", Code::out_of_range, "more than 0");
  refused("policy: {protection: {source: ours, utilisation: '0.00'}}", Code::out_of_range, "more than 0");
  const test::Layouts layouts;
  layouts.change("base/outlook.yaml", "utilisation: '0.90'", "utilisation: '1.10'");
  base::Diagnostics sink;
  CHECK_FALSE(layouts.read("base", sink));
  test::check_only(sink, Code::out_of_range, "1 at most");
}
