#include "strakebook/steel/protection/exact.h"
#include "strakebook/steel/protection/parts.h"

/// Anodes after DNV-RP-B401: current of the bare steel, mass over the years, count.
namespace strakebook::protection {

namespace {

using boost::multiprecision::cpp_int;
using quantity::Quantity;

constexpr int hours_a_year = 8760, ma_in_a = 1000;

int round_up(const Exact &value) {
  const cpp_int whole = numerator(value) / denominator(value);
  return static_cast<int>(whole * denominator(value) == numerator(value) ? whole : cpp_int(whole + 1));
}

std::vector<Lack> lacking(const survey::AnodePlan &plan, const policy::ProtectionRule &rule) {
  std::vector<Lack> out;
  if (!rule.metals.contains(plan.metal.text)) out.push_back(Lack::metal);
  if (!plan.area_m2) out.push_back(Lack::area);
  if (!plan.bare_percent) out.push_back(Lack::bare);
  if (!plan.current_ma_m2) out.push_back(Lack::current);
  if (!plan.years) out.push_back(Lack::years);
  if (!plan.net_kg) out.push_back(Lack::net_mass);
  if (!plan.stands_out) out.push_back(Lack::stands_out);
  return out;
}

Quantity current(const survey::AnodePlan &plan, double amperes) {
  return {"anodes", "anode-current", amperes, 3, "A",
          {{"A", rounded(*plan.area_m2), plan.area_m2->places, "m2", "anode-plan area-m2"},
           {"i", rounded(*plan.current_ma_m2), plan.current_ma_m2->places, "mA/m2", "anode-plan current-ma-m2"},
           {"f", rounded(share(*plan.bare_percent)), plan.bare_percent->places + 2, "", "anode-plan bare-percent"}}};
}

Quantity mass(const survey::AnodePlan &plan, const policy::ProtectionRule &rule, const policy::AnodeMetal &metal, double amperes,
              double kg) {
  return {"anodes", "anode-mass", kg, 2, "kg",
          {{"I", amperes, 3, "A", "anode-current"},
           {"t", rounded(*plan.years), plan.years->places, "years", "anode-plan years"},
           {"u", rounded(rule.utilisation), rule.utilisation.places, "", "policy"},
           {"e", rounded(metal.capacity), metal.capacity.places, "Ah/kg", "policy"}}};
}

Quantity count(const survey::AnodePlan &plan, double kg, int anodes) {
  return {"anodes", "anode-count", static_cast<double>(anodes), 0, "",
          {{"M", kg, 2, "kg", "anode-mass"}, {"m", rounded(*plan.net_kg), plan.net_kg->places, "kg", "anode-plan net-kg"}}};
}

} // namespace

Anodes reckon(const survey::AnodePlan &plan, const policy::ProtectionRule &rule) {
  Anodes out;
  out.lacking = lacking(plan, rule);
  if (!plan.area_m2 || !plan.bare_percent || !plan.current_ma_m2) return out;
  const Exact amperes = exact(*plan.area_m2) * exact(*plan.current_ma_m2) * share(*plan.bare_percent) / ma_in_a;
  out.current_a = rounded(amperes);
  out.workings.push_back(current(plan, *out.current_a));
  const auto metal = rule.metals.find(plan.metal.text);
  if (metal == rule.metals.end() || !plan.years) return out;
  const Exact kg = amperes * exact(*plan.years) * hours_a_year / (exact(rule.utilisation) * exact(metal->second.capacity));
  out.mass_kg = rounded(kg);
  out.workings.push_back(mass(plan, rule, metal->second, *out.current_a, *out.mass_kg));
  if (!plan.net_kg) return out;
  out.count = round_up(kg / exact(*plan.net_kg));
  out.workings.push_back(count(plan, *out.mass_kg, *out.count));
  return out;
}

} // namespace strakebook::protection
