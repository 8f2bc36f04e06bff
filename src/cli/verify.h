#pragma once

#include "cli/arguments.h"

namespace CLI {
class App;
}

namespace strakebook::cli {

void add_verify(CLI::App &app, Arguments &to);

/// Prints what a PDF is and what each layer of verification answers; Exit::verification where one is broken.
Exit verify(const Arguments &arguments);

} // namespace strakebook::cli
