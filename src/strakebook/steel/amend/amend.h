#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/input_file.h"
#include "strakebook/steel/outlook/outlook.h"

/// Two states of one survey compared by meaning: what was measured, judged, decided and said, not how the file is laid out. What is
/// found is the whole difference: with no change listed, both surveys print the same report but for its own numbers and dates.
namespace strakebook::amend {

/// One state of a survey, and what was worked out from it.
struct Edition {
  const survey::Survey &survey;
  const assess::Assessment &assessment;
  const outlook::Outlook &outlook;
  const policy::Policy &policy;
  const std::vector<base::InputFile> &inputs;
};

/// In the order in which changes are listed: decisions first.
enum class Kind { decision, recommendation, answer, steelwork, criterion, original, reading, pit, doubler, limitation, photograph, instrument, text, house };
enum class How { changed, added, withdrawn };

struct Difference {
  std::string field;         ///< the key of the survey file: "claim", "conflict because"; of a mark "reading", "status" and the like; of
                             ///< files "picture" and the path of a layout, with their digests
  std::string before, after; ///< as written; empty: not there
  bool operator==(const Difference &) const = default;
};

/// What differs of one thing.
struct Change {
  Kind kind{};
  How how{};
  std::string subject; ///< what a reason names: "SW 7", "P3", "decision W", "item 1", "vessel"
  std::vector<Difference> differences;
  std::optional<base::Length> remaining_before, remaining_after; ///< of a mark or pit that has one
  base::SourceSpan span;                                         ///< where it stands today, or where it would
  survey::Words why;                                             ///< the surveyor's reason; not given: none is written
};

/// A verdict that is not what it was. It follows from the changes and has no reason of its own.
struct Moved {
  std::string zone, criterion;
  std::string subject; ///< the mark or pit that decides it today
  assess::Verdict before{}, after{};
};

/// A decision that is the same though verdicts of its zone, or the rung of the ladder that they reach, moved.
struct Stands {
  std::string zone;
  survey::Words why; ///< the surveyor's reason; not given: none is written
};

struct Changes {
  std::vector<Change> all; ///< by kind, then in the order of the survey
  std::vector<Moved> moved;
  std::vector<Stands> stands;
  bool decision_changed() const; ///< a decision, a recommendation or the answer on page one
};

/// Everything that differs, with the reasons that `after` gives.
Changes compare(const Edition &before, const Edition &after);

} // namespace strakebook::amend
