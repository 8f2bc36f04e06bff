#pragma once

#include <filesystem>
#include <optional>

#include "strakebook/issuing.h"
#include "strakebook/report/kept.h"

/// What goes into the folder of issues at once.
namespace strakebook {

/// A line of the register and the files that it tells of.
struct Outgoing {
  issue::Entry entry;
  base::FileSet files;
  base::SourceSpan span; ///< where the survey says which issue it is
};

/// The document with its signature, if there is a signer, and its inputs beside it if the house says so. nullopt: it cannot be signed.
std::optional<Outgoing> outgoing(const Case &the_case, int addendum, const MadeReport &made, const base::FileSet &inputs,
                                 const issue::Signer *signer, base::Diagnostics &sink);

/// Adds what an issue that replaces one brings with it: a notice to each who had that one, and a stamped copy of it. The case is opened
/// from what is kept with the new issue.
bool add_recall(Outgoing &to, const std::filesystem::path &survey_folder, const Case &issued, const Resources &resources, base::Diagnostics &sink);

/// Puts it into the folder beside the survey, if its number is the next, or says that it is there. `past` are the issues that its pages
/// tell of: another one meanwhile makes them untrue.
std::optional<Delivered> deliver(const std::filesystem::path &survey_folder, const Outgoing &out, const std::vector<amend::PastIssue> &past,
                                 base::Diagnostics &sink);

} // namespace strakebook
