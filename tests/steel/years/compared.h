#pragma once

#include "strakebook/steel/years/years.h"
#include "support/survey_builder.h"

/// Surveys of two years or more, made by hand.
namespace strakebook::sample {

inline base::Date day(const std::string &iso) { return base::parse_date(iso).value(); }

/// The house with its rules for other years. match-radius and cap: the house's own, no source; life part: API 570 style.
inline policy::Policy house_of_years() {
  auto policy = house();
  policy.years = {.match_radius = length("150"), .life_part = {1, 2}, .longest_months = 36};
  return policy;
}

/// An earlier survey; stations in metres, counted aft from the same zero unless changed.
inline survey::EarlierSurvey earlier_survey(const std::string &id, const std::string &inspected, const std::string &u = "0.1") {
  survey::EarlierSurvey earlier{.id = id, .inspected = {day(inspected), {}}, .u = length(u), .depth_u = length(u)};
  earlier.datum.zero = station("0 m");
  return earlier;
}

inline void read_then(survey::EarlierSurvey &earlier, const std::string &row, const std::string &at, const std::string &figure) {
  earlier.marks.push_back({.row = row, .station = station(at), .repeats = {mm(figure)}});
}

/// Side plate of 6 mm by a mill certificate, one row PW, judged by 4.0 and 3.0 mm; inspected in 2026.
inline SurveyBuilder side_plate() {
  SurveyBuilder builder;
  builder.zone("W", "6").row("PW", "W").criteria({"absolute-4.0", "absolute-3.0"});
  builder.made.datum.towards = words("aft");
  builder.made.report.inspected = {day("2026-10-14"), {}};
  return builder;
}

inline years::History history_of(const survey::Survey &survey, const policy::Policy &policy = house_of_years()) {
  base::Diagnostics sink;
  const auto assessment = assess::assess(survey, policy, sink);
  if (!sink.ok()) throw std::runtime_error(sink.all().front().message);
  return years::compare(survey, assessment, policy);
}

inline const years::Life &life_to(const years::Place &place, const std::string &criterion) {
  for (const auto &life : place.lives)
    if (life.criterion == criterion) return life;
  throw std::out_of_range(criterion);
}

} // namespace strakebook::sample
