#include "strakebook/paper/output/pdf_structure.h"

#include <algorithm>
#include <fmt/format.h>
#include <span>

#include "strakebook/paper/output/pdf_number.h"
#include "strakebook/paper/output/pdf_number_tree.h"

namespace strakebook::output {

namespace {

using Kid = TagTree::Kid;

/// Acrobat's arrays end at 8,191 entries (PDF Reference 1.4, annex C); half of that leaves room.
constexpr std::size_t most_kids = 4'096;

std::string box_attribute(const base::Rect &box) {
  std::string text = "/A <</O /Layout /BBox [";
  for (base::Pt side : {box.at.x, box.at.y, box.right(), box.bottom()}) {
    append_number(text, side.v);
    text += ' ';
  }
  return text + "]>>\n";
}

std::string attributes(const page::Tag &tag) {
  std::string table;
  if (tag.heads != page::Heads::none)
    table += tag.heads == page::Heads::column ? " /Scope /Column" : " /Scope /Row";
  if (tag.across > 1)
    table += fmt::format(" /ColSpan {}", tag.across);
  if (!table.empty())
    return fmt::format("/A <</O /Table{}>>\n", table);
  return tag.numbered ? "/A <</O /List /ListNumbering /Decimal>>\n" : std::string();
}

class Writer {
public:
  Writer(PdfFile &file, std::vector<PdfDict> &pages, const std::vector<PdfDict> &links, const TagTree &tree)
      : file_(file), tree_(tree), parents_(tree.elements().size()) {
    for (const auto &page : pages)
      pages_.push_back(file.reference(page));
    for (const auto &link : links)
      links_.push_back(file.reference(link));
    for (const auto &marked : tree.marked())
      marked_.emplace_back(marked.size());
    link_elements_.resize(tree.links().size());
  }

  PdfDict written() {
    auto root = file_.indirect_dict();
    for (const auto &element : tree_.elements())
      for (std::size_t first = 0; first == 0 || first < element.kids.size(); first += most_kids) {
        if (first == 0)
          parts_.emplace_back();
        parts_.back().push_back(file_.indirect_dict());
      }
    parents_[TagTree::document].assign(parts_[TagTree::document].size(), file_.reference(root));
    for (std::size_t i = 0; i < tree_.elements().size(); ++i)
      write(i);
    auto kids = file_.array();
    for (const auto &part : parts_[TagTree::document])
      kids.put(part);
    root.name("Type", "StructTreeRoot").put("K", kids).put("ParentTree", parent_tree());
    root.number("ParentTreeNextKey", static_cast<int>(pages_.size() + links_.size()));
    if (!notes_.empty())
      root.put("IDTree", name_tree(file_, notes_));
    return root;
  }

private:
  /// An element comes after those around it, so its parents are known when its turn comes.
  void write(std::size_t index) {
    const auto &element = tree_.elements()[index];
    for (std::size_t part = 0; part < parts_[index].size(); ++part) {
      const auto self = file_.reference(parts_[index][part]);
      auto entries = fmt::format("/S /{}\n/P {}\n",
                                 element.tag ? structure_type(*element.tag) : "Document", parents_[index][part]);
      if (element.tag)
        entries += described(*element.tag, self);
      if (element.box)
        entries += box_attribute(*element.box);
      const auto first = std::min(part * most_kids, element.kids.size());
      const auto last = std::min(first + most_kids, element.kids.size());
      entries += kids({element.kids.data() + first, last - first}, self);
      parts_[index][part].entries(std::move(entries));
    }
  }

  std::string described(const page::Tag &tag, const std::string &self) {
    std::string entries = attributes(tag);
    if (!tag.spoken.empty())
      entries += fmt::format("/Alt {}\n", text_literal(tag.spoken));
    if (tag.role == page::Role::note) {
      const auto id = fmt::format("note-{:08}", notes_.size() + 1);
      entries += fmt::format("/ID ({})\n", id);
      notes_.emplace_back(id, self);
    }
    return entries;
  }

  std::string kids(std::span<const Kid> kids, const std::string &self) {
    if (kids.empty())
      return {};
    const auto marked = std::ranges::find(kids, Kid::Kind::marked, &Kid::kind);
    const int page = marked == kids.end() ? -1 : marked->page;
    std::string list;
    for (const auto &kid : kids)
      list += (list.empty() ? "" : " ") + written(kid, page, self);
    const auto of_page = page < 0 ? std::string() : fmt::format("/Pg {}\n", pages_[static_cast<std::size_t>(page)]);
    if (kids.size() == 1 && page >= 0) // most cells
      return fmt::format("{}/K {}\n", of_page, list);
    return fmt::format("{}/K [{}]\n", of_page, list);
  }

  std::string written(const Kid &kid, int page, const std::string &self) {
    const auto index = static_cast<std::size_t>(kid.index), at = static_cast<std::size_t>(kid.page);
    switch (kid.kind) {
    case Kid::Kind::element:
      return element(index, self);
    case Kid::Kind::marked:
      marked_[at][index] = self;
      return kid.page == page ? std::to_string(kid.index)
                              : fmt::format("<</Type /MCR /Pg {} /MCID {}>>", pages_[at], kid.index);
    case Kid::Kind::link:
      link_elements_[index] = self;
      return fmt::format("<</Type /OBJR /Pg {} /Obj {}>>", pages_[at], links_[index]);
    }
    return {};
  }

  std::string element(std::size_t index, const std::string &self) {
    std::string list;
    for (const auto &part : parts_[index]) {
      list += (list.empty() ? "" : " ") + file_.reference(part);
      parents_[index].push_back(self);
    }
    return list;
  }

  /// Pages first, then links: what structure_number counts on.
  PdfDict parent_tree() {
    std::vector<std::string> values;
    for (std::size_t page = 0; page < pages_.size(); ++page) {
      std::string list;
      if (page < marked_.size())
        for (const auto &element : marked_[page])
          list += (list.empty() ? "" : " ") + element;
      values.push_back("[" + list + "]");
    }
    values.insert(values.end(), link_elements_.begin(), link_elements_.end());
    return number_tree(file_, values);
  }

  PdfFile &file_;
  const TagTree &tree_;
  std::vector<std::string> pages_, links_;         ///< references
  std::vector<std::vector<PdfDict>> parts_;        ///< of each element
  std::vector<std::vector<std::string>> parents_;  ///< of each part: the reference to what holds it
  std::vector<std::vector<std::string>> marked_;   ///< by page and number: the element
  std::vector<std::string> link_elements_;
  std::vector<std::pair<std::string, std::string>> notes_; ///< id and reference, in the order of ids
};

} // namespace

std::string structure_type(const page::Tag &tag) {
  using page::Role;
  switch (tag.role) {
  case Role::section: return "Sect";
  case Role::group: return "Div";
  case Role::heading: return fmt::format("H{}", tag.level);
  case Role::paragraph: return "P";
  case Role::list: return "L";
  case Role::list_item: return "LI";
  case Role::label: return "Lbl";
  case Role::list_body: return "LBody";
  case Role::table: return "Table";
  case Role::table_head: return "THead";
  case Role::table_body: return "TBody";
  case Role::table_row: return "TR";
  case Role::head_cell: return "TH";
  case Role::cell: return "TD";
  case Role::caption: return "Caption";
  case Role::figure: return "Figure";
  case Role::note: return "Note";
  case Role::link: return "Link";
  case Role::contents: return "TOC";
  case Role::contents_item: return "TOCI";
  case Role::reference: return "Reference";
  case Role::span: return "Span";
  case Role::furniture: break;
  }
  return "Artifact";
}

int structure_number(std::size_t pages, int link) { return static_cast<int>(pages) + link; }

void add_structure(PdfFile &file, std::vector<PdfDict> &pages, const std::vector<PdfDict> &links, const TagTree &tree) {
  auto root = Writer(file, pages, links, tree).written();
  file.catalog().put("StructTreeRoot", root).put("MarkInfo", file.dict().boolean("Marked", true));
  for (std::size_t i = 0; i < pages.size(); ++i) {
    pages[i].number("StructParents", static_cast<int>(i));
    if (file.kind() == PdfKind::report) // the order of the tree for the tabulator key, from PDF 1.5 on
      pages[i].name("Tabs", "S");
  }
}

} // namespace strakebook::output
