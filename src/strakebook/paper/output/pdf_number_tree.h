#pragma once

#include <string>
#include <utility>
#include <vector>

#include "strakebook/paper/output/pdf_objects.h"

namespace strakebook::output {

/// The values of 0, 1, 2 and so on (ISO 32000-1, 7.9.7), given in PDF syntax; split into leaves.
PdfDict number_tree(PdfFile &file, const std::vector<std::string> &values);

/// Names of ASCII letters, digits and hyphens, in order, with their values in PDF syntax (7.9.6); split into leaves.
PdfDict name_tree(PdfFile &file, const std::vector<std::pair<std::string, std::string>> &named);

} // namespace strakebook::output
