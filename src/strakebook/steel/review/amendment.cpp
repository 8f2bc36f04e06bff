#include <algorithm>
#include <cctype>
#include <iterator>

#include <fmt/format.h>

#include "strakebook/base/text.h"
#include "strakebook/steel/amend/reasons.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

using amend::Amended;
using amend::Change;
using survey::Amendment;

const base::SourceSpan &amendment_place(const Subject &subject) {
  const auto &amendment = subject.survey.amendment;
  return amendment ? nearest(amendment->span, subject.survey.span) : nearest(subject.survey.report.span, subject.survey.span);
}

std::string issue_before(const Amended &amended) { return fmt::format("issue {}", amended.replaces.issue); }

/// "reading 6.4, now 4.6"; of a long text only its key.
std::string difference_text(const amend::Difference &one) {
  constexpr std::size_t short_enough = 40;
  if (std::max(base::code_point_count(one.before), base::code_point_count(one.after)) > short_enough) return one.field;
  if (one.before.empty()) return fmt::format("{} {}, not there before", one.field, one.after);
  if (one.after.empty()) return fmt::format("{} {}, now gone", one.field, one.before);
  return fmt::format("{} {}, now {}", one.field, one.before, one.after);
}

std::string differences_text(const Change &change) {
  constexpr std::size_t most = 3;
  std::vector<std::string> parts;
  for (const auto &one : change.differences)
    if (parts.size() < most) parts.push_back(difference_text(one));
  if (change.differences.size() > most) parts.push_back(fmt::format("{} more", change.differences.size() - most));
  return base::joined(parts, "; ");
}

/// A reason has words: one sign or one word is none.
bool says_something(const survey::Words &why) {
  const auto has_letter = [](std::string_view word) { return std::ranges::any_of(word, [](unsigned char c) { return std::isalpha(c) || c >= 0x80; }); };
  return std::ranges::count_if(base::words(why.text), has_letter) >= 2;
}

std::string what_happened(const Change &change, const std::string &before) {
  switch (change.how) {
  case amend::How::changed: return fmt::format("{} is not as in {}", change.subject, before);
  case amend::How::added: return fmt::format("{} was not in {}", change.subject, before);
  case amend::How::withdrawn: return fmt::format("{} was in {} and is withdrawn", change.subject, before);
  }
  return {};
}

void unreasoned_changes(Findings &found, const Subject &subject, const Amended &amended) {
  for (const Change &change : amended.changes.all) {
    if (says_something(change.why)) continue;
    found.push_back({base::Code::change_unreasoned, nearest(change.span, amendment_place(subject)),
                     fmt::format("{}, and nothing says why: {}", what_happened(change, issue_before(amended)), differences_text(change)),
                     fmt::format("a reason for everything that differs from {}", issue_before(amended)),
                     fmt::format("amendment:\n  changes:\n    - {{what: {}, why: the reason in a sentence}}", change.subject)});
  }
}

std::string moves_of(const std::string &zone, const Amended &amended) {
  std::vector<std::string> moves;
  for (const auto &moved : amended.changes.moved)
    if (moved.zone == zone)
      moves.push_back(fmt::format("{} was \"{}\" and is \"{}\"", moved.criterion, assess::word_of(moved.before), assess::word_of(moved.after)));
  return moves.empty() ? "the house's ladder suggests something else" : listed(moves);
}

void unreasoned_standing(Findings &found, const Subject &subject, const Amended &amended) {
  for (const auto &stands : amended.changes.stands) {
    if (says_something(stands.why)) continue;
    const auto *decision = decision_of(subject.survey, stands.zone);
    found.push_back({base::Code::stands_unreasoned, nearest(decision ? decision->span : base::SourceSpan{}, amendment_place(subject)),
                     fmt::format("the decision on zone {} is as in {}, though what it rests on is not: {}", stands.zone, issue_before(amended),
                                 moves_of(stands.zone, amended)),
                     "a reason why it stands, or another decision",
                     fmt::format("amendment:\n  stands:\n    - {{what: {}, why: the reason in a sentence}}", stands.zone)});
  }
}

template <class T> bool named(const survey::Words &what, const std::vector<T> &list) {
  return std::ranges::any_of(list, [&](const T &one) { return amend::names(what, one); });
}

Finding for_nothing(const Subject &subject, const survey::Words &what, std::string message, const std::vector<std::string> &known) {
  return {base::Code::reason_for_nothing, nearest(what.span, amendment_place(subject)), std::move(message),
          known.empty() ? "none: nothing of the kind is listed" : "one of: " + base::joined(known, ", "),
          base::nearest(what.text, known).value_or("leave it out")};
}

/// Reasons that name nothing of the list, or what an earlier one named: only the first is printed.
template <class T>
void idle_reasons(Findings &found, const Subject &subject, const std::vector<survey::ChangeReason> &reasons, const std::vector<T> &list,
                  const std::vector<std::string> &known, const std::string &nothing) {
  std::vector<survey::Words> so_far;
  for (const auto &reason : reasons)
    for (const auto &what : reason.what) {
      const bool twice = std::ranges::any_of(so_far, [&](const survey::Words &one) { return base::words(one.text) == base::words(what.text); });
      if (!named(what, list)) found.push_back(for_nothing(subject, what, fmt::format("\"{}\" {}", what.text, nothing), known));
      else if (twice) found.push_back(for_nothing(subject, what, fmt::format("\"{}\" is given a reason twice", what.text), {}));
      so_far.push_back(what);
    }
}

void reasons_for_nothing(Findings &found, const Subject &subject, const Amendment &amendment, const Amended &amended) {
  std::vector<std::string> subjects, zones;
  for (const auto &change : amended.changes.all) subjects.push_back(change.subject);
  for (const auto &stands : amended.changes.stands) zones.push_back(stands.zone);
  idle_reasons(found, subject, amendment.changes, amended.changes.all, subjects, "is given a reason, and is as in " + issue_before(amended));
  idle_reasons(found, subject, amendment.stands, amended.changes.stands, zones,
               "is said to stand, and is no decision that stands though what it rests on changed");
}

std::vector<std::string> untold(const Amendment &amendment, const Amended &amended) {
  std::vector<std::string> names;
  for (const auto &recipient : amended.replaces.recipients) {
    const auto is_told = [&](const survey::Told &told) { return base::words(told.who.text) == base::words(recipient.who.text); };
    if (std::ranges::none_of(amendment.told, is_told)) names.push_back(recipient.who.text);
  }
  return names;
}

void incomplete(Findings &found, const Subject &subject, const Amended &amended) {
  static const Amendment nothing_said;
  const Amendment &amendment = subject.survey.amendment ? *subject.survey.amendment : nothing_said;
  const auto lacks = [&](std::string message, std::string expected, std::string write) {
    found.push_back({base::Code::amendment_incomplete, amendment_place(subject), std::move(message), std::move(expected), std::move(write)});
  };
  const auto need = [&](bool given, std::string_view key, std::string_view what, std::string_view example) {
    if (!given)
      lacks(fmt::format("amendment.{} is missing: this issue replaces {}", key, issue_before(amended)), std::string(what),
            fmt::format("amendment:\n  {}: {}", key, example));
  };
  need(amendment.cause.given(), "cause", "what went wrong", "in a sentence");
  need(amendment.found_by.given(), "found-by", "who noticed it", "a role");
  need(amendment.found_on.has_value(), "found-on", "the day it was noticed", "2026-11-04");
  need(amendment.checked.given(), "checked", "what else was checked for the same fault", "in a sentence");
  for (const auto &who : untold(amendment, amended))
    lacks(fmt::format("{} had {}, and nothing says that they were told", who, issue_before(amended)), "everyone who had the issue that is replaced",
          fmt::format("amendment:\n  told:\n    - {{who: {}, how: by letter, on: 2026-11-09}}", who));
}

} // namespace

Findings amendment(const Subject &subject) {
  Findings found;
  const auto &said = subject.survey.amendment;
  if (said && subject.survey.report.issue == 1)
    found.push_back({base::Code::reason_for_nothing, amendment_place(subject), "an amendment is written, and the first issue replaces nothing",
                     "none in issue 1", "leave amendment out, or write the issue that this is"});
  if (!subject.amended) return found;
  unreasoned_changes(found, subject, *subject.amended);
  unreasoned_standing(found, subject, *subject.amended);
  if (said) reasons_for_nothing(found, subject, *said, *subject.amended);
  incomplete(found, subject, *subject.amended);
  return found;
}

Findings replaced_unknown(const Subject &subject) {
  const auto &report = subject.survey.report;
  if (report.issue <= 1 || subject.amended) return {};
  return {{base::Code::before_unknown, nearest(report.span, subject.survey.span),
           fmt::format("issue {} replaces one that the register does not have: what changed since cannot be listed, and no reason can be asked for",
                       report.issue),
           "the register of issues beside the survey, with the issue before", ""}};
}

} // namespace strakebook::review
