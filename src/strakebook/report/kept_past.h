#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/folder.h"
#include "strakebook/report/opening.h"

/// What is kept beside a survey of things that are not in its files.
namespace strakebook::kept {

std::string text_of(const std::vector<amend::PastIssue> &issues);
/// Empty where the file is not there; what is not as text_of() writes it is added as not_a_report, and nullopt returned.
std::optional<std::vector<amend::PastIssue>> read_past(const base::FileSet &files, base::Diagnostics &sink);

std::string text_of(const std::map<std::string, Original> &originals);
std::optional<std::map<std::string, Original>> read_originals(const base::FileSet &files, base::Diagnostics &sink);

} // namespace strakebook::kept
