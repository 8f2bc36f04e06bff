#include "strakebook/report/past.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"
#include "strakebook/issue/issued_folder.h"
#include "strakebook/report/kept.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

survey::Recipient recipient(const issue::Sent &sent) { return {.who = {.text = sent.who, .span = {}}, .how = {.text = sent.how, .span = {}}, .span = {}}; }

/// Everything found, as warnings.
void warn(const base::Diagnostics &found, base::Diagnostics &sink) {
  for (base::Diagnostic one : found.all()) {
    one.severity = std::min(one.severity, base::Severity::warning);
    one.subject.clear();
    sink.add(std::move(one));
  }
}

void warn(const survey::Survey &survey, std::string message, base::Diagnostics &sink) {
  sink.warning(base::Code::before_unknown, survey.report.span, "", std::move(message), "the issue before, as it was issued, in the folder of issues beside the survey",
               "the right number after issue:, or put the folder of issues back from your latest copy; what changed cannot be shown without it");
}

/// The entries of the report before its issue, the first first.
std::vector<const issue::Entry *> earlier(const issue::Register &all, const survey::Report &report) {
  std::vector<const issue::Entry *> out;
  for (const issue::Entry &entry : all.entries)
    if (entry.report == report.number.text && entry.addendum == 0 && entry.issue < report.issue)
      out.push_back(&entry);
  std::ranges::sort(out, {}, &issue::Entry::issue);
  return out;
}

/// The case that an issue was made from; null, with the reason in `found`.
std::shared_ptr<const Case> case_of(const fs::path &survey_folder, const issue::Entry &entry, base::Diagnostics &found) {
  const auto bytes = document_of(survey_folder, entry, found);
  const auto inputs = bytes ? inputs_of_document(*issue::files_of(survey_folder, entry)->on_disk() / entry.document.path, found) : std::nullopt;
  auto opened = inputs ? open_kept(*inputs, {}, found) : std::nullopt;
  return opened && found.ok() ? std::make_shared<const Case>(std::move(*opened)) : nullptr;
}

} // namespace

amend::PastIssue past_issue(const issue::Entry &entry) {
  amend::PastIssue past{.issue = entry.issue, .date = entry.date, .digest = entry.document.digest, .recipients = {}};
  std::ranges::transform(entry.recipients, std::back_inserter(past.recipients), recipient);
  return past;
}

std::optional<std::string> document_of(const fs::path &survey_folder, const issue::Entry &entry, base::Diagnostics &sink) {
  const auto files = issue::files_of(survey_folder, entry);
  if (!files) {
    sink.error(base::Code::file_unreadable, {}, fmt::format("the folder {} of the register is not there, or has no {}", entry.folder, entry.document.path));
    return std::nullopt;
  }
  auto bytes = files->read(entry.document.path, most_document_bytes, {}, sink);
  if (!bytes || base::sha256_hex(*bytes) == entry.document.digest)
    return bytes;
  sink.error(base::Code::not_a_report, {}, fmt::format("{} is not what was issued: its digest is not the one in the register", files->shown(entry.document.path)));
  return std::nullopt;
}

History history_beside(const fs::path &survey_folder, const survey::Survey &survey, base::Diagnostics &sink) {
  base::Diagnostics found;
  const auto all = issue::register_in(survey_folder, found);
  History history;
  const auto entries = all ? earlier(*all, survey.report) : std::vector<const issue::Entry *>();
  for (const issue::Entry *entry : entries)
    history.issues.push_back(past_issue(*entry));
  const int before = survey.report.issue - 1;
  if (!entries.empty() && entries.back()->issue == before) {
    base::Diagnostics reading; // what review finds of an issue that can be read was answered when it went out
    history.before = case_of(survey_folder, *entries.back(), reading);
    if (!history.before)
      warn(reading, sink);
  }
  warn(found, sink);
  if (before > 0 && !history.before)
    warn(survey, fmt::format("issue {} replaces issue {}, and the register has no such issue of {} that can be read", survey.report.issue, before, survey.report.number.text), sink);
  return history;
}

} // namespace strakebook
