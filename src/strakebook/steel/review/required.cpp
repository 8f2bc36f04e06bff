#include <algorithm>

#include "strakebook/base/text.h"
#include "strakebook/steel/review/requirements.h"

namespace strakebook::review {

namespace {

bool asked_for(const policy::Policy &policy, std::string_view path) {
  return std::ranges::find(policy.required_fields, path) != policy.required_fields.end();
}

bool known(const std::string &path) {
  return std::ranges::any_of(requirements(), [&](const Requirement &requirement) { return requirement.path == path; });
}

Finding missing(const Requirement &requirement, const Gap &gap) {
  const std::string path(requirement.path), what(requirement.what);
  const std::string where = gap.where.empty() ? "" : gap.where + ": ";
  return {base::Code::required_missing, gap.span, where + path + " is missing: " + what,
          "a final report gives " + what, std::string(requirement.write)};
}

Finding not_known(const std::string &path, const base::SourceSpan &span) {
  return {base::Code::required_missing, span, "the layout requires " + path + ", which is no field of a survey",
          "a path such as datum.from", "correct required-fields in the layout"};
}

/// A row counts as surveyed when a mark is planned on it.
bool has_row(const survey::Survey &survey, const std::string &name) {
  return std::ranges::any_of(survey.rows, [&](const survey::Row &row) {
    return row.name.text == name && std::ranges::find(survey.marks, row.id, &survey::Mark::row) != survey.marks.end();
  });
}

/// A limitation covers a required row when the words of its area name the row, or its reach takes in a row of that name.
bool covered(const survey::Survey &survey, const std::string &name) {
  return std::ranges::any_of(survey.limitations, [&](const survey::Limitation &limitation) {
    if (limitation.area.text.find(name) != std::string::npos) return true;
    return std::ranges::any_of(limitation.at.rows, [&](const std::string &id) {
      const survey::Row *row = survey::row_of(survey, id);
      return row && row->name.text == name;
    });
  });
}

} // namespace

Findings required_fields(const Subject &subject) {
  Findings found;
  for (const Requirement &requirement : requirements())
    if (requirement.always || asked_for(subject.policy, requirement.path))
      for (const Gap &gap : requirement.gaps(subject)) found.push_back(missing(requirement, gap));
  for (const std::string &path : subject.policy.required_fields)
    if (!known(path)) found.push_back(not_known(path, subject.survey.span));
  return found;
}

Findings required_rows(const Subject &subject) {
  Findings found;
  for (const std::string &name : subject.policy.required_rows)
    if (!has_row(subject.survey, name) && !covered(subject.survey, name))
      found.push_back({base::Code::required_missing, subject.survey.span,
                       "no mark is planned on a row named \"" + name + "\", which the house requires",
                       "a row of that name with its marks, or a limitation whose area names it",
                       "limitations:\n  1: {area: " + name + " not reached, why: ..., prevents: ..., cure: ...}"});
  return found;
}

} // namespace strakebook::review
