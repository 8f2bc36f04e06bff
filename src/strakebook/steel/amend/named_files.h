#pragma once

#include "strakebook/steel/amend/amend.h"
#include "strakebook/steel/survey/written.h"

/// What lies in files that the survey only names.
namespace strakebook::amend {

/// Adds what the files say to the thing that names them: to a photograph the digest of its file as it was before anything was done to
/// it, to an earlier survey its readings, to the house the digest of each of its layout files.
void add_from_files(survey::WrittenThing &thing, const Edition &edition);

} // namespace strakebook::amend
