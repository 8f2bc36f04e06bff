#include "strakebook/compose/voice.h"

#include <algorithm>

namespace strakebook::compose {

std::string verdict_meaning(assess::Verdict verdict) {
  switch (verdict) {
  case assess::Verdict::meets:
    return "meets";
  case assess::Verdict::too_close:
    return "too-close";
  case assess::Verdict::falls_short:
    return "falls-short";
  case assess::Verdict::not_applicable:
    return "not-applicable";
  }
  return {};
}

std::string verdict_word(const Scope &scope, assess::Verdict verdict) {
  switch (verdict) {
  case assess::Verdict::meets:
    return scope.say("verdict.meets");
  case assess::Verdict::too_close:
    return scope.say("verdict.too-close");
  case assess::Verdict::falls_short:
    return scope.say("verdict.falls-short");
  case assess::Verdict::not_applicable:
    return scope.say("verdict.not-applicable");
  }
  return {};
}

std::string verdict_word(const Scope &scope, const assess::CriterionResult &result) {
  const bool told_apart = scope.policy().decision.kind == policy::DecisionKind::four_classes;
  if (!told_apart || result.verdict != assess::Verdict::too_close)
    return verdict_word(scope, result.verdict);
  return result.bare == assess::Bare::over ? scope.say("verdict.too-close-over") : scope.say("verdict.too-close-inside");
}

Inlines verdict_sign(const Scope &scope, assess::Verdict verdict) {
  return {content::Sign{verdict_meaning(verdict), verdict_word(scope, verdict)}};
}

std::string status_word(const Scope &scope, survey::Status status) {
  switch (status) {
  case survey::Status::read:
    return scope.say("status.read");
  case survey::Status::no_echo:
    return scope.say("status.no-echo");
  case survey::Status::unstable:
    return scope.say("status.unstable");
  case survey::Status::not_cleaned:
    return scope.say("status.not-cleaned");
  case survey::Status::no_access:
    return scope.say("status.no-access");
  case survey::Status::weld_or_fitting:
    return scope.say("status.weld-or-fitting");
  case survey::Status::rejected:
    return scope.say("status.rejected");
  case survey::Status::queried:
    return scope.say("status.queried");
  }
  return {};
}

std::string surface_word(const Scope &scope, survey::Surface surface) {
  switch (surface) {
  case survey::Surface::bare:
    return scope.say("surface.bare");
  case survey::Surface::coated_echo_to_echo:
    return scope.say("surface.coated-echo-to-echo");
  case survey::Surface::coated_single_echo:
    return scope.say("surface.coated-single-echo");
  }
  return {};
}

std::string side_word(const Scope &scope, survey::Side side) {
  switch (side) {
  case survey::Side::port:
    return scope.say("side.port");
  case survey::Side::centre:
    return scope.say("side.centre");
  case survey::Side::starboard:
    return scope.say("side.starboard");
  }
  return {};
}

std::string extent_word(const Scope &scope, assess::Extent extent) {
  switch (extent) {
  case assess::Extent::none:
    return scope.say("extent.none");
  case assess::Extent::isolated:
    return scope.say("extent.isolated");
  case assess::Extent::scattered:
    return scope.say("extent.scattered");
  case assess::Extent::extensive:
    return scope.say("extent.extensive");
  case assess::Extent::not_declared:
    return scope.say("extent.not-declared");
  }
  return {};
}

std::string state_word(const Scope &scope, survey::State state) {
  switch (state) {
  case survey::State::draft:
    return scope.say("state.draft");
  case survey::State::preliminary:
    return scope.say("state.preliminary");
  case survey::State::final:
    return scope.say("state.final");
  }
  return {};
}

std::string origin_words(const Scope &scope, const base::Provenance &from) {
  switch (from.origin) {
  case base::Origin::measured:
    return scope.say("origin.measured");
  case base::Origin::told:
    return scope.say("origin.told", {{"by", from.by}});
  case base::Origin::document:
    return scope.say("origin.document", {{"by", from.by}});
  }
  return {};
}

std::string action_name(const Scope &scope, const std::string &action) {
  const auto found = scope.policy().actions.find(action);
  return found == scope.policy().actions.end() ? action : found->second.name;
}

const policy::Criterion *criterion(const Scope &scope, std::string_view id) {
  const auto &all = scope.assessment().criteria;
  const auto found = std::ranges::find(all, id, &policy::Criterion::id);
  return found == all.end() ? nullptr : &*found;
}

std::string capitalised(std::string words) {
  if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
    words.front() = static_cast<char>(words.front() - 'a' + 'A');
  return words;
}

std::string join_and(const Scope &scope, std::span<const std::string> parts) {
  if (parts.size() < 2)
    return parts.empty() ? std::string() : parts.front();
  return scope.say("voice.list-end",
                   {{"most", base::joined(parts.first(parts.size() - 1), scope.say("voice.list-between"))},
                    {"last", parts.back()}});
}

} // namespace strakebook::compose
