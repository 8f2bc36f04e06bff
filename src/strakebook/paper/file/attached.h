#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/folder.h"

/// PDF files as bytes that are there already: what is attached to them, a stamp laid over them, a signature added. Only this room knows
/// libqpdf.
namespace strakebook::file {

/// Everything attached to a PDF, by name. nullopt: it is no PDF, or it is damaged so that this cannot be said.
std::optional<base::FileSet> attached_files(std::string_view pdf);

} // namespace strakebook::file
