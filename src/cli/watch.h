#pragma once

#include "cli/arguments.h"
#include "cli/picture_folder.h"

namespace strakebook::cli {

/// Draws the pictures, then again each time a file in the survey's folder or the layouts' is saved with other content, until
/// SIGINT or SIGTERM; then returns Exit::written. It polls, four times a second, and waits until a change has settled, so
/// that editors that replace a file are seen like those that rewrite it. What is wrong goes to standard error; while it
/// lasts the last good pictures stay.
Exit watch(PictureFolder &folder, const Arguments &arguments);

} // namespace strakebook::cli
