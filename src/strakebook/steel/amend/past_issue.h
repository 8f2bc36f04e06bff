#pragma once

#include <string>
#include <vector>

#include "strakebook/base/date.h"
#include "strakebook/steel/amend/amend.h"

namespace strakebook::amend {

/// An issue of this report that went out, as the register has it.
struct PastIssue {
  int issue = 0;
  std::optional<base::Date> date;
  std::string digest; ///< SHA-256 of the PDF as it was delivered
  std::vector<survey::Recipient> recipients;
};

/// The issue that this one replaces, and what changed since.
struct Amended {
  PastIssue replaces;
  Changes changes;
};

} // namespace strakebook::amend
