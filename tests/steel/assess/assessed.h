#pragma once

#include "strakebook/steel/assess/assessment.h"
#include "support/survey_builder.h"

namespace strakebook::sample {

inline assess::Assessment assessed(const survey::Survey &survey, const policy::Policy &policy = house()) {
  base::Diagnostics sink;
  auto result = assess::assess(survey, policy, sink);
  if (!sink.ok()) throw std::runtime_error(sink.all().front().message);
  return result;
}

inline const assess::CriterionResult &result_of(const assess::Subject &subject, const std::string &criterion) {
  for (const auto &result : subject.results)
    if (result.criterion == criterion) return result;
  throw std::out_of_range(criterion);
}

} // namespace strakebook::sample
