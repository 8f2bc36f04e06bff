#include "strakebook/issuing.h"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/issue/issued_folder.h"
#include "strakebook/report/addenda_issued.h"
#include "strakebook/report/kept.h"
#include "strakebook/report/opening.h"
#include "strakebook/report/outgoing.h"
#include "strakebook/report/past.h"
#include "strakebook/steel/survey/closing.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

/// What review does not ask of a report that stays at home.
bool may_go_out(const Case &the_case, base::Diagnostics &sink) {
  const auto &survey = the_case.survey;
  const auto &report = survey.report;
  if (report.state != survey::State::final)
    sink.error(base::Code::not_final, report.span, "only a final report is issued", "a report that says everything a final has to say", "state: final");
  if (!report.issued)
    sink.error(base::Code::not_final, report.span, "the report does not say when it is issued", "the day of issue", "issued: the day, YYYY-MM-DD");
  if (survey.recipients.empty())
    sink.error(base::Code::recipients_missing, report.span, "nobody is sent this issue", "who is sent it, as a role, and how: they are told if it proves wrong",
               "recipients:\n  - {who: the buyer, how: by letter}");
  if (report.issue > 1 && !the_case.before)
    sink.error(base::Code::before_unknown, report.span, fmt::format("issue {} cannot go out without issue {}, which it replaces", report.issue, report.issue - 1),
               "that issue in the register beside the survey, and its PDF as it was delivered", fmt::format("issue {} issued first, or its folder put back", report.issue - 1));
  if (the_case.amended && the_case.amended->changes.all.empty() && survey::without_later_addenda(survey).addenda.empty())
    sink.error(base::Code::already_issued, report.span, fmt::format("nothing differs from issue {}, and a new issue would replace it for nothing", report.issue - 1),
               "a survey that differs from the issue before", fmt::format("issue: {}, which stands", report.issue - 1));
  return sink.ok() && can_be_kept(the_case, sink);
}

/// Errors of the kept inputs are shown at the survey's own lines where it has them too.
void tell(const Case &the_case, const base::Diagnostics &making, bool made, const Resources &resources, base::Diagnostics &sink) {
  if (!made) {
    base::Diagnostics live;
    set_pages(the_case, resources, live);
    if (!live.ok()) {
      for (const auto &one : live.all()) sink.add(one);
      return;
    }
  }
  for (base::Diagnostic one : making.all()) {
    one.span = the_case.survey.span;
    sink.add(std::move(one));
  }
}

std::optional<Case> opened_to_issue(const fs::path &survey, const Resources &resources, base::Diagnostics &sink) {
  auto the_case = open_case(survey, resources, sink);
  if (!the_case || !sink.ok() || !may_go_out(*the_case, sink)) return std::nullopt;
  return the_case;
}

/// Of an addendum that the survey has, with its day.
std::optional<int> number_of_addendum(const survey::Survey &survey, const std::string &id, base::Diagnostics &sink) {
  const auto own = std::ranges::find(survey.addenda, id, &survey::Addendum::id);
  int number = 0;
  const auto [end, failed] = std::from_chars(id.data(), id.data() + id.size(), number);
  const bool is_number = failed == std::errc() && end == id.data() + id.size() && number > 0;
  if (own != survey.addenda.end() && own->issued && is_number) return number;
  sink.error(base::Code::addendum_incomplete, own == survey.addenda.end() ? survey.report.span : own->span,
             fmt::format("the survey has no addendum {} with a day of issue", id), "a number of addenda: with its issued:",
             fmt::format("addenda:\n  {}:\n    issued: the day, YYYY-MM-DD", id));
  return std::nullopt;
}

/// An addendum tells of the issue as it went out, so the survey has to be that issue's but for its addenda.
bool stands_as_issued(const Case &the_case, const issue::Entry &entry, const fs::path &survey_folder, base::Diagnostics &sink) {
  if (!document_of(survey_folder, entry, sink)) return false;
  base::Diagnostics reading; // what review found of the issue was answered when it went out
  const auto inputs = inputs_of_document(*issue::files_of(survey_folder, entry)->on_disk() / entry.document.path, reading);
  const auto issued = inputs ? open_kept(*inputs, {}, reading) : std::nullopt;
  if (!issued || !reading.ok()) {
    for (const auto &one : reading.all()) sink.add(one);
    return false;
  }
  const auto changes = changes_between(*issued, the_case);
  for (const amend::Change &change : changes.all)
    sink.error(base::Code::already_issued, change.span.line ? change.span : the_case.survey.report.span,
               fmt::format("{} is not as issue {} has it, and an addendum changes nothing of it", change.subject, entry.issue), "the survey as it was issued, with the addendum added",
               fmt::format("what issue {} says, or a new issue", entry.issue));
  return changes.all.empty();
}

} // namespace

std::optional<Delivered> issue_report(const fs::path &survey, const Resources &resources, const issue::Signer *signer, base::Diagnostics &sink) {
  const auto the_case = opened_to_issue(survey, resources, sink);
  const auto all = the_case ? issue::register_in(survey.parent_path(), sink) : std::nullopt;
  if (!all || !addenda_stand(*the_case, 0, survey.parent_path(), *all, sink)) return std::nullopt;
  const auto inputs = kept_inputs(*the_case);
  base::Diagnostics making;
  const auto made = make_report(inputs, resources, making);
  tell(*the_case, making, made.has_value(), resources, sink);
  if (!made) return std::nullopt;
  auto out = outgoing(*the_case, 0, *made, inputs, signer, sink);
  if (!out) return std::nullopt;
  if (the_case->amended) {
    base::Diagnostics told_before;
    const auto issued = open_kept(inputs, issue::short_digest(out->entry.manifest), told_before);
    if (!issued || !add_recall(*out, survey.parent_path(), *issued, resources, sink)) return std::nullopt;
  }
  return deliver(survey.parent_path(), *out, the_case->past, sink);
}

std::optional<Delivered> issue_addendum(const fs::path &survey, const std::string &addendum, const Resources &resources, const issue::Signer *signer,
                                        base::Diagnostics &sink) {
  auto the_case = opened_to_issue(survey, resources, sink);
  if (!the_case) return std::nullopt;
  const auto &report = the_case->survey.report;
  const auto number = number_of_addendum(the_case->survey, addendum, sink);
  if (!number) return std::nullopt;
  const auto all = issue::register_in(survey.parent_path(), sink);
  const issue::Entry *entry = all ? all->of(report.number.text, report.issue, 0) : nullptr;
  if (all && !entry)
    sink.error(base::Code::before_unknown, report.span, fmt::format("issue {} of {} is not in the register, and an addendum is to an issue that went out", report.issue, report.number.text),
               "the number of the last issue", "the report issued first");
  if (!entry || !stands_as_issued(*the_case, *entry, survey.parent_path(), sink)) return std::nullopt;
  if (!addenda_stand(*the_case, *number, survey.parent_path(), *all, sink)) return std::nullopt;
  const auto earlier = the_case->past;
  the_case->past.push_back(past_issue(*entry));
  const auto inputs = kept_inputs(*the_case, addendum);
  base::Diagnostics making;
  const auto made = make_addendum(inputs, addendum, resources, making);
  tell(*the_case, making, made.has_value(), resources, sink);
  if (!made) return std::nullopt;
  const auto out = outgoing(*the_case, *number, *made, inputs, signer, sink);
  return out ? deliver(survey.parent_path(), *out, earlier, sink) : std::nullopt;
}

} // namespace strakebook
