#pragma once

#include <optional>
#include <string>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/folder.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// The format version this program reads and writes ("strakebook: 1").
inline constexpr int format_version = 1;

/// Name of the layout that a survey asks for, read first because the rest is read against it. nullopt: not
/// readable; what is wrong is in `sink`.
std::optional<base::Located<std::string>> house_named(const base::FileInFolder &file, base::Diagnostics &sink);

/// Reads survey.yaml and the readings files it names, strictly. Every error found is added to `sink`; the
/// returned survey is complete only when sink.ok(). The policy gives the words that are data: actions, bases,
/// tolerances, criteria.
Survey read_survey(const base::FileInFolder &file, const policy::Policy &policy, base::Diagnostics &sink);

/// Checks of the whole file that need no assessment: references lead somewhere, marks are planned once, pits
/// close, doublers do not overlie doublers, warnings of figures that may have been copied wrongly.
void check_survey(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);

/// The field table as a JSON Schema (2020-12) and as a commented empty survey to fill in.
std::string schema_json();
std::string skeleton_yaml();

} // namespace strakebook::survey
