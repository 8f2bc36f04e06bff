#pragma once

#include <string_view>

#include "strakebook/issue/verify.h"

namespace strakebook::issue {

/// How a PDF agrees with a document of the register.
enum class Likeness {
  none,              ///< with none
  claimed,           ///< only by the list of inputs that it carries
  longer,            ///< it begins with those bytes
  without_signature, ///< it is those bytes before they were signed
  same
};

/// Which document of the register a PDF is.
struct Identity {
  What what = What::unknown;
  Likeness likeness = Likeness::none;
  const Entry *entry = nullptr;   ///< the issue or addendum; of a companion the one that it went out with
  const KeptFile *file = nullptr; ///< as registered
};

/// By its digest, else by how it begins, else by what it claims (`claimed`: the list of inputs that it carries, or null).
Identity identity_of(std::string_view pdf, const Register &register_, const Manifest *claimed);

} // namespace strakebook::issue
