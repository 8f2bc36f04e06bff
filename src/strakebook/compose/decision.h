#pragma once

#include "strakebook/compose/voice.h"

/// Parts of a zone's decision page, in the order they are printed.
namespace strakebook::compose {

/// A zone as it is judged: computed, and decided where the surveyor has decided (nullptr in a draft).
struct Judged {
  const survey::Zone &zone;
  const assess::ZoneResult &result;
  const survey::Decision *decision;
};

/// "Zone W, rows PW and SW. Original 6.0 mm, builder's drawing. 33 of 34 marks read."
content::Block zone_line(const Scope &scope, const Judged &judged);
std::vector<content::Block> claim(const Scope &scope, const Judged &judged);
std::vector<content::Block> facts(const Scope &scope, const Judged &judged);
std::vector<content::Block> criteria_at_worst(const Scope &scope, Numbering &numbering, const Judged &judged);
/// One computed sentence: where a rule can be read otherwise, and which places that would judge otherwise; nullopt where none.
std::optional<content::Block> read_otherwise(const Scope &scope, const assess::ZoneResult &zone);
std::vector<content::Block> conflict_answer(const Scope &scope, const Judged &judged);
std::vector<content::Block> reasons(const Scope &scope, const Judged &judged);
std::vector<content::Block> extent_and_ladder(const Scope &scope, const Judged &judged);
std::vector<content::Block> alternatives(const Scope &scope, const Judged &judged);
std::vector<content::Block> range_of_opinion(const Scope &scope, const Judged &judged);

} // namespace strakebook::compose
