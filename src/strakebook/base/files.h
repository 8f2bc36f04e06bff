#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/diagnostic.h"

namespace strakebook::base {

/// The most that read_source reads of a file.
inline constexpr std::size_t most_source_bytes = 64u << 20;

/// Reads a whole regular file. On failure adds file_unreadable (or file_too_large) at `from` and returns nullopt.
std::optional<std::string> read_file(const std::filesystem::path &path, std::size_t max_bytes, const SourceSpan &from,
                                     Diagnostics &sink);

/// The same, kept as a source for diagnostics; `shown` is the path as the user should see it.
SourcePtr read_source(const std::filesystem::path &path, const std::string &shown, const SourceSpan &from,
                      Diagnostics &sink);

/// Writes all bytes or nothing: temporary file in the same folder, fsync, checked close, rename, fsync of the folder.
/// On failure the target is as it was, the temporary file is gone, output_failed is added, and false is returned (the one
/// exception, said in the message: the folder's own fsync fails after the rename). An existing file keeps its permissions, a
/// new one gets 0644 less the umask. A link is followed. Only a regular file is ever replaced, never a folder or device.
bool write_atomically(const std::filesystem::path &target, std::string_view bytes, Diagnostics &sink);

/// folder / relative, or nullopt if `relative` is empty, absolute or leaves the folder, also through links (a link to
/// nothing counts as leaving). The file itself need not exist; the folder must.
std::optional<std::filesystem::path> inside(const std::filesystem::path &folder, std::string_view relative);

} // namespace strakebook::base
