#pragma once

#include <optional>
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
};

/// Every applicable limit of a zone, thinnest first.
std::vector<DrawnLimit> limits_of(const Scope &scope, std::string_view zone);

/// The limit that the zone's marks are measured against: the governing one, else the one with the least margin.
std::optional<DrawnLimit> main_limit(const Scope &scope, std::string_view zone);

/// A limit named short at its line: "4.0", "20 %".
std::string limit_name(const Scope &scope, std::string_view criterion, Length limit);

/// Original and delivery interval of a zone as drawn; without a named tolerance both bounds are the nominal.
struct DrawnOriginal {
  Length nominal, thinnest, thickest;
  bool has_interval = false;
};
DrawnOriginal drawn_original(const Scope &scope, const survey::Zone &zone);

/// Meaning of the ramp band of a remaining thickness: "ramp-1" (thinnest) to "ramp-5". The bands are the ladder's rungs, so
/// a tone is an action; the thickest rung is split at the lower delivery bound.
std::string ramp_meaning(const Scope &scope, const survey::Zone &zone, Length remaining);

/// Least verdict symbol of a place against its main limit: "meets", "too-close" or "falls-short".
std::string verdict_against(const Scope &scope, const DrawnLimit &limit, Length remaining, Length band);

/// The doubt drawn for a plate reading or a pit of a zone.
Length band_of(const Scope &scope, std::string_view zone, assess::Subject::Kind kind);

} // namespace strakebook::compose
