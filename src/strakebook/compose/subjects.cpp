#include "strakebook/compose/subjects.h"

#include <algorithm>

namespace strakebook::compose {

namespace {

std::string unsigned_margin(const assess::CriterionResult &result, Length band) {
  std::string text = margin_text(result, band);
  for (const std::string_view sign : {"+", "\u2212"})
    if (text.starts_with(sign))
      text.erase(0, sign.size());
  return text;
}

const policy::Rung *rung_of(const Scope &scope, std::string_view id) {
  const auto &rungs = scope.policy().ladder.rungs;
  const auto found = std::ranges::find(rungs, id, &policy::Rung::id);
  return found == rungs.end() ? nullptr : &*found;
}

} // namespace

Found find_subject(const Scope &scope, std::string_view id) {
  for (const auto &zone : scope.assessment().zones)
    for (const auto &subject : zone.subjects)
      if (subject.id == id)
        return {&zone, &subject};
  return {};
}

const assess::Subject *worst_of(const assess::ZoneResult &zone) {
  const auto least = std::ranges::min_element(zone.subjects, {}, &assess::Subject::judged);
  return least == zone.subjects.end() ? nullptr : &*least;
}

const assess::Subject *subject_of_kind(const assess::ZoneResult &zone, assess::Subject::Kind kind) {
  const auto found = std::ranges::find(zone.subjects, kind, &assess::Subject::kind);
  return found == zone.subjects.end() ? nullptr : &*found;
}

std::string criterion_name(const Scope &scope, std::string_view id) {
  const auto *found = criterion(scope, id);
  return found == nullptr ? std::string(id) : found->name;
}

std::string doubt_text(const Scope &scope, Length band) {
  const bool counted = scope.policy().decision.kind != policy::DecisionKind::simple_acceptance;
  return counted ? base::mm_text(band, 2) : scope.say("margin.not-counted");
}

std::string doubt_mm(const Scope &scope, Length band) {
  const bool counted = scope.policy().decision.kind != policy::DecisionKind::simple_acceptance;
  return counted ? unit_mm(scope, doubt_text(scope, band)) : doubt_text(scope, band);
}

std::string why_not_words(const Scope &scope, std::string_view id, std::string_view reason) {
  const auto *found = criterion(scope, id);
  if (reason == "scope" || found == nullptr)
    return scope.say("why-not.scope");
  if (reason == "weak-basis")
    return scope.say("why-not.weak-basis");
  if (reason == "thicker")
    return scope.say("why-not.thicker", {{"mm", unit_mm(scope, base::mm_exact(found->original_at_most.value(), 1))}});
  if (reason == "inputs")
    return scope.say("why-not.inputs");
  return found->declared == policy::Declaration::passengers ? scope.say("why-not.passengers")
                                                            : scope.say("why-not.light-scantlings");
}

std::string substantial_words(const Scope &scope, const assess::CriterionResult &result) {
  if (!result.substantial_below)
    return {};
  if (result.bare == assess::Bare::over)
    return scope.say("margin.past-substantial");
  return result.substantial ? scope.say("margin.substantial", {{"mm", limit_text(*result.substantial_below)}}) : std::string();
}

std::string margin_words(const Scope &scope, const assess::CriterionResult &result, Length band) {
  const std::string margin = unsigned_margin(result, band);
  const std::string doubt = doubt_text(scope, band);
  switch (result.verdict) {
  case assess::Verdict::meets:
    return scope.say("margin.meets", {{"margin", margin}, {"doubt", doubt}});
  case assess::Verdict::falls_short:
    return scope.say("margin.falls-short", {{"margin", margin}, {"doubt", doubt}});
  case assess::Verdict::too_close:
    return scope.say("margin.too-close", {{"verdict", verdict_word(scope, result)},
                                           {"margin", margin_text(result, band)},
                                           {"doubt", doubt}});
  case assess::Verdict::not_applicable:
    return scope.say("margin.not-applicable");
  }
  return {};
}

std::string loss_text(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject) {
  const auto *found = survey::zone_of(scope.survey(), zone.zone);
  const Length loss = found->original.nominal.value - subject.judged();
  const auto &share = subject.kind == assess::Subject::Kind::pit ? zone.pit_loss : zone.general_loss;
  const std::string lost = unit_mm(scope, short_mm(loss));
  if (zone.weak_basis) {
    if (!zone.alive_low || !zone.alive_high)
      return {};
    return scope.say("margin.loss-alive", {{"low", percent_figure(scope, *zone.alive_low)},
                                           {"high", percent(scope, *zone.alive_high)}});
  }
  if (!share)
    return lost;
  return scope.say("margin.loss", {{"loss", lost}, {"share", share_text(scope, *share)}});
}

std::string subject_place(const Scope &scope, std::string_view id) {
  const auto *pit = survey::pit_of(scope.survey(), id);
  return pit == nullptr ? mark_place(scope, id) : pit_place(scope, *pit);
}

int not_read(const assess::Count &count) {
  int sum = 0;
  for (const auto &[status, number] : count.not_read)
    sum += number;
  return sum;
}

std::optional<LadderWords> ladder_words(const Scope &scope, const assess::ZoneResult &zone) {
  if (zone.too_few || zone.rung.empty())
    return LadderWords{scope.say("ladder.too-few"), scope.policy().ladder.too_few_words};
  const auto *rung = rung_of(scope, zone.rung);
  if (rung == nullptr)
    return std::nullopt;
  const bool extensive = zone.extent == assess::Extent::extensive;
  return LadderWords{
      scope.say("ladder.row", {{"when", rung->when}, {"extent", extent_word(scope, zone.extent)}}),
      extensive ? rung->extensive_words : rung->isolated_words};
}

const survey::Decision *decision_for(const Scope &scope, std::string_view zone) {
  const auto &all = scope.survey().decisions;
  const auto found = std::ranges::find(all, zone, &survey::Decision::zone);
  return found == all.end() ? nullptr : &*found;
}

std::vector<std::string> zones_of(const Scope &scope, const survey::Reach &reach) {
  std::vector<std::string> out;
  if (!reach.zone.empty())
    out.push_back(reach.zone);
  for (const auto &id : reach.rows)
    if (const auto *row = survey::row_of(scope.survey(), id);
        row != nullptr && std::ranges::find(out, row->zone) == out.end())
      out.push_back(row->zone);
  if (reach.zone.empty() && reach.rows.empty())
    for (const auto &zone : scope.survey().zones)
      out.push_back(zone.id);
  return out;
}

} // namespace strakebook::compose
