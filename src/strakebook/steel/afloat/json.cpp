#include <cmath>

#include <nlohmann/json.hpp>

#include "strakebook/base/approximate.h"
#include "strakebook/base/decimal.h"
#include "strakebook/steel/afloat/afloat.h"

namespace strakebook::afloat {

namespace {

using Json = nlohmann::ordered_json;

template <class T, class Form> Json given(const std::optional<T> &value, Form form) { return value ? Json(form(*value)) : Json(nullptr); }

Json form(const Heights &heights) {
  const auto text = [](Length height) { return base::mm_exact(height); };
  return {{"freeboard", given(heights.freeboard, text)}, {"downflooding", given(heights.downflooding, text)}};
}

std::string word(Trim::By by) { return by == Trim::By::bow ? "bow" : by == Trim::By::stern ? "stern" : "even"; }

Json form(const Step &step, const Heights &as_found) {
  const auto lower = [&](Length height) { return base::in_millimetres(height) - step.sunk_mm; };
  return {{"item", step.item},
          {"net_kg", step.net_kg},
          {"sinkage_mm", step.sinkage_mm},
          {"freeboard", given(as_found.freeboard, lower)},
          {"downflooding", given(as_found.downflooding, lower)},
          {"trim_mm", given(step.trim, [](const Trim &trim) { return std::abs(trim.signed_mm); })},
          {"by", given(step.trim, [](const Trim &trim) { return word(trim.by); })}};
}

} // namespace

nlohmann::ordered_json json(const Afloat &found) {
  auto steps = Json::array();
  for (const Step &one : found.steps) steps.push_back(form(one, found.before));
  if (found.all) steps.push_back(form(*found.all, found.before));
  for (const auto *more : {&found.options, &found.whole})
    for (const Step &one : *more) steps.push_back(form(one, found.before));
  const auto same = [](double value) { return value; };
  return {{"waterplane_m2", given(found.waterplane_m2, same)},
          {"density", given(found.density, same)},
          {"tpc_t_cm", given(found.hull, [](const Hull &hull) { return hull.tpc; })},
          {"before", form(found.before)},
          {"steps", std::move(steps)}};
}

} // namespace strakebook::afloat
