#include "strakebook/steel/assess/words.h"

#include <stdexcept>

#include "strakebook/steel/survey/readings.h"
#include "strakebook/steel/survey/vocabulary.h"

namespace strakebook::assess {

namespace {
[[noreturn]] void no_such_value() { throw std::logic_error("a value that has no word"); }

/// The word by which the survey file names a value.
template <class E> std::string_view chosen_word(E value) {
  for (const auto &choice : survey::choices_of(value))
    if (choice.value == value) return choice.word;
  no_such_value();
}

} // namespace

std::string_view word_of(survey::Status status) { return chosen_word(status); }
std::string_view word_of(policy::Plating plating) { return chosen_word(plating); }

std::string_view word_of(policy::CriterionKind kind) {
  switch (kind) {
  case policy::CriterionKind::absolute: return "absolute";
  case policy::CriterionKind::percent: return "percent";
  case policy::CriterionKind::margin: return "margin";
  case policy::CriterionKind::rule_minimum: return "rule-minimum";
  case policy::CriterionKind::passenger_minimum: return "passenger-minimum";
  }
  no_such_value();
}

std::string_view word_of(policy::DecisionKind kind) {
  switch (kind) {
  case policy::DecisionKind::simple_acceptance: return "simple-acceptance";
  case policy::DecisionKind::guard_band: return "guard-band";
  case policy::DecisionKind::four_classes: return "four-classes";
  }
  no_such_value();
}

std::string_view word_of(policy::Declaration declared) {
  switch (declared) {
  case policy::Declaration::light_scantlings: return "light-scantlings";
  case policy::Declaration::passengers: return "passengers";
  }
  no_such_value();
}

std::string_view word_of(policy::RuleReading reading) {
  switch (reading) {
  case policy::RuleReading::floor_times_b: return "floor-times-b";
  case policy::RuleReading::local_wear: return "local-wear";
  case policy::RuleReading::local_wear_under_floor: return "local-wear-under-floor";
  }
  no_such_value();
}

std::string_view word_of(Verdict verdict) {
  switch (verdict) {
  case Verdict::meets: return "meets";
  case Verdict::too_close: return "too-close";
  case Verdict::falls_short: return "falls-short";
  case Verdict::not_applicable: return "not-applicable";
  }
  no_such_value();
}

std::string_view word_of(Bare bare) {
  switch (bare) {
  case Bare::inside: return "inside";
  case Bare::at_limit: return "at-limit";
  case Bare::over: return "over";
  }
  no_such_value();
}

std::string_view word_of(Extent extent) {
  switch (extent) {
  case Extent::none: return "none";
  case Extent::isolated: return "isolated";
  case Extent::scattered: return "scattered";
  case Extent::extensive: return "extensive";
  case Extent::not_declared: return "not-declared";
  }
  no_such_value();
}

std::string_view word_of(Nominal::State state) {
  switch (state) {
  case Nominal::State::alive: return "alive";
  case Nominal::State::excluded: return "excluded";
  case Nominal::State::set_aside: return "set-aside";
  }
  no_such_value();
}

std::string_view word_of(BlockCheck::State state) {
  switch (state) {
  case BlockCheck::State::missing: return "missing";
  case BlockCheck::State::agrees: return "agrees";
  case BlockCheck::State::differs: return "differs";
  }
  no_such_value();
}

std::string_view word_of(Default::What what) {
  switch (what) {
  case Default::What::wing_voids: return "wing-voids";
  case Default::What::pit_gauge: return "pit-gauge";
  case Default::What::gauge_beside: return "gauge-beside";
  }
  no_such_value();
}

std::string_view word_of(Correction::By by) {
  switch (by) {
  case Correction::By::before: return "before";
  case Correction::By::after: return "after";
  case Correction::By::true_velocity: return "true-velocity";
  }
  no_such_value();
}

std::string_view word_of(survey::Reduction reduction) { return chosen_word(reduction); }

std::string_view word_of(Subject::Kind kind) { return kind == Subject::Kind::pit ? "pit" : "plate"; }

} // namespace strakebook::assess
