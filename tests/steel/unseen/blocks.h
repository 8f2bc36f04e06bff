#pragma once

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/unseen/unseen.h"
#include "support/survey_builder.h"

namespace strakebook::sample {

inline policy::Policy careful_house() {
  auto policy = house();
  policy.unseen = {.least_blocks = 10, .confidence = percent("95"), .significance = percent("5"), .source = "common practice, no source"};
  return policy;
}

/// A bottom of 12 mm and so much area, looked over in blocks of a quarter of a square metre.
inline survey::Survey blocks(const std::vector<std::string> &deepest, const std::string &area, const std::string &block = "0.25") {
  auto made = SurveyBuilder().zone("B", "12", "mill certificate", policy::Plating::bottom).row("BC", "B").marks("BC", {"11.4", "11.6", "11.5", "11.5"}).made;
  if (!area.empty()) made.zones[0].area_m2 = decimal(area);
  survey::PitBlocks found{.block_m2 = decimal(block), .blocks = static_cast<int>(deepest.size())};
  for (const auto &depth : deepest) found.deepest.push_back(mm(depth));
  made.zones[0].pit_blocks = std::move(found);
  return made;
}

inline unseen::Unseen unseen_of(const survey::Survey &survey, const policy::Policy &policy = careful_house()) {
  base::Diagnostics sink;
  return unseen::unseen(survey, assess::assess(survey, policy, sink), policy);
}

/// Twelve depths with a spread.
inline std::vector<std::string> twelve_depths() {
  return {"1.4", "1.2", "1.9", "1.1", "1.6", "1.5", "1.3", "1.7", "1.4", "1.3", "1.2", "2.0"};
}

} // namespace strakebook::sample
