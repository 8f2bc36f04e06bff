#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/table.h"

namespace paper_test {

/// A row of plain cells.
inline strakebook::content::Row row(const std::string &id, const std::vector<std::string> &cells) {
  strakebook::content::Row r;
  r.id = id;
  for (const auto &cell : cells)
    r.cells.push_back({.text = strakebook::content::plain(cell)});
  return r;
}

} // namespace paper_test
