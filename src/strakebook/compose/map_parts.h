#pragma once

#include "strakebook/compose/hull.h"

/// The parts of the shell expansion.
namespace strakebook::compose {

/// The hull unrolled with every mark, pit, doubler, photograph and unseen area.
Drawing map_of_marks(const Scope &scope);
/// The rows of one zone, for the page that judges it.
Drawing map_of_zone(const Scope &scope, const survey::Zone &zone);
base::Pt map_width(const Scope &scope); ///< what the hull's length takes on the page of the map

/// The same for a large hull, a cell a bay and strake, toned by its lesser plate reading: the whole shell (zone empty) or one
/// zone, split by length so that no cell gets narrower than the measure "heat-cell" on a page of this master.
std::vector<content::Figure::Panel> maps_of_bays(const Scope &scope, std::string_view zone, const char *master);

/// Whether a zone has a pit, a mark on a doubler, or a mark that does not meet the limit it is measured against.
bool has_places_of_note(const Scope &scope, const survey::Zone &zone);
/// A figure of one zone's marks, or its bays, for the page that decides on it; nullopt where it has no places of note: the map of
/// the shell shows all that there is.
std::optional<content::Block> zone_map(const Scope &scope, Numbering &numbering, const survey::Zone &zone);

std::string short_status(const Scope &scope, const survey::Mark &mark); ///< why a mark was not used, in a word or two
std::string spoken_row(const Scope &scope, const assess::RowSummary &summary);
std::string spoken_pits(const Scope &scope, std::string_view row); ///< " Pits: P1 7.9 and P2 8.2."; empty: the row has none
/// "PW: 33 of 34 read, least 5.4 at PW 9." for every row of a zone, or of the shell.
std::string spoken_rows(const Scope &scope, std::string_view zone);

/// Whether the marks stand too close on paper to be shown one by one.
bool needs_bays(const Scope &scope);
int bay_of(const Scope &scope, const base::Measured &station);
int bay_count(const Scope &scope);

/// The tones of the ramp with the bands they stand for.
Drawing ramp_legend(const Scope &scope);
/// Whether no mark or pit falls short of the limit it is measured against, or is too close to it to call.
bool all_met(const Scope &scope);
/// Marks and pits that do not meet the limit that they are measured against, least first.
content::Block not_met_list(const Scope &scope, Numbering &numbering);

} // namespace strakebook::compose
