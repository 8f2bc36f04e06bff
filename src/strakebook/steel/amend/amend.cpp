#include "strakebook/steel/amend/amend.h"

#include <algorithm>

namespace strakebook::amend {

bool Changes::decision_changed() const {
  return std::ranges::any_of(all, [](const Change &change) { return change.kind <= Kind::answer; });
}

} // namespace strakebook::amend
