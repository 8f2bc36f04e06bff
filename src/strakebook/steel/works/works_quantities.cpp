#include "strakebook/steel/works/works.h"

#include "strakebook/base/approximate.h"

namespace strakebook::works {

namespace {

using quantity::Input;
using quantity::Quantity;

// Decimals that are printed: of lengths and areas in m and m2, of thicknesses in mm, of weights in kg.
constexpr int of_metres = 3, of_millimetres = 2, of_kilograms = 1;

Quantity area(std::string of, double value, std::vector<Input> sides) {
  return {std::move(of), "plate-area", value, of_metres, "m2", std::move(sides)};
}
Quantity weight(std::string of, const std::string &formula, double value, std::vector<Input> inputs) {
  return {std::move(of), formula, value, of_kilograms, "kg", std::move(inputs)};
}

Input metres_input(const std::string &symbol, double value, std::string from) {
  return {symbol, value, of_metres, "m", std::move(from)};
}
Input area_input(double value, std::string from) { return {"A", value, of_metres, "m2", std::move(from)}; }
Input plate_input(const std::string &symbol, double value, std::string from) {
  return {symbol, value, of_millimetres, "mm", std::move(from)};
}
Input weight_input(const std::string &symbol, double value, std::string from) {
  return {symbol, value, of_kilograms, "kg", std::move(from)};
}

std::string marks_within(const std::string &what, int marks) {
  return std::to_string(marks) + (marks == 1 ? " mark" : " marks") + " within " + what;
}

std::vector<Input> sides_of(const Item &item) {
  const double radius = base::in_metres(item.radius.value_or(Length{}));
  return {metres_input("L", base::in_metres(*item.length), item.id + " length"), metres_input("B", base::in_metres(*item.breadth), item.id + " breadth"),
          metres_input("R", radius, item.id + (item.radius ? " radius" : " radius, not given"))};
}

void add_item(std::vector<Quantity> &to, const Item &item) {
  if (!item.plate_m2) return;
  to.push_back(area(item.id, *item.plate_m2, sides_of(item)));
  const Input plate = area_input(*item.plate_m2, item.id);
  if (item.weight_kg)
    to.push_back(weight(item.id, "steel-weight", *item.weight_kg, {plate, plate_input("t", base::in_millimetres(*item.thickness), item.id + " thickness")}));
  if (item.removed_kg)
    to.push_back(weight(item.id, "removed-weight", *item.removed_kg,
                        {plate, plate_input("tm", *item.mean_removed_mm, marks_within(item.id, item.removed_marks))}));
  if (item.insert && item.net_kg)
    to.push_back(weight(item.id, "net-weight", *item.net_kg, {weight_input("W", *item.weight_kg, item.id), weight_input("Wr", *item.removed_kg, item.id)}));
  to.push_back({item.id, "weld-length", *item.weld_m, of_metres, "m", sides_of(item)});
  if (!item.plugs) return;
  const auto grid = [&](const std::string &symbol, std::int64_t n) { return Input{symbol, static_cast<double>(n), 0, "", item.id + " plug pitch"}; };
  to.push_back({item.id, "plug-count", static_cast<double>(item.plugs->count()), 0, "", {grid("nx", item.plugs->along), grid("ny", item.plugs->across)}});
}

void add_area(std::vector<Quantity> &to, const Area &one) {
  if (!one.area_m2) return;
  to.push_back(area(one.id, *one.area_m2,
                    {metres_input("L", base::in_metres(one.along.length()), one.id + " length"),
                     metres_input("B", base::in_metres(*one.breadth), "what its rows stand for"), metres_input("R", 0, "a rectangle")}));
}

void add_option(std::vector<Quantity> &to, const Option &option) {
  const bool insert = option.kind == Option::Kind::insert;
  const std::string of = option.area + (insert ? " let in" : " laid over");
  const Input plate = area_input(option.area_m2, option.area);
  const std::string thickness_from = option.thickness_from.empty() ? option.area + " nominal" : option.thickness_from + " thickness";
  to.push_back(weight(of, "steel-weight", option.weight_kg, {plate, plate_input("t", base::in_millimetres(option.thickness), thickness_from)}));
  if (!insert) return;
  to.push_back(weight(of, "removed-weight", option.removed_kg, {plate, plate_input("tm", option.mean_removed_mm, marks_within(option.area, option.removed_marks))}));
  to.push_back(weight(of, "net-weight", option.net_kg, {weight_input("W", option.weight_kg, of), weight_input("Wr", option.removed_kg, of)}));
}

} // namespace

std::vector<Quantity> quantities(const Works &found) {
  std::vector<Quantity> out;
  for (const Item &item : found.items) add_item(out, item);
  for (const Area &one : found.areas) {
    add_area(out, one);
    for (const Option &option : found.options)
      if (option.area == one.id) add_option(out, option);
  }
  return out;
}

} // namespace strakebook::works
