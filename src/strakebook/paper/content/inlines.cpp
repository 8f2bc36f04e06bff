#include "strakebook/paper/content/inlines.h"

#include <iterator>
#include <utility>

namespace strakebook::content {

Inlines plain(std::string text) { return {Text{std::move(text), Emphasis::plain}}; }
Inlines strong(std::string text) { return {Text{std::move(text), Emphasis::strong}}; }
Inlines italic(std::string text) { return {Text{std::move(text), Emphasis::italic}}; }
Inlines soft(std::string text) { return {Text{std::move(text), Emphasis::soft}}; }
Inlines struck(std::string text) { return {Text{std::move(text), Emphasis::struck}}; }

Inlines operator+(Inlines a, Inlines b) {
  a.insert(a.end(), std::make_move_iterator(b.begin()), std::make_move_iterator(b.end()));
  return a;
}

} // namespace strakebook::content
