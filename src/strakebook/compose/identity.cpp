#include "strakebook/compose/answer_parts.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/issue_words.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"

/// This report: its particulars, who may hold it, its contents, and where each zone is found.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

Block particulars(const Scope &scope) {
  const auto &s = scope.survey();
  Entries entries;
  add(entries, scope.say("identity.number"), answer_to(scope, s.report.number));
  const base::Fill issue{"issue", std::to_string(s.report.issue)}, state{"state", state_word(scope, s.report.state)};
  add(entries, scope.say("identity.issue"),
      plain(issued(scope) ? scope.say("issued.issue-state", {issue, state}) : scope.say("identity.issue-state", {issue, state})));
  if (scope.source.amended != nullptr)
    add(entries, scope.say("identity.supersedes"), plain(past_issue_words(scope, scope.source.amended->replaces)));
  else
    add_answer(scope, entries, scope.say("identity.supersedes"), s.report.supersedes);
  add_date(scope, entries, scope.say("identity.inspected"), s.report.inspected);
  add_date(scope, entries, issued(scope) ? scope.say("issued.dated") : scope.say("identity.issued"), s.report.issued);
  add_answer(scope, entries, scope.say("identity.place"), s.report.place);
  add_answer(scope, entries, scope.say("identity.client"), s.instructions.client);
  add_answer(scope, entries, scope.say("identity.insurer"), s.report.insurer_reference);
  add_answer(scope, entries, scope.say("identity.surveyor"), s.surveyor.name);
  add_answer(scope, entries, scope.say("identity.qualification"), s.surveyor.qualification);
  add_answer(scope, entries, scope.say("identity.body"), s.surveyor.body);
  add(entries, scope.say("identity.firm"), plain(scope.wording().firm));
  return keys(std::move(entries), look::cover_keys, 2);
}

std::vector<Block> recipients(const Scope &scope) {
  std::vector<Block> out = {eyebrow(scope.say("identity.recipients"))};
  if (scope.survey().instructions.readers.empty())
    out.push_back(paragraph(not_given(scope), look::side));
  for (const auto &reader : scope.survey().instructions.readers)
    out.push_back(paragraph(prose(scope, reader.text), look::side));
  const auto &sent = scope.survey().recipients;
  if (!sent.empty())
    out.push_back(eyebrow(scope.say("issued.recipients")));
  for (const auto &recipient : sent)
    out.push_back(paragraph(recipient_words(scope, recipient), look::side));
  return out;
}

Block sign_line(const Scope &scope, assess::Verdict verdict, std::string words) {
  return paragraph(verdict_sign(scope, verdict) + plain(std::move(words)), look::side);
}

std::vector<Block> signs(const Scope &scope) {
  using assess::Verdict;
  return {eyebrow(scope.say("identity.signs")),
          sign_line(scope, Verdict::meets, scope.say("identity.sign-meets")),
          sign_line(scope, Verdict::too_close, scope.say("identity.sign-too-close")),
          sign_line(scope, Verdict::falls_short, scope.say("identity.sign-falls-short")),
          sign_line(scope, Verdict::not_applicable, scope.say("identity.sign-not-applicable"))};
}

/// Who holds it, how a copy is checked, and the signs, beside each other.
Block how_to_read(const Scope &scope) {
  std::vector<Block> copy = {eyebrow(scope.say("identity.copy")), paragraph(plain(scope.say("identity.copy-text")), look::side)};
  if (issued(scope))
    copy.push_back(paragraph(scope.tell("issued.copy-text", {{"digest", plain(untorn(scope.source.issued_digest))}}), look::side));
  return block(content::Columns{"strakes", {recipients(scope), std::move(copy), signs(scope)}});
}

std::string rows_in(const Scope &scope, std::string_view zone) {
  std::vector<std::string> ids;
  for (const auto &line : scope.survey().rows)
    if (line.zone == zone)
      ids.push_back(line.id);
  return base::joined(ids, " ");
}

std::string items_in(const Scope &scope, const std::string &zone) {
  std::vector<std::string> ids;
  for (const auto &item : scope.survey().recommendations)
    for (const auto &touched : zones_of(scope, item.at))
      if (touched == zone)
        ids.push_back(item.id);
  return ids.empty() ? scope.say("identity.no-items") : base::joined(ids, scope.say("voice.list-between"));
}

Block zone_finder(const Scope &scope) {
  auto table = unlabelled_table(
      look::summary_table,
      {column({}), stretching(scope.say("identity.zone")), column(scope.say("identity.rows")),
       column(scope.say("identity.read"), Align::right), column(scope.say("identity.map"), Align::right),
       column(scope.say("identity.results"), Align::right),
       column(scope.say("identity.decision"), Align::right), column(scope.say("identity.items"))});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.assessment().zones) {
    const std::string read = scope.say("identity.read-of", {{"read", std::to_string(zone.count.read)},
                                                            {"planned", std::to_string(zone.count.planned)}});
    rows.push_back(row({cell(content::strong(zone.zone)), cell(zone_name(scope, zone.zone)),
                        cell(rows_in(scope, zone.zone)), cell(read), cell(page_link(section_id("map"))),
                        cell(page_link(section_id("results"))), cell(page_link(zone_id(zone.zone))),
                        cell(items_in(scope, zone.zone))}));
  }
  const auto &all = scope.assessment().coverage;
  if (rows.size() > 1)
    rows.push_back(total_row(rows.front(), {scope.say("results.all"), "", "", scope.say("identity.read-of", {{"read", std::to_string(all.read)},
                                                                                               {"planned", std::to_string(all.planned)}})}));
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/zones");
}

/// Tables or figures, in the small type of things that are looked up.
Block listing(content::Contents::Of of) { return block(content::Contents{.depth = 0, .of = of}); }

} // namespace

content::Section identity(const Scope &scope) {
  auto out = section_of(scope);
  out.blocks.push_back(particulars(scope));
  out.blocks.push_back(block(content::Rule{look::rule}));
  out.blocks.push_back(item_heading(scope.say("identity.contents")));
  out.blocks.push_back(block(content::Contents{2}));
  out.blocks.push_back(how_to_read(scope));
  out.blocks.push_back(item_heading(scope.say("identity.tables")));
  out.blocks.push_back(listing(content::Contents::Of::tables));
  out.blocks.push_back(listing(content::Contents::Of::figures));
  out.blocks.push_back(item_heading(scope.say("identity.find")));
  out.blocks.push_back(zone_finder(scope));
  return out;
}

} // namespace strakebook::compose
