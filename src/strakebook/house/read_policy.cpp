#include "strakebook/house/read_policy.h"

#include <set>

#include <fmt/format.h>

#include "strakebook/house/bind.h"

namespace strakebook::house {
namespace {

using base::Code;
using base::Ratio;

void read_actions(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    policy::Action action;
    action.id = entry.key;
    Binding(sink)
        .need("name", action.name)
        .need("adverse", action.adverse)
        .need("adds-steel", action.adds_steel)
        .need("doubler", action.doubler)
        .apply(entry.value);
    into.actions[entry.key] = action;
  });
}

void read_bases(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  each_entry(node, sink, [&](const YamlNode::Entry &entry) {
    policy::Basis basis;
    basis.id = entry.key;
    Binding(sink).need("weak", basis.weak).apply(entry.value);
    into.bases[entry.key] = basis;
  });
}

void read_extent(const YamlNode &node, policy::ExtentRule &into, Diagnostics &sink) {
  Binding(sink)
      .need("most-per-m2", into.most_per_m2)
      .by("under", true, [&](const YamlNode &n) { read_percent(n, into.under_percent, sink); })
      .need("least-spacing", into.least_spacing)
      .by("extensive-from", true,
          [&](const YamlNode &n) { read_percent(n, into.extensive_from_percent, sink); })
      .need("source", into.source)
      .apply(node);
}

constexpr Choice<policy::DecisionKind> decision_kinds[] = {
    {"simple-acceptance", policy::DecisionKind::simple_acceptance},
    {"guard-band", policy::DecisionKind::guard_band},
    {"four-classes", policy::DecisionKind::four_classes}};

/// Simple acceptance has no band; the other two are nothing without one.
void check_band(const YamlNode &node, const policy::DecisionRule &rule, Diagnostics &sink) {
  const bool simple = rule.kind == policy::DecisionKind::simple_acceptance;
  const YamlNode *band = node.find("band");
  if (rule.band.digits < 0)
    sink.error(Code::out_of_range, band->span, "a band of doubt cannot be negative", "0 or more");
  else if (simple && rule.band.digits > 0)
    sink.error(Code::rule_and_band, band->span, "simple acceptance does not count the doubt, so it has no band",
               "no band, or another rule", "rule: guard-band");
  else if (!simple && rule.band.digits == 0)
    sink.error(Code::rule_and_band, band ? band->span : node.span, "this decision rule needs a band above 0",
               "how many standard uncertainties", "band: 1.645");
}

void read_pitting(const YamlNode &node, policy::PittingRule &into, Diagnostics &sink) {
  Binding(sink)
      .by("intense-over", true, [&](const YamlNode &n) { read_percent(n, into.intense_over_percent, sink); })
      .need("least-measured", into.least_measured)
      .need("source", into.source)
      .apply(node);
}

void read_local_area(const YamlNode &node, policy::LocalArea &into, Diagnostics &sink) {
  Binding(sink).need("m2", into.m2).need("source", into.source).apply(node);
}

void read_doubt(const YamlNode &node, policy::DecisionRule &into, Diagnostics &sink) {
  const std::size_t before = sink.errors();
  Binding(sink)
      .need("name", into.name)
      .need_word<policy::DecisionKind>("rule", into.kind, decision_kinds)
      .may("band", into.band)
      .need("coverage", into.coverage)
      .need("source", into.source)
      .apply(node);
  if (sink.errors() == before)
    check_band(node, into, sink);
}

void read_single_echo(const YamlNode &node, policy::SingleEcho &into, Diagnostics &sink) {
  Binding(sink).need("least", into.least).need("most", into.most).apply(node);
  if (into.most.ratio() < into.least.ratio())
    sink.error(Code::layout_order, node.span, "the most that a single echo counts is less than the least",
               "least, and a most that is not below it");
}

void read_copying(const YamlNode &node, policy::CopyingChecks &into, Diagnostics &sink) {
  Binding(sink)
      .need("agree", into.agree)
      .need("mirror-apart", into.mirror_apart)
      .need("run-marks", into.run_marks)
      .need("run-odds", into.run_odds)
      .need("shift-marks", into.shift_marks)
      .need("shift-apart", into.shift_apart)
      .need("shift-part", into.shift_part)
      .need("pit-share", into.pit_share)
      .need("unit-share", into.unit_share)
      .need("source", into.source)
      .apply(node);
}

void read_checks(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  Binding(sink)
      .need("repeat-spread", into.repeat_spread)
      .need("neighbour-jump", into.neighbour_jump)
      .by("copying", true, [&](const YamlNode &n) { read_copying(n, into.copying, sink); })
      .need("block-agreement", into.block_agreement)
      .need("retake-within", into.retake_within)
      .by("single-echo-factor", true,
          [&](const YamlNode &n) { read_single_echo(n, into.single_echo, sink); })
      .need("spot-check-per-m2", into.spot_check_per_m2)
      .apply(node);
}

void read_prose(const YamlNode &node, policy::Prose &into, Diagnostics &sink) {
  Binding(sink)
      .need("least-sentences", into.least_sentences)
      .need("most-sentences", into.most_sentences)
      .need("abbreviations", into.abbreviations)
      .need("pits", into.pits)
      .need("doublers", into.doublers)
      .need("bounds", into.bounds)
      .apply(node);
}

void read_nominals(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  if (!read(node, into.usual_nominals, sink))
    return;
  const auto &sizes = into.usual_nominals;
  for (std::size_t i = 0; i < sizes.size(); ++i)
    if (sizes[i] <= (i == 0 ? base::Length{} : sizes[i - 1]))
      sink.error(Code::layout_order, node.items[i].span,
                 fmt::format("{} is not thicker than the size before it", node.items[i].text),
                 "plate sizes from thin to thick");
}

/// The tolerances must have been read before.
void read_usual_tolerances(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  if (!read(node, into.usual_tolerances, sink))
    return;
  for (std::size_t i = 0; i < into.usual_tolerances.size(); ++i)
    known_in(into.tolerances, into.usual_tolerances[i], "a tolerance", node.items[i].span, sink);
}

/// A figure above nought, kept as it is written.
void read_density(const YamlNode &node, std::string &into, Diagnostics &sink) {
  base::Decimal figure;
  if (!read(node, figure, sink))
    return;
  if (figure.digits <= 0)
    sink.error(Code::out_of_range, node.span, fmt::format("steel does not weigh {}", node.text), "more than 0", "steel-density: 7.85");
  into = node.text;
}

void read_statistics(const YamlNode &node, policy::StatisticsRule &into, Diagnostics &sink) {
  using policy::PercentileType;
  static constexpr Choice<PercentileType> types[] = {
      {"6", PercentileType::six}, {"7", PercentileType::seven}, {"8", PercentileType::eight}};
  const auto part = [&sink](Ratio &share) { return [&](const YamlNode &n) { read_true_part(n, share, sink); }; };
  Binding(sink)
      .need("least-for-statistics", into.least_for_statistics)
      .by("confidence", true, part(into.confidence))
      .by("share", true, part(into.share))
      .by("percentile", true, part(into.percentile))
      .need_word<PercentileType>("percentile-type", into.percentile_type, types)
      .apply(node);
}

} // namespace

void read_true_part(const YamlNode &node, Ratio &into, Diagnostics &sink) {
  if (!read(node, into, sink) || (into > Ratio{0, 1} && into < Ratio{1, 1}))
    return;
  sink.error(Code::out_of_range, node.span, fmt::format("{} is none or all of the whole", node.text),
             "more than 0 % and less than 100 %");
}

policy::Policy read_policy(const YamlNode &node, Diagnostics &sink) {
  policy::Policy p;
  const auto part = [&](auto reader, auto &into) {
    return [&, reader](const YamlNode &n) { reader(n, into, sink); };
  };
  if (const YamlNode *actions = node.find("actions"))
    read_actions(*actions, p, sink);
  if (const YamlNode *tolerances = node.find("tolerances"))
    read_tolerances(*tolerances, p, sink);
  Binding(sink)
      .by("criteria", true, part(read_criteria, p))
      .by("doubt", true, part(read_doubt, p.decision))
      .by("extent", true, part(read_extent, p.extent))
      .by("pitting", true, part(read_pitting, p.pitting))
      .by("local-area", true, part(read_local_area, p.local_area))
      .by("actions", true, [](const YamlNode &) {})
      .by("ladder", true, part(read_ladder, p))
      .by("tolerances", true, [](const YamlNode &) {})
      .by("bases", true, part(read_bases, p))
      .by("usual-nominals", true, part(read_nominals, p))
      .by("usual-tolerances", true, part(read_usual_tolerances, p))
      .by("checks", true, part(read_checks, p))
      .by("prose", true, part(read_prose, p.prose))
      .by("opinion", true,
          [&](const YamlNode &n) {
            Binding(sink).need("least-marks", p.least_marks).need("least-read", p.least_read).apply(n);
          })
      .by("statistics", true, part(read_statistics, p.statistics))
      .by("unseen", true, part(read_unseen, p.unseen))
      .by("years", true, part(read_years, p.years))
      .by("robustness", true, part(read_robustness, p.robustness))
      .by("works", true, part(read_works, p))
      .by("afloat", true, part(read_afloat, p.afloat))
      .by("protection", true, part(read_protection, p.protection))
      .by("steel-density", true, part(read_density, p.steel_density_kg_m2_mm))
      .need("required-rows", p.required_rows)
      .need("required-fields", p.required_fields)
      .apply(node);
  return p;
}

} // namespace strakebook::house
