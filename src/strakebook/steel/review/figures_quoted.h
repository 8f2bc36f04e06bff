#pragma once

#include "strakebook/base/decimal.h"
#include "strakebook/steel/survey/pointer_scan.h"

/// Figures that a sentence gives for marks and pits: read closely, so that few sentences are misunderstood.
namespace strakebook::review {

/// Marks and pits named one after the other, and the figures next to them.
struct Quoted {
  std::vector<survey::FoundPointer> places; ///< marks and pits that are in the survey
  std::vector<base::Decimal> figures;       ///< in mm, with a decimal point
};

/// A figure is next to a place when it follows it with three words between at most, or else stands before it with two. It has
/// a decimal point and no unit but mm. One with a word of `bounds` within two words is a bound, not a reading, and left out.
std::vector<Quoted> figures_quoted(const survey::Survey &survey, std::string_view sentence, const std::vector<std::string> &bounds);

} // namespace strakebook::review
