#include "strakebook/paper/typeset/outline.h"

#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

void gather(const std::vector<content::Block> &blocks, const std::string &parent,
            std::vector<ContentsLine> &out) {
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    const auto &block = blocks[i];
    const std::string id = id_of(block, parent, i);
    if (const auto *heading = std::get_if<content::Heading>(&block.what)) {
      if (heading->in_contents)
        out.push_back({heading->level, heading->number, heading->text, id});
    } else if (const auto *together = std::get_if<content::Together>(&block.what)) {
      gather(together->blocks, id, out);
    } else if (const auto *columns = std::get_if<content::Columns>(&block.what)) {
      for (std::size_t c = 0; c < columns->cells.size(); ++c)
        gather(columns->cells[c], child_id(id, c), out);
    }
  }
}

} // namespace

std::string section_id(const content::Section &section, std::size_t index) {
  return section.id.empty() ? child_id("section", index) : section.id;
}

std::vector<ContentsLine> contents_of(const content::Document &document) {
  std::vector<ContentsLine> lines;
  for (std::size_t i = 0; i < document.sections.size(); ++i)
    gather(document.sections[i].blocks, section_id(document.sections[i], i), lines);
  return lines;
}

std::vector<page::OutlineEntry> outline_of(const std::vector<ContentsLine> &contents,
                                           const Context &context) {
  std::vector<page::OutlineEntry> entries;
  for (const auto &line : contents) {
    if (line.level > 2)
      continue;
    const std::string words = plain_text(line.text, context);
    entries.push_back({entries.empty() ? 1 : line.level,
                       line.number.empty() ? words : line.number + " " + words, line.target});
  }
  return entries;
}

} // namespace strakebook::typeset
