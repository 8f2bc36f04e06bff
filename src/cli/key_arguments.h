#pragma once

#include "cli/arguments.h"

namespace CLI {
class App;
}

namespace strakebook::cli {

/// --key, --certificate and --passphrase-file of a command that signs.
void add_key(CLI::App &command, Arguments &to);

} // namespace strakebook::cli
