#include "strakebook/steel/afloat/afloat.h"

#include "strakebook/base/approximate.h"

namespace strakebook::afloat {

namespace {

using quantity::Input;
using quantity::Quantity;

Input density(const Hull &hull) { return {"rho", hull.density, 3, "t/m3", "afloat water"}; }
Input beam(const Hull &hull) { return {"B", hull.beam_m, 3, "m", "vessel beam"}; }
Input length(const Hull &hull) {
  return {"L", hull.length_m, 2, "m", hull.by_waterline ? "vessel waterline-length" : "vessel length"};
}
Input waterplane(const Hull &hull) { return {"Aw", hull.waterplane_m2, 2, "m2", "waterplane"}; }
Input weight(const Step &step) { return {"W", step.net_kg, 1, "kg", step.item}; }

void add_height(std::vector<Quantity> &to, const Step &step, std::string formula, std::string symbol, std::string from,
                const std::optional<Length> &as_found) {
  if (!as_found) return;
  const double before = base::in_millimetres(*as_found) - (step.sunk_mm - step.sinkage_mm);
  to.push_back({step.item, std::move(formula), before - step.sinkage_mm, 0, "mm",
                {{std::move(symbol), before, 0, "mm", std::move(from)}, {"s", step.sinkage_mm, 1, "mm", step.item}}});
}

/// `from`: what the heights before are called.
void add_heights(std::vector<Quantity> &to, const Step &step, const Heights &as_found, const std::string &from) {
  add_height(to, step, "freeboard-after", "F0", from + " freeboard", as_found.freeboard);
  add_height(to, step, "downflooding-after", "H0", from + " downflooding", as_found.downflooding);
}

void add_sinkage(std::vector<Quantity> &to, const Hull &hull, const Step &step) {
  to.push_back({step.item, "sinkage", step.sinkage_mm, 1, "mm", {weight(step), density(hull), waterplane(hull)}});
}

void add_trim(std::vector<Quantity> &to, const Hull &hull, const Step &step) {
  if (!step.trim) return;
  const Input lever{"x", step.trim->lever_m, 2, "m", step.item};
  to.push_back({step.item, "moment", step.net_kg * step.trim->lever_m, 0, "kg m", {weight(step), lever}});
  to.push_back({step.item, "trim-hint", step.trim->signed_mm, 1, "mm", {weight(step), lever, density(hull), beam(hull), length(hull)}});
}

} // namespace

std::vector<Quantity> quantities(const Afloat &found) {
  std::vector<Quantity> out;
  if (!found.hull) return out;
  const Hull &hull = *found.hull;
  out.push_back({"hull", "waterplane", hull.waterplane_m2, 2, "m2",
                 {length(hull), beam(hull), {"Cw", hull.coefficient, 2, "", "afloat waterplane-coefficient"}}});
  out.push_back({"hull", "tpc", hull.tpc, 3, "t/cm", {density(hull), waterplane(hull)}});
  std::string before = "afloat";
  for (const Step &step : found.steps) {
    add_sinkage(out, hull, step);
    add_trim(out, hull, step);
    add_heights(out, step, found.before, before);
    before = step.item;
  }
  if (found.all && found.steps.size() > 1) {
    add_sinkage(out, hull, *found.all);
    add_trim(out, hull, *found.all);
  }
  for (const auto *more : {&found.options, &found.whole})
    for (const Step &step : *more) {
      add_sinkage(out, hull, step);
      add_heights(out, step, found.before, "afloat");
    }
  return out;
}

} // namespace strakebook::afloat
