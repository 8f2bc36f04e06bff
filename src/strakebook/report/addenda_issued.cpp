#include "strakebook/report/addenda_issued.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/yaml_text.h"
#include "strakebook/issue/issued_folder.h"
#include "strakebook/report/kept.h"
#include "strakebook/report/kept_names.h"
#include "strakebook/report/past.h"
#include "strakebook/steel/survey/closing.h"

namespace strakebook {

namespace {

/// An addendum as a canonical survey file has it; empty: it has none of that number.
std::string addendum_in(const std::string &survey_file, const std::string &id) {
  base::Diagnostics told_before;
  const auto tree = base::parse_yaml(std::make_shared<const base::SourceFile>(base::SourceFile{{}, survey_file}), told_before);
  const auto *addenda = tree.find("addenda");
  const auto *one = addenda ? addenda->find(id) : nullptr;
  return one ? base::yaml_text(*one) : std::string();
}

/// The same as it was issued; nullopt: that cannot be read.
std::optional<std::string> addendum_issued(const std::filesystem::path &survey_folder, const issue::Entry &entry, base::Diagnostics &sink) {
  if (!document_of(survey_folder, entry, sink)) return std::nullopt;
  const auto inputs = inputs_of_document(*issue::files_of(survey_folder, entry)->on_disk() / entry.document.path, sink);
  if (!inputs) return std::nullopt;
  return addendum_in(inputs->at(std::string(kept::survey)), std::to_string(entry.addendum));
}

std::vector<const issue::Entry *> addenda_of(const issue::Register &all, const std::string &report) {
  std::vector<const issue::Entry *> out;
  for (const issue::Entry &entry : all.entries)
    if (entry.report == report && entry.addendum > 0) out.push_back(&entry);
  return out;
}

void stands_as_issued(const Case &the_case, const std::string &now, const issue::Entry &entry, const std::filesystem::path &survey_folder, base::Diagnostics &sink) {
  const std::string id = std::to_string(entry.addendum);
  const auto issued = addendum_issued(survey_folder, entry, sink);
  if (!issued || addendum_in(now, id) == *issued) return;
  const auto *own = survey::addendum_of(the_case.survey, id);
  sink.error(base::Code::already_issued, own ? own->span : the_case.survey.span,
             fmt::format("addendum {} is not as it was issued on {}; what is issued is never changed", id, base::iso(entry.date)),
             "every addendum that went out, as it went out", "what it said, and an addendum of the next number that puts it right");
}

void went_out(const Case &the_case, const survey::Addendum &told, const std::vector<const issue::Entry *> &issued, base::Diagnostics &sink) {
  const auto has = [&](const issue::Entry *entry) { return std::to_string(entry->addendum) == told.id; };
  if (std::ranges::any_of(issued, has)) return;
  sink.error(base::Code::addendum_incomplete, told.span, fmt::format("addendum {} would be told of, and it never went out", told.id),
             "an addendum that was issued, or one of a later day than the report's",
             fmt::format("strakebook issue SURVEY --addendum {}, while issue {} stands", told.id, std::max(the_case.survey.report.issue - 1, 1)));
}

/// The next number, and a day on or after that of the issue it belongs to.
void is_next(const survey::Addendum &own, int addendum, const issue::Entry &report, const std::vector<const issue::Entry *> &issued, base::Diagnostics &sink) {
  int last = 0;
  for (const issue::Entry *entry : issued) {
    if (entry->addendum == addendum && entry->issue == report.issue) return; // the same again, or other bytes: told when it is delivered
    last = std::max(last, entry->addendum);
  }
  if (addendum != last + 1)
    sink.error(base::Code::already_issued, own.span, fmt::format("the last addendum in the register is {}, and this would be {}", last, addendum),
               fmt::format("addendum {}", last + 1), fmt::format("addenda: with {} for its number", last + 1));
  if (own.issued && own.issued->value < report.date)
    sink.error(base::Code::dates_disagree, own.issued->span, fmt::format("addendum {} lies before issue {}, to which it belongs, of {}", addendum, report.issue, base::iso(report.date)),
               base::iso(report.date) + " or later", "issued: the day that it goes out");
}

} // namespace

bool addenda_stand(const Case &the_case, int addendum, const std::filesystem::path &survey_folder, const issue::Register &all, base::Diagnostics &sink) {
  const auto &survey = the_case.survey;
  const auto issued = addenda_of(all, survey.report.number.text);
  const std::string id = addendum > 0 ? std::to_string(addendum) : std::string();
  const std::string last = survey.addenda.empty() ? std::string() : survey.addenda.back().id;
  const auto now = kept_inputs(the_case, last).at(std::string(kept::survey));
  for (const issue::Entry *entry : issued) stands_as_issued(the_case, now, *entry, survey_folder, sink);
  for (const auto &told : survey::without_later_addenda(survey, id).addenda)
    if (told.id != id) went_out(the_case, told, issued, sink);
  const auto *own = survey::addendum_of(survey, id);
  if (const auto *report = all.of(survey.report.number.text, survey.report.issue, 0); own && report) is_next(*own, addendum, *report, issued, sink);
  return sink.ok();
}

} // namespace strakebook
