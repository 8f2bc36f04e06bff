#pragma once

#include "strakebook/compose/compose.h"
#include "strakebook/report.h"

/// From a case to blocks, and from blocks to pages: what every document about a case has in common.
namespace strakebook {

/// What compose is given of a case; `told` is its survey, or what the document tells of it.
compose::Source source_of(const Case &the_case, const survey::Survey &told, const base::Diagnostics &findings);

/// The blocks in the house's style. What cannot be set is added to `sink`, at the survey's first line where no line of it says it: the
/// house's words.
std::optional<page::Document> set_blocks(const content::Document &blocks, const Case &the_case, const Resources &resources, base::Diagnostics &sink);

} // namespace strakebook
