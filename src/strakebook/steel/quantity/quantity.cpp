#include "strakebook/steel/quantity/quantity.h"

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

nlohmann::ordered_json json(const std::vector<Quantity> &all) {
  auto out = nlohmann::ordered_json::array();
  for (const Quantity &quantity : all) out.push_back(form(quantity));
  return out;
}

} // namespace strakebook::quantity
