#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

/// What an item is in the structure of the document, for readers who do not see the page.
namespace strakebook::page {

enum class Role {
  section,       ///< a section or sub-section with its heading
  group,         ///< blocks that belong together: a figure with its caption, a column beside the text
  heading,
  paragraph,
  list,
  list_item,
  label,         ///< the number or name of a list item
  list_body,     ///< what it says
  table,
  table_head,
  table_body,
  table_row,
  head_cell,
  cell,
  caption,
  figure,
  note,
  link,
  contents,
  contents_item,
  reference,
  span,          ///< a sign in a line
  furniture      ///< what repeats from page to page and belongs to no element: heads, feet, "continued"
};

/// The cells that a head cell speaks for.
enum class Heads { none, column, row };

struct Tag;

/// An element with those around it, innermost first. Two paths are one element when role and key agree at every step, on
/// whatever pages their items stand. As an element's parent, null is the document; as an item's tag, null is decoration.
using TagPath = std::shared_ptr<const Tag>;

struct Tag {
  Role role = Role::paragraph;
  std::int64_t key = 0;       ///< tells it from the elements of its role in the same parent
  std::string spoken;         ///< figure, span: what is seen, in words
  int level = 0;              ///< heading: 1 to 6, no more than one below the heading over it
  int across = 1;             ///< cells: columns taken
  Heads heads = Heads::none;  ///< head cells
  bool numbered = false;      ///< lists
  TagPath parent;
};

/// The element inside `parent`. Whatever is inside furniture is furniture.
TagPath under(const TagPath &parent, Tag tag);

/// The one tag of furniture.
const TagPath &furniture();

bool is_furniture(const TagPath &tag);

std::string_view name_of(Role role); ///< "head-cell"

/// "section.2/table.14/row.3/cell.1"; "-" for decoration.
std::string text_of(const TagPath &tag);

} // namespace strakebook::page
