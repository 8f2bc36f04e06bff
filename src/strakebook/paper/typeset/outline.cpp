#include "strakebook/paper/typeset/outline.h"

#include <algorithm>

#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

using Of = content::Contents::Of;

class Gatherer {
public:
  void gather(const std::vector<content::Block> &blocks, const std::string &parent) {
    for (std::size_t i = 0; i < blocks.size(); ++i)
      std::visit([&, id = id_of(blocks[i], parent, i)](const auto &what) { take(what, id); }, blocks[i].what);
  }
  std::vector<ContentsLine> lines;

private:
  void take(const content::Heading &heading, const std::string &id) {
    if (!heading.in_contents)
      return;
    lines.push_back({Of::headings, heading.level, heading.number, heading.text, id});
    level_ = heading.level;
  }
  void take(const content::Table &table, const std::string &id) {
    if (!table.label.empty())
      lines.push_back({Of::tables, level_ + 1, table.label, table.caption, id});
  }
  void take(const content::Figure &figure, const std::string &id) {
    if (!figure.label.empty())
      lines.push_back({Of::figures, level_ + 1, figure.label, figure.caption, id});
  }
  void take(const content::Together &together, const std::string &id) { gather(together.blocks, id); }
  void take(const content::Columns &columns, const std::string &id) {
    for (std::size_t c = 0; c < columns.cells.size(); ++c)
      gather(columns.cells[c], child_id(id, c));
  }
  template <class T> void take(const T &, const std::string &) {}

  int level_ = 0; ///< of the last heading
};

} // namespace

std::string section_id(const content::Section &section, std::size_t index) {
  return section.id.empty() ? child_id("section", index) : section.id;
}

std::vector<ContentsLine> contents_of(const content::Document &document) {
  Gatherer found;
  for (std::size_t i = 0; i < document.sections.size(); ++i)
    found.gather(document.sections[i].blocks, section_id(document.sections[i], i));
  return std::move(found.lines);
}

std::string caption_title(const ContentsLine &line, const Context &context) {
  const std::string words = plain_text(line.text, context);
  std::size_t end = words.size();
  for (const auto *stop : {". ", ": ", "; ", ", ", "."})
    if (const auto at = words.find(stop); at != std::string::npos && (stop[1] != '\0' || at + 1 == words.size()))
      end = std::min(end, at);
  return words.substr(0, end);
}

std::vector<page::OutlineEntry> outline_of(const std::vector<ContentsLine> &contents,
                                           const Context &context) {
  std::vector<page::OutlineEntry> entries;
  for (const auto &line : contents) {
    const bool heading = line.kind == Of::headings;
    if (heading && line.level > 2)
      continue;
    const std::string words = heading ? plain_text(line.text, context) : caption_title(line, context);
    const int deepest = entries.empty() ? 1 : entries.back().level + 1;
    entries.push_back({std::min(line.level, deepest), line.number.empty() ? words : line.number + " " + words, line.target});
  }
  return entries;
}

} // namespace strakebook::typeset
