#include "strakebook/compose/appendix_lists.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/photo_words.h"
#include "strakebook/compose/tables.h"

/// Appendices: what was read to make this report, what was left out or acknowledged, the rules applied, and
/// the terms.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string kind_word(const Scope &scope, const std::string &kind) {
  if (kind == "survey")
    return scope.say("appendices.kind-survey");
  if (kind == "readings")
    return scope.say("appendices.kind-readings");
  if (kind == "earlier readings")
    return scope.say("comparison.input-kind");
  if (kind == "layout")
    return scope.say("appendices.kind-layout");
  return kind;
}

std::string count_or_dash(const Scope &scope, int count) {
  return count > 0 ? std::to_string(count) : scope.say("voice.dash");
}

content::Row file_row(const Scope &scope, const base::InputFile &file) {
  return row({cell(file.path), cell(std::to_string(file.bytes)), cell(count_or_dash(scope, file.lines)),
              cell(count_or_dash(scope, file.marks)), cell(in_fours(file.digest))});
}

/// Files by kind, in the order in which the kinds were read: none is left out but the photographs, which have a register.
std::vector<content::RowGroup> by_kind(const Scope &scope) {
  std::map<std::string, std::size_t> place;
  std::vector<content::RowGroup> groups;
  for (const auto &file : scope.source.inputs) {
    if (file.kind == "photograph")
      continue;
    const auto [found, fresh] = place.emplace(file.kind, groups.size());
    if (fresh)
      groups.push_back({.head = content::strong(kind_word(scope, file.kind)), .id = {}, .rows = {}});
    groups[found->second].rows.push_back(file_row(scope, file));
  }
  return groups;
}

Inlines sources_caption(const Scope &scope) {
  const base::Fill tool{"tool", scope.source.tool};
  if (scope.survey().photos.empty())
    return plain(scope.say("appendices.sources-caption", {tool}));
  return scope.tell("appendices.sources-and-photographs",
                    {{"sources", plain(scope.say("appendices.sources-caption", {tool}))}, {"table", label_link("table/photographs")}});
}

content::Block source_digest(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(
      scope, numbering, look::small_table,
      sources_caption(scope),
      {column(scope.say("appendices.file")), column(scope.say("appendices.bytes"), Align::right),
       column(scope.say("appendices.lines"), Align::right),
       column(scope.say("appendices.marks"), Align::right), stretching(scope.say("appendices.digest"))});
  table.groups = by_kind(scope);
  return block(std::move(table), "table/sources");
}

/// Terms run on, in two columns: they are looked up, not read.
content::Block glossary(const Scope &scope) {
  const auto &terms = scope.wording().glossary;
  std::vector<Inlines> halves(2);
  std::size_t all = 0, set = 0; // letters
  for (const auto &[term, meaning] : terms)
    all += term.size() + meaning.size();
  for (const auto &[term, meaning] : terms) {
    auto &half = halves[2 * set < all ? 0 : 1];
    set += term.size() + meaning.size();
    half = std::move(half) +
           scope.tell("appendices.term", {{"term", content::strong(term)}, {"meaning", plain(meaning)}});
  }
  return block(content::Columns{
      look::halves,
      {{paragraph(std::move(halves[0]), look::note)}, {paragraph(std::move(halves[1]), look::note)}}});
}

} // namespace

content::Section appendices(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  auto &to = out.blocks;
  to.push_back(
      paragraph(scope.tell("appendices.raw-text", {{"page", page_link(section_id("results"))}}), look::lead));
  to.push_back(item_heading(scope.say("appendices.sources")));
  to.push_back(source_digest(scope, numbering));
  append(to, exclusions(scope, numbering));
  append(to, acknowledged(scope, numbering));
  append(to, quantities(scope, numbering));
  to.push_back(item_heading(scope.say("appendices.rules")));
  to.push_back(rules_used(scope));
  to.back().id = "appendix/rules";
  to.push_back(item_heading(scope.say("appendices.glossary")));
  to.push_back(glossary(scope));
  return out;
}

} // namespace strakebook::compose
