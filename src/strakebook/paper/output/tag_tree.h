#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/page/tag.h"

namespace strakebook::output {

/// The elements that the tags of a document's items make, each once, in the order in which they are first asked for. The
/// tags must outlive the tree.
class TagTree {
public:
  static constexpr int document = 0;

  /// What an element holds, in order.
  struct Kid {
    enum class Kind { element, marked, link } kind;
    int index; ///< of the element; of the marked content on its page; of the link
    int page;  ///< of marked content and links
  };

  struct Element {
    const page::Tag *tag; ///< null: the document itself
    int parent;
    std::vector<Kid> kids;
    std::optional<base::Rect> box; ///< figures: what they cover of their page, y up from its foot
  };

  /// The element of a path that is neither furniture nor decoration.
  int element_of(const page::TagPath &tag);

  /// The next piece of marked content of a page, which belongs to `element`: its number on that page.
  int add_marked(int element, int page);

  /// A part of a page that a figure covers.
  void cover(int element, const base::Rect &part);

  /// The next link of the document: its number.
  int add_link(int element, int page);

  const std::vector<Element> &elements() const { return elements_; }
  /// By page: the elements of its marked content. By link: its element.
  const std::vector<std::vector<int>> &marked() const { return marked_; }
  const std::vector<int> &links() const { return links_; }

private:
  struct Name {
    int parent;
    page::Role role;
    std::int64_t key;
    bool operator==(const Name &) const = default;
  };
  struct Hash {
    std::size_t operator()(const Name &name) const;
  };

  int made(const page::Tag &tag, int parent);

  std::vector<Element> elements_{{nullptr, document, {}, {}}};
  std::vector<std::vector<int>> marked_;
  std::vector<int> links_;
  std::unordered_map<Name, int, Hash> by_name_;
  std::unordered_map<const page::Tag *, int> by_tag_;
};

} // namespace strakebook::output
