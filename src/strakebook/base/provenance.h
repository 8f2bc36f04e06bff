#pragma once

#include <string>

namespace strakebook::base {

/// Where a value comes from: the surveyor measured it, somebody told it, or a document says so.
enum class Origin { measured, told, document };

struct Provenance {
  Origin origin = Origin::told;
  std::string by; ///< "owner", "builder's drawing 14"; never empty for told and document
};

} // namespace strakebook::base
