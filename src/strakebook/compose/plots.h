#pragma once

#include <string>
#include <vector>

#include "strakebook/compose/sketch.h"

/// Plots of numbers against numbers, as data. Whoever shows one brings the numbers, in millimetres or as said, and the words;
/// a plot computes nothing.
namespace strakebook::compose {

/// Where an axis runs, which of its values are numbered, and its words.
struct PlotAxis {
  double low = 0, high = 1;
  std::vector<std::pair<double, std::string>> numbers;
  std::string title;
};

/// One place in two surveys.
struct Compared {
  double before = 0, after = 0;
  std::string name, target; ///< printed beside it and led to where given
};

/// Before across, after up, at one scale. On the diagonal nothing changed; within the hatched band about it, `doubt` either
/// way, a change is not seen. Under the band steel was lost.
struct Comparison {
  std::vector<Compared> places;
  double doubt = 0;
  PlotAxis both;          ///< of either axis; its title stands at the one across
  std::string after_title;
};
Drawing comparison_plot(const Comparison &what, std::string spoken);

/// Block maxima on extreme value paper: across the reduced variate -ln(-ln p), up the depth. On it a Gumbel law is a straight
/// line; `low` and `high` bound it where its doubt is known.
struct ExtremeValues {
  std::vector<XY> maxima, line, low, high;
  std::vector<std::pair<double, std::string>> limits; ///< a depth and its name, drawn across
  PlotAxis reduced, depth;
};
Drawing extreme_value_plot(const ExtremeValues &what, std::string spoken);

} // namespace strakebook::compose
