#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/folder.h"
#include "strakebook/paper/file/signature.h"

namespace strakebook::file {

/// What a reader finds in a PDF.
struct Contents {
  base::FileSet attached;           ///< by name, everything attached, also what no viewer lists
  std::vector<std::string> damaged; ///< names of attached files that cannot be unpacked, or that come twice with other bytes
  std::vector<std::string> pages;   ///< the text of each page as UTF-8 without blanks; what it has no letter for is left out
};

/// Read in a process of its own, under limits of memory and time, since a file made to break a reader of PDFs must break nothing
/// else. nullopt: it is no PDF, or it is damaged so that this cannot be said.
std::optional<Contents> contents_of(std::string_view pdf);

/// revisions(), read in the same way; nullopt too where the work was lost.
std::optional<Revisions> revisions_apart(std::string_view pdf);

} // namespace strakebook::file
