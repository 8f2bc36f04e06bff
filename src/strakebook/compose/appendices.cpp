#include "strakebook/compose/appendix_lists.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Appendices: what was read to make this report, what was left out or acknowledged, the rules applied, and
/// the terms.
namespace strakebook::compose {

using content::plain;

namespace {

/// Digests are read aloud and compared by eye: groups of four.
std::string in_fours(std::string_view digest) {
  std::string out;
  for (std::size_t i = 0; i < digest.size(); i += 4) {
    if (i > 0)
      out += ' ';
    out += digest.substr(i, 4);
  }
  return out;
}

std::string kind_word(const Scope &scope, const base::InputFile &file) {
  if (file.kind == "survey")
    return scope.say("appendices.kind-survey");
  if (file.kind == "readings")
    return scope.say("appendices.kind-readings");
  if (file.kind == "photograph")
    return scope.say("appendices.kind-photograph");
  return scope.say("appendices.kind-layout");
}

std::string count_or_dash(const Scope &scope, int count) {
  return count > 0 ? std::to_string(count) : scope.say("voice.dash");
}

content::Block source_digest(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, look::small_table,
                              scope.tell("appendices.sources-caption", {{"tool", plain(scope.source.tool)}}),
                              {column(scope.say("appendices.kind")), stretching(scope.say("appendices.file")),
                               column(scope.say("appendices.bytes"), Align::right),
                               column(scope.say("appendices.lines"), Align::right),
                               column(scope.say("appendices.marks"), Align::right),
                               stretching(scope.say("appendices.digest"))});
  std::vector<content::Row> rows;
  for (const auto &file : scope.source.inputs)
    rows.push_back(row({cell(kind_word(scope, file)), cell(file.path), cell(std::to_string(file.bytes)),
                        cell(count_or_dash(scope, file.lines)), cell(count_or_dash(scope, file.marks)),
                        cell(in_fours(file.digest))}));
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/sources");
}

content::Block glossary(const Scope &scope) {
  Entries entries;
  for (const auto &[term, meaning] : scope.wording().glossary)
    add(entries, term, plain(meaning));
  return keys(std::move(entries), look::plain_keys);
}

} // namespace

content::Section appendices(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  auto &to = out.blocks;
  to.push_back(sub_heading(scope, numbering, scope.say("appendices.raw")));
  to.push_back(
      paragraph(scope.tell("appendices.raw-text", {{"page", page_link(section_id("results"))}}), look::text));
  to.push_back(sub_heading(scope, numbering, scope.say("appendices.sources")));
  to.push_back(source_digest(scope, numbering));
  to.push_back(sub_heading(scope, numbering, scope.say("appendices.exclusions")));
  append(to, exclusions(scope, numbering));
  to.push_back(sub_heading(scope, numbering, scope.say("appendices.acknowledged")));
  append(to, acknowledged(scope, numbering));
  to.push_back(sub_heading(scope, numbering, scope.say("appendices.rules")));
  to.push_back(rules_used(scope));
  to.push_back(sub_heading(scope, numbering, scope.say("appendices.glossary")));
  to.push_back(glossary(scope));
  return out;
}

} // namespace strakebook::compose
