#include "strakebook/compose/unlinked.h"

namespace strakebook::compose {

namespace {

void unlink(std::vector<content::Block> &blocks);

void unlink(Inlines &text) {
  Inlines out;
  for (auto &one : text) {
    const auto *reference = std::get_if<content::Reference>(&one);
    if (reference == nullptr)
      out.push_back(std::move(one));
    else if (!reference->shown.empty())
      out.push_back(content::Text{reference->shown, reference->emphasis});
  }
  text = std::move(out);
}

void unlink(content::Heading &heading) { unlink(heading.text); }
void unlink(content::Paragraph &paragraph) { unlink(paragraph.text); }
void unlink(content::EndMark &end) { unlink(end.text); }

void unlink(content::KeyValues &keys) {
  for (auto &entry : keys.entries)
    unlink(entry.value);
}

void unlink(content::List &list) {
  for (auto &item : list.items)
    unlink(item);
}

void unlink(content::Table &table) {
  unlink(table.caption);
  for (auto &group : table.groups) {
    unlink(group.head);
    for (auto &row : group.rows)
      for (auto &cell : row.cells)
        unlink(cell.text);
  }
  for (auto &note : table.notes)
    unlink(note);
}

void unlink(content::Photo &photo) {
  unlink(photo.placeholder);
  unlink(photo.caption);
}

void unlink(content::Columns &columns) {
  for (auto &cell : columns.cells)
    unlink(cell);
}

void unlink(content::Together &together) { unlink(together.blocks); }

template <class T> void unlink(T &) {} // a rule, a space, a figure: no letter's figure leads anywhere

void unlink(std::vector<content::Block> &blocks) {
  for (auto &one : blocks)
    std::visit([](auto &what) { unlink(what); }, one.what);
}

} // namespace

void unlink(content::Document &document) {
  for (auto &section : document.sections)
    unlink(section.blocks);
}

} // namespace strakebook::compose
