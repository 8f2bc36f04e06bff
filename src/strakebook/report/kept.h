#pragma once

#include <optional>

#include "strakebook/issue/kept.h"
#include "strakebook/report.h"

/// What an issued report was made from, put away so that it can be made again.
namespace strakebook {

/// The program, with the digest of its sources, and the libraries that a PDF's bytes depend on.
issue::Makers makers();

/// Whether the inputs of a case can be kept: adds issuing_failed for each file that the survey names as kept inputs name their own.
bool can_be_kept(const Case &the_case, base::Diagnostics &sink);

/// The inputs of a case in their canonical form: "survey.yaml" without remarks and private notes, readings without remarks, layouts
/// ("layouts/" the survey's own, "installed/" the program's), photographs as they passed the gate with "photographs.yaml" of what they
/// were before, "past.yaml" of the issues that went out, and under "before/" the same of the issue that this one replaces. The kept inputs
/// of a case that was opened from kept inputs are those again. Of its addenda it has those of the report's own day or before, and those up
/// to `addendum`. Throws std::logic_error where can_be_kept() does not hold.
base::FileSet kept_inputs(const Case &the_case, std::string_view addendum = {});

/// The case that kept inputs make: read, checked, assessed and reviewed as any other. `digest` is the short one that each page carries;
/// empty: a proof that is not issued.
std::optional<Case> open_kept(const base::FileSet &files, const std::string &digest, base::Diagnostics &sink);

/// A document that is made from kept inputs.
struct MadeReport {
  std::string pdf;      ///< not signed
  std::string manifest; ///< its text
};

/// The report of kept inputs, with them attached if the house says so, and the manifest always. nullopt: what is wrong is in `sink`, which
/// else is told only what comes up in setting the pages.
std::optional<MadeReport> make_report(const base::FileSet &files, const Resources &resources, base::Diagnostics &sink);
/// The same of an addendum to it.
std::optional<MadeReport> make_addendum(const base::FileSet &files, const std::string &addendum, const Resources &resources,
                                        base::Diagnostics &sink);

/// The most that is read of a PDF.
inline constexpr std::size_t most_document_bytes = 1u << 30;

/// The kept inputs of an issued PDF: attached, or in the folder "inputs" beside it. nullopt, with not_a_report in `sink`: it has none, or
/// not all of them.
std::optional<base::FileSet> inputs_of_document(const std::filesystem::path &pdf, base::Diagnostics &sink);

} // namespace strakebook
