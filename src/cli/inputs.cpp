#include "cli/inputs.h"

#include "strakebook/issuing.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

namespace {

bool refuse(std::string message, std::string expected, base::Diagnostics &sink) {
  sink.add({.code = base::Code::output_failed, .message = std::move(message), .expected = std::move(expected), .write = "-o with another file or folder"});
  return true;
}

} // namespace

bool is_input(const Case &the_case, const fs::path &survey, const fs::path &output, base::Diagnostics &sink) {
  const fs::path folder = survey.parent_path();
  for (const auto &input : the_case.inputs) {
    const fs::path file = input.kind == "survey" ? survey : input.kind == "layout" ? fs::path(input.path) : folder / input.path;
    std::error_code unknown;
    if (!fs::equivalent(file, output, unknown)) continue;
    return refuse("the output " + output.string() + " is one of the report's own inputs", "a file that the survey does not read", sink);
  }
  if (!is_issued(survey, output)) return false;
  return refuse("the output " + output.string() + " would lie among what was issued, which is never changed", "a file outside the folder of issues", sink);
}

} // namespace strakebook::cli
