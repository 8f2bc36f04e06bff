#include "strakebook/compose/chapters.h"
#include "strakebook/compose/checks.h"
#include "strakebook/compose/looks.h"

/// Safety and jurisdiction: the house's cautions, which a survey can neither reword nor drop.
namespace strakebook::compose {

using content::operator+;

namespace {

content::Block caution(const Scope &scope, const house::Caution &one) {
  const std::string source = scope.say("safety.source", {{"source", one.source}});
  Inlines text = content::strong(one.title + ". ") + content::plain(one.text + " ") + content::soft(source);
  return block(content::Paragraph{std::move(text), look::caution, look::caution_bar}, "caution/" + one.id);
}

/// Side by side, so that all of them are seen at once; read down the left column, then the right.
content::Block side_by_side(std::vector<content::Block> all) {
  const auto half = static_cast<std::ptrdiff_t>((all.size() + 1) / 2);
  std::vector<content::Block> left(all.begin(), all.begin() + half), right(all.begin() + half, all.end());
  return block(content::Columns{look::halves, {std::move(left), std::move(right)}});
}

} // namespace

content::Section safety(const Scope &scope) {
  auto out = section_of(scope);
  std::vector<content::Block> all;
  for (const auto &one : scope.wording().cautions)
    if (applies(scope, one))
      all.push_back(caution(scope, one));
  out.blocks.push_back(side_by_side(std::move(all)));
  out.blocks.push_back(item_heading(scope.say("safety.jurisdiction")));
  for (const auto &text : scope.wording().jurisdiction)
    out.blocks.push_back(paragraph(content::plain(text), look::text));
  return out;
}

} // namespace strakebook::compose
