#include "strakebook/steel/survey/survey.h"

#include <algorithm>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::survey {

namespace {

template <class T> const T *by_id(const std::vector<T> &all, std::string_view id) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const T &one) { return one.id == id; });
  return found == all.end() ? nullptr : &*found;
}

} // namespace

const Zone *zone_of(const Survey &survey, std::string_view id) { return by_id(survey.zones, id); }
const Row *row_of(const Survey &survey, std::string_view id) { return by_id(survey.rows, id); }
const Pit *pit_of(const Survey &survey, std::string_view id) { return by_id(survey.pits, id); }
bool counts_forward(const Datum &datum) { return datum.towards.text.find("forward") != std::string::npos; }

const Gauge *gauge_of(const Survey &survey, std::string_view id) { return by_id(survey.gauges, id); }

std::optional<base::Decimal> velocity_set(const Gauge &gauge) {
  const auto words = base::words(gauge.velocity.text);
  if (words.size() != 2 || words[1] != "m/s")
    return std::nullopt;
  return base::parse_decimal(words[0]);
}

base::Length spread(const Mark &mark) {
  if (mark.repeats.empty())
    return {};
  const auto [low, high] = std::ranges::minmax_element(mark.repeats, {}, &base::Measured::value);
  return high->value - low->value;
}

const Mark *mark_of(const Survey &survey, std::string_view id) {
  const auto blank = id.find(' '); // rows have none; a station in feet and inches may
  if (blank == std::string_view::npos)
    return nullptr;
  const auto row = id.substr(0, blank), station = id.substr(blank + 1);
  const auto found = std::find_if(survey.marks.begin(), survey.marks.end(), [&](const Mark &mark) {
    return mark.row == row && mark.station.raw == station;
  });
  return found == survey.marks.end() ? nullptr : &*found;
}

const Zone &zone_of_row(const Survey &survey, std::string_view row) {
  return *zone_of(survey, row_of(survey, row)->zone);
}

bool written(const Reach &reach) {
  return !reach.rows.empty() || !reach.zone.empty() || reach.from || reach.to || reach.span.line > 0;
}

bool covers_row(const Survey &survey, const Reach &reach, std::string_view row) {
  if (!reach.rows.empty())
    return std::find(reach.rows.begin(), reach.rows.end(), row) != reach.rows.end();
  if (reach.zone.empty())
    return true;
  const auto *known = row_of(survey, row);
  return known && known->zone == reach.zone;
}

bool covers(const Survey &survey, const Reach &reach, std::string_view row, base::Length station) {
  return covers_row(survey, reach, row) && (!reach.from || reach.from->value <= station) &&
         (!reach.to || station <= reach.to->value);
}

bool overlap(const Survey &survey, const Reach &a, const Reach &b) {
  const bool along = (!a.to || !b.from || b.from->value <= a.to->value) &&
                     (!b.to || !a.from || a.from->value <= b.to->value);
  return along && std::any_of(survey.rows.begin(), survey.rows.end(), [&](const Row &row) {
           return covers_row(survey, a, row.id) && covers_row(survey, b, row.id);
         });
}

} // namespace strakebook::survey
