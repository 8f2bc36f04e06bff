#pragma once

#include "strakebook/steel/works/works.h"

namespace strakebook::works {

/// Mean of what used marks are judged by, in mm, and how many they are; absent where there is none.
struct MeanRemaining {
  double mm = 0;
  int marks = 0;
};
std::optional<MeanRemaining> mean_remaining(const survey::Survey &survey, const assess::Assessment &assessment,
                                            const survey::Reach &reach);

/// A rectangle with rounded corners, in m2: L B - (4 - pi) R^2. Its outline, in m: 2 (L + B) - (8 - 2 pi) R.
double plate_area(Length length, Length breadth, Length radius);
double edge_length(Length length, Length breadth, Length radius);

Item item_of(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy,
             const survey::SteelworkItem &written);

/// The ways of covering an area; none where its breadth is not known or it has no length.
std::vector<Option> options_of(const survey::Survey &survey, const assess::Assessment &assessment, const std::vector<Item> &items,
                               const Area &area, base::Decimal density);

} // namespace strakebook::works
