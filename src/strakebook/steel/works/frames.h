#pragma once

#include <cstdint>
#include <optional>

#include "strakebook/steel/survey/survey.h"
#include "strakebook/steel/works/works.h"

namespace strakebook::works {

/// Where the frames stand, by the datum and the vessel's figures.
struct Framing {
  Length zero;     ///< station of frame 0
  Length spacing;  ///< above nought
  bool with_stations = true; ///< frames are numbered the way stations count
  Length station(std::int64_t number) const { return zero + spacing * (with_stations ? number : -number); }
};

/// Absent where the survey leaves out the station of frame 0, the way frames run, or their spacing.
std::optional<Framing> framing(const survey::Survey &survey);

NearestFrame nearest(const Framing &framing, Length station);
std::optional<NearestFrame> nearest(const std::optional<Framing> &framing, std::optional<Length> station);

} // namespace strakebook::works
