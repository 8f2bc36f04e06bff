#pragma once

#include "strakebook/compose/compose.h"

namespace strakebook::compose {

/// How much of the list of changes a notice carries; whatever is left out is counted, and the report that it goes with has it.
enum class NoticeDetail { every_change, decisions_and_readings, decisions, counts };

/// The notice to one who had the issue that this one replaces: which and why, whether a decision changed and from what to what, what to
/// do with the old copy, who was told, how a copy is checked. Needs `amended`.
content::Document notice(const Source &source, const survey::Recipient &recipient, NoticeDetail detail);

} // namespace strakebook::compose
