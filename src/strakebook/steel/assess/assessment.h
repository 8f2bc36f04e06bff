#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"
#include "strakebook/steel/assess/gauge_result.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

/// Everything computed from the readings. No number here is rounded; printing chooses digits.
namespace strakebook::assess {

using base::Length;
using base::Ratio;

/// Loss as a share of the original, over the tenable originals: low is for the thinnest, high for the thickest.
struct LossShare {
  Ratio nominal;                 ///< of the nominal
  std::optional<Ratio> low, high; ///< over the delivery tolerances named, taken together; absent: none named
};

enum class Verdict { meets, too_close, falls_short, not_applicable };
/// Where the bare figure stands, doubt aside: on the safe side, exactly at the limit (not over it), or past it.
enum class Bare { inside, at_limit, over };

struct CriterionResult {
  std::string criterion;           ///< policy criterion id
  Verdict verdict = Verdict::not_applicable;
  std::string why_not;             ///< reason word of not_applicable, see Applicability
  Length limit;                    ///< as a remaining thickness, rounded up to the next nanometre if not exact
  Length margin;                   ///< what it is judged by - limit; positive is in hand. Verdicts turn on the unrounded margin
  Bare bare = Bare::inside;
  bool governs = false;            ///< named by the zone's decision
  /// Probability that the steel meets the limit, by the gauge's doubt alone; see conformance.h. It decides nothing. Absent where
  /// the criterion does not apply and where no doubt is given.
  std::optional<double> conformance;
  std::optional<Length> substantial_below; ///< of an allowable margin: less than this is substantial corrosion, or past it
  bool substantial = false;        ///< the bare loss is beyond that share of the allowable, and not beyond the allowable
  bool told = false;               ///< the limit rests on what somebody told: the original, or a hull figure of the formula
};

/// A place against the one limit that its zone is measured by (see ZoneResult::measured_by), with its own gauge's doubt.
struct Standing {
  CriterionResult result;
  Length band_nm;                  ///< the doubt w, rounded up to a nanometre, for print
};

/// What a single echo shows too much, least and most, for the film that it was read through.
struct OverRead {
  Length least, most;
};

/// What one mark says. `used` is false for marks not read, rejected or on a doubler.
struct MarkResult {
  std::size_t mark = 0;            ///< index into Survey::marks
  bool used = false;
  std::string left_out;            ///< why not used: a status word or "doubler"; empty when used
  Length remaining;                ///< least or mean of the repeats, as its set says; meaningful when used
  std::optional<Length> low;       ///< what it is judged by where that is less: see low_side.h
  std::optional<OverRead> over_read; ///< of a single echo through a film of known thickness
  bool indicative = false;         ///< by an indicative gauge, or single echo through a film of unknown thickness
  Length loss;                     ///< nominal - judged(); may be negative
  std::optional<LossShare> share;  ///< absent with a weak basis
  bool lowest_of_row = false;
  std::optional<Standing> standing; ///< absent when not used, or when no criterion applies to the zone
  Length judged() const { return low.value_or(remaining); }
};

struct PitResult {
  std::size_t pit = 0;             ///< index into Survey::pits
  std::string doubler;             ///< the doubler it lies on: it is in the outer plate, and judged by nothing; empty: hull plate
  Length remaining;                ///< adjacent - depth
  std::optional<Length> low;       ///< what it is judged by where that is less
  bool indicative = false;         ///< by an indicative gauge, of depth or beside it
  Length loss;                     ///< nominal - judged()
  std::optional<LossShare> share;
  std::optional<Standing> standing; ///< absent when no criterion applies to the zone
  Length judged() const { return low.value_or(remaining); }
};

/// An indicative mark or pit near a limit that applies to it.
struct Retake {
  std::string place;               ///< "PW 9" or "P3"
  std::string criterion;           ///< of those within the policy's retake_within, the nearest
  Length limit;
  Length off;                      ///< the nearer of the figure displayed and the figure judged, less the limit
};

/// One subject of a zone (its lowest plate reading, or its worst pit) against every criterion.
struct Subject {
  enum class Kind { plate, pit } kind = Kind::plate;
  std::string id;                  ///< "PW 9" or "P3"
  Length remaining;
  std::optional<Length> low;       ///< what it is judged by where that is less
  bool indicative = false;
  Length u;                        ///< standard uncertainty, rounded up to a nanometre
  base::Decimal factor;            ///< w is factor * u
  Length band_nm;                  ///< the doubt w, rounded up to a nanometre, for print
  Length judged() const { return low.value_or(remaining); }
  std::vector<CriterionResult> results; ///< in the order of Assessment::criteria
};

/// planned = read + rejected + all of not_read; read = used + doubler (read, but the outer plate only).
struct Count {
  int planned = 0, read = 0, used = 0, rejected = 0, doubler = 0;
  std::map<survey::Status, int> not_read;
};

struct RowSummary {
  std::string row;
  Count count;
  std::optional<Length> min, max;
  std::optional<Ratio> mean_nm;    ///< exact mean in nanometres
  std::string worst;               ///< mark id of the least displayed; empty: none used
  Length worst_loss;
};

/// Of pitting, as the zone declares it, under the extent rule: isolated keeps all its bounds (pits a square metre, share of
/// the area, spacing), extensive has reached its share, scattered lies between. none: no pits, or none counted.
enum class Extent { none, isolated, scattered, extensive, not_declared };

/// Pitting of a zone by numbers. `spacing`: the lesser of what is declared and what the pits listed give.
struct Pitting {
  int measured = 0;                ///< pits listed on the zone's rows
  std::optional<Ratio> per_m2;     ///< declared count over declared area
  std::optional<Length> spacing;   ///< least distance between two pits; absent: not declared, and no row has two
  std::optional<base::Decimal> intensity_percent; ///< greatest share of the area stated
  bool few_measured = false;       ///< intense, and fewer pits listed than the policy asks to be measured
  std::optional<Ratio> factor;     ///< deepest penetration over mean loss, both from the original surface (ASTM G46)
  std::string no_factor;           ///< why there is none: "weak-basis", "no-pits", "no-mean-loss"; empty: there is one
};

/// Wastage of a zone by one of its three measures: general (mean of the used marks), local (lowest plate reading), pit (least
/// remaining under a pit).
struct Wastage {
  int n = 0;                       ///< used marks, or pits measured, that it is taken from
  std::string at;                  ///< mark or pit; empty for the mean
  Ratio remaining_nm;              ///< exact, in nanometres
  std::optional<LossShare> share;  ///< absent with a weak basis
  std::optional<Ratio> alive_low, alive_high; ///< weak basis: over the nominals alive, at nominal
};

/// A plate size considered where the basis is weak: every usual one, and the one stated. Under one tolerance it is excluded when
/// the zone's thickest reading is above its delivery interval, and set aside when that reading is below the interval
/// and the survey states the assumption that the plate is unwasted somewhere; else alive.
struct Nominal {
  Length nominal;
  /// Alive under any tolerance: alive. Else set aside under any: set aside. A size whose interval no table gives is alive.
  enum class State { alive, excluded, set_aside } state = State::alive;
  std::optional<Length> lower, upper; ///< delivery interval, over all `fits`
  struct Fit {
    std::string tolerance;         ///< policy tolerance id
    Length lower, upper;
    State state = State::alive;
  };
  std::vector<Fit> fits;           ///< one for each tolerance that reaches the size
};

/// Whether a criterion applies to a zone, and what it asks for there. why_not: "scope" (other plating), "not-declared" (the vessel
/// is not declared what it must be), "weak-basis" (the original is not known well enough), "thicker" (the original is above the
/// criterion's bound), "inputs" (a figure of the formula is missing); empty where it applies.
struct Applicability {
  std::string criterion;
  std::string why_not;
  std::optional<Length> limit;     ///< as a remaining thickness; absent where it does not apply
  bool told = false;               ///< as of CriterionResult
};

/// A place that another reading of a rule would judge otherwise.
struct Rejudged {
  std::string place;               ///< mark or pit
  Length remaining;
  Verdict now = Verdict::not_applicable, then = Verdict::not_applicable;
};

/// What one other reading of one rule would change in a zone: every used mark and every pit whose verdict would be another, least
/// remaining first.
struct ReadOtherwise {
  std::string criterion;
  policy::OtherReading reading;
  std::vector<Rejudged> places;
};

/// What the used marks of a zone say together, taken as if they were independent; the gauge's own doubt is not in it. To a
/// nanometre: the deviation rounded up, the interval outwards, the limit down. See statistics.h for the formulas.
struct Statistics {
  Length deviation;                ///< sample standard deviation
  Length mean_low, mean_high;      ///< two-sided interval of the mean, at the rule's confidence
  Ratio percentile_nm;             ///< exact low percentile, of the rule's type
  /// With the rule's confidence its share of such marks keep at least this, if their scatter is normal. Computed, never steel
  /// that was measured. Absent where it would not be above nought.
  std::optional<Length> tolerance_limit;
};

struct ZoneResult {
  std::string zone;
  Count count;
  std::optional<Length> min, max;
  std::optional<Ratio> mean_nm;
  std::optional<Statistics> statistics; ///< absent: fewer used marks than the policy asks
  std::string least;               ///< mark of the least displayed, min
  std::string worst;               ///< mark of the lowest plate reading as it is judged
  std::optional<std::string> worst_pit;
  std::vector<Subject> subjects;   ///< plate first, then the worst pit; empty: nothing usable
  /// Criterion that the zone's marks and pits are measured by: the governing one, else the applicable one with the least
  /// margin at the worst subject. Empty: none applies, and no place of the zone has a standing.
  std::string measured_by;
  std::vector<Applicability> criteria; ///< in the order of Assessment::criteria
  std::vector<ReadOtherwise> read_otherwise; ///< only readings that change a verdict
  std::optional<Length> thickest;  ///< reading of the zone's hull plate, at marks and beside pits
  std::vector<Nominal> nominals;   ///< for a weak basis
  std::vector<std::string> tolerances; ///< ids considered: the ones named; on a weak basis without one, the usual ones
  bool weak_basis = false;
  bool told = false;               ///< the original is what somebody told
  std::optional<Wastage> general, local, under_pit; ///< absent: nothing used, or no pit
  std::optional<Ratio> alive_low, alive_high; ///< loss share at the worst place over surviving nominals, weak basis
  Length highest_original;         ///< t0 for the ladder: the nominal, or the thickest nominal alive where the basis is weak
  Extent extent = Extent::none;    ///< of pitting, under the extent rule
  Pitting pitting;
  std::string rung;                ///< ladder rung by the least remaining; empty: too few readings
  std::optional<Ratio> share_at_rung; ///< share of the used marks that stand on the rung or a lower one
  bool suggests_extensive = false; ///< which column of the rung: see suggest() in ladder.h
  std::vector<std::string> suggested; ///< action ids
  bool indicative = false;         ///< a mark that is used, or a pit, is
  bool too_few = false;            ///< nothing usable, or fewer marks of use or a lesser share read than the policy asks
  bool departs = false;            ///< the decision's action is not among the suggested
  /// One subject falls short of one applicable criterion and meets another. Too close to call is on neither side: with a
  /// "meets" beside it, or a "falls short", it makes no conflict.
  bool conflict = false;
  std::string conflict_at;         ///< mark or pit in conflict, the one with the least remaining
  std::vector<std::string> short_of, met; ///< criterion ids in conflict, at `conflict_at`
};

/// A value that the survey leaves open and that had to be taken.
struct Default {
  /// wing_voids: none are taken, for the rule formulas. pit_gauge: a pit does not say what took its depth. gauge_beside: the
  /// steel beside a pit may have been read with any of several gauges.
  enum class What { wing_voids, pit_gauge, gauge_beside } what = What::wing_voids;
  std::string pit;   ///< of which pit; empty for wing_voids
  std::string gauge; ///< taken: the most doubtful one there is; empty for wing_voids
};

struct Assessment {
  policy::DecisionRule decision;            ///< by which every verdict is given
  std::vector<policy::Criterion> criteria;  ///< the ones this survey uses, in print order
  std::map<std::string, policy::RuleWorking> workings; ///< "criterion/plating" -> working of the formula
  std::vector<GaugeResult> gauges;          ///< one for each Survey::gauges, same order
  std::vector<MarkResult> marks;            ///< one for each Survey::marks, same order
  std::vector<PitResult> pits;              ///< one for each Survey::pits, same order
  std::vector<RowSummary> rows;             ///< one for each Survey::rows, same order
  std::vector<ZoneResult> zones;            ///< one for each Survey::zones, same order
  policy::StatisticsRule statistics;        ///< by which the zones' statistics are made
  Count coverage;                           ///< whole survey
  std::optional<Ratio> marks_per_m2;        ///< read marks over the zones' area, when every zone gives one
  bool spot_check = false;
  /// Area of the zones with a mark that is used, and of all zones, in m2; present when every zone gives its area.
  std::optional<Ratio> read_m2, shell_m2;
  int repeats_apart = 0;                    ///< marks read whose repeats lie further apart than the policy allows
  std::vector<Retake> retakes;              ///< marks in order, then pits
  std::string worst;                        ///< mark or pit that is judged by the least of all
  Length worst_remaining;                   ///< what it is judged by
  std::string worst_loss;                   ///< mark or pit with the greatest loss share among strong bases; empty: none
  std::vector<Default> defaults;            ///< wing voids first, then by pit in the order of the file
};

/// Computes everything. A criterion that lacks an input (draught, spacing) adds criterion_inputs at its use in the survey.
Assessment assess(const survey::Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);

/// The whole assessment as JSON; lengths as decimal strings in mm, shares as fractions "41/120".
nlohmann::ordered_json json(const survey::Survey &survey, const Assessment &assessment);

/// The criterion that a place is measured against: the governing one, else the applicable one with the least margin; nullptr
/// when none applies.
const CriterionResult *measured_against(const Subject &subject);

const GaugeResult *gauge_result(const Assessment &assessment, std::string_view gauge); ///< nullptr: no such gauge
const ZoneResult &zone_result(const Assessment &assessment, std::string_view zone);

} // namespace strakebook::assess
