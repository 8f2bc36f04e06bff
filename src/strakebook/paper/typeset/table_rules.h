#pragma once

#include <string>

#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// A horizontal rule over the whole width of a fragment, its middle at `y`: it takes no height. Tables have
/// no others.
void add_rule(Fragment &fragment, base::Pt y, base::Pt width, const std::string &tone,
              const Context &context);

} // namespace strakebook::typeset
