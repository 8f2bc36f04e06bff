#include <algorithm>
#include <iterator>
#include <map>

#include "strakebook/compose/cautions.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/checks.h"
#include "strakebook/compose/looks.h"

/// Safety and jurisdiction: the house's cautions, which a survey can neither reword nor drop.
namespace strakebook::compose {

using content::operator+;

namespace {

/// The source that most of the cautions share, said once for all of them; empty where none is shared.
std::string usual_source(const std::vector<house::Caution> &cautions) {
  std::map<std::string, int> counted;
  for (const auto &one : cautions)
    ++counted[one.source];
  const auto most = std::ranges::max_element(counted, {}, [](const auto &entry) { return entry.second; });
  return most == counted.end() || most->second < 2 ? std::string() : most->first;
}

content::Block caution(const Scope &scope, const house::Caution &one, const std::string &usual) {
  Inlines text = content::strong(one.title + ". ") + content::plain(one.text);
  if (one.source != usual)
    text = text + content::soft(" " + scope.say("safety.source", {{"source", one.source}}));
  return block(content::Paragraph{std::move(text), look::caution, look::caution_bar}, "caution/" + one.id);
}

/// Side by side, so that all of them are seen at once; read down the left column, then the right.
content::Block side_by_side(std::vector<content::Block> all) {
  const auto half = static_cast<std::ptrdiff_t>((all.size() + 1) / 2);
  std::vector<content::Block> left(all.begin(), all.begin() + half), right(all.begin() + half, all.end());
  return block(content::Columns{look::halves, {std::move(left), std::move(right)}});
}

} // namespace

std::vector<content::Block> cautions(const Scope &scope) {
  std::vector<content::Block> out;
  std::vector<house::Caution> shown;
  std::ranges::copy_if(scope.wording().cautions, std::back_inserter(shown), [&](const auto &one) { return applies(scope, one); });
  const std::string usual = usual_source(shown);
  if (!usual.empty())
    out.push_back(paragraph(content::plain(scope.say("safety.usual-source", {{"source", usual}})), look::lead));
  std::vector<content::Block> all;
  for (const auto &one : shown)
    all.push_back(caution(scope, one, usual));
  out.push_back(side_by_side(std::move(all)));
  return out;
}

content::Section safety(const Scope &scope) {
  auto out = section_of(scope);
  append(out.blocks, cautions(scope));
  out.blocks.push_back(item_heading(scope.say("safety.jurisdiction")));
  for (const auto &text : scope.wording().jurisdiction)
    out.blocks.push_back(paragraph(content::plain(text), look::text));
  return out;
}

} // namespace strakebook::compose
