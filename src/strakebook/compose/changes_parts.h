#pragma once

#include "strakebook/compose/tables.h"

/// The parts of the page that says what changed.
namespace strakebook::compose {

/// Two issues of one report side by side.
struct Editions {
  const Scope &now, &before; ///< each speaks of its own survey
  const amend::Amended &amended;
  int issue = 0; ///< this one
};

std::string said_head(const Editions &both); ///< "issue 1 said"
std::string says_head(const Editions &both); ///< "issue 2 says"
std::string was_head(const Editions &both);  ///< "issue 1"
std::string is_head(const Editions &both);   ///< "issue 2"

/// What changed, counted: how many decisions, readings and other things, and whether any decision did. Computed.
Sentence counted_changes(const Editions &both);

/// Where a thing that changed stands in this issue: a block id; empty where it no longer does, or stands in no one place.
std::string place_of_change(const Scope &scope, const std::string &subject);
/// Its name as a reason calls it, with its place or name in soft behind it.
Inlines subject_words(const Scope &scope, const amend::Change &change);
Inlines reason_words(const Scope &scope, const amend::Change &change);
content::Cell page_cell(const Scope &scope, const std::string &subject); ///< "p. 9"; empty where there is no place

/// One difference of words or figures, old and new: of long texts what differs, with a few words about it.
struct Shown {
  Inlines before, now;
};
Shown shown_difference(const Scope &scope, const std::string &before, const std::string &now);

/// A key of the survey file as words: "others-may-say" -> "others may say".
std::string field_words(std::string key);

/// Whether a difference is short enough to stand in a column of figures.
bool is_figure(const amend::Difference &difference);
/// Whether a change is listed with the readings rather than with everything else.
bool is_measured(amend::Kind kind);

/// The edition that has a mark or pit: this one if it does.
const Scope &scope_with(const Editions &both, const std::string &subject);
survey::Place place_of_steel(const Editions &both, const std::string &subject);
/// What remains there, in mm; a dash where nothing was read.
std::string changed_figure(const Editions &both, const amend::Change &change, std::optional<Length> remaining);

// Each under its head; empty where there is nothing to show.
std::vector<content::Block> decisions_changed(const Editions &both);
std::vector<content::Block> readings_corrected(const Editions &both);
std::vector<content::Block> readings_withdrawn(const Editions &both);
std::vector<content::Block> others_changed(const Editions &both);
std::vector<content::Block> figures_that_follow(const Editions &both);
std::vector<content::Block> verdicts_moved(const Editions &both);
std::vector<content::Block> where_changed(const Editions &both);

/// What went wrong, who found it and what else was checked, in the surveyor's words.
std::vector<content::Block> cause_of_change(const Scope &scope, const survey::Amendment &given);
/// Who had the issue that is replaced, and who of them was told; `past` null: who was told alone.
std::vector<content::Block> who_had_it(const Scope &scope, const survey::Amendment *given, const amend::PastIssue *past);

} // namespace strakebook::compose
