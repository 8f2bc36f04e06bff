#include "strakebook/compose/sketch.h"

namespace strakebook::compose {

void add_line(Drawing &to, std::vector<XY> points, std::string meaning) {
  to.elements.emplace_back(content::Outline{std::move(points), false, std::move(meaning)});
}

void add_area(Drawing &to, std::vector<XY> points, std::string meaning) {
  to.elements.emplace_back(content::Outline{std::move(points), true, std::move(meaning)});
}

content::Outline &add_box(Drawing &to, XY low, XY high, std::string meaning) {
  add_area(to, {low, {high.x, low.y}, high, {low.x, high.y}}, std::move(meaning));
  return std::get<content::Outline>(to.elements.back());
}

content::Spot &add_spot(Drawing &to, XY at, std::string meaning, std::string tone) {
  to.elements.emplace_back(content::Spot{at, std::move(meaning), std::move(tone)});
  return std::get<content::Spot>(to.elements.back());
}

void add_place(Drawing &to, XY at, std::string id) { add_spot(to, at, {}).id = std::move(id); }

content::Label &add_label(Drawing &to, XY at, content::Inlines text, content::Anchor anchor, content::Level level) {
  content::Label label;
  label.at = at;
  label.text = std::move(text);
  label.anchor = anchor;
  label.level = level;
  to.elements.emplace_back(std::move(label));
  return std::get<content::Label>(to.elements.back());
}

} // namespace strakebook::compose
