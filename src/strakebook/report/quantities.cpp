#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "strakebook/base/csv_text.h"
#include "strakebook/base/text.h"
#include "strakebook/report.h"

namespace strakebook {

namespace {

using quantity::Quantity;

const house::Formula &formula_of(const Case &the_case, const Quantity &quantity) {
  return the_case.house.wording.formulas.at(quantity.formula);
}

std::string inputs_text(const Quantity &quantity, std::string_view between) {
  std::vector<std::string> inputs;
  for (const auto &input : quantity.inputs) inputs.push_back(quantity::text(input));
  return base::joined(inputs, between);
}

} // namespace

std::string quantities_csv(const Case &the_case) {
  const base::CsvText head[] = {{"of"}, {"quantity"}, {"value"}, {"unit"}, {"formula"}, {"inputs"}};
  std::string out = base::csv_line(head);
  for (const Quantity &quantity : the_case.outlook.quantities) {
    const auto &formula = formula_of(the_case, quantity);
    const base::CsvText line[] = {{quantity.of}, {formula.name}, {quantity::value_text(quantity.value, quantity.places), true},
                                  {quantity.unit}, {formula.text}, {inputs_text(quantity, "; ")}};
    out += base::csv_line(line);
  }
  return out;
}

std::string quantities_json(const Case &the_case) {
  auto all = quantity::json(the_case.outlook.quantities);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const auto &formula = formula_of(the_case, the_case.outlook.quantities[i]);
    all[i]["name"] = formula.name;
    all[i]["text"] = formula.text;
    all[i]["symbols"] = formula.inputs;
    all[i]["source"] = formula.source;
  }
  return nlohmann::ordered_json{{"quantities", std::move(all)}}.dump(2) + "\n";
}

std::string quantities_text(const Case &the_case) {
  if (the_case.outlook.quantities.empty()) return "Nothing is reckoned here: the survey gives no steelwork, coating or pit blocks.\n";
  std::string out;
  for (const Quantity &quantity : the_case.outlook.quantities) {
    const auto &formula = formula_of(the_case, quantity);
    const std::string value = quantity::value_text(quantity.value, quantity.places) + (quantity.unit.empty() ? "" : " " + quantity.unit);
    out += fmt::format("{}: {} {}\n    {}    {}\n", quantity.of, formula.name, value, formula.text, inputs_text(quantity, ", "));
  }
  return out;
}

} // namespace strakebook
