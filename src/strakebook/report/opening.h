#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/report.h"

/// How a survey is opened where more is known than its own files say.
namespace strakebook {

/// What a photograph was before it passed the gate.
struct Original {
  std::string digest; ///< SHA-256
  std::size_t bytes = 0;
  media::Extent extent; ///< pixels, upright
};

/// What went out before.
struct History {
  std::vector<amend::PastIssue> issues; ///< of this report, the first first
  std::shared_ptr<const Case> before;   ///< the issue that this one replaces, the last of `issues`; null: none, or it cannot be read
};

struct Opening {
  /// By path; where this is given, every photograph has passed the gate already and is taken as it is.
  std::optional<std::map<std::string, Original>> originals = {};
  /// Asked once the survey is read; empty: nothing went out.
  std::function<History(const survey::Survey &, base::Diagnostics &)> history = {};
};

/// open_case() with what more is known.
std::optional<Case> opened(const base::FileInFolder &survey, const Resources &resources, const Opening &opening, base::Diagnostics &sink);

/// What differs between two cases, compared as they would be kept: remarks of a file and the order in which lines end are no change.
amend::Changes changes_between(const Case &before, const Case &after);

} // namespace strakebook
