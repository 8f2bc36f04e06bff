#include "strakebook/paper/page/tag.h"

#include <array>
#include <utility>

namespace strakebook::page {

namespace {

constexpr std::array<std::string_view, 23> names = {
    "section", "group",     "heading", "paragraph", "list",    "list-item", "label", "list-body",
    "table",   "head",      "body",    "row",       "head-cell", "cell",    "caption", "figure",
    "note",    "link",      "contents", "contents-item", "reference", "span", "furniture"};
static_assert(names.size() == static_cast<std::size_t>(Role::furniture) + 1);

} // namespace

TagPath under(const TagPath &parent, Tag tag) {
  if (is_furniture(parent))
    return parent;
  tag.parent = parent;
  return std::make_shared<const Tag>(std::move(tag));
}

const TagPath &furniture() {
  static const TagPath one = std::make_shared<const Tag>(Tag{.role = Role::furniture});
  return one;
}

bool is_furniture(const TagPath &tag) { return tag && tag->role == Role::furniture; }

std::string_view name_of(Role role) { return names.at(static_cast<std::size_t>(role)); }

std::string text_of(const TagPath &tag) {
  if (!tag)
    return "-";
  std::string text = tag->parent ? text_of(tag->parent) + "/" : std::string();
  text += name_of(tag->role);
  return is_furniture(tag) ? text : text + "." + std::to_string(tag->key);
}

} // namespace strakebook::page
