#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "strakebook/compose/voice.h"

/// Thickness as figures draw it: limits of a zone, ramp bands, positions. Doubles here are places for the eye; no verdict
/// turns on them.
namespace strakebook::compose {

double mm_of(Length thickness);
double metres_of(const base::Measured &station);

/// A limit as a zone is drawn against it.
struct DrawnLimit {
  std::string criterion;
  Length remaining;
  bool governs = false;
  bool told = false; ///< rests on what somebody told
};

/// Every applicable limit of a zone, thinnest first.
std::vector<DrawnLimit> limits_of(const Scope &scope, std::string_view zone);

/// The limit that the zone's marks are measured by.
std::optional<DrawnLimit> main_limit(const Scope &scope, std::string_view zone);

/// A limit named short at its line: "4.0", "20 %".
std::string limit_name(const Scope &scope, std::string_view criterion, Length limit);

/// Original and delivery interval of a zone as drawn, over all the tolerances it names; without one both bounds are the nominal.
struct DrawnOriginal {
  Length nominal, thinnest, thickest;
  bool has_interval = false;
};
DrawnOriginal drawn_original(const Scope &scope, const survey::Zone &zone);

/// Ids of every tolerance that some zone is held against.
std::set<std::string> tolerances_in_use(const Scope &scope);

/// Meaning of the ramp band of a remaining thickness: "ramp-1" (thinnest) to "ramp-5". The bands are the ladder's rungs, so
/// a tone is an action; the thickest rung is split at the lower delivery bound.
std::string ramp_meaning(const Scope &scope, const survey::Zone &zone, Length remaining);

/// Name of the sign of a place on the map: "map-meets", "map-too-close", "map-falls-short"; "map-unjudged" where no criterion
/// applies, so that nothing is drawn as if it met a limit.
std::string map_sign(const std::optional<assess::Standing> &standing);

/// Whether a place is judged and does not meet its limit: too close to call, or short.
bool not_met(const std::optional<assess::Standing> &standing);

} // namespace strakebook::compose
