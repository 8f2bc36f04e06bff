#pragma once

#include "strakebook/steel/survey/survey.h"

/// What became of a report's recommendations, by its addenda.
namespace strakebook::survey {

const Addendum *addendum_of(const Survey &survey, std::string_view id); ///< nullptr: none has this number
const Recommendation *recommendation_of(const Survey &survey, std::string_view id);

/// The last addendum that speaks of a recommendation.
struct Outcome {
  const Addendum *addendum = nullptr; ///< nullptr: none speaks of it
  const ClosedItem *item = nullptr;
  bool closed() const { return item != nullptr && item->outcome == Closing::closed; }
};
/// Addenda are looked through in the order of the file, up to and with `last`; empty: all of them.
Outcome outcome_of(const Survey &survey, std::string_view recommendation, std::string_view last = {});

/// Recommendations that no addendum up to `last` has closed, in their order.
std::vector<const Recommendation *> open_items(const Survey &survey, std::string_view last = {});

/// The survey as its report tells it: without the addenda that came after the report's day of issue (but for those up to `last`, where
/// that is not empty), and without the photographs to which nothing else refers.
Survey without_later_addenda(Survey survey, std::string_view last = {});

/// Was it found open, or not looked at, by this survey, or is nothing said of it yet?
bool still_open(const CarriedItem &item);

} // namespace strakebook::survey
