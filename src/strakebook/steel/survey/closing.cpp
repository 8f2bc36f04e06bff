#include "strakebook/steel/survey/closing.h"

#include <algorithm>

#include "strakebook/steel/survey/photo_use.h"

namespace strakebook::survey {

namespace {

template <class T> const T *with_id(const std::vector<T> &all, std::string_view id) {
  const auto found = std::ranges::find(all, id, &T::id);
  return found == all.end() ? nullptr : &*found;
}

} // namespace

const Addendum *addendum_of(const Survey &survey, std::string_view id) { return with_id(survey.addenda, id); }

const Recommendation *recommendation_of(const Survey &survey, std::string_view id) { return with_id(survey.recommendations, id); }

Outcome outcome_of(const Survey &survey, std::string_view recommendation, std::string_view last) {
  Outcome outcome;
  for (const auto &addendum : survey.addenda) {
    const auto found = std::ranges::find(addendum.closes, recommendation, &ClosedItem::item);
    if (found != addendum.closes.end())
      outcome = {&addendum, &*found};
    if (addendum.id == last)
      break;
  }
  return outcome;
}

std::vector<const Recommendation *> open_items(const Survey &survey, std::string_view last) {
  std::vector<const Recommendation *> open;
  for (const auto &item : survey.recommendations)
    if (!outcome_of(survey, item.id, last).closed())
      open.push_back(&item);
  return open;
}

Survey without_later_addenda(Survey survey, std::string_view last) {
  const auto used = photos_used(survey);
  const auto upto = std::ranges::find(survey.addenda, last, &Addendum::id);
  std::vector<Addendum> told;
  for (auto at = survey.addenda.begin(); at != survey.addenda.end(); ++at) {
    const auto &report = survey.report.issued;
    const bool before = at->issued && report && at->issued->value <= report->value;
    if (before || (upto != survey.addenda.end() && at <= upto))
      told.push_back(*at);
  }
  survey.addenda = std::move(told);
  const auto still = photos_used(survey);
  std::erase_if(survey.photos, [&](const Photo &photo) { return used.contains(photo.id) && !still.contains(photo.id); });
  return survey;
}

bool still_open(const CarriedItem &item) {
  return !item.now || *item.now == Became::open || *item.now == Became::not_seen;
}

} // namespace strakebook::survey
