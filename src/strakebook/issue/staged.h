#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/folder.h"

/// A folder of an issue on its way: whole under a name of its own before the register is written, renamed after.
namespace strakebook::issue {

inline constexpr std::string_view begun_begins = ".begun-";

/// What went wrong at a path, with the system's reason for the last call, as issuing_failed.
void cannot(const std::filesystem::path &at, std::string_view what, base::Diagnostics &sink);

/// The files in "issued/.begun-NAME", on the disk. On failure nothing of it is left where that can be helped, and false is returned.
bool stage(const std::filesystem::path &issued, const std::string &name, const base::FileSet &files, base::Diagnostics &sink);

/// The begun folder takes its name, on the disk.
bool finish(const std::filesystem::path &issued, const std::string &name, base::Diagnostics &sink);

/// What ended processes left: a begun folder whose name is among `registered` is finished, every other one removed, and so are the
/// register's temporary files.
bool clear_up(const std::filesystem::path &issued, const std::vector<std::string> &registered, base::Diagnostics &sink);

} // namespace strakebook::issue
