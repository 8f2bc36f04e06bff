#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/base/date.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/policy/fraction.h"

/// Surveys of other years at the same places: rates, the life left, the next look. Rate, remaining life and interval after API 570
/// section 7.1. A place is what is judged there: the low side where its gauge is off.
namespace strakebook::years {

using base::Length;
using base::Ratio;

/// Loss a year at one place.
struct Rate {
  std::string since;         ///< the earlier survey's id; as built, the day that is taken for it
  Length then;               ///< what there was then; as built, the nominal
  Length lost;               ///< then - now; negative where there is more than before
  Ratio years;               ///< since then, more than 0
  Ratio per_year;            ///< lost / years in nm, exact
  policy::Fraction variance; ///< of the loss, in nm2: the squares of both standard uncertainties
  double spread = 0;         ///< standard uncertainty of the rate, nm a year
  double upper = 0;          ///< per_year + band * spread, nm a year
};

/// The same place in an earlier survey.
struct Earlier {
  std::string survey;
  std::string id;      ///< as it is called there: "PW 35", "P1"
  std::string at;      ///< its station as written there
  Length position;     ///< in this survey's datum
  Length off;          ///< position - that of the place here
  Length remaining;
};

/// grown: thicker than an earlier survey had it by more than the doubt of both, which is not corrosion. lost: thinner by more
/// than that. within_doubt: no change seen.
enum class Change { lost, within_doubt, grown };
enum class Governs { short_term, long_term, as_built };

/// How long a place keeps a limit, in years: margin / rate. 0 where it does not keep it now; absent where no rate is known or it is
/// not above nought, so that no life follows from it.
struct Life {
  std::string criterion;
  Length limit;
  Length margin; ///< what is judged by - limit
  std::optional<double> mean, upper; ///< at the governing rate, and at its upper bound
};

struct Place {
  std::string id;            ///< "PW 9", "P3"
  std::string row, zone;
  bool pit = false;
  Length position;
  Length remaining;          ///< as displayed
  std::optional<Length> low; ///< what is judged by where that is less
  std::vector<Earlier> earlier; ///< the latest first
  std::optional<Rate> short_term; ///< since the latest earlier survey that has the place
  std::optional<Rate> long_term;  ///< since the earliest that has it, where that is another one
  std::optional<Rate> as_built;   ///< only where no earlier survey has it
  std::optional<Governs> governs; ///< the larger of short and long term; absent: no rate is known
  /// grown since any earlier survey that has it, else lost since any, so that neither many small losses nor a growth after a loss
  /// is hidden; absent where none has the place.
  std::optional<Change> change;
  std::vector<Life> lives;      ///< one for each criterion that applies to the zone
  Length judged() const { return low.value_or(remaining); }
  const Rate *governing() const; ///< nullptr: no rate is known
};

/// Does any place that an earlier survey has reach the limit that the zone is measured by before the next look? meets: not at the upper rate.
/// falls_short: at the mean rate, or it does not keep the limit now. too_close: at the upper rate and not at the mean.
struct RateCriterion {
  assess::Verdict verdict = assess::Verdict::meets;
  std::string at;       ///< the gravest place; of equal ones that with the shortest life at the upper rate
  std::string limit_of; ///< criterion id
};

struct ZoneHistory {
  std::string zone;
  int matched = 0, lost = 0, within_doubt = 0, grown = 0; ///< matched = lost + within_doubt + grown
  std::string greatest_at;         ///< place with the greatest governing rate, of those that are matched and have not grown; empty: none
  Ratio greatest;                  ///< that rate
  std::optional<Ratio> mean_lost;  ///< mean governing rate of the places that lost beyond doubt, and of no others
  std::string shortest_at;         ///< place with the shortest life at the upper rate, to the limit that the zone is measured by
  double shortest = 0;             ///< that life
  std::optional<RateCriterion> rate; ///< absent: nothing is matched, nothing measures the zone, or nothing sets the next look
};

/// When the next look is due by the life that is left: the policy's part of the shortest life at the upper rate, rounded down to
/// a day, and never later than its cap.
struct NextLook {
  base::Date date;
  std::string at;      ///< the place that sets it; empty: the cap alone
  bool capped = false; ///< the cap comes first
};

/// An earlier survey, as far as it was found again.
struct Compared {
  std::string id;
  base::Date inspected;
  Ratio years;                        ///< from its inspection to this one
  int matched = 0;
  std::vector<std::string> unmatched; ///< marks read and pits that no place here is, as it calls them
  std::vector<std::string> beyond;    ///< of them, what would lie off the hull
};

/// Empty where there is no earlier survey.
struct History {
  std::vector<Compared> surveys;           ///< one for each Survey::earlier, same order
  std::vector<Place> places;               ///< zone by zone: marks used, then pits of the hull plate; none without an earlier survey
  std::vector<std::string> unmatched_here; ///< marks used and pits of the hull plate that no earlier survey has
  std::vector<ZoneHistory> zones;          ///< one for each Survey::zones, same order
  std::optional<NextLook> next_look;       ///< absent where no place has a rate
  std::optional<base::Date> next_survey;   ///< up to which the rate criterion looks: the day the survey names, else next_look
  std::optional<Ratio> horizon;            ///< years from the inspection to then
};

History compare(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

const Place &place_of(const History &history, std::string_view id);          ///< precondition: it is one of the places
const ZoneHistory &zone_of(const History &history, std::string_view zone);   ///< precondition: it is a zone of the survey

/// Of a place that has grown: what it grew from, the least that an earlier survey had.
const Earlier &grown_since(const Place &place);

std::string_view word_of(Change change);   ///< "within-doubt"
std::string_view word_of(Governs governs); ///< "as-built"

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const History &found);

} // namespace strakebook::years
