#include <catch2/catch.hpp>

#include "pages_support.h"
#include "strakebook/paper/typeset/blocks.h"

using namespace paper_test;
using namespace strakebook::typeset;

namespace {

/// Lines of 12 pt; 'd' is one that ends inside a word.
std::vector<Fragment> lines(const std::string &kinds) {
  std::vector<Fragment> made;
  for (const char kind : kinds) {
    Fragment line;
    line.size = {{100}, {12}};
    line.items.push_back(filled_box({{}, line.size}, {}));
    line.divided = kind == 'd';
    made.push_back(line);
  }
  return made;
}

/// How many of them stay where there is room for `room`.
std::size_t kept(const std::string &kinds, int room) {
  const auto outcome = split_lines(lines(kinds), {}, {{100}, {room * 12.0}, {600}});
  if (const auto *part = std::get_if<Part>(&outcome))
    return part->rest.index;
  return std::holds_alternative<Whole>(outcome) ? kinds.size() : 0;
}

} // namespace

TEST_CASE("a page does not end inside a word where it can end a line sooner") {
  CHECK(kept("wwwwww", 3) == 3);
  CHECK(kept("wwdwww", 3) == 2);
  CHECK(kept("wwddww", 4) == 2);
  CHECK(kept("wddwww", 3) == 3); // two lines stay at least, and both of these would end inside a word
  CHECK(kept("wwdwww", 6) == 6);
}

TEST_CASE("a list does not leave its first line alone at the foot of a page") {
  Desk desk;
  content::List list;
  for (int i = 0; i < 4; ++i)
    list.items.push_back(content::plain("one line"));
  list.text_style = "ragged";
  const auto pages = set(document({opaque(49), block(list, "list")}), desk).pages;
  REQUIRE(pages.size() == 2);
  CHECK(anchor_of(pages[1], "list") != nullptr);
}
