#include "strakebook/compose/chapters.h"
#include "strakebook/compose/checks.h"
#include "strakebook/compose/looks.h"

/// Safety and jurisdiction: the house's cautions, which a survey can neither reword nor drop.
namespace strakebook::compose {

using content::operator+;

namespace {

std::vector<content::Block> caution(const Scope &scope, const house::Caution &one) {
  Inlines text = content::strong(one.title + ". ") + content::plain(one.text);
  content::Block left =
      block(content::Paragraph{std::move(text), look::text, look::caution_bar}, "caution/" + one.id);
  const std::string source = scope.say("safety.source", {{"source", one.source}});
  return {block(content::Columns{look::text_side,
                                 {{std::move(left)}, {paragraph(content::soft(source), look::side)}}})};
}

} // namespace

content::Section safety(const Scope &scope) {
  auto out = section_of(scope);
  for (const auto &one : scope.wording().cautions)
    if (applies(scope, one))
      append(out.blocks, caution(scope, one));
  out.blocks.push_back(item_heading(scope.say("safety.jurisdiction")));
  for (const auto &text : scope.wording().jurisdiction)
    out.blocks.push_back(paragraph(content::plain(text), look::text));
  return out;
}

} // namespace strakebook::compose
