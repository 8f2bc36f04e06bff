#include <nlohmann/json.hpp>

#include "strakebook/base/decimal.h"
#include "strakebook/base/exact_text.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/assess/conformance.h"
#include "strakebook/steel/assess/json_gauge.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/policy/fraction.h"

namespace strakebook::assess {

namespace {

using Json = nlohmann::ordered_json;

using base::exact::text;

template <class T> Json optional(const std::optional<T> &value) { return value ? Json(text(*value)) : Json(nullptr); }
Json named(const std::string &id) { return id.empty() ? Json(nullptr) : Json(id); }

Json form(const std::optional<LossShare> &share) {
  if (!share) return nullptr;
  return {{"nominal", text(share->nominal)}, {"low", optional(share->low)}, {"high", optional(share->high)}};
}

Json form(const Count &count) {
  Json not_read = Json::object();
  for (const auto &[status, n] : count.not_read) not_read[std::string(word_of(status))] = n;
  return {{"planned", count.planned},   {"read", count.read},       {"used", count.used},
          {"rejected", count.rejected}, {"doubler", count.doubler}, {"not_read", std::move(not_read)}};
}

/// A mean or a percentile is kept exact: "num/den" of a millimetre.
Json exact_mm(const std::optional<Ratio> &nm) {
  constexpr std::int64_t nm_in_mm = 1'000'000;
  if (!nm) return nullptr;
  return text(policy::ratio(policy::fraction(*nm) * policy::lowest(1, nm_in_mm)));
}

Json form(const std::optional<Wastage> &wastage) {
  if (!wastage) return nullptr;
  return {{"n", wastage->n},
          {"at", named(wastage->at)},
          {"remaining", exact_mm(wastage->remaining_nm)},
          {"share", form(wastage->share)},
          {"alive_low", optional(wastage->alive_low)},
          {"alive_high", optional(wastage->alive_high)}};
}

Json form(const Pitting &pitting) {
  return {{"measured", pitting.measured},
          {"per_m2", optional(pitting.per_m2)},
          {"spacing", optional(pitting.spacing)},
          {"intensity_percent", pitting.intensity_percent ? Json(base::to_text(*pitting.intensity_percent)) : Json(nullptr)},
          {"few_measured", pitting.few_measured},
          {"factor", optional(pitting.factor)},
          {"no_factor", named(pitting.no_factor)}};
}

Json form(const policy::StatisticsRule &rule) {
  return {{"least_for_statistics", rule.least_for_statistics}, {"confidence", text(rule.confidence)}, {"share", text(rule.share)},
          {"percentile", text(rule.percentile)}, {"percentile_type", static_cast<int>(rule.percentile_type)}};
}

Json form(const std::optional<Statistics> &statistics) {
  if (!statistics) return nullptr;
  return {{"deviation", text(statistics->deviation)},
          {"mean_low", text(statistics->mean_low)},
          {"mean_high", text(statistics->mean_high)},
          {"percentile", exact_mm(statistics->percentile_nm)},
          {"tolerance_limit", optional(statistics->tolerance_limit)}};
}

Json form(const policy::Criterion &criterion) {
  Json out = {{"id", criterion.id}, {"name", criterion.name}, {"kind", word_of(criterion.kind)}};
  if (criterion.kind == policy::CriterionKind::absolute) out["limit"] = text(criterion.limit);
  const bool margin = criterion.kind == policy::CriterionKind::margin;
  if (margin || criterion.kind == policy::CriterionKind::percent) out["most_loss"] = text(criterion.most_loss);
  if (margin) out["substantial_from"] = text(criterion.substantial_from);
  if (criterion.original_at_most) out["original_at_most"] = text(*criterion.original_at_most);
  if (criterion.declared) out["declared"] = word_of(*criterion.declared);
  out["authority"] = criterion.authority;
  out["edition"] = criterion.edition;
  out["scope"] = criterion.scope;
  out["asked_by"] = named(criterion.asked_by);
  return out;
}

Json form(const policy::DecisionRule &rule) {
  return {{"rule", word_of(rule.kind)}, {"name", rule.name}, {"band", base::to_text(rule.band)}, {"source", rule.source}};
}

Json form(const policy::OtherReading &other) {
  return {{"reading", word_of(other.reading)}, {"limit", text(other.limit)}};
}

Json form(const policy::RuleWorking &working) {
  Json others = Json::array();
  for (const auto &other : working.others) others.push_back(form(other));
  return {{"limit", text(working.limit)}, {"by_length", text(working.by_length)}, {"by_draught", text(working.by_draught)},
          {"floored", working.floored},   {"f", text(working.f)},                 {"b", text(working.b)},
          {"c", text(working.c)},         {"spacing", text(working.spacing)},     {"read_otherwise", std::move(others)}};
}

Json form(const CriterionResult &result) {
  Json out = {{"criterion", result.criterion}, {"verdict", word_of(result.verdict)}, {"governs", result.governs}};
  if (result.verdict == Verdict::not_applicable) {
    out["why_not"] = result.why_not;
    return out;
  }
  out["limit"] = text(result.limit);
  out["margin"] = text(result.margin);
  out["bare"] = word_of(result.bare);
  out["told"] = result.told;
  out["conformance"] = result.conformance ? Json(conformance_text(*result.conformance)) : Json(nullptr);
  if (!result.substantial_below) return out;
  out["substantial_below"] = text(*result.substantial_below);
  out["substantial"] = result.substantial;
  return out;
}

Json form(const Applicability &one) {
  Json out = {{"criterion", one.criterion}, {"applies", one.limit.has_value()}};
  if (one.limit) out["limit"] = text(*one.limit);
  else out["why_not"] = one.why_not;
  return out;
}

Json form(const Rejudged &place) {
  return {{"place", place.place}, {"remaining", text(place.remaining)}, {"now", word_of(place.now)}, {"then", word_of(place.then)}};
}

Json form(const std::optional<Standing> &standing) {
  if (!standing) return nullptr;
  Json out = form(standing->result);
  out["band"] = text(standing->band_nm);
  return out;
}

/// What was displayed, as written, and the same in mm.
void add_displayed(Json &out, const survey::Mark &mark) {
  Json raw = Json::array(), mm = Json::array();
  for (const base::Measured &repeat : mark.repeats) {
    raw.push_back(base::unit_written(repeat) ? repeat.raw : repeat.raw + " " + std::string(base::name_of(repeat.unit)));
    mm.push_back(text(repeat.value));
  }
  out["displayed"] = std::move(raw);
  out["displayed_mm"] = std::move(mm);
}

Json form(const survey::Survey &survey, const MarkResult &result) {
  const survey::Mark &mark = survey.marks[result.mark];
  Json out = {{"mark", mark.id()}, {"used", result.used}};
  add_displayed(out, mark);
  if (!result.used) {
    out["left_out"] = result.left_out;
    return out;
  }
  out["reduce"] = word_of(mark.reduce);
  out["remaining"] = text(result.remaining);
  out["low_side"] = optional(result.low);
  out["indicative"] = result.indicative;
  if (result.over_read) out["over_read"] = {{"least", text(result.over_read->least)}, {"most", text(result.over_read->most)}};
  out["loss"] = text(result.loss);
  out["share"] = form(result.share);
  out["lowest_of_row"] = result.lowest_of_row;
  out["standing"] = form(result.standing);
  return out;
}

Json form(const survey::Survey &survey, const PitResult &result) {
  const survey::Pit &pit = survey.pits[result.pit];
  const bool hull = result.doubler.empty();
  return {{"pit", pit.id}, {"adjacent", text(pit.adjacent.value)}, {"depth", text(pit.depth.value)},
          {"doubler", named(result.doubler)}, {"remaining", text(result.remaining)}, {"low_side", optional(result.low)},
          {"indicative", result.indicative}, {"loss", hull ? Json(text(result.loss)) : Json(nullptr)},
          {"share", form(result.share)}, {"standing", form(result.standing)}};
}

Json form(const Default &taken) {
  return {{"what", word_of(taken.what)}, {"pit", named(taken.pit)}, {"gauge", named(taken.gauge)}};
}

Json form(const RowSummary &row) {
  return {{"row", row.row},
          {"count", form(row.count)},
          {"min", optional(row.min)},
          {"max", optional(row.max)},
          {"mean", exact_mm(row.mean_nm)},
          {"worst", named(row.worst)},
          {"worst_loss", row.worst.empty() ? Json(nullptr) : Json(text(row.worst_loss))}};
}

/// Outer and inner plate of a doubler, each alone.
Json form(const survey::Doubler &doubler) {
  Json out = {{"doubler", doubler.id}, {"outer", doubler.outer ? Json(text(doubler.outer->value)) : Json(nullptr)},
              {"from_inside", nullptr}};
  if (const auto &inner = doubler.from_inside)
    out["from_inside"] = {{"reading", text(inner->reading.value)}, {"at", inner->at.row + " " + inner->at.station.raw},
                          {"gauge", inner->gauge}};
  return out;
}

// Declared before the lists that call them: a template finds in this namespace only what stands above it.
Json form(const Subject &subject);
Json form(const ReadOtherwise &one);
Json form(const Nominal &nominal);
Json form(const Nominal::Fit &fit);
Json form(const ZoneResult &zone);

Json form(const Retake &retake) {
  return {{"place", retake.place}, {"criterion", retake.criterion}, {"limit", text(retake.limit)}, {"off", text(retake.off)}};
}

template <class Items> Json list(const Items &items) {
  Json out = Json::array();
  for (const auto &item : items) out.push_back(form(item));
  return out;
}

template <class Items> Json list(const survey::Survey &survey, const Items &items) {
  Json out = Json::array();
  for (const auto &item : items) out.push_back(form(survey, item));
  return out;
}

Json form(const Subject &subject) {
  return {{"kind", word_of(subject.kind)}, {"id", subject.id}, {"remaining", text(subject.remaining)},
          {"low_side", optional(subject.low)}, {"indicative", subject.indicative}, {"u", text(subject.u)},
          {"factor", base::to_text(subject.factor)}, {"band", text(subject.band_nm)}, {"results", list(subject.results)}};
}

Json form(const ReadOtherwise &one) {
  Json out = {{"criterion", one.criterion}};
  out.update(form(one.reading));
  out["places"] = list(one.places);
  return out;
}

Json form(const Nominal &nominal) {
  return {{"nominal", text(nominal.nominal)}, {"state", word_of(nominal.state)}, {"lower", optional(nominal.lower)},
          {"upper", optional(nominal.upper)},     {"fits", list(nominal.fits)}};
}

Json form(const Nominal::Fit &fit) {
  return {{"tolerance", fit.tolerance}, {"state", word_of(fit.state)}, {"lower", text(fit.lower)}, {"upper", text(fit.upper)}};
}

Json form(const ZoneResult &zone) {
  return {{"zone", zone.zone},
          {"count", form(zone.count)},
          {"min", optional(zone.min)},
          {"max", optional(zone.max)},
          {"mean", exact_mm(zone.mean_nm)},
          {"least", named(zone.least)},
          {"thickest", optional(zone.thickest)},
          {"statistics", form(zone.statistics)},
          {"worst", named(zone.worst)},
          {"worst_pit", zone.worst_pit ? Json(*zone.worst_pit) : Json(nullptr)},
          {"measured_by", named(zone.measured_by)},
          {"criteria", list(zone.criteria)},
          {"read_otherwise", list(zone.read_otherwise)},
          {"weak_basis", zone.weak_basis},
          {"told", zone.told},
          {"tolerances", zone.tolerances},
          {"nominals", list(zone.nominals)},
          {"alive_low", optional(zone.alive_low)},
          {"alive_high", optional(zone.alive_high)},
          {"highest_original", text(zone.highest_original)},
          {"general", form(zone.general)},
          {"local", form(zone.local)},
          {"under_pit", form(zone.under_pit)},
          {"subjects", list(zone.subjects)},
          {"conflict", zone.conflict},
          {"conflict_at", named(zone.conflict_at)},
          {"short_of", zone.short_of},
          {"met", zone.met},
          {"extent", word_of(zone.extent)},
          {"indicative", zone.indicative},
          {"pitting", form(zone.pitting)},
          {"too_few", zone.too_few},
          {"rung", named(zone.rung)},
          {"share_at_rung", optional(zone.share_at_rung)},
          {"suggests_extensive", zone.suggests_extensive},
          {"suggested", zone.suggested},
          {"departs", zone.departs}};
}

} // namespace

Json json(const survey::Survey &survey, const Assessment &assessment) {
  Json out;
  out["coverage"] = form(assessment.coverage);
  out["marks_per_m2"] = optional(assessment.marks_per_m2);
  out["spot_check"] = assessment.spot_check;
  out["repeats_apart"] = assessment.repeats_apart;
  out["retakes"] = list(assessment.retakes);
  out["read_m2"] = optional(assessment.read_m2);
  out["shell_m2"] = optional(assessment.shell_m2);
  out["worst"] = named(assessment.worst);
  out["worst_remaining"] = assessment.worst.empty() ? Json(nullptr) : Json(text(assessment.worst_remaining));
  out["worst_loss"] = named(assessment.worst_loss);
  out["decision_rule"] = form(assessment.decision);
  out["criteria"] = list(assessment.criteria);
  out["statistics"] = form(assessment.statistics);
  out["workings"] = Json::object();
  for (const auto &[key, working] : assessment.workings) out["workings"][key] = form(working);
  out["gauges"] = Json::array();
  for (const auto &gauge : assessment.gauges) out["gauges"].push_back(gauge_json(gauge));
  out["zones"] = list(assessment.zones);
  out["rows"] = list(assessment.rows);
  out["marks"] = list(survey, assessment.marks);
  out["pits"] = list(survey, assessment.pits);
  out["defaults"] = list(assessment.defaults);
  out["doublers"] = list(survey.doublers);
  return out;
}

} // namespace strakebook::assess
