#include "cli/inputs.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

bool is_input(const Case &the_case, const fs::path &survey, const fs::path &output, base::Diagnostics &sink) {
  const fs::path folder = survey.parent_path();
  for (const auto &input : the_case.inputs) {
    const fs::path file = input.kind == "survey" ? survey : input.kind == "layout" ? fs::path(input.path) : folder / input.path;
    std::error_code unknown;
    if (!fs::equivalent(file, output, unknown)) continue;
    sink.add({.code = base::Code::output_failed,
              .message = "the output " + output.string() + " is one of the report's own inputs",
              .expected = "a file that the survey does not read",
              .write = "-o with another file or folder"});
    return true;
  }
  return false;
}

} // namespace strakebook::cli
