#pragma once

#include "strakebook/compose/voice.h"

/// Head, foot and the words that typesetting prints.
namespace strakebook::compose {

/// The head names vessel, report, issue and state, what this one supersedes, and that this copy is not issued where it is not; the foot
/// of an issued copy has its date and the digest of its inputs. A draft has DRAFT in place of the issue and state, and its foot says
/// what is outstanding.
content::Furniture furniture(const Scope &scope);
content::Labels labels(const Scope &scope);

/// What a draft still lacks, from the findings of the review, each kind once, in report order: "conflicts to
/// answer".
std::vector<std::string> outstanding(const Scope &scope);

} // namespace strakebook::compose
