#include "strakebook/compose/voice.h"

namespace strakebook::compose {

content::Block block(decltype(content::Block::what) what, std::string id, base::SourceSpan origin) {
  return {.id = std::move(id), .origin = std::move(origin), .changed = false, .what = std::move(what)};
}

content::Section section_of(const Scope &scope) {
  const auto &plan = scope.plan;
  content::Section out{
      .id = section_id(plan.id), .master = plan.master, .starts_page = plan.starts_page, .blocks = {}};
  content::Heading head{
      .level = 1, .number = scope.number, .text = content::plain(plan.title), .text_style = {}};
  out.blocks.push_back(block(std::move(head), section_id(plan.id)));
  return out;
}

content::Block sub_heading(const Scope &scope, Numbering &numbering, std::string text, std::string id) {
  content::Heading head{.level = 2,
                        .number = next_head(scope, numbering),
                        .text = content::plain(std::move(text)),
                        .text_style = {}};
  return block(std::move(head), std::move(id));
}

content::Block item_heading(std::string text, std::string id) {
  content::Heading head{.level = 4,
                        .number = {},
                        .text = content::plain(std::move(text)),
                        .in_contents = false,
                        .text_style = {}};
  return block(std::move(head), std::move(id));
}

content::Block paragraph(Inlines text, std::string text_style) {
  return block(content::Paragraph{std::move(text), std::move(text_style), {}});
}

void append(std::vector<content::Block> &to, std::vector<content::Block> more) {
  for (auto &one : more)
    to.push_back(std::move(one));
}

content::Cell cell(Inlines text) { return {.text = std::move(text), .glyph = {}, .sign = {}, .spoken = {}}; }
content::Cell cell(std::string text) { return cell(content::plain(std::move(text))); }

} // namespace strakebook::compose
