#pragma once

#include "strakebook/base/diagnostic.h"

namespace strakebook::typeset {

/// Adds what `from` found to `to`, each thing at one place once: blocks may be set twice (tried here, then on
/// the next page), and the running head is set on every page.
void add_once_each(const base::Diagnostics &from, base::Diagnostics &to);

} // namespace strakebook::typeset
