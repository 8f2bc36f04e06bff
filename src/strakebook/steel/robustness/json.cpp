#include <nlohmann/json.hpp>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/robustness/robustness.h"

namespace strakebook::robustness {

namespace {

using Json = nlohmann::ordered_json;

std::string fraction(const Ratio &ratio) {
  const Ratio lowest = base::reduced(ratio);
  return std::to_string(lowest.num) + "/" + std::to_string(lowest.den);
}

void add(Json &to, const Tried &tried) {
  to["verdict"] = assess::word_of(tried.result.verdict);
  to["margin"] = base::mm_exact(tried.result.margin);
  to["used"] = tried.used;
}

Json form(const AtLimit &one) {
  Json out = {{"limit", base::mm_exact(one.limit)}, {"doubt", base::to_text(one.doubt)}};
  add(out, one.tried);
  return out;
}

Json form(const AtLoss &one) {
  Json out = {{"loss", fraction(one.loss)}, {"original", base::mm_exact(one.original)}};
  add(out, one.tried);
  return out;
}

Json form(const Grid &grid) {
  Json limits = Json::array(), losses = Json::array();
  for (const auto &one : grid.limits) limits.push_back(form(one));
  for (const auto &one : grid.losses) losses.push_back(form(one));
  return {{"id", grid.id}, {"limits", std::move(limits)}, {"losses", std::move(losses)}};
}

Json form(const InZone &zone) {
  Json subjects = Json::array();
  for (const auto &grid : zone.grids) subjects.push_back(form(grid));
  return {{"zone", zone.zone},
          {"criterion", zone.criterion.empty() ? Json(nullptr) : Json(zone.criterion)},
          {"verdict", zone.criterion.empty() ? Json(nullptr) : Json(assess::word_of(zone.verdict))},
          {"subjects", std::move(subjects)},
          {"flips", {{"limit", zone.flips.limit}, {"original", zone.flips.original}, {"doubt", zone.flips.doubt}}}};
}

} // namespace

nlohmann::ordered_json json(const Robustness &found) {
  Json zones = Json::array();
  for (const auto &zone : found.zones) zones.push_back(form(zone));
  return {{"zones", std::move(zones)}};
}

} // namespace strakebook::robustness
