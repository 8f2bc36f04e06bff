#pragma once

#include "strakebook/base/measured.h"
#include "strakebook/steel/policy/policy.h"

/// A small house for tests: criteria, ladder and tolerances with the values of the trade (common practice, no source, unless
/// one is named), written out here so that no test hangs on a layout.
namespace strakebook::sample {

using base::Length;

inline base::Measured mm(const std::string &text) {
  base::MeasuredError wrong;
  return base::parse_measured(text, base::Unit::millimetre, wrong).value();
}
inline Length length(const std::string &text) { return mm(text).value; }
inline base::Decimal decimal(const std::string &text) { return base::parse_decimal(text).value(); }
inline base::Ratio percent(const std::string &text) {
  auto share = decimal(text).ratio();
  share.den *= 100;
  return share;
}

inline policy::Criterion absolute(const std::string &limit) {
  return {.id = "absolute-" + limit, .name = limit + " mm remaining", .kind = policy::CriterionKind::absolute, .limit = length(limit)};
}
inline policy::Criterion most_loss(const std::string &share) {
  return {.id = "percent-" + share, .name = share + " % of original", .kind = policy::CriterionKind::percent, .most_loss = percent(share)};
}

/// Directive 2006/87/EC Annex II Art. 3.02 (ES-TRIN Art. 3.02).
inline policy::RuleMinimum inland_rule() {
  return {.split = length("40 m"),
          .shorter_constant = decimal("1.5"), .shorter_slope = decimal("0.06"),
          .longer_constant = decimal("2.3"), .longer_slope = decimal("0.04"),
          .floor = length("3.0"),
          .spacing = length("500"), .spacing_slope = decimal("0.0013"),
          .draught_factor = decimal("0.005"),
          .bilge_factor = decimal("1.25"), .wing_factor = decimal("0.95"),
          .local_wear = percent("10")};
}

/// Directive 2006/87/EC Annex II Art. 15.02.
inline policy::PassengerMinimum passenger_rule() {
  return {.draught_factor = decimal("0.006"), .length_factor = decimal("0.55"), .spacing = length("500"),
          .spacing_slope = decimal("0.0013"), .least_spacing = length("400"), .floor = length("3.0")};
}

/// Substantial corrosion from 75 % of the allowable loss: IACS UR Z10.1; ESP Code 1.2.9.
inline policy::Criterion margin(const std::string &share) {
  return {.id = "margin-" + share, .name = share + " % allowable loss", .kind = policy::CriterionKind::margin,
          .most_loss = percent(share), .substantial_from = percent("75")};
}

inline policy::Tolerance tolerance(const std::string &id, const std::vector<std::array<std::string, 4>> &rows) {
  policy::Tolerance result{.id = id};
  for (const auto &[from, to, lower, upper] : rows)
    result.bands.push_back({length(from), length(to), length(lower), length(upper)});
  return result;
}
/// EN 10029:1991 Table 1, class A, as published summary sheets give it.
inline policy::Tolerance en10029_1991_a() {
  return tolerance("EN 10029:1991 A", {{"3", "5", "-0.4", "0.8"}, {"5", "8", "-0.4", "1.1"}, {"8", "15", "-0.5", "1.2"},
                                       {"15", "25", "-0.6", "1.3"}, {"25", "40", "-0.8", "1.4"}});
}
/// EN 10051 (coil-cut plate), the widest figure that trade tables give, for the sizes they give it for.
inline policy::Tolerance en10051() {
  return tolerance("EN 10051", {{"5", "5.000001", "-0.29", "0.29"}, {"6", "6.000001", "-0.31", "0.31"},
                                {"10", "10.000001", "-0.40", "0.40"}});
}

inline policy::Ladder ladder() {
  using Actions = std::vector<std::string>;
  const auto rung = [](std::string id, std::optional<Length> below, std::optional<base::Ratio> part, Actions isolated,
                       Actions extensive, Actions classes) {
    return policy::Rung{.id = std::move(id), .below = below, .below_part = part, .isolated = std::move(isolated),
                        .extensive = std::move(extensive), .classes = std::move(classes)};
  };
  const base::Ratio most{4, 5};
  return {.rungs = {rung("unsafe", length("2.5"), {}, {"do not refloat"}, {"do not refloat"}, {"A"}),
                    rung("thin", length("3.0"), {}, {"pad weld", "insert"}, {"insert"}, {"A"}),
                    rung("low", length("4.0"), most, {"weld build-up", "pad weld"}, {"overplate", "insert"}, {"A", "B"}),
                    rung("reduced", {}, most, {"clean and recoat", "monitor"}, {"monitor"}, {"B"}),
                    rung("sound", {}, {}, {"clean and recoat", "continue"}, {"clean and recoat", "continue"}, {"C"})},
          .too_few_words = "no opinion"};
}

inline policy::Policy house() {
  policy::Policy policy;
  for (auto criterion : {absolute("4.0"), absolute("3.0"), most_loss("20"), most_loss("25"), most_loss("30"), margin("20"),
                         margin("25")}) {
    policy.criteria_order.push_back(criterion.id);
    policy.criteria[criterion.id] = criterion;
  }
  policy.criteria_order.push_back("inland-rule");
  policy.criteria["inland-rule"] = {.id = "inland-rule", .name = "inland rule minimum",
                                    .kind = policy::CriterionKind::rule_minimum, .rule = inland_rule()};
  policy.decision = {.name = "guard band", .band = decimal("1.645"), .coverage = percent("95")};
  policy.extent = {.most_per_m2 = decimal("3"), .under_percent = decimal("5"), .least_spacing = length("100"),
                   .extensive_from_percent = decimal("15")};
  policy.pitting = {.intense_over_percent = decimal("15"), .least_measured = 5, .source = "ESP Code"};
  policy.ladder = ladder();
  for (const char *id : {"continue", "monitor", "clean and recoat", "no opinion"}) policy.actions[id] = {.id = id, .name = id};
  for (const char *id : {"weld build-up", "do not refloat"}) policy.actions[id] = {.id = id, .name = id, .adverse = true};
  policy.actions["insert"] = {.id = "insert", .name = "insert", .adverse = true, .adds_steel = true};
  for (const char *id : {"overplate", "pad weld"})
    policy.actions[id] = {.id = id, .name = id, .adverse = true, .adds_steel = true, .doubler = true};
  for (auto table : {en10029_1991_a(), en10051()}) policy.tolerances[table.id] = table;
  policy.bases = {{"mill certificate", {"mill certificate", false}}, {"owner's word", {"owner's word", true}}};
  policy.usual_tolerances = {"EN 10029:1991 A", "EN 10051"};
  for (const char *size : {"4", "5", "6", "8", "10", "12"}) policy.usual_nominals.push_back(length(size));
  policy.prose = {.least_sentences = 2, .most_sentences = 4, .abbreviations = {"approx", "e.g", "no", "st"},
                  .pits = {"pit", "pits"}, .doublers = {"doubler", "doublers"}, .bounds = {"more", "than"}};
  policy.block_agreement = length("0.1");
  policy.retake_within = length("0.3");
  policy.single_echo = {.least = decimal("2"), .most = decimal("2.5")};
  policy.repeat_spread = length("0.3");
  policy.least_marks = 3;
  policy.least_read = {1, 2};
  policy.statistics = {.least_for_statistics = 4, .confidence = {95, 100}, .share = {95, 100}, .percentile = {10, 100}};
  policy.spot_check_per_m2 = decimal("1");
  policy.afloat = {.waters = {{"fresh", decimal("1.000")}}, .least_freeboard = length("250"), .least_downflooding = length("250")};
  policy.works = {.insert = "insert", .overplate = "overplate", .pad = "pad weld", .least_side_plate = length("4"),
                  .least_lap = length("25"), .most_lap = length("50"), .sound_under_lap = length("4"),
                  .least_doubler = length("300"), .least_insert = length("300"), .least_pad = length("150"),
                  .least_radius = length("50"), .plug_pitch = length("300"), .plugs_over = length("350")};
  policy.steel_density_kg_m2_mm = "7.85";
  return policy;
}

} // namespace strakebook::sample
