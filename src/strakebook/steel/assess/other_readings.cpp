#include "strakebook/steel/assess/other_readings.h"

#include <algorithm>
#include <tuple>

namespace strakebook::assess {

namespace {

Verdict verdict_at(const Spot &place, Length limit) {
  return judged(Fraction{(place.judged() - limit).nm(), 1}, place.doubt);
}

ReadOtherwise rejudged(std::span<const Spot> places, const Limit &limit, const policy::OtherReading &reading) {
  ReadOtherwise found{.criterion = limit.criterion, .reading = reading, .places = {}};
  const Length now = Length::nanometres(policy::rounded_up(*limit.exact_nm));
  for (const Spot &place : places) {
    const Rejudged both{place.id, place.judged(), verdict_at(place, now), verdict_at(place, reading.limit)};
    if (both.now != both.then) found.places.push_back(both);
  }
  std::ranges::sort(found.places, [](const Rejudged &a, const Rejudged &b) {
    return std::tie(a.remaining, a.place) < std::tie(b.remaining, b.place);
  });
  return found;
}

} // namespace

std::vector<ReadOtherwise> read_otherwise(std::span<const Spot> places, std::span<const Limit> limits) {
  std::vector<ReadOtherwise> found;
  for (const Limit &limit : limits)
    for (const policy::OtherReading &reading : limit.others)
      if (ReadOtherwise one = rejudged(places, limit, reading); !one.places.empty()) found.push_back(std::move(one));
  return found;
}

} // namespace strakebook::assess
