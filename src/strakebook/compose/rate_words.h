#pragma once

#include "strakebook/compose/voice.h"

/// Rates of loss and lives as text, and the rate criterion where a decision or page one speaks of it.
namespace strakebook::compose {

/// "0.083" mm a year, to a thousandth.
std::string rate_text(Ratio nm_a_year);
/// The same of a figure that is only printed, rounded up: a spread or an upper rate is never less than it is.
std::string rate_up(double nm_a_year);
/// Years to a tenth, rounded down; to a hundredth where that is nearer than a tenth to `beside`.
std::string life_text(double years, std::optional<Ratio> beside);
/// "4.0 mm remaining" by which a zone's lives are counted; empty where nothing measures it.
std::string measured_name(const Scope &scope, std::string_view zone);
/// The life of a place to the limit that its zone is measured by; nullptr: none.
const years::Life *measured_life(const Scope &scope, const years::Place &place);

/// Does a zone with an earlier survey say more by its rate than that the limit is kept?
bool rate_tells(const Scope &scope, std::string_view zone);
/// The line of the rate criterion in a table of name, four figures and verdict; nullopt without an earlier survey.
std::optional<content::Row> rate_row(const Scope &scope, std::string_view zone);
/// How long the limit is kept at the gravest place; nullopt where no rate is judged.
std::optional<Sentence> rate_sentence(const Scope &scope, std::string_view zone);
/// The place whose limit is nearest in time, its rate and life, and the zones that were not compared; nullopt where no rate is known.
std::optional<Sentence> nearest_in_time(const Scope &scope);
/// The zones that reach their limit before the next survey; nullopt: none does.
std::optional<Sentence> limit_before_next(const Scope &scope);

} // namespace strakebook::compose
