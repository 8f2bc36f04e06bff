#pragma once

#include "cli/arguments.h"

namespace strakebook::cli {

/// Issues the report of a survey, or an addendum to it; prints what lies in the folder of issues now.
Exit issue(const Arguments &arguments);

} // namespace strakebook::cli
