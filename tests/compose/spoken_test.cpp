#include <catch2/catch.hpp>

#include "helpers.h"

// Whatever is drawn says in words what it shows, for readers who do not see it.

using namespace strakebook;

namespace {

/// What is said of every drawing and of every sign in a table, in order.
struct Listener {
  std::vector<std::string> said;

  void operator()(const std::vector<content::Block> &blocks) {
    for (const auto &block : blocks)
      std::visit(*this, block.what);
  }
  void operator()(const content::Figure &figure) {
    for (const auto &panel : figure.panels)
      said.push_back(panel.drawing.spoken);
  }
  void operator()(const content::Photo &photo) {
    if (photo.strip)
      said.push_back(photo.strip->spoken);
  }
  void operator()(const content::Table &table) {
    for (const auto &group : table.groups)
      for (const auto &row : group.rows)
        for (const auto &cell : row.cells)
          (*this)(cell);
  }
  void operator()(const content::Cell &cell) {
    if (cell.glyph)
      said.push_back(cell.glyph->spoken);
    if (!cell.sign.empty())
      said.push_back(cell.spoken.empty() ? sample::text_of(cell.text) : cell.spoken);
  }
  void operator()(const content::Columns &columns) {
    for (const auto &cell : columns.cells)
      (*this)(cell);
  }
  void operator()(const content::Together &together) { (*this)(together.blocks); }
  template <class Words> void operator()(const Words &) {}
};

} // namespace

TEST_CASE("every drawing says what it shows, and every sign in a table has its word") {
  const auto sample = sample::small_survey();
  const auto document = compose::compose(sample.source());
  Listener listener;
  for (const auto &section : document.sections)
    listener(section.blocks);
  CHECK(listener.said.size() > 10);
  for (const auto &words : listener.said)
    CHECK_FALSE(words.empty());
  const auto heard = [&](const std::string &words) {
    return std::ranges::find(listener.said, words) != listener.said.end();
  };
  CHECK(heard("Plate in section, not read."));
  CHECK(heard("falls short"));
}
