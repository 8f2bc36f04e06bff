#pragma once

#include "strakebook/compose/voice.h"

/// What an assessment says of one place, found and worded for the pages that judge it.
namespace strakebook::compose {

/// The zone and the subject (lowest plate reading or worst pit) with this id; both nullptr when there is
/// none.
struct Found {
  const assess::ZoneResult *zone = nullptr;
  const assess::Subject *subject = nullptr;
};
Found find_subject(const Scope &scope, std::string_view id);

/// The subject of a zone that is judged by the least; nullptr when nothing was usable.
const assess::Subject *worst_of(const assess::ZoneResult &zone);
const assess::Subject *subject_of_kind(const assess::ZoneResult &zone, assess::Subject::Kind kind);

using assess::measured_against;

/// "4.0 mm remaining" of a criterion of this survey.
std::string criterion_name(const Scope &scope, std::string_view id);

/// The margin in words: "it falls short by 1.30", with the doubt where it matters. Computed: contains no
/// action.
std::string margin_words(const Scope &scope, const assess::CriterionResult &result, Length band);
/// "0.16"; under a rule that does not count the doubt, words that say so.
std::string doubt_text(const Scope &scope, Length band);
std::string doubt_mm(const Scope &scope, Length band); ///< the same with its unit

/// Why a criterion does not apply to a zone, by the reason word of its result.
std::string why_not_words(const Scope &scope, std::string_view criterion, std::string_view reason);
/// " · substantial corrosion, under 4.875" behind the verdict of an allowable margin; empty where there is nothing to say.
std::string substantial_words(const Scope &scope, const assess::CriterionResult &result);

/// The loss at a place as text: see loss_words().
std::string loss_text(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject);

/// The share lost at a mark or pit; nullptr where its zone's basis is too weak for one.
const assess::LossShare *share_at(const Scope &scope, std::string_view id);

/// "25 % of original lost", signed where the limit in this zone rests on what somebody told.
std::string signed_name(const Scope &scope, const assess::ZoneResult &zone, std::string_view criterion);

/// Where a subject lies: "P11, SC 13.3, starboard chine" or "PW 9, port wind-and-water".
std::string subject_place(const Scope &scope, std::string_view id);

/// Marks by what became of them: planned = read + rejected + not read.
int not_read(const assess::Count &count);

/// What the firm's ladder says for a zone, in the house's words, and the row's condition.
struct LadderWords {
  std::string when, suggests;
};
std::optional<LadderWords> ladder_words(const Scope &scope, const assess::ZoneResult &zone);

const survey::Decision *decision_for(const Scope &scope, std::string_view zone);

/// Zones that a reach touches, by id; a reach without rows or zone is the whole shell.
std::vector<std::string> zones_of(const Scope &scope, const survey::Reach &reach);

} // namespace strakebook::compose
