#include <nlohmann/json.hpp>

#include "strakebook/base/decimal.h"
#include "strakebook/base/exact_text.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/years/years.h"

namespace strakebook::years {

namespace {

using Json = nlohmann::ordered_json;

using base::exact::text;
template <class T> Json optional(const std::optional<T> &value) { return value ? Json(text(*value)) : Json(nullptr); }
Json number(const std::optional<double> &value) { return value ? Json(*value) : Json(nullptr); }
Json named(const std::string &id) { return id.empty() ? Json(nullptr) : Json(id); }

Json form(const std::optional<Rate> &rate) {
  if (!rate) return nullptr;
  return {{"rate", text(rate->per_year)}, {"spread", rate->spread}, {"upper", rate->upper}};
}

Json built(const std::optional<Rate> &rate) {
  if (!rate) return nullptr;
  Json out = {{"since", rate->since}};
  out.update(form(rate));
  return out;
}

Json form(const Earlier &earlier) {
  return {{"survey", earlier.survey}, {"at", earlier.at}, {"position", text(earlier.position)}, {"off", text(earlier.off)},
          {"remaining", text(earlier.remaining)}};
}

Json form(const Life &life) { return {{"criterion", life.criterion}, {"mean", number(life.mean)}, {"upper", number(life.upper)}}; }

Json form(const Compared &survey) {
  return {{"id", survey.id}, {"inspected", base::iso(survey.inspected)}, {"years", text(survey.years)}};
}

Json form(const Place &place);
Json form(const ZoneHistory &zone);

template <class Items> Json list(const Items &items) {
  Json out = Json::array();
  for (const auto &item : items) out.push_back(form(item));
  return out;
}

Json form(const Place &place) {
  return {{"place", place.id},
          {"earlier", list(place.earlier)},
          {"remaining", text(place.judged())},
          {"short", form(place.short_term)},
          {"long", form(place.long_term)},
          {"as_built", built(place.as_built)},
          {"governs", place.governs ? Json(word_of(*place.governs)) : Json(nullptr)},
          {"change", place.change ? Json(word_of(*place.change)) : Json(nullptr)},
          {"life", list(place.lives)}};
}

Json form(const ZoneHistory &zone) {
  Json out = {{"zone", zone.zone}, {"matched", zone.matched}, {"lost", zone.lost}, {"within_doubt", zone.within_doubt},
              {"grown", zone.grown}, {"greatest", nullptr}, {"mean_lost", optional(zone.mean_lost)}, {"rate_criterion", nullptr}};
  if (!zone.greatest_at.empty()) out["greatest"] = {{"place", zone.greatest_at}, {"rate", text(zone.greatest)}};
  if (zone.rate)
    out["rate_criterion"] = {{"verdict", assess::word_of(zone.rate->verdict)}, {"at", zone.rate->at}, {"limit_of", zone.rate->limit_of}};
  return out;
}

Json form(const NextLook &look) { return {{"date", base::iso(look.date)}, {"at", named(look.at)}, {"capped", look.capped}}; }

} // namespace

Json json(const History &found) {
  Json unmatched = {{"here", found.unmatched_here}};
  for (const Compared &survey : found.surveys) unmatched[survey.id] = survey.unmatched;
  Json zones = list(found.zones);
  for (auto &zone : zones)
    if (!zone["rate_criterion"].is_null()) zone["rate_criterion"]["horizon"] = base::iso(*found.next_survey);
  return {{"surveys", list(found.surveys)}, {"places", list(found.places)}, {"unmatched", std::move(unmatched)},
          {"zones", std::move(zones)}, {"next_look", found.next_look ? form(*found.next_look) : Json(nullptr)}};
}

} // namespace strakebook::years
