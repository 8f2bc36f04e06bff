#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "strakebook/report.h"

/// Inputs in the one form that means the same and holds nothing more. The canonical form of a canonical file is itself.
namespace strakebook::canonical {

/// YAML without remarks, in one style. The text has been read before.
std::string yaml(const std::string &text);

/// A survey file the same way, without its private notes and with no other addenda and photographs than `told` has.
std::string survey_yaml(const std::string &text, const survey::Survey &told);

/// Lines of readings without remarks, each with the same line end.
std::string csv(std::string_view text);

/// What a case was made from, each layout with the digest of its canonical form: equal where it means the same.
std::vector<base::InputFile> inputs(const Case &the_case);

} // namespace strakebook::canonical
