#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>

#include "strakebook/base/diagnostic.h"

namespace strakebook::typeset {

/// The digests that the SHA256SUMS of a folder records, by file name. nullopt, with the reason in `sink`, where
/// the list cannot be read.
std::optional<std::map<std::string, std::string>> recorded_digests(const std::filesystem::path &folder,
                                                                   base::Diagnostics &sink);

/// The bytes of a bundled file if they are the ones that were recorded; otherwise nullopt and one diagnostic of
/// this code at most beside what reading the file says.
std::optional<std::string> recorded_file(const std::filesystem::path &path,
                                         const std::map<std::string, std::string> &digests, base::Code code,
                                         base::Diagnostics &sink);

} // namespace strakebook::typeset
