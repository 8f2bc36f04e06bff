#pragma once

#include "strakebook/compose/subjects.h"

/// How the report says that a place is judged by less than was displayed.
namespace strakebook::compose {

/// A figure of the low side, with two decimals or as many more as keep it clear of every limit of the zone.
std::string low_text(const Scope &scope, std::string_view zone, Length low);
/// What a subject is judged by, as it is printed beside its limits.
std::string judged_text(const Scope &scope, std::string_view zone, const assess::Subject &subject);
/// "On the low side PW 9 leaves 3.90 mm, and by that it is judged."; empty where the figure displayed is judged.
std::optional<Sentence> low_sentence(const Scope &scope, std::string_view zone, const assess::Subject &subject);
/// Whether any mark, or any pit, of the survey is judged by less than was displayed.
bool any_mark_lowered(const Scope &scope);
bool any_pit_lowered(const Scope &scope);

} // namespace strakebook::compose
