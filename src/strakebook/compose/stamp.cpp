#include "strakebook/compose/stamp.h"

#include "strakebook/compose/furniture.h"
#include "strakebook/compose/letter_looks.h"

namespace strakebook::compose {

namespace {

std::vector<content::Block> band(const Scope &scope) {
  const auto &report = scope.survey().report;
  Inlines words = scope.tell("stamp.words", {{"number", content::plain(report.number.text)},
                                             {"old", content::plain(std::to_string(scope.source.amended->replaces.issue))},
                                             {"new", content::plain(std::to_string(report.issue))},
                                             {"date", report.issued ? content::plain(date(scope, report.issued->value)) : not_given(scope)}});
  return {paragraph(std::move(words), look::stamp)};
}

} // namespace

content::Document stamp(const Source &source) {
  const house::SectionPlan none;
  const Scope scope{source, none, {}};
  auto blocks = band(scope);
  blocks.push_back(block(content::Space{look::stamp_between}));
  append(blocks, band(scope));
  content::Document out;
  out.sections.push_back({.id = {}, .master = look::stamp_master, .blocks = std::move(blocks)});
  out.labels = labels(scope);
  out.title = scope.say("stamp.title");
  out.language = scope.wording().language;
  out.creator = source.tool;
  return out;
}

} // namespace strakebook::compose
