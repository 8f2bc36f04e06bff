#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/steel/survey/survey.h"

/// Which place of an earlier survey is which place of this one: by where they lie, never by what they are called.
namespace strakebook::years {

/// Where a station of an earlier survey lies in this survey's datum: its zero, and from there its distance, the same way where
/// both datums count the same way, else against it. Exact.
base::Length true_position(const survey::EarlierDatum &earlier, const survey::Datum &now, base::Length distance);

/// A place along a row, in this survey's datum.
struct Spot {
  std::string row;
  base::Length position;
};

/// For each place here the index of the place there that is the same: in the same row, no further off than the radius, one to
/// one, the nearest pair first. Of pairs equally near, the one of the lower position here comes first, then of the lower there.
std::vector<std::optional<std::size_t>> matched(const std::vector<Spot> &here, const std::vector<Spot> &there,
                                                base::Length radius);

} // namespace strakebook::years
