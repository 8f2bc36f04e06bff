#include "strakebook/report/composing.h"

#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/paper/typeset/typeset.h"
#include "strakebook/report/characters.h"

namespace strakebook {

compose::Source source_of(const Case &the_case, const survey::Survey &told, const base::Diagnostics &findings) {
  return {.survey = told,
          .assessment = the_case.assessment,
          .outlook = the_case.outlook,
          .house = the_case.house,
          .findings = findings,
          .photos = the_case.photos,
          .inputs = the_case.inputs,
          .tool = tool_name(),
          .issued_digest = the_case.issued_digest,
          .past = the_case.past,
          .amended = the_case.amended ? &*the_case.amended : nullptr};
}

std::optional<page::Document> set_blocks(const content::Document &blocks, const Case &the_case, const Resources &resources, base::Diagnostics &sink) {
  const auto fonts = typeset::FontSet::load(resources.fonts, the_case.house.style.faces, sink);
  const auto hyphenation = typeset::Hyphenation::load(resources.fonts, the_case.house.wording.language, sink);
  if (!fonts || !hyphenation || !sink.ok()) return std::nullopt;
  check_characters(the_case.survey, *fonts, sink);
  if (!sink.ok()) return std::nullopt;
  base::Diagnostics setting;
  auto pages = typeset::typeset(blocks, the_case.house.style, *fonts, *hyphenation, setting);
  for (base::Diagnostic found : setting.all()) {
    if (found.span.line == 0) found.span = the_case.survey.span;
    sink.add(std::move(found));
  }
  if (!sink.ok()) return std::nullopt;
  return pages;
}

} // namespace strakebook
