#pragma once

#include <functional>
#include <map>
#include <string>

#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// What is said instead of the labels inside a drawing, by the id of its items.
using Spoken = std::map<std::string, std::string, std::less<>>;

/// The words of a page in reading order, as one line of plain text. A drawing that has words of its own is said once, by
/// those; the words of its caption stay.
std::string reading_text(const page::Page &page, const Spoken &spoken);

} // namespace strakebook::output
