#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/amend/amend.h"

/// Marks compared as they were read, however their file is laid out.
namespace strakebook::amend {

/// In the order of `after`, then those that are gone. Without reasons. Two marks are the same where their names are, else where they lie
/// at the same distance on the same row. A mark that lost its reading is withdrawn, one that gained one is added, though its place stays
/// planned. That a mark lies on a doubler is no change of its own where the doublers that are listed say so.
std::vector<Change> changed_marks(const Edition &before, const Edition &after);

/// Repeats with blanks between them, each with its unit where that is not mm: "5.8 5.8 5.9", "0.187 in".
std::string reading_text(const survey::Mark &mark);
/// The same as a cell of a grid says it, with its status: "5.0 6.4 rejected", "no-echo".
std::string cell_text(const survey::Mark &mark);

} // namespace strakebook::amend
