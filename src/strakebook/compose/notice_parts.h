#pragma once

#include "strakebook/compose/notice.h"
#include "strakebook/compose/voice.h"

/// The parts of a notice, one file each.
namespace strakebook::compose {

/// "A decision changed." or not, and how many changes of each kind there are.
Sentence changes_counted(const Scope &scope);
/// What the issue before said beside what this one says, decisions first; no blocks where only counts are asked for.
std::vector<content::Block> changes_told(const Scope &scope, NoticeDetail detail);

} // namespace strakebook::compose
