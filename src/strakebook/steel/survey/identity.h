#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "strakebook/steel/survey/words.h"

namespace strakebook::survey {

enum class State { draft, preliminary, final };

/// The report's own identity.
struct Report {
  Words number;
  int issue = 0;
  State state = State::draft;
  Given<base::Date> inspected, issued;
  Words place;             ///< where the vessel lay
  Words insurer_reference; ///< "none" where there is none
  Words supersedes;
  base::SourceSpan span;
};

/// Who asked, for what, and who may read it.
struct Instructions {
  Words client; ///< a role: "the buyer"
  Words purpose;
  Words how; ///< written or oral
  Given<base::Date> on;
  std::vector<Words> questions, exclusions;
  Words terms, reliance;
  std::vector<Words> readers; ///< permitted readers
  base::SourceSpan span;
};

struct Surveyor {
  Words name, qualification, body;
  Words measured_by, witnessed_by, supervised_by;
  Words independence, literature, declaration;
  Words signed_at;
  Given<base::Date> signed_on;
  base::SourceSpan span;
};

/// The word of `carries` that brings the rules for passenger vessels.
inline constexpr std::string_view carries_passengers = "passengers";

struct Vessel {
  Words name;
  Words kind;
  std::vector<Fact> ids;   ///< registration, hull number
  LengthFact length, beam; ///< required
  std::optional<LengthFact> draught, plated_height, frame_spacing;
  std::optional<LengthFact> waterline_length; ///< at the greatest draught
  std::optional<LengthFact> narrowest;        ///< lock or bridge on her waters that she has to pass
  std::optional<Fact> built, builder, construction, use, history;
  Given<bool> wing_voids; ///< double bottom and wing voids; a rule formula takes what is not written as none
  Words carries; ///< passengers, cargo or neither; some criteria apply to one of them only
  Given<bool> light_scantlings;
  base::SourceSpan span;
};

struct Conditions {
  Words how_held;
  Given<bool> out_of_water, cleaned;
  Words preparation;
  Words weather, access, present;
  Words lighting;
  base::SourceSpan span;
};

/// Answers that stand on page one.
struct Answer {
  Words refloat; ///< one of: yes, with conditions, no, no opinion, not applicable
  Words refloat_conditions;
  Words reason; ///< three sentences
  Words next_survey;
  Given<base::Date> next_survey_by;
  Words limitation; ///< which limitation matters most: its id
  base::SourceSpan span;
};

struct IssueNote { ///< a line of the issue record
  int issue = 0;
  Given<base::Date> on;
  Words to, why;
  base::SourceSpan span;
};

} // namespace strakebook::survey
