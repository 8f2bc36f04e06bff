#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace strakebook::base {

/// A path inside a folder without detours, as Folder::seen() has it: "a/../b/./c" is "b/c".
inline std::string tidy_path(std::string_view relative) { return std::filesystem::path(relative).lexically_normal().generic_string(); }

} // namespace strakebook::base
