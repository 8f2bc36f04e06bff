#pragma once

#include <optional>
#include <string>

#include "strakebook/report.h"

/// The short documents about a report: each a PDF in the house's style.
namespace strakebook {

/// The notice to one who had the issue that this one replaces: which, why, what changed, whether a decision changed, what to do with
/// the old copy.
std::optional<std::string> recall_notice(const Case &the_case, const survey::Recipient &recipient, const Resources &resources, base::Diagnostics &sink);

/// One page to be laid over each page of the issue that is replaced.
std::optional<std::string> superseded_stamp(const Case &the_case, const Resources &resources, base::Diagnostics &sink);

/// The pages of an addendum, with the files to be attached still left out.
std::optional<page::Document> addendum_pages(const Case &the_case, const std::string &addendum, const Resources &resources, base::Diagnostics &sink);

} // namespace strakebook
