#include "strakebook/paper/output/tag_tree.h"

#include <functional>
#include <stdexcept>

#include "strakebook/paper/output/extent.h"

namespace strakebook::output {

std::size_t TagTree::Hash::operator()(const Name &name) const {
  const std::hash<std::int64_t> hash;
  constexpr std::size_t odd = 0x9E3779B97F4A7C15; // spreads neighbouring keys over the whole range
  return (hash(name.parent) * odd + static_cast<std::size_t>(name.role)) * odd + hash(name.key);
}

int TagTree::made(const page::Tag &tag, int parent) {
  const int next = static_cast<int>(elements_.size());
  const auto [place, is_new] = by_name_.try_emplace(Name{parent, tag.role, tag.key}, next);
  if (is_new) {
    elements_.push_back({&tag, parent, {}, {}});
    elements_[static_cast<std::size_t>(parent)].kids.push_back({Kid::Kind::element, next, 0});
  }
  return place->second;
}

int TagTree::element_of(const page::TagPath &tag) {
  if (!tag)
    return document;
  if (page::is_furniture(tag))
    throw std::logic_error("furniture is no element of the document");
  if (const auto known = by_tag_.find(tag.get()); known != by_tag_.end())
    return known->second;
  const int element = made(*tag, element_of(tag->parent));
  by_tag_.emplace(tag.get(), element);
  return element;
}

int TagTree::add_marked(int element, int page) {
  const auto at = static_cast<std::size_t>(page);
  if (marked_.size() <= at)
    marked_.resize(at + 1);
  const int number = static_cast<int>(marked_[at].size());
  marked_[at].push_back(element);
  elements_[static_cast<std::size_t>(element)].kids.push_back({Kid::Kind::marked, number, page});
  return number;
}

void TagTree::cover(int element, const base::Rect &part) {
  auto &box = elements_[static_cast<std::size_t>(element)].box;
  box = box ? united(*box, part) : part;
}

int TagTree::add_link(int element, int page) {
  const int number = static_cast<int>(links_.size());
  links_.push_back(element);
  elements_[static_cast<std::size_t>(element)].kids.push_back({Kid::Kind::link, number, page});
  return number;
}

} // namespace strakebook::output
