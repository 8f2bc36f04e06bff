#include "strakebook/steel/years/years.h"

#include <algorithm>
#include <functional>
#include <numeric>

#include "strakebook/steel/assess/readings.h"
#include "strakebook/steel/assess/spots.h"
#include "strakebook/steel/years/elapsed.h"
#include "strakebook/steel/years/matching.h"
#include "strakebook/steel/years/rates.h"
#include "strakebook/steel/years/zones.h"

namespace strakebook::years {

namespace {

/// A place of either survey, with where it lies in this survey's datum.
struct Seen {
  std::string id, row, at;
  bool pit = false;
  Length position, remaining;
  std::optional<Length> low;
  Fraction variance;
  Length judged() const { return low.value_or(remaining); }
  Known known() const { return {judged(), variance}; }
};

/// Zone by zone: marks used, then pits of the hull plate.
std::vector<Seen> places_here(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  std::vector<Seen> out;
  const auto add = [&](const assess::Spot &spot, const std::string &row, const base::Measured &station) {
    out.push_back({spot.id, row, station.raw, spot.kind == assess::Subject::Kind::pit, station.value, spot.remaining, spot.low,
                   {spot.doubt.u2, 1}});
  };
  for (const auto &zone : survey.zones) {
    for (const std::size_t i : assess::marks_of_zone(survey, zone.id))
      if (const auto &mark = assessment.marks[i]; mark.used)
        add(assess::plate_spot(survey, policy, assessment.gauges, mark), survey.marks[i].row, survey.marks[i].station);
    for (const std::size_t i : assess::pits_of_zone(survey, zone.id))
      if (const auto &pit = assessment.pits[i]; pit.doubler.empty())
        add(assess::pit_spot(survey, policy, assessment.gauges, pit), survey.pits[i].at.row, survey.pits[i].at.station);
  }
  return out;
}

/// Marks that were read, and pits. Of a mark the least of its repeats counts.
std::vector<Seen> places_there(const survey::EarlierSurvey &earlier, const survey::Datum &now) {
  std::vector<Seen> out;
  const Fraction read{assess::variance(earlier.u), 1};
  const auto add = [&](std::string id, const std::string &row, const base::Measured &station, Length remaining, bool pit) {
    const Fraction depth{pit ? assess::variance(earlier.depth_u.value_or(Length{})) : 0, 1};
    out.push_back({std::move(id), row, station.raw, pit, true_position(earlier.datum, now, station.value), remaining, {}, read + depth});
  };
  for (const auto &mark : earlier.marks)
    if (mark.status == survey::Status::read && !mark.repeats.empty())
      add(mark.id(), mark.row, mark.station, std::ranges::min_element(mark.repeats, {}, &base::Measured::value)->value, false);
  for (const auto &pit : earlier.pits) add(pit.id, pit.at.row, pit.at.station, pit.remaining(), true);
  return out;
}

/// Pits lie among marks, and neither is the other: each kind has its own rows.
std::vector<Spot> spots(const std::vector<Seen> &places) {
  std::vector<Spot> out;
  for (const Seen &place : places) out.push_back({(place.pit ? "pits of " : "marks of ") + place.row, place.position});
  return out;
}

struct Then {
  std::string survey;
  Ratio years;
  Known known;
};

/// What the earlier surveys had at one place, the latest first.
struct Found {
  std::vector<Earlier> earlier;
  std::vector<Then> then;
};

/// Indices of the earlier surveys, the latest first; of one day in the order of the file.
std::vector<std::size_t> latest_first(const survey::Survey &survey) {
  std::vector<std::size_t> order(survey.earlier.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, std::greater(), [&](std::size_t i) { return survey.earlier[i].inspected.value; });
  return order;
}

/// A pit that no earlier pit is has come since: it stands against the plate that was read nearest to it on its row.
const Seen *plate_before(const Seen &pit, const std::vector<Seen> &there, Length radius) {
  const Seen *nearest = nullptr;
  const auto off = [&](const Seen &mark) { return std::max(mark.position - pit.position, pit.position - mark.position); };
  for (const Seen &mark : there)
    if (!mark.pit && mark.row == pit.row && off(mark) <= radius && (nearest == nullptr || off(mark) < off(*nearest))) nearest = &mark;
  return nearest;
}

Compared look_back(const survey::Survey &survey, const survey::EarlierSurvey &earlier, const std::vector<Seen> &here,
                   Length radius, std::vector<Found> &found) {
  Compared out{.id = earlier.id, .inspected = earlier.inspected.value, .years = years_between(earlier.inspected.value, survey.report.inspected->value)};
  const auto there = places_there(earlier, survey.datum);
  const auto pairs = matched(spots(here), spots(there), radius);
  std::vector<bool> again(there.size());
  for (std::size_t i = 0; i < here.size(); ++i) {
    const Seen *was = pairs[i] ? &there[*pairs[i]] : here[i].pit ? plate_before(here[i], there, radius) : nullptr;
    if (was == nullptr) continue;
    found[i].earlier.push_back({earlier.id, was->id, was->at, was->position, was->position - here[i].position, was->remaining});
    found[i].then.push_back({earlier.id, out.years, was->known()});
    if (!pairs[i]) continue;
    again[*pairs[i]] = true;
    ++out.matched;
  }
  for (std::size_t i = 0; i < there.size(); ++i) {
    if (again[i]) continue;
    out.unmatched.push_back(there[i].id);
    if (there[i].position < Length{} || there[i].position > survey.vessel.length.length.value) out.beyond.push_back(there[i].id);
  }
  return out;
}

/// `then`: the latest first.
void set_rates(Place &place, const Seen &here, const std::vector<Then> &then, base::Decimal band) {
  const auto rate = [&](const Then &t) { return rate_since(t.survey, t.known, here.known(), t.years, band); };
  place.short_term = rate(then.front());
  if (then.size() > 1) place.long_term = rate(then.back());
  const bool longer = place.long_term && place.long_term->per_year > place.short_term->per_year;
  place.governs = longer ? Governs::long_term : Governs::short_term;
  for (const Change change : {Change::within_doubt, Change::lost, Change::grown}) // the gravest that any of them tells
    if (std::ranges::any_of(then, [&](const Then &t) { return change_of(rate(t), band) == change; })) place.change = change;
}

Place compared(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy, const Seen &here,
               Found found) {
  const survey::Zone &zone = survey::zone_of_row(survey, here.row);
  Place place{.id = here.id, .row = here.row, .zone = zone.id, .pit = here.pit, .position = here.position, .remaining = here.remaining,
              .low = here.low, .earlier = std::move(found.earlier)};
  if (!found.then.empty()) set_rates(place, here, found.then, policy.decision.band);
  else place.as_built = rate_as_built(survey, policy, zone, here.known());
  if (place.as_built) place.governs = Governs::as_built;
  for (const auto &criterion : assess::zone_result(assessment, zone.id).criteria)
    if (criterion.limit) place.lives.push_back(life_to(criterion.criterion, *criterion.limit, here.judged(), place));
  return place;
}

void add_zones(History &history, const assess::Assessment &assessment, base::Decimal band) {
  history.zones.clear();
  for (const auto &zone : assessment.zones) history.zones.push_back(zone_history(zone, history, band));
}

/// The rate criterion looks as far as the next survey, and that may follow from the lives: so the zones are summed twice.
void look_ahead(History &history, const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  const base::Date today = survey.report.inspected->value;
  add_zones(history, assessment, policy.decision.band);
  if (std::ranges::any_of(history.places, [](const Place &place) { return place.governs.has_value(); }))
    history.next_look = next_look(history.zones, today, policy.years);
  const auto &named = survey.answer.next_survey_by;
  if (named && named->value > today) history.next_survey = named->value;
  else if (history.next_look) history.next_survey = history.next_look->date;
  if (!history.next_survey) return;
  history.horizon = years_between(today, *history.next_survey);
  add_zones(history, assessment, policy.decision.band);
}

} // namespace

const Rate *Place::governing() const {
  const auto known = [](const std::optional<Rate> &rate) { return rate ? &*rate : nullptr; };
  if (!governs) return nullptr;
  switch (*governs) {
  case Governs::short_term: return known(short_term);
  case Governs::long_term: return known(long_term);
  case Governs::as_built: return known(as_built);
  }
  return nullptr;
}

History compare(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  History history;
  if (survey.earlier.empty() || !survey.report.inspected) {
    add_zones(history, assessment, policy.decision.band);
    return history;
  }
  const auto here = places_here(survey, assessment, policy);
  std::vector<Found> found(here.size());
  history.surveys.resize(survey.earlier.size());
  for (const std::size_t i : latest_first(survey))
    history.surveys[i] = look_back(survey, survey.earlier[i], here, policy.years.match_radius, found);
  for (std::size_t i = 0; i < here.size(); ++i) {
    if (found[i].then.empty()) history.unmatched_here.push_back(here[i].id);
    history.places.push_back(compared(survey, assessment, policy, here[i], std::move(found[i])));
  }
  look_ahead(history, survey, assessment, policy);
  return history;
}

const Place &place_of(const History &history, std::string_view id) { return *std::ranges::find(history.places, id, &Place::id); }

const ZoneHistory &zone_of(const History &history, std::string_view zone) {
  return *std::ranges::find(history.zones, zone, &ZoneHistory::zone);
}

const Earlier &grown_since(const Place &place) { return *std::ranges::min_element(place.earlier, {}, &Earlier::remaining); }

std::string_view word_of(Change change) {
  switch (change) {
  case Change::lost: return "lost";
  case Change::within_doubt: return "within-doubt";
  case Change::grown: return "grown";
  }
  return {};
}

std::string_view word_of(Governs governs) {
  switch (governs) {
  case Governs::short_term: return "short";
  case Governs::long_term: return "long";
  case Governs::as_built: return "as-built";
  }
  return {};
}

} // namespace strakebook::years
