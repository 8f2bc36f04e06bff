#pragma once

#include "strakebook/compose/compose.h"
#include "strakebook/report.h"

/// Bars beside what changed since the issue that is replaced.
namespace strakebook {

/// Marks in `now`, which `source` was composed to, what the issue before does not say in the same words. That issue is composed once
/// more as if it had this one's number, date, state, recipients and record, so that nothing is marked which only tells one issue from
/// another. Nothing is marked where no issue is replaced.
void mark_what_changed(content::Document &now, const compose::Source &source, const Case &the_case);

} // namespace strakebook
