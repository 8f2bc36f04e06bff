#pragma once

#include "strakebook/compose/compose.h"

namespace strakebook::compose {

/// A short report after repair, to the issue that the survey makes: who looked and when, what became of each item with the new readings
/// against the limit of their zone, what stays open, cautions, signature.
content::Document addendum(const Source &source, const survey::Addendum &addendum);

} // namespace strakebook::compose
