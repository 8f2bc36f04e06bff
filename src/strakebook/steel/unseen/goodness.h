#pragma once

#include <span>

#include "strakebook/steel/unseen/gumbel.h"

/// Does Gumbel's law fit a sample?
namespace strakebook::unseen {

/// Anderson and Darling's A2 of a sample against a law, the wide tails counted most (M. A. Stephens, J. Amer. Statist. Assoc. 69,
/// 730, 1974).
double anderson_darling(std::span<const double> sample, const Gumbel &law);

/// So many samples of n figures are drawn from the law, each fitted again by maximum likelihood; the chance is that of the
/// drawn ones whose A2 is no less than `a2`, the sample itself counted among them: (1 + count) / (1 + samples). As neither
/// location nor scale moves A2 of a law fitted so, the standard law is drawn from, and the test is exact but for the draw.
/// Drawn by std::mt19937_64 from `seed`, 52 bits a figure, so that every machine draws the same.
double chance_of(double a2, int n, int samples);

inline constexpr unsigned long seed = 20010101; ///< of every draw: the same sample gives the same chance
inline constexpr int samples_drawn = 1999;      ///< for the chance of a fit that is reported

} // namespace strakebook::unseen
