#include <catch2/catch.hpp>

#include <map>

#include "house/layouts.h"

using namespace strakebook;
using base::Length;

namespace {

const policy::Policy &base_policy() {
  static const policy::Policy policy = [] {
    base::Diagnostics sink;
    auto house = test::shipped("base", sink);
    INFO(base::terminal_text(sink));
    REQUIRE(house);
    return house->policy;
  }();
  return policy;
}

struct Row {
  int from, to, minus, plus;
}; // mm, mm, micrometres, micrometres

void check_bands(const std::string &id, const std::vector<Row> &rows) {
  INFO(id);
  const auto &bands = base_policy().tolerances.at(id).bands;
  REQUIRE(bands.size() == rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    INFO("band from " << rows[i].from);
    CHECK(bands[i].from == Length::millimetres(rows[i].from));
    CHECK(bands[i].to == Length::millimetres(rows[i].to));
    CHECK(bands[i].lower == Length::micrometres(-rows[i].minus));
    CHECK(bands[i].upper == Length::micrometres(rows[i].plus));
  }
}

} // namespace

// EN 10029:1991, Table 1, as published summary sheets agree.
TEST_CASE("plate tolerances of EN 10029:1991") {
  check_bands(
      "EN 10029:1991 A",
      {{3, 5, 400, 800}, {5, 8, 400, 1100}, {8, 15, 500, 1200}, {15, 25, 600, 1300}, {25, 40, 800, 1400}});
  check_bands(
      "EN 10029:1991 B",
      {{3, 5, 300, 900}, {5, 8, 300, 1200}, {8, 15, 300, 1400}, {15, 25, 300, 1600}, {25, 40, 300, 1900}});
  check_bands("EN 10029:1991 C",
              {{3, 5, 0, 1200}, {5, 8, 0, 1500}, {8, 15, 0, 1700}, {15, 25, 0, 1900}, {25, 40, 0, 2200}});
  check_bands(
      "EN 10029:1991 D",
      {{3, 5, 600, 600}, {5, 8, 750, 750}, {8, 15, 850, 850}, {15, 25, 950, 950}, {25, 40, 1100, 1100}});
  for (const auto *c : {"A", "B", "C", "D"})
    CHECK(base_policy().tolerances.at(std::string("EN 10029:1991 ") + c).verified);
}

// EN 10029:2010: from memory, not seen; so the layout marks it, and only its structure is checked against
// more than memory.
TEST_CASE("plate tolerances of EN 10029:2010 are marked as not verified") {
  check_bands(
      "EN 10029:2010 A",
      {{3, 5, 300, 700}, {5, 8, 400, 800}, {8, 15, 500, 900}, {15, 25, 600, 1000}, {25, 40, 700, 1300}});
  check_bands(
      "EN 10029:2010 B",
      {{3, 5, 300, 700}, {5, 8, 300, 900}, {8, 15, 300, 1100}, {15, 25, 300, 1300}, {25, 40, 300, 1700}});
  check_bands("EN 10029:2010 C",
              {{3, 5, 0, 1000}, {5, 8, 0, 1200}, {8, 15, 0, 1400}, {15, 25, 0, 1600}, {25, 40, 0, 2000}});
  check_bands(
      "EN 10029:2010 D",
      {{3, 5, 500, 500}, {5, 8, 600, 600}, {8, 15, 700, 700}, {15, 25, 800, 800}, {25, 40, 1000, 1000}});
  for (const auto *c : {"A", "B", "C", "D"})
    CHECK_FALSE(base_policy().tolerances.at(std::string("EN 10029:2010 ") + c).verified);
}

// The make of the table, both editions: one spread for all classes of a band; B's minus 0.3; C's 0; D
// symmetric.
TEST_CASE("the classes of a tolerance table hang together") {
  for (const std::string edition : {"EN 10029:1991 ", "EN 10029:2010 "}) {
    const auto &t = base_policy().tolerances;
    const auto &a = t.at(edition + "A").bands, &b = t.at(edition + "B").bands, &c = t.at(edition + "C").bands,
               &d = t.at(edition + "D").bands;
    for (std::size_t i = 0; i < a.size(); ++i) {
      INFO(edition << i);
      for (const auto *other : {&b[i], &c[i], &d[i]})
        CHECK(other->upper - other->lower == a[i].upper - a[i].lower);
      CHECK(b[i].lower == Length::micrometres(-300));
      CHECK(c[i].lower == Length{});
      CHECK(d[i].upper == -d[i].lower);
    }
  }
}

// Nominal 6, EN 10029:1991 Table 1 (published summary sheets): A 5.60-7.10, B 5.70-7.20, C 6.00-7.50, D 5.25-6.75.
TEST_CASE("nominal 6 as each class of EN 10029:1991 delivers it") {
  struct Case {
    const char *klass;
    int lower, upper; // micrometres
  };
  const auto c = GENERATE(Case{"A", 5600, 7100}, Case{"B", 5700, 7200}, Case{"C", 6000, 7500}, Case{"D", 5250, 6750});
  const auto *six =
      policy::band_for(base_policy().tolerances.at(std::string("EN 10029:1991 ") + c.klass), Length::millimetres(6));
  REQUIRE(six);
  CHECK(Length::millimetres(6) + six->lower == Length::micrometres(c.lower));
  CHECK(Length::millimetres(6) + six->upper == Length::micrometres(c.upper));
}

// EN 10029 Table 1: its rows hold 5 <= t < 8 and 8 <= t < 15.
TEST_CASE("5.0 belongs to the row from 5 and 8.0 to the row from 8, in every class and edition") {
  for (const auto &[id, tolerance] : base_policy().tolerances) {
    if (!id.starts_with("EN 10029"))
      continue;
    INFO(id);
    CHECK(policy::band_for(tolerance, Length::millimetres(5))->from == Length::millimetres(5));
    CHECK(policy::band_for(tolerance, Length::micrometres(7999))->from == Length::millimetres(5));
    CHECK(policy::band_for(tolerance, Length::millimetres(8))->from == Length::millimetres(8));
  }
}

// EN 10051, trade tables: 0.24 to 0.29 on 5 mm, 0.26 to 0.31 on 6, 0.32 to 0.40 on 10 by width. The widest is taken.
TEST_CASE("coil-cut plate has the trade tables' widest figure for the sizes seen, and none between them") {
  const auto &coil = base_policy().tolerances.at("EN 10051");
  CHECK(coil.source.find("widest") != std::string::npos);
  for (const auto &[mm, most] : std::map<int, int>{{5, 290}, {6, 310}, {10, 400}}) {
    const auto *band = policy::band_for(coil, Length::millimetres(mm));
    REQUIRE(band);
    CHECK(band->upper == Length::micrometres(most));
    CHECK(band->lower == -band->upper);
  }
  for (const int mm : {4, 7, 8, 9, 11, 12})
    CHECK(policy::band_for(coil, Length::millimetres(mm)) == nullptr);
}

// Isolated: common practice. The bound of extensive and the spacing: this house's, common practice, no source. Five deepest
// pits over 15 % of one side: ESP Code.
TEST_CASE("the extent rule and what intense pitting asks for") {
  const auto &extent = base_policy().extent;
  CHECK(extent.most_per_m2 == base::Decimal{3, 0});
  CHECK(extent.under_percent == base::Decimal{5, 0});
  CHECK(extent.least_spacing == Length::millimetres(100));
  CHECK(extent.extensive_from_percent == base::Decimal{15, 0});
  CHECK(extent.source == "common practice, no published source");
  CHECK(base_policy().pitting.intense_over_percent == base::Decimal{15, 0});
  CHECK(base_policy().pitting.least_measured == 5);
  CHECK(base_policy().usual_tolerances == std::vector<std::string>{"EN 10029:1991 A", "EN 10051"});
}

// Directive 2006/87/EC Annex II Art. 3.02; ES-TRIN Art. 3.02: cases worked by hand from the formula.
TEST_CASE("the inland rule of the layout gives the limits of the Directive") {
  const auto &rule = base_policy().criteria.at("inland-rule");
  REQUIRE(rule.kind == policy::CriterionKind::rule_minimum);
  REQUIRE(rule.rule);
  const auto limit = [&](int length_dm, int spacing_mm, int draught_dm, policy::Plating plating) {
    return policy::rule_minimum(*rule.rule,
                                {Length::millimetres(100 * length_dm), Length::millimetres(100 * draught_dm),
                                 Length::millimetres(spacing_mm)},
                                plating)
        .limit;
  };
  using policy::Plating;
  CHECK(limit(385, 500, 18, Plating::bottom) == Length::micrometres(3810));
  CHECK(limit(170, 450, 7, Plating::side) == Length::micrometres(3000));
  CHECK(limit(170, 450, 7, Plating::bilge) == Length::micrometres(3150));
  CHECK(limit(800, 500, 28, Plating::bottom) == Length::micrometres(5500));
  CHECK(limit(800, 500, 28, Plating::bilge) == Length::micrometres(6875));
}

// Directive 2006/87/EC Annex II Art. 15.02: 30 m, 400 mm, 1.2 m gives 3.0, raw 2.62907.
TEST_CASE("the passenger rule of the layout gives the limit of the Directive, to declared vessels alone") {
  const auto &rule = base_policy().criteria.at("passenger-rule");
  REQUIRE(rule.kind == policy::CriterionKind::passenger_minimum);
  REQUIRE(rule.passenger);
  CHECK(rule.declared == policy::Declaration::passengers);
  const auto working = policy::passenger_minimum(
      *rule.passenger, {Length::millimetres(30'000), Length::millimetres(1200), Length::millimetres(400)});
  CHECK(working.limit == Length::micrometres(3000));
  CHECK(base::mm_text(working.by_draught, 5) == "2.62907");
}

TEST_CASE("shares of the layout are bound as their sources bind them") {
  const auto &criteria = base_policy().criteria;
  const auto &light = criteria.at("percent-15"); // USCG NVIC 7-68
  CHECK(light.most_loss == base::Ratio{15, 100});
  CHECK(light.declared == policy::Declaration::light_scantlings);
  const auto &thin = criteria.at("percent-25-thin"); // common practice
  CHECK(thin.most_loss == base::Ratio{1, 4});
  CHECK(thin.original_at_most == Length::millimetres(4));
  for (const auto &[id, share] : {std::pair{"margin-20", base::Ratio{1, 5}}, {"margin-25", base::Ratio{1, 4}}}) {
    CHECK(criteria.at(id).kind == policy::CriterionKind::margin);
    CHECK(criteria.at(id).most_loss == share);
    CHECK(criteria.at(id).substantial_from == base::Ratio{3, 4}); // IACS UR Z10.1; ESP Code 1.2.9
  }
  CHECK(criteria.at("inland-rule").rule->local_wear == base::Ratio{1, 10}); // Directive 2006/87/EC Annex II Art. 3.02
}

// The house's own choices, and words of the language.
TEST_CASE("page one's reason has two to four sentences, and prose is read by words that are data") {
  const auto &prose = base_policy().prose;
  CHECK(prose.least_sentences == 2);
  CHECK(prose.most_sentences == 4);
  const auto has = [](const std::vector<std::string> &words, const char *word) {
    return std::count(words.begin(), words.end(), word) == 1;
  };
  CHECK((has(prose.abbreviations, "approx") && has(prose.abbreviations, "no")));
  CHECK((has(prose.pits, "pits") && has(prose.doublers, "doublers") && has(prose.bounds, "more")));
}

// Common practice, no source: the firm's ladder.
TEST_CASE("the ladder is ordered and ends in a rung that always holds") {
  const auto &rungs = base_policy().ladder.rungs;
  REQUIRE(rungs.size() == 5);
  CHECK(*rungs[0].below == Length::micrometres(2500));
  CHECK(*rungs[1].below == Length::millimetres(3));
  CHECK(*rungs[2].below == Length::millimetres(4));
  CHECK(*rungs[2].below_part == base::Ratio{4, 5});
  CHECK((!rungs[3].below && *rungs[3].below_part == base::Ratio{4, 5}));
  CHECK((!rungs[4].below && !rungs[4].below_part));
  CHECK(rungs[2].classes == std::vector<std::string>{"A", "B"});
}

TEST_CASE("criteria, doubt and bases are as the trade writes them") {
  const auto &p = base_policy();
  CHECK(p.criteria.at("percent-25").most_loss == base::Ratio{1, 4}); // common practice
  CHECK(p.criteria.at("absolute-3.5").limit == Length::micrometres(3500));
  CHECK(p.decision.band == base::Decimal{1645, 3}); // JCGM 106:2012, one-sided 95 %
  CHECK(p.decision.kind == policy::DecisionKind::guard_band);
  CHECK(p.decision.source == "JCGM 106:2012");
  for (const auto &[id, limit] : {std::pair{"absolute-3.0", 3000}, {"absolute-3.5", 3500}, {"absolute-4.0", 4000}})
    CHECK(p.criteria.at(id).limit == Length::micrometres(limit)); // common practice
  CHECK(p.bases.at("owner's word").weak);
  CHECK_FALSE(p.bases.at("builder's drawing").weak);
  CHECK((p.actions.at("insert").adverse && p.actions.at("insert").adds_steel &&
         !p.actions.at("insert").doubler));
  CHECK(p.actions.at("overplate").doubler);
}
