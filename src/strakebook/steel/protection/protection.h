#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"

/// Coating and anodes: how much of what. Reckoned in exact fractions, so that counts round up at nothing but a true remainder;
/// the doubles here are for print. What is not given is named and never taken.
namespace strakebook::protection {

using base::Length;

/// What a scheme or plan does not give and would have to.
enum class Lack { area, film, solids, loss, metal, bare, current, years, net_mass, stands_out };

/// One coating scheme of the survey. V = A DFT / (10 VS) / (1 - loss): litres of A in m2, DFT in micrometres, VS in percent by
/// volume (common practice, no published source).
struct Scheme {
  std::string id;
  std::optional<double> litres; ///< to buy
  std::vector<Lack> lacking;    ///< for it
  quantity::Quantity working;   ///< meaningful where there are litres
};

/// The anodes planned, after DNV-RP-B401: I = A i f, M = I t 8760 / (u e), as many as hold that mass, rounded up.
struct Anodes {
  std::optional<double> current_a, mass_kg;
  std::optional<int> count;
  std::vector<Lack> lacking;
  std::vector<quantity::Quantity> workings;
};

/// Whether a metal suits the water she floats in, as the house has it.
struct Suited {
  std::string metal, water;
  std::vector<std::string> waters; ///< that it suits
  bool suits = false;
};

/// Her width with what is planned and scheduled to stand out from either side.
struct Width {
  Length beam;
  Length port, starboard;            ///< what stands out: planned anodes, and the thickest plate laid over on that side
  std::vector<std::string> items;    ///< schedule items whose plate is counted
  bool anodes = false;               ///< are counted
  std::optional<Length> narrowest;   ///< that she has to pass
  Length over_all() const { return beam + port + starboard; }
  bool too_wide() const { return narrowest && over_all() >= *narrowest; } ///< as wide is too wide: nothing is left to pass by
};

/// Anodes that were on her: worn as they should be after the time, or not.
struct Worn {
  base::Date on, inspected;
  base::Decimal percent;             ///< of their mass that has gone
  bool unworn = false;               ///< on her for the house's months or longer, and worn less than its percent
};

struct Protection {
  std::vector<Scheme> schemes;            ///< one for each of the survey's, same order
  std::optional<Anodes> anodes;           ///< absent: none are planned
  std::optional<Suited> planned, fitted;  ///< absent: water or metal not given, or not one of the house's
  std::optional<Width> width;             ///< absent: nothing stands out
  std::optional<Worn> worn;               ///< absent: their days or wear not given
};

Protection reckon(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Protection &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Protection &found);

} // namespace strakebook::protection
