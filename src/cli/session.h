#pragma once

#include <optional>
#include <string>

#include "cli/arguments.h"
#include "strakebook/report.h"

namespace strakebook::cli {

/// A survey opened, and its pages where nothing is wrong.
struct Opened {
  std::optional<Case> the_case;
  std::optional<Proof> proof;
};
Opened open_and_set(const Arguments &arguments, base::Diagnostics &sink);

/// The layouts and fonts that the arguments name, or the installed ones.
Resources resources_of(const Arguments &arguments);

/// What is wrong, in the form asked for ("text" or "json"); empty text when nothing was found.
std::string shown(const base::Diagnostics &sink, const std::string &format);

/// The exit code that the diagnostics ask for.
Exit exit_for(const base::Diagnostics &sink);

/// Prints what is wrong to standard error and returns the exit code.
Exit finish(const base::Diagnostics &sink, const std::string &format);

} // namespace strakebook::cli
