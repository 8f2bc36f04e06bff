#pragma once

#include <string>

#include "strakebook/paper/content/inlines.h"
#include "strakebook/paper/typeset/context.h"

namespace strakebook::typeset {

/// What a reference prints, from where its target landed in the previous round. A target that landed nowhere,
/// or has no label where one is asked, is reported (not in the first round, when nothing has landed).
std::string reference_text(const content::Reference &reference, const Context &context);

} // namespace strakebook::typeset
