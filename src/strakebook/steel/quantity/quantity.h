#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

/// One figure that a yard, an engineer or a court may want to check: with its formula and what went in.
namespace strakebook::quantity {

struct Input {
  std::string symbol;   ///< as in the formula's text: "A"
  double value = 0;     ///< in `unit`. A double: no verdict turns on it
  int places = 0;       ///< decimals that are printed
  std::string unit;     ///< "m2", "mm", "kg", "t/m3"; empty: a bare number
  std::string from;     ///< where it was taken: "S1 length", "PW 9", "policy"
};

struct Quantity {
  std::string of;       ///< what it belongs to: "S1", "zone B", "anodes"
  std::string formula;  ///< id of one of the layout's formulas, which names it and says how it is reckoned: "steel-weight"
  double value = 0;     ///< in `unit`. A double: no verdict turns on it
  int places = 0;       ///< decimals that are printed
  std::string unit;
  std::vector<Input> inputs;
};

/// A value rounded to its decimals: "-0.20"; never "-0".
std::string value_text(double value, int places);

/// An input in one line of plain letters: "A 1.20 m2 (S1 length)".
std::string text(const Input &input);

nlohmann::ordered_json json(const std::vector<Quantity> &all);

} // namespace strakebook::quantity
