#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/unseen/goodness.h"

/// The deepest pit to expect in all of a zone, from the deepest of each of so many blocks of it that were looked over whole.
/// The return period of the whole zone is its area over that of a block (M. Shibata, J. Res. NIST 99, 327, 1994). It takes the
/// blocks as independent and the rest of the zone as pitted like them.
namespace strakebook::unseen {

using base::Length;
using base::Ratio;

/// Why no depth is given, in the order in which it is asked. few_blocks: fewer than the policy's least. blocks_without_pits: one
/// at least has no pit. no_area: the zone's is not given. all_seen: the blocks cover the zone, so nothing is left to expect.
/// all_alike: the depths have no spread.
enum class Refusal { none, few_blocks, blocks_without_pits, no_area, all_seen, all_alike };

/// Depths in mm.
struct Expected {
  Fit by_likelihood;
  Gumbel by_l_moments;
  double a2 = 0, chance = 0; ///< Anderson-Darling and its chance, see goodness.h
  bool poor = false;         ///< the chance is less than the policy's significance
  Ratio period;              ///< T: blocks that the zone's area holds
  double level = 0;          ///< at T by maximum likelihood: one block in T goes deeper
  double error = 0;          ///< its standard error
  double low = 0, high = 0;  ///< two-sided, at the policy's confidence
  double upper = 0;          ///< one-sided, at the same
  double mode = 0;           ///< likeliest depth of the deepest of T blocks, location + scale ln T
  double within = 0;         ///< no deeper, at the policy's confidence, is the deepest of T blocks of the fitted law itself
  double chance_deeper = 0;  ///< of the deepest of T blocks to be deeper than `level`
  std::optional<double> beside_mean; ///< mean of what the zone's used marks are judged by, less `level`; absent without one. Nobody measured it
};

struct PitDepths {
  int blocks = 0, without_pits = 0;
  base::Decimal block_m2;
  Length deepest_seen;       ///< in the blocks
  std::string deeper_pit;    ///< the deepest listed on the zone's rows, where it is deeper than any in the blocks; else empty
  Refusal refused = Refusal::none;
  std::optional<Expected> expected; ///< absent where refused
};

/// Of a zone that gives blocks.
PitDepths pit_depths(const survey::Survey &survey, const survey::Zone &zone, const assess::ZoneResult &result,
                     const policy::UnseenRule &rule);

/// The deepest of each block in mm, in the order of the file.
std::vector<double> depths_mm(const survey::PitBlocks &blocks);

} // namespace strakebook::unseen
