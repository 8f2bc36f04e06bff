#pragma once

#include "strakebook/compose/voice.h"

/// What has gone from a zone, and how its pitting stands, in sentences. Computed: they contain no action.
namespace strakebook::compose {

/// "1.4 mm, 23 % (20 to 25)"; on a weak basis the range over the nominals that fit; signed where it rests on what was told.
std::string loss_words(const Scope &scope, const assess::ZoneResult &zone, const assess::Wastage &wastage);

/// "8.0 % to 23.3 %", signed likewise; one figure where both are the same.
std::string range_words(const Scope &scope, const assess::ZoneResult &zone, Ratio low, Ratio high);

/// General, local and pit wastage, each with what it is taken from; empty where nothing was used.
std::optional<Sentence> wastage_sentences(const Scope &scope, const assess::ZoneResult &zone);

/// The extent of a zone's pitting under the rule, with its numbers, and the column of the ladder that it takes.
Sentence extent_sentence(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result);

/// Pitting intensity where it asks for more pits, and the pitting factor or why there is none.
std::optional<Sentence> pitting_sentences(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result);

/// The extent rule itself.
std::string extent_rule(const Scope &scope);

} // namespace strakebook::compose
