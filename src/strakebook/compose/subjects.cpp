#include "strakebook/compose/subjects.h"

#include "strakebook/compose/told.h"
#include "strakebook/compose/wastage.h"

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

/// A rung is reached past every rung above it, so a part of the original counts from the first that asks for one.
bool turns_on_original(const Scope &scope, const policy::Rung &found) {
  for (const auto &rung : scope.policy().ladder.rungs) {
    if (rung.below_part)
      return true;
    if (rung.id == found.id)
      return false;
  }
  return false;
}

/// Which column of the ladder a zone takes, and why where it is for the share of its marks.
std::string column_words(const Scope &scope, const assess::ZoneResult &zone) {
  if (!zone.suggests_extensive)
    return scope.say("criteria.isolated");
  const Ratio share = *zone.share_at_rung, hundredfold{share.num * 100, share.den};
  if (hundredfold < scope.policy().extent.under_percent.ratio())
    return scope.say("criteria.extensive");
  return scope.say("ladder.extensive-by-share", {{"share", percent(scope, share)}});
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
    return scope.say_computed("margin.meets", {{"margin", margin}, {"doubt", doubt}});
  case assess::Verdict::falls_short:
    return scope.say_computed("margin.falls-short", {{"margin", margin}, {"doubt", doubt}});
  case assess::Verdict::too_close:
    return scope.say_computed("margin.too-close", {{"verdict", verdict_word(scope, result)},
                                                   {"margin", margin_text(result, band)},
                                                   {"doubt", doubt}});
  case assess::Verdict::not_applicable:
    return scope.say_computed("margin.not-applicable");
  }
  return {};
}

std::string loss_text(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject) {
  const auto &wastage = subject.kind == assess::Subject::Kind::pit ? zone.under_pit : zone.local;
  return wastage ? loss_words(scope, zone, *wastage) : std::string();
}

const assess::LossShare *share_at(const Scope &scope, std::string_view id) {
  for (const auto &result : scope.assessment().pits)
    if (result.share && scope.survey().pits.at(result.pit).id == id)
      return &*result.share;
  for (const auto &result : scope.assessment().marks)
    if (result.share && scope.survey().marks.at(result.mark).id() == id)
      return &*result.share;
  return nullptr;
}

std::string signed_name(const Scope &scope, const assess::ZoneResult &zone, std::string_view criterion) {
  return criterion_name(scope, criterion) + told_sign(scope, limit_is_told(zone, criterion));
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
  const bool told = loss_is_told(scope, zone) && turns_on_original(scope, *rung);
  const std::string when = rung->when + told_sign(scope, told);
  if (rung->isolated_words == rung->extensive_words)
    return LadderWords{when, rung->isolated_words};
  return LadderWords{scope.say("ladder.row", {{"when", when}, {"column", column_words(scope, zone)}}),
                     zone.suggests_extensive ? rung->extensive_words : rung->isolated_words};
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
