#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/issue/signer.h"
#include "strakebook/issue/verify.h"
#include "strakebook/report.h"

/// The facade, second part: a report's life after it leaves. Issue it, correct it, close its items, compare, verify.
namespace strakebook {

/// What lies in the folder of an issue now.
struct Delivered {
  std::filesystem::path document;
  std::vector<std::filesystem::path> beside; ///< notices, the stamped copy of the issue before, inputs kept beside
  bool again = false;                        ///< the same bytes were issued before: nothing was written
};

/// Issues the report of a survey that review passes as final, from its kept inputs. nullopt: refused, with the reasons in `sink`, and
/// nothing was changed.
std::optional<Delivered> issue_report(const std::filesystem::path &survey, const Resources &resources, const issue::Signer *signer,
                                      base::Diagnostics &sink);
/// Whether a path leads into the folder of what was issued beside a survey, where only issuing writes.
bool is_issued(const std::filesystem::path &survey, const std::filesystem::path &file);
/// Issues an addendum to the issue that stands.
std::optional<Delivered> issue_addendum(const std::filesystem::path &survey, const std::string &addendum, const Resources &resources,
                                        const issue::Signer *signer, base::Diagnostics &sink);

/// Two surveys, or issued PDFs with their inputs, compared: the earlier one first.
struct Comparison {
  std::string before, after; ///< what was compared: "RD 2644 issue 1"
  amend::Changes changes;
};
std::optional<Comparison> compare_reports(const std::filesystem::path &before, const std::filesystem::path &after,
                                          const Resources &resources, base::Diagnostics &sink);
std::string comparison_text(const Comparison &comparison);
std::string comparison_json(const Comparison &comparison);

struct VerifyOptions {
  std::filesystem::path register_file; ///< empty: looked for beside the PDF and one folder up
  std::filesystem::path inputs;        ///< folder of the kept inputs that are not attached; empty: "inputs" beside the PDF
  std::filesystem::path certificate;   ///< PEM; empty: none
};
/// nullopt: the file cannot be read.
std::optional<issue::Verification> verify_document(const std::filesystem::path &pdf, const VerifyOptions &options, const Resources &resources,
                                                   base::Diagnostics &sink);
std::string verification_text(const issue::Verification &found);
std::string verification_json(const issue::Verification &found);

/// The skeleton of the next survey of the same boat: her particulars, datum, zones and rows, and the items still open.
std::string next_skeleton(const Case &the_case);

} // namespace strakebook
