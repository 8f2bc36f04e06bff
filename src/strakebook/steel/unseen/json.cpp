#include <string>

#include <nlohmann/json.hpp>

#include "strakebook/base/exact_text.h"
#include "strakebook/steel/unseen/unseen.h"

namespace strakebook::unseen {

namespace {

using Json = nlohmann::ordered_json;

using base::exact::text;

template <class T> Json number(const std::optional<T> &value) { return value ? Json(*value) : Json(nullptr); }

Json form(const std::optional<Gap> &gap) {
  if (!gap) return nullptr;
  return {{"row", gap->row}, {"from", gap->from}, {"to", gap->to}, {"length", base::mm_exact(gap->length)}};
}

void add(Json &to, const Coverage &found) {
  to["planned"] = found.count.planned;
  to["read"] = found.count.read;
  to["used"] = found.count.used;
  to["area_m2"] = found.area_m2 ? Json(base::to_text(*found.area_m2)) : Json(nullptr);
  to["used_per_m2"] = found.used_per_m2 ? Json(text(*found.used_per_m2)) : Json(nullptr);
  to["touched_share"] = number(found.touched_share);
  to["largest_gap"] = form(found.largest_gap);
}

Json word_of(Refusal refusal) {
  switch (refusal) {
  case Refusal::none: return nullptr;
  case Refusal::few_blocks: return "few-blocks";
  case Refusal::blocks_without_pits: return "blocks-without-pits";
  case Refusal::no_area: return "no-area";
  case Refusal::all_seen: return "all-seen";
  case Refusal::all_alike: return "all-alike";
  }
  return nullptr;
}

Json form(const Fit &fit) {
  return {{"mu", fit.law.location},       {"beta", fit.law.scale},  {"se_mu", fit.location_error},
          {"se_beta", fit.scale_error},   {"cov", fit.covariance},  {"nll", fit.minus_log_likelihood}};
}

void add(Json &to, const Expected &found) {
  to["ml"] = form(found.by_likelihood);
  to["lmoments"] = {{"mu", found.by_l_moments.location}, {"beta", found.by_l_moments.scale}};
  to["fit"] = {{"a2", found.a2}, {"p", found.chance}, {"poor", found.poor}};
  to["period"] = text(found.period);
  to["level"] = found.level;
  to["se"] = found.error;
  to["low"] = found.low;
  to["high"] = found.high;
  to["upper"] = found.upper;
  to["mode"] = found.mode;
  to["within"] = found.within;
  to["chance_deeper"] = found.chance_deeper;
  to["beside_mean"] = number(found.beside_mean);
}

Json form(const std::optional<PitDepths> &pits) {
  if (!pits) return nullptr;
  Json out = {{"blocks", pits->blocks},
              {"without_pits", pits->without_pits},
              {"block_m2", base::to_text(pits->block_m2)},
              {"deepest_seen", base::mm_exact(pits->deepest_seen)},
              {"deeper_pit", pits->deeper_pit.empty() ? Json(nullptr) : Json(pits->deeper_pit)},
              {"refused", word_of(pits->refused)}};
  if (pits->expected) add(out, *pits->expected);
  else
    for (const char *key : {"ml", "lmoments", "fit", "period", "level", "se", "low", "high", "upper", "mode", "within", "chance_deeper", "beside_mean"})
      out[key] = nullptr;
  return out;
}

} // namespace

nlohmann::ordered_json json(const Unseen &found) {
  Json zones = Json::array();
  for (const auto &zone : found.zones) {
    Json one = {{"zone", zone.coverage.zone}};
    add(one, zone.coverage);
    one["pits"] = form(zone.pits);
    zones.push_back(std::move(one));
  }
  Json whole = Json::object();
  add(whole, found.whole);
  return {{"zones", std::move(zones)}, {"whole", std::move(whole)}};
}

} // namespace strakebook::unseen
