#pragma once

#include <vector>

#include "strakebook/steel/amend/amend.h"

/// Whatever the survey file says by a key, compared key by key.
namespace strakebook::amend {

/// Every thing but marks: what the file says, photographs and layouts by the digests of their files, earlier surveys with their readings.
/// In the order of `after`, then what is gone. Without reasons.
std::vector<Change> changed_things(const Edition &before, const Edition &after);

} // namespace strakebook::amend
