#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/decimal.h"
#include "strakebook/base/length.h"
#include "strakebook/base/provenance.h"
#include "strakebook/base/ratio.h"
#include "strakebook/steel/policy/afloat_rule.h"
#include "strakebook/steel/policy/protection_rule.h"
#include "strakebook/steel/policy/robustness_rule.h"
#include "strakebook/steel/policy/unseen_rule.h"
#include "strakebook/steel/policy/works_rule.h"
#include "strakebook/steel/policy/years_rule.h"

/// What a firm holds its surveys to: values read from layouts. No threshold, rate or action word stands in code.
namespace strakebook::policy {

using base::Length;
using base::Ratio;

/// Which part of the shell a zone is, for formulas that treat bilge plating apart.
enum class Plating { bottom, side, bilge };

/// European inland rule style minimum (Directive 2006/87/EC Annex II Art. 3.02; ES-TRIN Art. 3.02): the greater of
/// f b c (k0 + k1 L) with k by length, not under the floor, and draught_factor a sqrt(T). a in mm, L and T in m, result mm.
struct RuleMinimum {
  Length split;                              ///< 40 m: at or below it `shorter`, above it `longer`
  base::Decimal shorter_constant, shorter_slope; ///< 1.5, 0.06
  base::Decimal longer_constant, longer_slope;   ///< 2.3, 0.04
  Length floor;                              ///< 3.0 mm; applies at or below the split; not multiplied by b
  Length spacing;                            ///< 500 mm: f = 1 up to it
  base::Decimal spacing_slope;               ///< 0.0013 a mm beyond
  base::Decimal draught_factor;              ///< 0.005
  base::Decimal bilge_factor;                ///< 1.25; bottom and side take 1
  base::Decimal wing_factor;                 ///< 0.95 with double bottom and wing voids
  Ratio local_wear;                          ///< 0.1: this much less is accepted locally; see RuleReading
};

/// Minimum for vessels that carry passengers (Directive 2006/87/EC Annex II Art. 15.02): the greater of draught_factor a sqrt(T)
/// and length_factor f sqrt(L_WL), not under the floor; f = 1 + spacing_slope (a - spacing), below the spacing too. a in mm and
/// not less than least_spacing, L_WL and T in m, result mm.
struct PassengerMinimum {
  base::Decimal draught_factor; ///< 0.006
  base::Decimal length_factor;  ///< 0.55
  Length spacing;               ///< 500 mm: f = 1 there
  base::Decimal spacing_slope;  ///< 0.0013 a mm
  Length least_spacing;         ///< 400 mm: a closer spacing counts as this
  Length floor;                 ///< 3.0 mm
};

/// absolute: a remaining thickness. percent: a share of the original that may go. margin: the same in the manner of class, with
/// substantial corrosion told apart below the limit. The two minimums are formulas of the hull's figures.
enum class CriterionKind { absolute, percent, margin, rule_minimum, passenger_minimum };

/// What a vessel must be declared to be before some criteria apply to it.
enum class Declaration { light_scantlings, passengers };

/// One named criterion. `limit` for absolute, `most_loss` for percent and margin (0.25 = 25 % of the original may go), `rule` or
/// `passenger` for a formula. A remaining thickness exactly at the limit has not passed it.
struct Criterion {
  std::string id;        ///< "absolute-4.0"
  std::string name;      ///< "4.0 mm remaining"
  CriterionKind kind = CriterionKind::absolute;
  Length limit;
  Ratio most_loss;
  Ratio substantial_from;  ///< of margin: a loss beyond this share of what may go is substantial corrosion (0.75; strict)
  std::optional<RuleMinimum> rule;
  std::optional<PassengerMinimum> passenger;
  std::optional<Length> original_at_most;   ///< applies only to plate whose original is no thicker
  std::optional<Declaration> declared;      ///< applies only to a vessel that is declared so
  std::string authority; ///< who says so: "common practice, no published source", "Directive 2006/87/EC Annex II Art. 3.02"
  std::string edition;
  std::string scope;     ///< to what it applies, in words
  std::vector<Plating> plating; ///< empty: every zone
  std::string asked_by;  ///< who asked for it in this survey; may be empty
};

/// How nearness to a limit is judged. simple_acceptance: the figure decides, its doubt is not counted. guard_band: w = band * u,
/// and |margin| < w is too close to call. four_classes: the same, and what is too close is told apart by the side on which the
/// bare figure stands; at the limit is not over it.
enum class DecisionKind { simple_acceptance, guard_band, four_classes };
struct DecisionRule {
  std::string name;
  DecisionKind kind = DecisionKind::guard_band;
  base::Decimal band;    ///< 1.645: one-sided 95 % (JCGM 106:2012); 0 for simple acceptance and for nothing else
  Ratio coverage;        ///< one-sided, of Student's factor where a doubt has finite degrees of freedom: 95/100
  std::string source;
};

/// Isolated keeps all three bounds; extensive has reached the share named for it; what lies between is scattered.
struct ExtentRule {
  base::Decimal most_per_m2;   ///< isolated: at most so many a square metre
  base::Decimal under_percent; ///< and less than this share of the area
  Length least_spacing;        ///< and no two of them nearer to each other than this
  base::Decimal extensive_from_percent; ///< extensive: this share of the area or more
  std::string source;
};

/// Where pits cover more than the share, so many of the deepest are to be measured (ESP Code).
struct PittingRule {
  base::Decimal intense_over_percent;
  int least_measured = 0;
  std::string source;
};

/// The area that a local loss stands for, for print.
struct LocalArea {
  base::Decimal m2;
  std::string source;
};

/// The one action that the program knows by its id: what is written where there are too few readings.
inline constexpr std::string_view no_opinion = "no opinion";

struct Action {
  std::string id;      ///< "insert"
  std::string name;    ///< "insert (crop and renew)"
  bool adverse = false;    ///< needs criterion, reason, evidence and alternatives
  bool adds_steel = false; ///< insert, overplate, pad weld: weight and stability caution
  bool doubler = false;    ///< lays plate over plate
};

/// First rung whose bounds all lie above r applies; the last has none. r = remaining, t0 = highest tenable original.
struct Rung {
  std::string id;
  std::optional<Length> below;      ///< applies when r < below
  std::optional<Ratio> below_part;  ///< and r < part * t0
  std::vector<std::string> isolated, extensive; ///< action ids that it suggests
  std::string isolated_words, extensive_words;
  std::vector<std::string> classes; ///< "A", "B", "C": which it asks for
  std::string when;                 ///< its condition in words
};

struct Ladder {
  std::vector<Rung> rungs;
  std::string too_few_words;  ///< what it says where there are too few readings
  std::string source;
};

/// A delivery tolerance: lower <= 0 <= upper, for from <= nominal < to.
struct ToleranceBand { Length from, to, lower, upper; };
struct Tolerance {
  std::string id;       ///< "EN 10029:1991 A"
  std::vector<ToleranceBand> bands; ///< a size seen by itself has a band of one nanometre
  std::string source;
  bool verified = true; ///< false: from memory, printed as such
};

/// Definition of a sample percentile, by its number in R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361-365.
enum class PercentileType { six = 6, seven = 7, eight = 8 };

/// What is said of a zone's used marks together. It judges nothing.
struct StatisticsRule {
  int least_for_statistics = 0; ///< fewer used marks give none
  Ratio confidence;             ///< of the interval of the mean and of the tolerance limit; between 0 and 1
  Ratio share;                  ///< of such marks that keep the tolerance limit; between 0 and 1
  Ratio percentile;             ///< the low one that is printed; between 0 and 1
  PercentileType percentile_type = PercentileType::six;
};

/// How the surveyor's own words are read where they are held against the figures. The words are the language's.
struct Prose {
  int least_sentences = 0, most_sentences = 0; ///< of the reason on page one
  std::vector<std::string> abbreviations;      ///< the full stop after one of these ends no sentence
  std::vector<std::string> pits, doublers;     ///< what a line of "none found" calls them, in small letters
  std::vector<std::string> bounds;             ///< words that make a figure a bound: "keeps more than 5.5" is not a reading of 5.5
};

struct Basis {
  std::string id;       ///< "mill certificate", "builder's drawing", "owner's word", ...
  bool weak = false;    ///< percent criteria are not applied on it
};

/// A single echo counts a coating as so many times its dry film thickness of steel: the least and the most reckoned with.
struct SingleEcho {
  base::Decimal least, most;
};

/// What looks like a slip in copying figures from the gauge or the notebook. Each of these is reported and can be
/// acknowledged; none changes a figure.
struct CopyingChecks {
  Length agree;          ///< readings no further apart than this fit each other
  Length mirror_apart;   ///< a reading further than this from the same place on the other side is looked at
  int run_marks = 0;     ///< least count of changing readings in a run that stands in two places
  int run_odds = 0;      ///< and chance alone would give such a run less often than once in so many surveys
  int shift_marks = 0;   ///< least count of stations that a row and the other side's share
  Length shift_apart;    ///< they differ on average by this or more,
  Ratio shift_part;      ///< and by no more than this part of it when one is moved by a station
  Ratio pit_share;       ///< a pit deeper than this share of the plate beside it may have its figures exchanged
  Ratio unit_share;      ///< a reading under this share of the original may be in another unit
  std::string source;
};

struct Policy {
  std::map<std::string, Criterion> criteria;
  std::vector<std::string> criteria_order; ///< in the order they are printed
  DecisionRule decision;
  ExtentRule extent;
  PittingRule pitting;
  LocalArea local_area;
  Ladder ladder;
  std::map<std::string, Action> actions;
  std::map<std::string, Tolerance> tolerances;
  std::map<std::string, Basis> bases;
  std::vector<Length> usual_nominals;      ///< plate sizes considered where the original is not known
  std::vector<std::string> usual_tolerances; ///< ids considered where the basis is weak and the survey names none
  Length repeat_spread;                    ///< repeats further apart than this are reported
  Length neighbour_jump;                   ///< readings further than this from both neighbours are reported
  CopyingChecks copying;
  Length block_agreement;                  ///< a block check further off than this has failed
  Length retake_within;                    ///< an indicative figure this near a limit is to be retaken
  SingleEcho single_echo;
  int least_marks = 0;                     ///< a zone with fewer marks of use has no opinion unless reasoned
  Ratio least_read;                        ///< share of planned marks that are of use, likewise
  Prose prose;
  base::Decimal spot_check_per_m2;         ///< below it the survey is called a spot check
  StatisticsRule statistics;
  UnseenRule unseen;
  YearsRule years;
  RobustnessRule robustness;
  WorksRule works;
  AfloatRule afloat;
  ProtectionRule protection;
  std::vector<std::string> required_rows;  ///< names of rows a survey of this firm must have (empty: none)
  std::vector<std::string> required_fields; ///< field paths that a final must have ("datum.from")
  std::string steel_density_kg_m2_mm;      ///< 7.85, as printed
};

/// The delivery band of a tolerance for a nominal; nullptr where the table does not reach.
const ToleranceBand *band_for(const Tolerance &tolerance, Length nominal);

/// Where the text of the rule is silent: other readings than the one that is judged by. floor_times_b: the floor is multiplied by
/// the bilge factor. local_wear: the wear accepted locally may go under the limit, not under the floor. local_wear_under_floor:
/// it may go under the floor too.
enum class RuleReading { floor_times_b, local_wear, local_wear_under_floor };
struct OtherReading {
  RuleReading reading = RuleReading::floor_times_b;
  Length limit; ///< under this reading alone, rounded up to the next nanometre
};

/// Limit of a rule formula for a hull: working kept for print.
struct RuleWorking {
  Length limit;     ///< rounded up to the next nanometre where a square root or product is not exact
  Length by_length; ///< by the formula of length, floor not yet applied
  Length by_draught;///< by the formula of draught, floor not yet applied
  bool floored = false; ///< the floor governs: both formulas give less
  base::Ratio f, b, c;
  Length spacing;                   ///< a, as it was counted
  std::vector<OtherReading> others; ///< the readings that give another limit
};
struct HullFigures { Length length, draught, spacing; bool wing_voids = false; };
/// Never under the value for bottom and side plating where `plating` is bilge. Two readings of the rule are disputed and
/// settled here so: the floor is not multiplied by b, and the ten per cent of local wear that the rule accepts is not taken
/// off the limit; RuleWorking::others holds what the other readings give. b multiplies the formula by length only. Throws
/// std::overflow_error for figures no hull has.
RuleWorking rule_minimum(const RuleMinimum &rule, const HullFigures &hull, Plating plating);

/// `hull.length` is the length of the waterline. Bottom, side and bilge alike; b and c are 1. Throws std::overflow_error for
/// figures no hull has.
RuleWorking passenger_minimum(const PassengerMinimum &rule, const HullFigures &hull);

} // namespace strakebook::policy
