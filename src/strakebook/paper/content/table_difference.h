#pragma once

#include "strakebook/paper/content/table.h"

namespace strakebook::content {

/// See mark_changes().
void mark_table(Table &now, const Table &before);

} // namespace strakebook::content
