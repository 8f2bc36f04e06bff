#include "strakebook/steel/works/frames.h"

namespace strakebook::works {

namespace {

/// The word of `frames-run` for frames that are numbered against the stations; the reader knows one other.
constexpr std::string_view against_stations = "against stations";

std::int64_t floor_quotient(std::int64_t a, std::int64_t b) { return a / b - (a % b < 0 ? 1 : 0); }

} // namespace

std::optional<Framing> framing(const survey::Survey &survey) {
  const auto &datum = survey.datum;
  const auto &spacing = survey.vessel.frame_spacing;
  if (!datum.frame_zero || !datum.frames_run.given() || !spacing || spacing->length.value <= Length{}) return std::nullopt;
  return Framing{datum.frame_zero->value, spacing->length.value, datum.frames_run.text != against_stations};
}

NearestFrame nearest(const Framing &framing, Length station) {
  const Length from_zero = framing.with_stations ? station - framing.zero : framing.zero - station;
  const std::int64_t number = floor_quotient(2 * from_zero.nm() + framing.spacing.nm(), 2 * framing.spacing.nm());
  return {number, station - framing.station(number)};
}

std::optional<NearestFrame> nearest(const std::optional<Framing> &framing, std::optional<Length> station) {
  if (!framing || !station) return std::nullopt;
  return nearest(*framing, *station);
}

} // namespace strakebook::works
