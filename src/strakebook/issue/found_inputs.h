#pragma once

#include <optional>
#include <string>

#include "strakebook/issue/verify.h"
#include "strakebook/paper/file/contents.h"

namespace strakebook::issue {

/// The inputs of a PDF held against their list: what is attached to it, and of a folder beside it what is listed and not attached.
struct FoundInputs {
  std::string list;                 ///< the list's text; empty: there is none
  std::optional<Manifest> manifest; ///< nullopt: there is no list, or it cannot be read
  base::FileSet files;              ///< those that are as listed
  bool any = false;                 ///< is there any file but the list?
  bool attached = false;            ///< is any of them attached?
  std::string fault;                ///< the first one: damaged, altered, missing, or not listed. Empty: all are as listed

  bool whole() const { return manifest && any && fault.empty(); }
};

FoundInputs found_inputs(const std::optional<file::Contents> &contents, const std::optional<base::Folder> &beside);

} // namespace strakebook::issue
