#pragma once

#include <filesystem>

#include "strakebook/report.h"

namespace strakebook {

/// Passes every photograph that the survey names through the media gate and records all inputs of the case. A file that is
/// not there adds photo_missing (the report shows its placeholder); one that does not decode cleanly is an error.
void admit_photographs(Case &the_case, const base::Folder &folder, base::Diagnostics &sink);

} // namespace strakebook
