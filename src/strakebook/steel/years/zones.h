#pragma once

#include "strakebook/steel/years/years.h"

/// What the places of a zone say together.
namespace strakebook::years {

ZoneHistory zone_history(const assess::ZoneResult &zone, const History &history, base::Decimal band);

/// By the shortest life of any zone, or by the cap.
NextLook next_look(const std::vector<ZoneHistory> &zones, base::Date inspected, const policy::YearsRule &rule);

} // namespace strakebook::years
