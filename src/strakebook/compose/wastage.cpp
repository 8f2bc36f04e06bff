#include "strakebook/compose/wastage.h"

#include "strakebook/compose/told.h"
#include "strakebook/steel/policy/fraction.h"

namespace strakebook::compose {

using content::plain;

namespace {

constexpr int whole_nanometres = 0;
constexpr int mean_places = 2;

Length rounded(Ratio nm) { return Length::nanometres(base::round_to(nm, whole_nanometres).digits); }

/// What has gone: to the digits of the reading, or for a mean to two places.
std::string lost(const Scope &scope, const assess::ZoneResult &zone, const assess::Wastage &wastage) {
  const Length gone = survey::zone_of(scope.survey(), zone.zone)->original.nominal.value - rounded(wastage.remaining_nm);
  return unit_mm(scope, with_minus(wastage.at.empty() ? base::mm_text(gone, mean_places) : short_mm(gone)));
}

/// The range over the nominals that fit, or nothing.
std::string alive_range(const Scope &scope, const assess::ZoneResult &zone, const assess::Wastage &wastage) {
  if (!wastage.alive_low || !wastage.alive_high)
    return {};
  return range_words(scope, zone, *wastage.alive_low, *wastage.alive_high);
}

std::string tied_percent(const Scope &scope, const base::Decimal &share) {
  return tied(figure(share), scope.say("voice.percent"));
}

std::string spacing_words(const Scope &scope, const assess::Pitting &pitting) {
  if (!pitting.spacing)
    return scope.say("pitting.no-spacing");
  return scope.say("pitting.spacing", {{"spacing", unit_mm(scope, base::mm_exact(*pitting.spacing, 0))}});
}

Sentence factor(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result) {
  if (!result.pitting.factor)
    return result.pitting.no_factor == "weak-basis" ? scope.tell_computed("pitting.factor-weak")
                                                    : scope.tell_computed("pitting.factor-no-loss");
  const Length original = zone.original.nominal.value;
  const Length deepest = original - rounded(result.under_pit->remaining_nm), mean = original - rounded(result.general->remaining_nm);
  const std::string figure = base::to_text(base::round_to(*result.pitting.factor, 1)) + told_sign(scope, result.told);
  return scope.tell_computed("pitting.factor", {{"factor", plain(figure)},
                                                {"deepest", plain(base::mm_exact(deepest, 1))},
                                                {"mean", plain(unit_mm(scope, base::mm_text(mean, mean_places)))}});
}

} // namespace

std::string loss_words(const Scope &scope, const assess::ZoneResult &zone, const assess::Wastage &wastage) {
  if (!wastage.share) {
    const std::string range = alive_range(scope, zone, wastage);
    return range.empty() ? range : scope.say_computed("margin.loss-alive", {{"range", range}});
  }
  const std::string share = share_text(scope, *wastage.share) + told_sign(scope, loss_is_told(scope, zone));
  return scope.say_computed("margin.loss", {{"loss", lost(scope, zone, wastage)}, {"share", share}});
}

std::string range_words(const Scope &scope, const assess::ZoneResult &zone, Ratio low, Ratio high) {
  const auto words = [&](Ratio share) { return tied(percent_figure(scope, share, 1), scope.say("voice.percent")); };
  const std::string highest = words(high) + told_sign(scope, loss_is_told(scope, zone));
  return low == high ? highest : scope.say_computed("wastage.range", {{"low", words(low)}, {"high", highest}});
}

std::optional<Sentence> wastage_sentences(const Scope &scope, const assess::ZoneResult &zone) {
  const auto words = [&](const assess::Wastage &one) {
    return one.share ? loss_words(scope, zone, one) : alive_range(scope, zone, one);
  };
  if (!zone.general || words(*zone.general).empty())
    return std::nullopt;
  std::optional<Sentence> text = scope.tell_computed(
      "wastage.general", {{"loss", plain(words(*zone.general))}, {"n", plain(std::to_string(zone.general->n))}});
  add_sentence(text, scope.tell_computed("wastage.local", {{"loss", plain(words(*zone.local))}, {"at", plain(tied_mark(zone.local->at))}}));
  if (zone.under_pit)
    add_sentence(text, scope.tell_computed("wastage.pit", {{"loss", plain(words(*zone.under_pit))},
                                                           {"at", plain(zone.under_pit->at)},
                                                           {"n", plain(std::to_string(zone.under_pit->n))}}));
  if (zone.weak_basis)
    add_sentence(text, scope.tell_computed("wastage.over-nominals"));
  return text;
}

Sentence extent_sentence(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result) {
  const Inlines extent = plain(extent_word(scope, result.extent));
  const Sentence text =
      zone.pitting && result.pitting.per_m2
          ? scope.tell_computed("pitting.extent-of", {{"extent", extent},
                                                      {"count", plain(figure(zone.pitting->count))},
                                                      {"area", plain(figure(zone.pitting->area_m2))},
                                                      {"per", plain(base::to_text(base::round_to(*result.pitting.per_m2, 2)))},
                                                      {"share", plain(tied_percent(scope, zone.pitting->share_percent))},
                                                      {"spacing", plain(spacing_words(scope, result.pitting))}})
          : scope.tell_computed("pitting.extent", {{"extent", extent}});
  const bool column = result.extent != assess::Extent::isolated && result.extent != assess::Extent::none;
  return column ? text + scope.tell_computed("pitting.column") : text;
}

std::optional<Sentence> pitting_sentences(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result) {
  if (!result.under_pit)
    return std::nullopt;
  const Sentence text = factor(scope, zone, result);
  if (!result.pitting.few_measured)
    return text;
  const auto &rule = scope.policy().pitting;
  return text + scope.tell_computed("pitting.few", {{"share", plain(tied_percent(scope, *result.pitting.intensity_percent))},
                                                    {"over", plain(tied_percent(scope, rule.intense_over_percent))},
                                                    {"measured", plain(std::to_string(result.pitting.measured))},
                                                    {"least", plain(std::to_string(rule.least_measured))},
                                                    {"source", plain(rule.source)}});
}

std::string extent_rule(const Scope &scope) {
  const auto &rule = scope.policy().extent;
  return scope.say("pitting.rule", {{"most", figure(rule.most_per_m2)},
                                    {"under", tied_percent(scope, rule.under_percent)},
                                    {"spacing", unit_mm(scope, base::mm_exact(rule.least_spacing, 0))},
                                    {"from", tied_percent(scope, rule.extensive_from_percent)},
                                    {"source", rule.source}});
}

} // namespace strakebook::compose
