#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"

/// Limitations: each names an area, what it prevented and what would cure it.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

content::Block all(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(
      scope, numbering, look::steelwork_table, scope.tell("limitations.caption"),
      {column({}), stretching(scope.say("limitations.area")), stretching(scope.say("limitations.why")),
       stretching(scope.say("limitations.prevents")), stretching(scope.say("limitations.cure"))});
  std::vector<content::Row> rows;
  for (const auto &one : scope.survey().limitations) {
    Inlines area = answer_to(scope, one.area) +
                   content::soft(scope.say("limitations.at", {{"where", reach_words(scope, one.at)}}));
    rows.push_back(row({cell(content::strong(one.id)), cell(std::move(area)), cell(answer_to(scope, one.why)),
                        cell(answer_to(scope, one.prevents)), cell(answer_to(scope, one.cure))},
                       limitation_id(one.id), one.span));
    rows.back().rule_after = true;
  }
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/limitations");
}

/// Counts only: what they mean is the surveyor's to say.
std::string coverage(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
  std::vector<std::string> parts;
  for (const auto &[status, number] : count.not_read)
    if (number > 0)
      parts.push_back(scope.say("limitations.count",
                                {{"n", std::to_string(number)}, {"status", status_word(scope, status)}}));
  if (count.rejected > 0)
    parts.push_back(
        scope.say("limitations.count", {{"n", std::to_string(count.rejected)},
                                        {"status", status_word(scope, survey::Status::rejected)}}));
  const std::string left_out =
      parts.empty() ? scope.say("limitations.none-left-out") : join_and(scope, parts);
  return scope.say("limitations.coverage", {{"planned", std::to_string(count.planned)},
                                            {"read", std::to_string(count.read)},
                                            {"left-out", left_out}});
}

std::string density(const Scope &scope) {
  const auto &per_m2 = scope.assessment().marks_per_m2;
  if (!per_m2)
    return {};
  const std::string n = base::to_text(base::round_to(*per_m2, 1));
  return " " + (scope.assessment().spot_check ? scope.say_computed("limitations.spot-check", {{"n", n}})
                                              : scope.say_computed("limitations.density", {{"n", n}}));
}

} // namespace

content::Section limitations(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(paragraph(plain(coverage(scope) + density(scope)), look::text));
  if (scope.survey().limitations.empty())
    out.blocks.push_back(paragraph(not_given(scope), look::text));
  else
    out.blocks.push_back(all(scope, numbering));
  return out;
}

} // namespace strakebook::compose
