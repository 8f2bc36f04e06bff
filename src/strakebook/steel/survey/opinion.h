#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/survey/supplies.h"
#include "strakebook/steel/survey/words.h"

namespace strakebook::survey {

/// A criterion that this survey uses: one of the house's by id, or the survey's own (then fully written and
/// appended).
struct CriterionUse {
  std::string id;
  Words asked_by;
  Words why;
  base::SourceSpan span;
};

/// The answer to criteria that contradict each other in a zone.
struct ConflictAnswer {
  std::string prefers;            ///< criterion id
  std::vector<std::string> marks; ///< marks or pits that it cites
  Words because;                  ///< a full sentence
  base::SourceSpan span;
};

enum class StatementKind { measured, seen, told, inferred, opinion };
struct Statement {
  StatementKind kind = StatementKind::seen;
  Words text;
};

struct Decision {
  std::string zone;
  std::string action;    ///< policy action id
  Words claim;           ///< the decision in a sentence
  std::string criterion; ///< governing criterion id; empty: none given
  std::vector<Statement> facts;
  Words why;
  std::vector<std::string> evidence; ///< marks, pits, photos, notes
  std::vector<Named> instead_of;     ///< alternative action or words, and why not
  Words range_of_opinion;            ///< what others may say
  Words would_change;
  Words confidence, activity, cause;
  std::optional<ConflictAnswer> conflict;
  Words departure;      ///< why it departs from the ladder
  Words opinion_on_few; ///< why an opinion is given on few readings
  base::SourceSpan span;
};

struct Recommendation {
  std::string id; ///< "1"
  Words title;
  std::string action;
  Reach at;
  std::string klass; ///< A, B, C
  Words deadline;    ///< in words ("before refloating"), or
  Given<base::Date> by;
  Words reason, alternative, feasible, hazards, binds, proof, status;
  std::vector<std::string> evidence;
  base::SourceSpan span;
};

/// One item of the yard's schedule.
struct SteelworkItem {
  std::string id; ///< "S1"
  std::string recommendation;
  std::string action;
  Reach at;
  std::optional<base::Measured> length, breadth; ///< of the plate, along and across the hull
  std::optional<base::Measured> thickness;       ///< of the new plate
  std::optional<base::Measured> radius;          ///< of its corners; 0 where they are square
  std::optional<base::Measured> lap_width;       ///< of a plate laid over
  std::optional<base::Measured> plug_pitch;      ///< of its plug welds
  Words size, plate, lap, corners, weld, plugs, preparation, lining, test, hold_point, coating, nearest_frame,
      tolerance;
  base::SourceSpan span;
};

struct CoatingAndAnodes {
  Words coating, anodes, recommended;
  std::vector<CoatingScheme> schemes;
  std::optional<AnodesFitted> fitted;
  std::optional<AnodePlan> plan;
  base::SourceSpan span;
};

struct Limitation {
  std::string id; ///< "1"
  Reach at;
  Words area, why, prevents, cure;
  base::SourceSpan span;
};

/// A warning that the surveyor has seen and answers for.
struct Acknowledgement {
  std::string subject; ///< the id that the warning printed
  Words reason;
  base::SourceSpan span;
};

} // namespace strakebook::survey
