#pragma once

#include <optional>
#include <string>

#include "cli/arguments.h"
#include "strakebook/issuing.h"

namespace strakebook::cli {

/// The passphrase of the key that the arguments name: from the file they name, "-" for standard input, else asked for on the
/// terminal without being shown; empty for a key that has none. Never an argument or a variable of the environment, which others can
/// read. nullopt, with what is wrong in `sink`: it cannot be had. Whoever takes it wipes it.
std::optional<std::string> passphrase(const Arguments &arguments, base::Diagnostics &sink);

/// The signer that the arguments name. nullopt: none is named, or it cannot be had and `sink` says why.
std::optional<issue::Signer> signer_of(const Arguments &arguments, base::Diagnostics &sink);

} // namespace strakebook::cli
