#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/survey/words.h"

/// What floating, coating and anodes are reckoned from.
namespace strakebook::survey {

/// How she floats before any steel is added. Heights are above the water she floats in.
struct AfloatFigures {
  Words water;                                      ///< one of the house's waters: "fresh"
  std::optional<base::Decimal> waterplane_coefficient; ///< area over length times beam, more than 0, at most 1
  std::optional<LengthFact> freeboard;              ///< least height of the deck edge
  std::optional<LengthFact> downflooding;           ///< height of the lowest opening
  Words opening;                                    ///< which that is
  Words as;                                         ///< in what state of loading
  Words source;                                     ///< of the coefficient
  base::SourceSpan span;
};

/// One coating to be put on.
struct CoatingScheme {
  std::string id; ///< "1"
  Reach at;
  Words coating;                            ///< which, without make
  std::optional<base::Decimal> area_m2;
  Words blast;                              ///< preparation grade: "Sa 2 1/2"
  std::optional<base::Measured> dry_film;   ///< of all coats together
  std::optional<base::Decimal> solids_percent; ///< by volume, more than 0, at most 100
  std::optional<base::Decimal> loss_percent;   ///< of what is bought, that never reaches the plate; 0 to under 100
  Words recoat;                             ///< when again, where it differs from the house's interval
  base::SourceSpan span;
};

/// The anodes that were on her.
struct AnodesFitted {
  std::optional<int> count;
  Words metal;
  Given<base::Date> on;                        ///< the day they were fitted
  std::optional<base::Decimal> worn_percent;   ///< of their mass, by eye or weight
  Words bonded;                                ///< yes, no, not tested
  Words answer;                                ///< what the surveyor makes of anodes that have not worn
  base::SourceSpan span;
};

/// The anodes that she is to have.
struct AnodePlan {
  Words metal;
  std::optional<base::Decimal> area_m2;        ///< of wetted steel
  std::optional<base::Decimal> bare_percent;   ///< of it taken as bare, on average over the years
  std::optional<base::Decimal> current_ma_m2;  ///< on bare steel
  std::optional<base::Decimal> years;
  std::optional<base::Decimal> net_kg;         ///< mass of one, without its core
  std::optional<base::Measured> stands_out;    ///< from the plate
  Words source;                                ///< of the current
  base::SourceSpan span;
};

} // namespace strakebook::survey
