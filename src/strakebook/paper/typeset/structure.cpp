#include "strakebook/paper/typeset/structure.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace strakebook::typeset {
namespace {

using page::Role;

constexpr int deepest = 6; // heading levels that a PDF knows

/// A section that is open at a block.
struct Open {
  page::TagPath path;
  int level = 0; ///< of its heading as the document writes it; 0: it has none yet
  int depth = 0; ///< headings from the document down to it
};

class Walker {
public:
  Structure structure;

  void add(const content::Section &section) {
    std::vector<Open> open{{element({}, {.role = Role::section}), 0, 0}};
    add(section.blocks, open);
  }

private:
  page::TagPath element(const page::TagPath &parent, page::Tag tag) {
    tag.key = ++count_;
    return page::under(parent, std::move(tag));
  }

  void add(const std::vector<content::Block> &blocks, std::vector<Open> &open) {
    for (const auto &block : blocks)
      structure[&block] = std::visit([&](const auto &what) { return tag_of(what, open); }, block.what);
  }

  page::TagPath tag_of(const content::Heading &heading, std::vector<Open> &open) {
    while (open.size() > 1 && open.back().level >= heading.level)
      open.pop_back();
    if (open.back().depth == 0)
      open.back() = {open.back().path, heading.level, 1};
    else
      open.push_back({element(open.back().path, {.role = Role::section}), heading.level, open.back().depth + 1});
    return element(open.back().path, {.role = Role::heading, .level = std::min(open.back().depth, deepest)});
  }

  page::TagPath tag_of(const content::List &list, std::vector<Open> &open) {
    return element(open.back().path, {.role = Role::list, .numbered = list.numbered});
  }

  page::TagPath tag_of(const content::Columns &columns, std::vector<Open> &open) {
    for (const auto &cell : columns.cells) {
      std::vector<Open> inside{{element(open.back().path, {.role = Role::group}), 0, open.back().depth}};
      add(cell, inside);
    }
    return open.back().path;
  }

  page::TagPath tag_of(const content::Together &together, std::vector<Open> &open) {
    add(together.blocks, open);
    return open.back().path;
  }

  page::TagPath tag_of(const content::Paragraph &, std::vector<Open> &open) { return one(Role::paragraph, open); }
  page::TagPath tag_of(const content::EndMark &, std::vector<Open> &open) { return one(Role::paragraph, open); }
  page::TagPath tag_of(const content::KeyValues &, std::vector<Open> &open) { return one(Role::list, open); }
  page::TagPath tag_of(const content::Contents &, std::vector<Open> &open) { return one(Role::contents, open); }
  page::TagPath tag_of(const content::Table &, std::vector<Open> &open) { return one(Role::group, open); }
  page::TagPath tag_of(const content::Figure &, std::vector<Open> &open) { return one(Role::group, open); }
  page::TagPath tag_of(const content::Photo &, std::vector<Open> &open) { return one(Role::group, open); }
  page::TagPath tag_of(const content::Rule &, std::vector<Open> &) { return {}; }
  page::TagPath tag_of(const content::Space &, std::vector<Open> &) { return {}; }
  page::TagPath tag_of(const content::PageBreak &, std::vector<Open> &) { return {}; }

  page::TagPath one(Role role, const std::vector<Open> &open) { return element(open.back().path, {.role = role}); }

  std::int64_t count_ = 0; ///< elements made
};

} // namespace

Structure structure_of(const content::Document &document) {
  Walker walker;
  for (const auto &section : document.sections)
    walker.add(section);
  return std::move(walker.structure);
}

} // namespace strakebook::typeset
