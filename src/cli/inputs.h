#pragma once

#include <filesystem>

#include "strakebook/report.h"

namespace strakebook::cli {

/// Whether writing `output` would replace something that the report is made from, or change what was issued; then an error says so.
bool is_input(const Case &the_case, const std::filesystem::path &survey, const std::filesystem::path &output, base::Diagnostics &sink);

} // namespace strakebook::cli
