#include <nlohmann/json.hpp>

#include "strakebook/base/exact_text.h"
#include "strakebook/steel/assess/after_repair.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/survey/closing.h"
#include "strakebook/steel/survey/vocabulary.h"

namespace strakebook::assess {

namespace {

using Json = nlohmann::ordered_json;
using base::exact::text;

std::string_view word_of(survey::Closing outcome) {
  for (const auto &choice : survey::choices_of(outcome))
    if (choice.value == outcome) return choice.word;
  return {};
}

Json form(const survey::NewReading &read, const NewResult &result) {
  Json out = {{"at", read.at.row + " " + read.at.station.raw}, {"shown", read.reading.raw}, {"zone", result.zone},
              {"remaining", text(result.remaining)},           {"on_doubler", result.on_doubler}, {"lapsed", result.lapsed}};
  if (!result.standing) return out;
  const CriterionResult &judged = result.standing->result;
  out["criterion"] = judged.criterion;
  out["limit"] = text(judged.limit);
  out["margin"] = text(judged.margin);
  out["doubt"] = text(result.standing->band_nm);
  out["verdict"] = word_of(judged.verdict);
  return out;
}

Json form(const survey::Survey &survey, const policy::Policy &policy, const Assessment &assessment, const survey::Addendum &addendum,
          const survey::ClosedItem &item) {
  const auto results = after_repair(survey, policy, assessment, addendum, item);
  Json readings = Json::array();
  for (std::size_t i = 0; i < results.size(); ++i) readings.push_back(form(item.readings[i], results[i]));
  return {{"item", item.item}, {"outcome", word_of(item.outcome)}, {"readings", std::move(readings)}};
}

} // namespace

Json addenda_json(const survey::Survey &survey, const policy::Policy &policy, const Assessment &assessment) {
  Json all = Json::array();
  for (const survey::Addendum &addendum : survey.addenda) {
    Json items = Json::array(), open = Json::array();
    for (const survey::ClosedItem &item : addendum.closes) items.push_back(form(survey, policy, assessment, addendum, item));
    for (const survey::Recommendation *item : survey::open_items(survey, addendum.id)) open.push_back(item->id);
    all.push_back({{"id", addendum.id}, {"items", std::move(items)}, {"open", std::move(open)}});
  }
  return all;
}

} // namespace strakebook::assess
