#include "strakebook/report/outgoing.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/issue/issued_folder.h"
#include "strakebook/paper/file/stamp.h"
#include "strakebook/report/kept_names.h"
#include "strakebook/report/letters.h"
#include "strakebook/report/past.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

issue::KeptFile kept_file(std::string path, std::string_view bytes) { return {std::move(path), base::sha256_hex(bytes), bytes.size()}; }

void add_beside(Outgoing &to, std::string path, std::string bytes) {
  to.entry.beside.push_back(kept_file(path, bytes));
  to.files.emplace(std::move(path), std::move(bytes));
}

/// What a viewer of the signed document shows: the day that the survey is signed, or the addendum issued.
file::SignatureWords signature_words(const survey::Surveyor &surveyor, const issue::Entry &entry) {
  const bool own_day = entry.addendum == 0 && surveyor.signed_on;
  return {.name = {}, .reason = {}, .location = surveyor.signed_at.text, .date = base::iso(own_day ? surveyor.signed_on->value : entry.date)};
}

/// What the register says whatever the document is.
issue::Entry entry_of(const Case &the_case, int addendum, const issue::Manifest &manifest) {
  const auto &report = the_case.survey.report;
  issue::Entry entry{.report = report.number.text, .issue = report.issue, .addendum = addendum};
  entry.state = "final";
  entry.folder = issue::folder_name(entry.report, entry.issue, addendum);
  entry.inputs = manifest.files;
  entry.makers = manifest.makers;
  for (const survey::Recipient &recipient : the_case.survey.recipients)
    entry.recipients.push_back({recipient.who.text, recipient.how.text});
  if (addendum == 0) {
    entry.date = report.issued->value;
    if (the_case.amended) {
      entry.replaces = the_case.amended->replaces.digest;
      for (const amend::Change &change : the_case.amended->changes.all)
        entry.reasons.push_back(change.subject + ": " + change.why.text);
    }
  } else {
    const auto own = std::ranges::find(the_case.survey.addenda, std::to_string(addendum), &survey::Addendum::id);
    entry.date = own->issued->value;
  }
  return entry;
}

/// A name that no file of the issue has yet.
std::string free_name(const base::FileSet &files, const std::string &begin) {
  std::string name = begin + ".pdf";
  for (int n = 2; files.contains(name); ++n)
    name = fmt::format("{}-{}.pdf", begin, n);
  return name;
}

} // namespace

std::optional<Outgoing> outgoing(const Case &the_case, int addendum, const MadeReport &made, const base::FileSet &inputs, const issue::Signer *signer,
                                 base::Diagnostics &sink) {
  const auto manifest = issue::read_manifest(made.manifest).value();
  Outgoing out{.entry = entry_of(the_case, addendum, manifest), .files = {}, .span = the_case.survey.report.span};
  auto &entry = out.entry;
  auto document = signer ? issue::signed_document(made.pdf, signature_words(the_case.survey.surveyor, entry), *signer, sink) : std::optional(made.pdf);
  if (!document)
    return std::nullopt;
  const std::string name = entry.folder + ".pdf";
  entry.document = kept_file(name, *document);
  entry.unsigned_document = kept_file(name, made.pdf);
  entry.signer = signer ? signer->fingerprint() : std::string();
  entry.manifest = base::sha256_hex(made.manifest);
  out.files.emplace(name, std::move(*document));
  if (the_case.house.issue.inputs_beside)
    for (auto &[path, bytes] : issue::laid_down(inputs, manifest))
      add_beside(out, std::string(kept::beside) + "/" + path, bytes);
  return out;
}

bool add_recall(Outgoing &to, const fs::path &survey_folder, const Case &issued, const Resources &resources, base::Diagnostics &sink) {
  const amend::PastIssue &replaced = issued.amended->replaces;
  for (const survey::Recipient &recipient : replaced.recipients) {
    auto notice = recall_notice(issued, recipient, resources, sink);
    if (!notice)
      return false;
    add_beside(to, free_name(to.files, fmt::format("recall-of-issue-{}-to-{}", replaced.issue, issue::file_part(recipient.who.text))), std::move(*notice));
  }
  const auto all = issue::register_in(survey_folder, sink);
  const issue::Entry *entry = all ? all->of(to.entry.report, replaced.issue, 0) : nullptr;
  const auto old = entry ? document_of(survey_folder, *entry, sink) : std::nullopt;
  const auto stamp = old ? superseded_stamp(issued, resources, sink) : std::nullopt;
  std::string copy = stamp ? file::stamped(*old, *stamp, sink) : std::string();
  if (copy.empty())
    return false;
  add_beside(to, entry->folder + "-superseded.pdf", std::move(copy));
  return true;
}

} // namespace strakebook
