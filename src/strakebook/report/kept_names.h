#pragma once

#include <string>
#include <string_view>

#include "strakebook/base/folder.h"

/// The names that kept inputs give to what is not the survey's own.
namespace strakebook::kept {

inline constexpr std::string_view survey = "survey.yaml", photographs = "photographs.yaml", past = "past.yaml";
inline constexpr std::string_view own_layouts = "layouts/", installed_layouts = "installed/", before = "before/";
inline constexpr std::string_view beside = "inputs"; ///< the folder beside a PDF

/// The files in a folder of them, by their paths in it.
base::FileSet in_folder(const base::FileSet &files, std::string_view folder);

} // namespace strakebook::kept
