#pragma once

#include "cli/picture_folder.h"
#include "cli/session.h"

namespace strakebook::cli {

/// The pictures that the arguments ask for, with their file names. A page or figure that the report does not have is added
/// to `sink`, with those that it has, and nothing is returned.
std::vector<NamedPicture> pictures(const Opened &opened, const Arguments &arguments, base::Diagnostics &sink);

/// How a drawing of the pictures went.
struct Drawing {
  Exit exit = Exit::written; ///< usage: a page or figure was asked for that is not there
  PictureFolder::Kept kept;
};

/// Opens the survey, draws the pictures that the arguments ask for and brings the folder in step. What is wrong is added to
/// `sink`; where that is anything but a failure to write, the folder stays as it was.
Drawing draw_into(PictureFolder &folder, const Arguments &arguments, base::Diagnostics &sink);

} // namespace strakebook::cli
