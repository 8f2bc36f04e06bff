#pragma once

#include "strakebook/steel/amend/amend.h"

namespace strakebook::amend {

/// Whether what is to be done is not what it was: a decision's action or criterion, a recommendation's action, class or day, what became
/// of a carried one, the advice on refloating or the day of the next survey. A decision told in other words is the same decision.
bool decides(const Change &change);

} // namespace strakebook::amend
