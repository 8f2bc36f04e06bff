#pragma once

#include <map>
#include <string>
#include <vector>

#include "strakebook/base/decimal.h"

namespace strakebook::policy {

/// A metal that anodes are made of.
struct AnodeMetal {
  base::Decimal capacity;          ///< A h per kg
  std::vector<std::string> waters; ///< ids of AfloatRule::waters that it suits
  std::string source;
};

/// Coating and anodes.
struct ProtectionRule {
  std::map<std::string, AnodeMetal> metals;
  base::Decimal utilisation;       ///< share of an anode's mass that can be used, 0 to 1
  base::Decimal unworn_percent;    ///< an anode that has lost less than this
  int unworn_months = 0;           ///< after so many months is called unworn
  std::string recoat_interval;     ///< in words, as the house says
  std::string source;
};

} // namespace strakebook::policy
