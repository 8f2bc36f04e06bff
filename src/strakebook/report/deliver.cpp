#include <algorithm>

#include <fmt/format.h>

#include "strakebook/issue/issued_folder.h"
#include "strakebook/report/outgoing.h"
#include "strakebook/report/past.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

Delivered delivered(const fs::path &survey_folder, const issue::Entry &entry, bool again) {
  const fs::path folder = survey_folder / issue::issued_name / entry.folder;
  Delivered out{.document = folder / entry.document.path, .beside = {}, .again = again};
  for (const issue::KeptFile &file : entry.beside)
    out.beside.push_back(folder / file.path);
  return out;
}

void refuse(const Outgoing &out, const std::string &message, const std::string &expected, const std::string &write, base::Diagnostics &sink) {
  sink.error(base::Code::already_issued, out.span, message, expected, write);
}

/// The same number is there: is it the same document?
bool is_same(const issue::Entry &there, const Outgoing &out, base::Diagnostics &sink) {
  const issue::Entry &here = out.entry;
  if (there.unsigned_document.digest != here.unsigned_document.digest) {
    refuse(out, fmt::format("{} was issued on {}, and what would be issued now has other bytes; what is issued is never changed", there.folder, base::iso(there.date)),
           "the survey and the layouts as they were, read by the same program", "the next issue: a number one higher, with an amendment that says what changed and why", sink);
    return false;
  }
  if (!here.signer.empty() && there.signer != here.signer) {
    refuse(out, fmt::format("{} was issued on {} {}; a signature cannot be added to what is issued", there.folder, base::iso(there.date),
                       there.signer.empty() ? "without a signature" : "with another certificate"),
           "no key, or the one that it was signed with", "the command without --key", sink);
    return false;
  }
  return true;
}

/// Is it the issue after the last, or an addendum to the last?
bool is_next(const issue::Register &all, const Outgoing &out, base::Diagnostics &sink) {
  const issue::Entry &entry = out.entry;
  const issue::Entry *last = all.last_issue(entry.report);
  const int before = last ? last->issue : 0;
  const int due = entry.addendum == 0 ? before + 1 : before;
  if (entry.issue == due && due > 0)
    return true;
  refuse(out, before == 0 ? fmt::format("the register has no issue of {}, and this would be issue {}", entry.report, entry.issue)
                     : fmt::format("the last issue of {} in the register is {}, and this would be {}issue {}", entry.report, before,
                                   entry.addendum == 0 ? "" : "an addendum to ", entry.issue),
         fmt::format("issue {}", std::max(due, 1)), fmt::format("issue: {}", std::max(due, 1)), sink);
  return false;
}

/// Pages that tell of other issues than the register has by now are not true.
bool tells_of_all(const issue::Register &all, const Outgoing &out, const std::vector<amend::PastIssue> &past, base::Diagnostics &sink) {
  const issue::Entry &entry = out.entry;
  const auto is_earlier = [&](const issue::Entry &e) { return e.report == entry.report && e.addendum == 0 && e.issue < entry.issue; };
  const auto told = [&](const issue::Entry &e) { return std::ranges::find(past, e.document.digest, &amend::PastIssue::digest) != past.end(); };
  const auto count = std::ranges::count_if(all.entries, is_earlier);
  if (static_cast<std::size_t>(count) == past.size() && std::ranges::all_of(all.entries, [&](const auto &e) { return !is_earlier(e) || told(e); }))
    return true;
  refuse(out, fmt::format("another issue of {} was issued while this one was made", entry.report), "", "the command again", sink);
  return false;
}

} // namespace

bool is_issued(const fs::path &survey, const fs::path &file) {
  std::error_code unknown;
  const fs::path issued = fs::weakly_canonical(survey.parent_path() / issue::issued_name, unknown), real = fs::weakly_canonical(file, unknown);
  if (unknown)
    return false;
  if (std::mismatch(issued.begin(), issued.end(), real.begin(), real.end()).first == issued.end())
    return true;
  for (fs::path folder = real.parent_path(); folder.has_relative_path(); folder = folder.parent_path()) // or of another survey
    if (folder.filename() == issue::issued_name && fs::is_regular_file(folder / issue::register_name, unknown))
      return true;
  return false;
}

std::optional<Delivered> deliver(const fs::path &survey_folder, const Outgoing &out, const std::vector<amend::PastIssue> &past, base::Diagnostics &sink) {
  auto issuing = issue::Issuing::begin(survey_folder, sink);
  if (!issuing)
    return std::nullopt;
  const issue::Register &all = issuing->current();
  if (const issue::Entry *there = all.of(out.entry.report, out.entry.issue, out.entry.addendum))
    return is_same(*there, out, sink) && document_of(survey_folder, *there, sink) ? std::optional(delivered(survey_folder, *there, true)) : std::nullopt;
  if (!is_next(all, out, sink) || !tells_of_all(all, out, past, sink) || !issuing->commit(out.entry, out.files, sink))
    return std::nullopt;
  return delivered(survey_folder, out.entry, false);
}

} // namespace strakebook
