#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/issue_words.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/photo_words.h"
#include "strakebook/compose/statements.h"

/// What changed since the issue that this one replaces: decisions first, each change with its reason.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

Block lead(const Editions &both) {
  const Scope &scope = both.now;
  content::Inlines counted = counted_changes(both).text();
  for (auto &part : counted)
    if (auto *text = std::get_if<content::Text>(&part))
      text->emphasis = content::Emphasis::strong;
  return paragraph(std::move(counted) + plain(" ") + scope.tell("changes.bars"), look::text);
}

/// Beside it, what is replaced and how a copy of it is known.
std::vector<Block> replaced(const Scope &scope, const amend::PastIssue &past) {
  const InlineFill issue{"issue", plain(std::to_string(past.issue))};
  const Inlines words = past.date ? scope.tell("changes.replaced", {issue, {"date", plain(date(scope, *past.date))}})
                                  : scope.tell("changes.replaced-undated", {issue});
  return {paragraph(words, look::side), paragraph(scope.tell("changes.digest", {{"digest", plain(in_fours(past.digest))}}), look::side)};
}

/// A table on the left, another on the right; one alone over the whole width.
void add_halves(std::vector<Block> &to, const char *lattice, std::vector<Block> left, std::vector<Block> right) {
  if (left.empty() || right.empty()) {
    append(to, std::move(left));
    append(to, std::move(right));
  } else {
    to.push_back(block(content::Columns{lattice, {std::move(left), std::move(right)}}));
  }
}

std::vector<Block> cause(const Scope &scope) {
  const auto &given = scope.survey().amendment;
  return given ? cause_of_change(scope, *given) : std::vector<Block>{};
}

/// What the issue before was made from cannot be read: the surveyor's reasons are printed, and that nothing was compared.
content::Section reasons_alone(const Scope &scope, const survey::Amendment &given) {
  auto out = section_of(scope);
  out.blocks.push_back(paragraph(scope.tell("changes.not-compared"), look::text));
  auto table = unlabelled_table(look::items_table, {column(scope.say("changes.what")), stretching(scope.say("changes.why"))});
  std::vector<content::Row> rows;
  for (const auto *reasons : {&given.changes, &given.stands})
    for (const auto &reason : *reasons) {
      std::vector<std::string> what;
      for (const auto &one : reason.what)
        what.push_back(one.text);
      rows.push_back(row({cell(join_and(scope, what)), cell(prose(scope, reason.why.text))}, {}, reason.span));
    }
  if (!rows.empty()) {
    add_rows(table, std::move(rows));
    out.blocks.push_back(block(std::move(table), "table/reasons"));
  }
  add_halves(out.blocks, look::text_side, cause_of_change(scope, given), who_had_it(scope, &given, nullptr));
  return out;
}

content::Section listed(const Scope &scope, const Scope &before) {
  const auto &amended = *scope.source.amended;
  const auto &given = scope.survey().amendment;
  const Editions both{scope, before, amended, scope.survey().report.issue};
  auto out = section_of(scope);
  out.blocks.push_back(beside({lead(both)}, replaced(scope, amended.replaces)));
  append(out.blocks, decisions_changed(both));
  append(out.blocks, readings_corrected(both));
  append(out.blocks, readings_withdrawn(both));
  add_halves(out.blocks, look::text_side, cause(scope), who_had_it(scope, given ? &*given : nullptr, &amended.replaces));
  add_halves(out.blocks, look::halves, figures_that_follow(both), verdicts_moved(both));
  append(out.blocks, where_changed(both));
  append(out.blocks, others_changed(both));
  return out;
}

} // namespace

content::Section changes(const Scope &scope) {
  const auto &source = scope.source;
  if (source.amended == nullptr) {
    const auto &given = scope.survey().amendment;
    return given ? reasons_alone(scope, *given) : content::Section{};
  }
  if (source.before == nullptr)
    return {};
  const Source earlier{.survey = source.before->survey,
                       .assessment = source.before->assessment,
                       .outlook = source.before->outlook,
                       .house = source.house,
                       .findings = source.findings,
                       .photos = {},
                       .inputs = {},
                       .tool = source.tool};
  return listed(scope, Scope{earlier, scope.plan, scope.number});
}

} // namespace strakebook::compose
