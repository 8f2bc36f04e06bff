#include "strakebook/steel/quantity/quantity.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace strakebook::quantity {

namespace {

nlohmann::ordered_json form(const Input &input) {
  return {{"symbol", input.symbol}, {"value", input.value}, {"unit", input.unit}, {"from", input.from}};
}

nlohmann::ordered_json form(const Quantity &quantity) {
  auto inputs = nlohmann::ordered_json::array();
  for (const Input &input : quantity.inputs) inputs.push_back(form(input));
  return {{"of", quantity.of},     {"formula", quantity.formula}, {"value", quantity.value},
          {"unit", quantity.unit}, {"inputs", std::move(inputs)}};
}

} // namespace

std::string value_text(double value, int places) {
  std::string text = fmt::format("{:.{}f}", value, places);
  const bool nought = text.find_first_not_of("-0.") == std::string::npos;
  if (nought && text.starts_with('-')) text.erase(0, 1);
  return text;
}

std::string text(const Input &input) {
  std::string out = input.symbol + " " + value_text(input.value, input.places);
  if (!input.unit.empty()) out += " " + input.unit;
  if (!input.from.empty()) out += " (" + input.from + ")";
  return out;
}

nlohmann::ordered_json json(const std::vector<Quantity> &all) {
  auto out = nlohmann::ordered_json::array();
  for (const Quantity &quantity : all) out.push_back(form(quantity));
  return out;
}

} // namespace strakebook::quantity
