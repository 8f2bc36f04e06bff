#pragma once

#include "strakebook/steel/review/requirements.h"

/// Ways to find what is missing, made from pointers to members: a row of the table names the members and no more.
namespace strakebook::review {

inline bool given(const survey::Words &words) { return words.given(); }
inline bool given(const base::Measured &length) { return length.value > Length{}; }
inline bool given(int number) { return number > 0; }
template <class T> bool given(const std::optional<T> &value) { return value.has_value(); }
template <class T> bool given(const std::vector<T> &list) { return !list.empty(); }

/// Survey::PART.FIELD is not given.
template <auto Part, auto Field> Gaps part_lacks(const Subject &subject) {
  const auto &part = subject.survey.*Part;
  if (given(part.*Field)) return {};
  if constexpr (requires { part.span; }) return {{"", nearest(part.span, subject.survey.span)}};
  else return {{"", subject.survey.span}};
}

/// The list or text Survey::LIST is empty.
template <auto List> Gaps survey_lacks(const Subject &subject) {
  return given(subject.survey.*List) ? Gaps{} : Gaps{{"", subject.survey.span}};
}

/// What messages call the elements of a list.
inline std::string called(const survey::Zone &zone) { return "zone " + zone.id; }
inline std::string called(const survey::Row &row) { return "row " + row.id; }
inline std::string called(const survey::Gauge &gauge) { return "gauge " + gauge.id; }
inline std::string called(const survey::Decision &decision) { return "the decision on zone " + decision.zone; }
inline std::string called(const survey::Recommendation &item) { return "recommendation " + item.id; }
inline std::string called(const survey::Limitation &limitation) { return "limitation " + limitation.id; }
inline std::string called(const survey::Photo &photo) { return "photo " + photo.id; }
inline std::string called(const survey::SteelworkItem &item) { return "schedule item " + item.id; }

/// Every element of Survey::LIST that does not give FIELD.
template <auto List, auto Field> Gaps each_lacks(const Subject &subject) {
  Gaps gaps;
  for (const auto &element : subject.survey.*List)
    if (!given(element.*Field)) gaps.push_back({called(element), nearest(element.span, subject.survey.span)});
  return gaps;
}

} // namespace strakebook::review
