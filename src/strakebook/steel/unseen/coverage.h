#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/steel/assess/assessment.h"

/// How much of the plate the used marks stand for.
namespace strakebook::unseen {

using base::Length;
using base::Ratio;

/// A stretch of one row with no used mark inside it.
struct Gap {
  std::string row, from, to; ///< mark ids at its ends: "PM 3", "PM 6"
  Length length;
};

/// Of one zone, or of the whole survey.
struct Coverage {
  std::string zone;                    ///< empty: all of them
  assess::Count count;
  std::optional<base::Decimal> area_m2; ///< of all: their sum, where every zone gives one
  std::optional<Ratio> used_per_m2;
  /// Share of the area under the gauge's crystal at the used marks together, n pi d^2 / (4 area), repeats at one mark counted
  /// once. Absent without an area, without a used mark, or where the gauge of one does not say how wide its crystal is.
  std::optional<double> touched_share;
  std::optional<Length> crystal;       ///< where all used marks were taken with one diameter
  /// The longest, the first of several: between neighbouring used marks of a row, or from an end of its planned marks to the
  /// nearest used one; all of a row without one. Absent where no row has two marks.
  std::optional<Gap> largest_gap;
};

std::vector<Coverage> coverage(const survey::Survey &survey, const assess::Assessment &assessment); ///< by zone, in their order
Coverage whole(const survey::Survey &survey, const assess::Assessment &assessment, const std::vector<Coverage> &zones);

} // namespace strakebook::unseen
