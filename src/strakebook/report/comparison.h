#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/report.h"

/// How a comparison names what it compares, and its form in the assessment.
namespace strakebook {

/// "RD 2644 issue 2".
std::string issue_name(const survey::Report &report);
std::string issue_name(const survey::Report &report, int issue);

/// What differs between the issue that a case replaces and the case, in the shape of comparison_json. The case has `amended`.
nlohmann::ordered_json amended_json(const Case &the_case);

} // namespace strakebook
