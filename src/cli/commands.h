#pragma once

#include "cli/arguments.h"

namespace strakebook::cli {

/// Carries out one command: what it prints goes to standard output, what is wrong to standard error (for `check`, to
/// standard output).
Exit run(const Arguments &arguments);

/// The whole program: reads the command line, runs, and turns an exception into exit 5 with one line on standard error.
int run_guarded(int argc, const char *const *argv);

} // namespace strakebook::cli
