#include "strakebook/report/comparison.h"

#include <iterator>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "strakebook/base/decimal.h"
#include "strakebook/issuing.h"
#include "strakebook/steel/amend/json.h"
#include "strakebook/steel/amend/words.h"
#include "strakebook/steel/assess/words.h"

namespace strakebook {

namespace {

using nlohmann::ordered_json;

ordered_json value_of(const std::string &before, const std::string &after, const amend::Changes &changes) {
  ordered_json all{{"before", before}, {"after", after}};
  all.update(amend::json(changes));
  return all;
}

std::string or_nothing(const std::string &text) { return text.empty() ? "(nothing)" : text; }
std::string or_nothing(const std::optional<base::Length> &length) { return length ? base::mm_exact(*length) + " mm" : "(nothing)"; }

void add_change(std::string &out, const amend::Change &change) {
  auto end = std::back_inserter(out);
  fmt::format_to(end, "\n{}: {}\n", change.subject, word_of(change.how));
  for (const auto &one : change.differences) fmt::format_to(end, "    {}: {} -> {}\n", one.field, or_nothing(one.before), or_nothing(one.after));
  if (change.remaining_before || change.remaining_after)
    fmt::format_to(end, "    remaining: {} -> {}\n", or_nothing(change.remaining_before), or_nothing(change.remaining_after));
  if (change.why.given()) fmt::format_to(end, "    why: {}\n", change.why.text);
}

void add_consequences(std::string &out, const amend::Changes &changes) {
  auto end = std::back_inserter(out);
  if (!changes.moved.empty()) out += "\nVerdicts that moved\n";
  for (const auto &moved : changes.moved)
    fmt::format_to(end, "    zone {}, {}: {} -> {}{}\n", moved.zone, moved.criterion, assess::word_of(moved.before), assess::word_of(moved.after),
                   moved.subject.empty() ? "" : " at " + moved.subject);
  if (!changes.stands.empty()) out += "\nDecisions that stand all the same\n";
  for (const auto &stands : changes.stands)
    fmt::format_to(end, "    zone {}{}\n", stands.zone, stands.why.given() ? ": " + stands.why.text : "");
}

} // namespace

std::string issue_name(const survey::Report &report, int issue) { return fmt::format("{} issue {}", report.number.text, issue); }
std::string issue_name(const survey::Report &report) { return issue_name(report, report.issue); }

std::string comparison_text(const Comparison &comparison) {
  const auto &changes = comparison.changes;
  std::string out = fmt::format("{} -> {}: ", comparison.before, comparison.after);
  if (changes.all.empty()) return out + "no change\n";
  const auto count = changes.all.size();
  out += fmt::format("{} change{}, {}\n", count, count == 1 ? "" : "s", changes.decision_changed() ? "a decision among them" : "no decision among them");
  for (const auto &change : changes.all) add_change(out, change);
  add_consequences(out, changes);
  return out;
}

std::string comparison_json(const Comparison &comparison) {
  return value_of(comparison.before, comparison.after, comparison.changes).dump(2) + "\n";
}

ordered_json amended_json(const Case &the_case) {
  const auto &report = the_case.survey.report;
  return value_of(issue_name(report, the_case.amended->replaces.issue), issue_name(report), the_case.amended->changes);
}

} // namespace strakebook
