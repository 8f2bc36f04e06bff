#pragma once

#include <filesystem>

#include "strakebook/issue/register.h"
#include "strakebook/report/opening.h"

namespace strakebook {

/// What the register beside a survey has of its report before its issue. A register that cannot be read, and an issue before that is not
/// there as it was delivered, are told as warnings: proofs can be made, and `issue` refuses.
History history_beside(const std::filesystem::path &survey_folder, const survey::Survey &survey, base::Diagnostics &sink);

/// An entry as later documents tell of it.
amend::PastIssue past_issue(const issue::Entry &entry);

/// The document of an entry, as it was delivered. nullopt: it is not there, or its bytes are others; said in `sink`.
std::optional<std::string> document_of(const std::filesystem::path &survey_folder, const issue::Entry &entry, base::Diagnostics &sink);

} // namespace strakebook
