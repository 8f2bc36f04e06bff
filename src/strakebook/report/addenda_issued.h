#pragma once

#include <filesystem>
#include <string>

#include "strakebook/issue/register.h"
#include "strakebook/report.h"

namespace strakebook {

/// What went out in an addendum is never changed: each that the register has stands in the survey as it was issued, and each that the
/// document to be issued tells of went out. `addendum`: the one to be issued, which has the next number and a day not before that of its
/// issue; 0: the report. What is wrong is told in `sink`.
bool addenda_stand(const Case &the_case, int addendum, const std::filesystem::path &survey_folder, const issue::Register &all, base::Diagnostics &sink);

} // namespace strakebook
