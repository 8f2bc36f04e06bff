#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "strakebook/base/geometry.h"

namespace strakebook::style {

/// What stays on one line though a blank stands between: lists of words as a text writes them.
struct Ties {
  std::vector<std::string> units;   ///< after a figure: "mm", "%"
  std::vector<std::string> divided_units; ///< those whose fractions are set as such: "3/16 in"
  std::vector<std::string> months;  ///< after the day of a date
  std::vector<std::string> leaders; ///< before a figure or a mark: "p.", "Table"
  std::vector<std::string> ranges;  ///< between two figures: "to"
  std::vector<std::string> arrows;  ///< before what they lead to or weigh: an arrow, "<="
  std::vector<std::string> titles;  ///< before a name
  std::vector<std::string> dashes;  ///< never at the beginning of a line, but for the one that opens a text
  int code_letters = 0;             ///< capitals at most in a code that stays with the figure after it: "PW 9"
};

/// Words that no language divides: paths, addresses, digests.
struct LongWords {
  int from = 0;      ///< characters: shorter ones stay whole
  std::string after; ///< a line may end after each of these characters
  int digits = 0;    ///< and after so many characters of a digest
};

/// How paragraphs are set.
struct Setting {
  double blanks_grow = 0, blanks_shrink = 0;    ///< parts of their own width, in justified text
  int divide_left = 0, divide_right = 0;        ///< letters at least before and after the hyphen of a divided word
  int divided_in_a_row = 0;                     ///< lines one under the other that may end in a hyphen
  base::Pt last_line;                           ///< the least width of the last line of several
  int river_lines = 0;                          ///< blanks one under the other in so many lines are a river
  double river_overlap = 0;                     ///< what they share, in parts of the narrower one
  std::map<std::string, double, std::less<>> hang; ///< what of a character stands outside the edge of justified text
  LongWords long_words;
  Ties ties;
};

} // namespace strakebook::style
