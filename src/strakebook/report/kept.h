#pragma once

#include <optional>

#include "strakebook/issue/kept.h"
#include "strakebook/report.h"

/// What an issued report was made from, put away so that it can be made again.
namespace strakebook {

/// The program, with the digest of its sources, and the libraries that a PDF's bytes depend on.
issue::Makers makers();

/// The inputs of a case in their canonical form: "survey.yaml" without remarks and private notes, readings without remarks, layouts
/// ("layouts/" the survey's own, "installed/" the program's), photographs as they passed the gate with "photographs.csv" of what they were
/// before, "past.csv" of the issues that went out, and under "before/" the same of the issue that this one replaces.
base::FileSet kept_inputs(const Case &the_case);

/// The case that kept inputs make: read, checked, assessed and reviewed as any other. `digest` is the short one that each page carries.
std::optional<Case> open_kept(const base::FileSet &files, const std::string &digest, base::Diagnostics &sink);

/// The unsigned PDF of kept inputs, with them attached if the house says so. nullopt: what is wrong is in `sink`.
struct MadeReport {
  std::string pdf;
  std::string manifest; ///< its text
};
std::optional<MadeReport> make_report(const base::FileSet &files, const Resources &resources, base::Diagnostics &sink);

/// The kept inputs of an issued PDF: attached, or in the folder "inputs" beside it.
std::optional<base::FileSet> inputs_of_document(const std::filesystem::path &pdf, base::Diagnostics &sink);

} // namespace strakebook
