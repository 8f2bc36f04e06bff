#pragma once

#include "helpers.h"
#include "support/survey_builder.h"

/// The small survey as an issue that replaces another, and with an addendum: made by hand.
namespace strakebook::sample {

inline const std::string old_digest(64, 'a');

inline base::Located<base::Date> on(int year, int month, int day) { return {{year, month, day}, {}}; }

/// One reading corrected, one decision changed, one text.
inline amend::Amended corrected() {
  using amend::How;
  using amend::Kind;
  amend::Amended out;
  out.replaces = {.issue = 1, .date = base::Date{2026, 10, 16}, .digest = old_digest, .recipients = {{.who = words("the buyer"), .how = words("by letter")}}};
  out.changes.all = {
      {.kind = Kind::decision, .how = How::changed, .subject = "decision W",
       .differences = {{"action", "continue", "weld build-up"}, {"why", "The strake is sound.", "P1 is active."}}, .why = words("PW 3 was read again.")},
      {.kind = Kind::reading, .how = How::changed, .subject = "PW 3", .differences = {{"reading", "6.4", "4.6"}},
       .remaining_before = length("6.4"), .remaining_after = length("4.6"), .why = words("Digits exchanged in typing.")},
      {.kind = Kind::text, .how = How::changed, .subject = "vessel", .differences = {{"built", "1989", "1998"}}, .why = words("The owner's letter.")}};
  out.changes.stands = {{.zone = "B", .why = words("It rested on BC 4.")}};
  return out;
}

inline survey::Amendment amendment() {
  survey::Amendment out{.cause = words("Figures were typed from the notebook."), .found_by = words("the underwriter"), .found_on = on(2026, 10, 18),
                        .checked = words("Every reading was compared with the gauge's file.")};
  out.told = {{.who = words("the buyer"), .how = words("letter and telephone"), .on = on(2026, 10, 19), .acknowledged = on(2026, 10, 20)},
              {.who = words("the yard"), .how = words("letter"), .on = on(2026, 10, 19)}};
  return out;
}

inline survey::Addendum first_addendum() {
  survey::ClosedItem closed{.item = "1", .outcome = survey::Closing::closed, .on = on(2026, 11, 26), .evidence = words("The pit is filled and ground flush.")};
  closed.readings = {{.at = {.row = "PW", .station = station("3.4")}, .reading = mm("5.9"), .note = words("over the filled pit")}};
  return {.id = "1", .inspected = on(2026, 11, 28), .issued = on(2026, 11, 30), .by = words("the surveyor"), .how = words("on keel blocks, from outside"),
          .gauge = "ut", .block = words("5.00 shown on the block of 5.00"), .closes = {closed}};
}

} // namespace strakebook::sample
