#pragma once

#include "strakebook/steel/survey/survey.h"
#include "strakebook/steel/survey/values.h"

/// The texts of a survey, wherever they stand in it.
namespace strakebook::survey {

/// Shows every text that the surveyor composed: each one that the field table reads, and the remarks of marks. One
/// without a place of its own is shown with the survey's.
void each_text(const Survey &survey, const SeeWords &see);

/// Where `part` stands in the file, counted from the beginning of a text; the text's own place if it is not found there.
base::SourceSpan place_in(const base::SourceSpan &span, std::string_view part);

} // namespace strakebook::survey
