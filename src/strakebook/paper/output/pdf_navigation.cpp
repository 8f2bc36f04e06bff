#include "strakebook/paper/output/pdf_navigation.h"

#include <fmt/format.h>
#include <iterator>
#include <optional>
#include <stdexcept>

#include "strakebook/paper/output/pdf_structure.h"

namespace strakebook::output {

namespace {

/// What destinations are made from.
struct Targets {
  PdfFile &file;
  std::vector<PdfDict> &pages;
  const page::Document &document;
  Places places = places_of(document);

  PdfArray destination(const Place &place) const {
    const auto height = document.pages[place.page].size.height;
    return file.array()
        .put(pages[place.page])
        .name("XYZ")
        .real(place.at.x.v)
        .real((height - place.at.y).v)
        .null();
  }

  PdfArray destination(const std::string &id, const char *from) const {
    const auto found = places.find(id);
    if (found == places.end())
      throw std::logic_error(fmt::format("{} leads to \"{}\", which is nowhere", from, id));
    return destination(found->second);
  }
};

PdfDict annotation(const Targets &targets, const page::Link &link, base::Pt sheet_height) {
  constexpr int printed = 4; // ISO 32000-1, table 165
  auto box = targets.file.array();
  box.real(link.box.at.x.v).real((sheet_height - link.box.bottom()).v);
  box.real(link.box.right().v).real((sheet_height - link.box.at.y).v);
  auto made = targets.file.indirect_dict();
  if (!link.said.empty())
    made.text("Contents", link.said);
  return made.name("Type", "Annot")
      .name("Subtype", "Link")
      .put("Rect", box)
      .put("Border", targets.file.array().number(0).number(0).number(0))
      .number("F", printed)
      .put("Dest", targets.destination(link.target, "a link"));
}

void add_links(const Targets &targets, std::size_t page_index, TagTree &tree, std::vector<PdfDict> &links) {
  const auto &page = targets.document.pages[page_index];
  std::optional<PdfArray> annotations;
  for (const auto &item : page.items) {
    const auto *link = std::get_if<page::Link>(&item.what);
    if (!link)
      continue;
    if (!annotations)
      annotations = targets.file.array();
    auto made = annotation(targets, *link, page.size.height);
    const int number = tree.add_link(tree.element_of(item.tag), static_cast<int>(page_index));
    annotations->put(made.number("StructParent", structure_number(targets.pages.size(), number)));
    links.push_back(made);
  }
  if (annotations)
    targets.pages[page_index].put("Annots", *annotations);
}

/// A bookmark with its place in the tree, as indices into the list of bookmarks; 0 is the root.
struct Bookmark {
  PdfDict object;
  std::size_t parent = 0, previous = 0, first = 0, last = 0;
  int children = 0;
};

std::vector<Bookmark> bookmark_tree(const Targets &targets) {
  std::vector<Bookmark> tree{{targets.file.indirect_dict()}};
  std::vector<std::size_t> open{0}; // the last bookmark of each level down to the current one
  for (const auto &entry : targets.document.outline) {
    if (entry.level < 1 || static_cast<std::size_t>(entry.level) > open.size())
      throw std::logic_error(fmt::format("the bookmark \"{}\" skips a level", entry.title));
    open.resize(static_cast<std::size_t>(entry.level));
    const auto self = tree.size(), parent = open.back();
    tree.push_back({targets.file.indirect_dict(), parent, tree[parent].last});
    auto &above = tree[parent];
    if (above.children++ == 0)
      above.first = self;
    above.last = self;
    open.push_back(self);
    tree[self].object.text("Title", entry.title).put("Dest", targets.destination(entry.target, "a bookmark"));
  }
  return tree;
}

/// The outermost bookmarks are seen at first; the others are folded.
void add_outline(const Targets &targets) {
  if (targets.document.outline.empty())
    return;
  auto tree = bookmark_tree(targets);
  for (std::size_t i = 1; i < tree.size(); ++i) {
    auto &mark = tree[i];
    mark.object.put("Parent", tree[mark.parent].object);
    if (mark.previous == 0)
      continue;
    mark.object.put("Prev", tree[mark.previous].object);
    tree[mark.previous].object.put("Next", mark.object);
  }
  for (auto &mark : tree) {
    if (mark.children == 0)
      continue;
    mark.object.put("First", tree[mark.first].object).put("Last", tree[mark.last].object);
    mark.object.number("Count", &mark == &tree.front() ? mark.children : -mark.children);
  }
  tree.front().object.name("Type", "Outlines");
  targets.file.catalog().put("Outlines", tree.front().object).name("PageMode", "UseOutlines");
}

/// The name tree of destinations, sorted, in leaves that stay well within the sizes readers accept.
void add_names(const Targets &targets) {
  constexpr std::ptrdiff_t leaf_size = 256;
  const auto &places = targets.places;
  if (places.empty())
    return;
  auto leaves = targets.file.array();
  for (auto first = places.begin(); first != places.end();) {
    auto names = targets.file.array();
    auto last = first, next = first;
    for (std::ptrdiff_t i = 0; i < leaf_size && next != places.end(); ++i, last = next++)
      names.bytes(next->first).put(targets.destination(next->second));
    auto leaf = targets.file.indirect_dict();
    leaf.put("Limits", targets.file.array().bytes(first->first).bytes(last->first)).put("Names", names);
    leaves.put(leaf);
    first = next;
  }
  targets.file.names().put("Dests", targets.file.indirect_dict().put("Kids", leaves));
}

/// 1, 2, 3, as the foot prints them.
void add_page_labels(PdfFile &file) {
  auto plain = file.dict().name("S", "D");
  file.catalog().put("PageLabels", file.dict().put("Nums", file.array().number(0).put(plain)));
}

} // namespace

Places places_of(const page::Document &document) {
  Places places;
  for (std::size_t i = 0; i < document.pages.size(); ++i)
    for (const auto &item : document.pages[i].items)
      if (const auto *anchor = std::get_if<page::Anchor>(&item.what))
        places.try_emplace(item.id, Place{i, anchor->at});
  return places;
}

std::vector<PdfDict> add_navigation(PdfFile &file, std::vector<PdfDict> &pages, const page::Document &document,
                                    TagTree &tree) {
  const Targets targets{file, pages, document};
  std::vector<PdfDict> links;
  for (std::size_t i = 0; i < pages.size(); ++i)
    add_links(targets, i, tree, links);
  add_outline(targets);
  add_names(targets);
  add_page_labels(file);
  return links;
}

} // namespace strakebook::output
