#include "strakebook/compose/compose.h"

#include <stdexcept>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/furniture.h"
#include "strakebook/compose/issue_words.h"
#include "strakebook/compose/labels.h"
#include "strakebook/compose/looks.h"

namespace strakebook::compose {

namespace {

/// It stands in corrected issues only, so that a section has the same number in every issue.
constexpr std::string_view unnumbered_section = "changes";

/// A section that a house adds in its own words.
content::Section own_words(const Scope &scope) {
  auto out = section_of(scope);
  for (const auto &text : scope.plan.text)
    out.blocks.push_back(paragraph(content::plain(text), look::text));
  return out;
}

content::Section chapter(const Scope &scope) {
  if (!scope.plan.text.empty())
    return own_words(scope);
  const auto found = chapters().find(scope.plan.id);
  if (found == chapters().end())
    throw std::out_of_range("no chapter writes the section \"" + scope.plan.id + "\"");
  return found->second(scope);
}

void set_metadata(content::Document &out, const Scope &scope) {
  const auto &survey = scope.survey();
  out.title = scope.say("document.title", {{"vessel", survey.vessel.name.text},
                                           {"number", survey.report.number.text},
                                           {"issue", std::to_string(survey.report.issue)}});
  out.author = survey.surveyor.name.text;
  out.subject = scope.say("document.subject");
  out.language = scope.wording().language;
  out.date = survey.report.issued ? base::iso(survey.report.issued->value) : std::string();
  out.creator = scope.source.tool;
}

} // namespace

content::Document compose(const Source &source) {
  content::Document out;
  const house::SectionPlan whole;
  const Scope report{source, whole, {}};
  int number = 0;
  for (const auto &plan : source.house.wording.sections) {
    const bool numbered = plan.id != unnumbered_section;
    const Scope scope{source, plan, numbered ? std::to_string(++number) : std::string()};
    auto section = chapter(scope);
    if (!section.blocks.empty())
      out.sections.push_back(std::move(section));
  }
  out.sections.back().blocks.push_back(
      content::Block{{}, {}, false, content::EndMark{end_words(report)}});
  out.furniture = furniture(report);
  out.labels = labels(report);
  out.names = names_of(report, out.sections);
  set_metadata(out, report);
  return out;
}

} // namespace strakebook::compose
