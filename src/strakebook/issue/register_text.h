#pragma once

#include <string>

#include "strakebook/issue/register.h"

/// The one spelling of a register: an entry is read well only if it is written the same again.
namespace strakebook::issue {

inline constexpr std::string_view register_head =
    "# Register of issued reports, format 1. It is only ever added to.\n"
    "# Each entry ends with a chain: the SHA-256 of the lines from the chain before it (or from the first line here) to the line above.\n";

/// The lines of an entry, a blank one first, without its chain.
std::string lines_of(const Entry &entry);

/// A line "chain: ..." over the text since the chain before, that line with it.
std::string chain_line(std::string_view covered);

/// One line of text: a backslash, a line end and other control characters are spelled out. And back; nullopt: no such spelling.
std::string spelled(std::string_view text);
std::optional<std::string> unspelled(std::string_view line);

} // namespace strakebook::issue
