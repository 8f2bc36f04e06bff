#pragma once

#include <string_view>

#include "strakebook/steel/assess/assessment.h"

/// The data words of the assessment, as the survey file and the JSON form write them.
namespace strakebook::assess {

std::string_view word_of(survey::Status status); ///< "no-echo"; a mark that was read has no such word
std::string_view word_of(policy::Plating plating); ///< "bilge"
std::string_view word_of(policy::CriterionKind kind); ///< "rule-minimum"
std::string_view word_of(policy::DecisionKind kind);  ///< "guard-band"
std::string_view word_of(policy::Declaration declared); ///< "light-scantlings"
std::string_view word_of(policy::RuleReading reading);  ///< "floor-times-b"
std::string_view word_of(Verdict verdict); ///< "too-close"
std::string_view word_of(Bare bare); ///< "at-limit"
std::string_view word_of(Extent extent); ///< "not-declared"
std::string_view word_of(Nominal::State state); ///< "set-aside"
std::string_view word_of(Subject::Kind kind); ///< "pit"
std::string_view word_of(BlockCheck::State state); ///< "differs"
std::string_view word_of(Correction::By by); ///< "true-velocity"
std::string_view word_of(survey::Reduction reduction); ///< "least of repeats"
std::string_view word_of(Default::What what); ///< "pit-gauge"

inline constexpr std::string_view doubler_word = "doubler"; ///< why a mark that was read is not used

} // namespace strakebook::assess
