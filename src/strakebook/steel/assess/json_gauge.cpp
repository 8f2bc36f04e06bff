#include "strakebook/steel/assess/json_gauge.h"

#include <nlohmann/json.hpp>

#include "strakebook/steel/assess/low_side.h"
#include "strakebook/steel/assess/words.h"

namespace strakebook::assess {

namespace {

using Json = nlohmann::ordered_json;

std::string text(Length length) { return base::mm_exact(length); }
Json length_or_null(const std::optional<Length> &length) { return length ? Json(text(*length)) : Json(nullptr); }
std::string text(const Ratio &ratio) { return std::to_string(ratio.num) + "/" + std::to_string(ratio.den); }

Json form(const DoubtPart &part) {
  return {{"component", part.component.empty() ? Json(nullptr) : Json(part.component)},
          {"u", text(part.u)},
          {"degrees", part.degrees ? Json(base::to_text(*part.degrees)) : Json(nullptr)}};
}

Json form(const BlockCheck &check) { return {{"state", word_of(check.state)}, {"off", length_or_null(check.off)}}; }

Json form(const Correction &correction, const GaugeResult &gauge) {
  Json out = {{"by", word_of(correction.by)}, {"scale", text(correction.scale)}, {"shift", length_or_null(correction.shift)}};
  if (gauge.worst.empty()) return out;
  out["velocity_type"] = text(velocity_type(gauge.worst_shown, correction));
  out["zero_type"] = length_or_null(zero_type(gauge.worst_shown, correction));
  return out;
}

} // namespace

Json gauge_json(const GaugeResult &gauge) {
  Json out = {{"gauge", gauge.gauge}, {"u", text(gauge.u)}, {"parts", Json::array()}};
  for (const auto &part : gauge.parts) out["parts"].push_back(form(part));
  out["degrees"] = gauge.degrees ? Json(*gauge.degrees) : Json(nullptr);
  out["factor"] = base::to_text(gauge.factor);
  out["band"] = text(gauge.band_nm);
  out["thickest"] = length_or_null(gauge.thickest);
  out["checked"] = gauge.checked;
  out["before"] = form(gauge.before);
  out["after"] = form(gauge.after);
  out["drift"] = length_or_null(gauge.drift);
  out["lapsed"] = gauge.lapsed;
  out["indicative"] = gauge.indicative;
  out["worst"] = gauge.worst.empty() ? Json(nullptr) : Json(gauge.worst);
  out["worst_shown"] = gauge.worst.empty() ? Json(nullptr) : Json(text(gauge.worst_shown));
  out["corrections"] = Json::array();
  for (const auto &correction : gauge.corrections) out["corrections"].push_back(form(correction, gauge));
  return out;
}

} // namespace strakebook::assess
