#pragma once

#include "strakebook/report/opening.h"

namespace strakebook {

/// Passes every photograph that the survey names through the media gate and records all inputs of the case. A file that is
/// not there adds photo_missing (the report shows its placeholder); one that does not decode cleanly is an error. Where the originals are known, each must
/// be among them, and is taken with all its pixels.
void admit_photographs(Case &the_case, const base::Folder &folder, const Opening &opening, base::Diagnostics &sink);

} // namespace strakebook
