#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/survey/words.h"

/// What is written of a report when it goes out, and after.
namespace strakebook::survey {

/// Who is sent the report.
struct Recipient {
  Words who; ///< a role: "the buyer's underwriter"
  Words how; ///< "by letter"
  base::SourceSpan span;
};

/// Why one thing, or several, differ from the issue before. `what` names them as the list of changes does: "SW 7", "P3", "decision W",
/// "item 1".
struct ChangeReason {
  std::vector<Words> what;
  Words why;
  base::SourceSpan span;
};

/// Who was told that an earlier issue is replaced.
struct Told {
  Words who, how;
  Given<base::Date> on, acknowledged;
  base::SourceSpan span;
};

/// What a corrected issue says of itself. The list of what changed is the program's own; the reasons are the surveyor's.
struct Amendment {
  Words cause;    ///< what went wrong
  Words found_by; ///< who noticed
  Given<base::Date> found_on;
  Words checked; ///< what else was checked for the same fault
  std::vector<ChangeReason> changes;
  std::vector<ChangeReason> stands; ///< decisions that did not change though what they rest on did
  std::vector<Told> told;
  base::SourceSpan span;
};

enum class Closing { closed, partly, open };

/// A reading after repair.
struct NewReading {
  Place at;
  base::Measured reading; ///< as displayed
  Words note;
  base::SourceSpan span;
};

/// What became of one recommendation.
struct ClosedItem {
  std::string item; ///< id of the recommendation
  Closing outcome = Closing::open;
  Given<base::Date> on; ///< the day the work was done
  Words evidence;       ///< what was seen, measured or handed over
  std::vector<NewReading> readings;
  std::vector<std::string> photos;
  Words left; ///< of one that is not wholly closed: what is still to be done
  base::SourceSpan span;
};

/// A short report after repair, to an issue that stands.
struct Addendum {
  std::string id; ///< "1"
  Given<base::Date> inspected, issued;
  Words by;    ///< who looked
  Words how;   ///< how she lay, how the work was seen
  std::string gauge;
  Words block; ///< its check on the block that day
  std::vector<ClosedItem> closes;
  Words remarks;
  base::SourceSpan span;
};

enum class Became { open, closed, overtaken, not_seen };

/// A recommendation of an earlier report that was open when this survey began.
struct CarriedItem {
  std::string id; ///< "1": of this list
  Words from;     ///< report and issue that it stands in
  Words item;     ///< its id there
  Words title;
  std::string klass; ///< A, B, C
  Words deadline;
  Given<base::Date> by;
  std::optional<Became> now; ///< what this survey found of it
  Words found;               ///< in words
  std::vector<std::string> evidence;
  base::SourceSpan span;
};

} // namespace strakebook::survey
