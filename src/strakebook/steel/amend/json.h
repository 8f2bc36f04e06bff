#pragma once

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/amend/amend.h"

namespace strakebook::amend {

/// changes, moved, stands and decision_changed; lengths as decimal strings in mm, null where there is none, as for a reason that nobody
/// wrote.
nlohmann::ordered_json json(const Changes &changes);

} // namespace strakebook::amend
