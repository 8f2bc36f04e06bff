#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/amend/amend.h"

/// The surveyor's reasons, put to what they name.
namespace strakebook::amend {

/// Does a reason that names `what` name this? Blanks between words are as one; a decision that stands is "W", "zone W" or "decision W".
bool names(const survey::Words &what, const Change &change);
bool names(const survey::Words &what, const Stands &stands);

/// Gives each change and each decision that stands the first reason that names it.
void give_reasons(Changes &changes, const survey::Amendment &amendment);

} // namespace strakebook::amend
