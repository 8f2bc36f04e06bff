#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/blocks.h"
#include "strakebook/paper/typeset/grid.h"

namespace strakebook::typeset {
namespace {

struct CellOutcome {
  Fragment fragment;
  Resume rest;
  bool done = false;
  bool progressed = false; ///< something was set, or there was nothing to set
};

CellOutcome lay_cell(const std::vector<content::Block> &blocks, const Resume &from, const Region &region,
                     const Context &context, NextPage &refusal) {
  const Resume all{blocks.size(), {}};
  if (from.index >= blocks.size())
    return {{}, all, true, false};
  auto outcome = lay_sequence(blocks, from, region, context);
  if (auto *whole = std::get_if<Whole>(&outcome))
    return {std::move(whole->fragment), all, true, true};
  if (auto *part = std::get_if<Part>(&outcome))
    return {std::move(part->fragment), std::move(part->rest), false, true};
  if (auto *next = std::get_if<NextPage>(&outcome)) {
    refusal = std::move(*next);
    return {{}, from, false, false};
  }
  return {{}, all, true, true};
}

struct Cells {
  const content::Columns &columns;
  const Resume &from;
  const Region &region;
  const Context &context;
  NextPage refusal{"its cells", {}, {}};

  Resume start(std::size_t cell) const { return cell < from.inner.size() ? from.inner[cell] : Resume{}; }

  /// Moved down to end at `bottom`: it fits and has no text on the grid.
  bool stays_as_it_is(std::size_t cell, base::Pt bottom) const {
    const auto &blocks = columns.cells[cell];
    return region.holds(bottom) && std::none_of(blocks.begin(), blocks.end(), [&](const auto &block) {
             return begins_on_grid(block, context.style);
           });
  }

  CellOutcome laid(std::size_t cell, base::Pt left, base::Pt width, base::Pt down) {
    return lay_cell(columns.cells[cell], start(cell), {width, region.height_left - down, region.full_height},
                    cell_context(context, cell, left), refusal);
  }
};

Outcome outcome_of(std::vector<CellOutcome> cells, Fragment set, NextPage refusal) {
  const bool done = std::all_of(cells.begin(), cells.end(), [](const auto &cell) { return cell.done; });
  const bool progressed =
      std::any_of(cells.begin(), cells.end(), [](const auto &cell) { return cell.progressed; });
  if (!done && !progressed)
    return refusal;
  if (done && set.items.empty())
    return Nothing{};
  if (done)
    return Whole{std::move(set)};
  Part part{std::move(set), {1, {}}};
  for (auto &cell : cells)
    part.rest.inner.push_back(std::move(cell.rest));
  return part;
}

/// A cell may begin on the next page only if no other cell goes on from this one: beginnings stand side by
/// side.
bool starts_apart(const std::vector<CellOutcome> &cells, const Region &region, const Resume &from) {
  return from.at_start() && !region.empty_page() &&
         std::any_of(cells.begin(), cells.end(),
                     [](const auto &cell) { return !cell.done && !cell.progressed; });
}

base::Pt lowest_baseline(const std::vector<CellOutcome> &cells, const std::vector<base::Pt> &downs) {
  base::Pt lowest;
  for (std::size_t i = 0; i < cells.size(); ++i)
    if (cells[i].fragment.first_baseline.v > 0)
      lowest = std::max(lowest, downs[i] + cells[i].fragment.first_baseline);
  return lowest;
}

constexpr int level_rounds = 4; // text that goes on to the grid moves the others once, and then is level

/// Brings first lines to one baseline; returns how far each cell moves down. A cell that moves is laid again where
/// it stands: it may end sooner, and its text goes to the grid from there.
std::vector<base::Pt> brought_level(Cells &cells, std::vector<CellOutcome> &laid,
                                    const std::vector<base::Pt> &lefts, const std::vector<base::Pt> &widths) {
  std::vector<base::Pt> downs(laid.size());
  for (int round = 0; round < level_rounds; ++round) {
    const base::Pt baseline = lowest_baseline(laid, downs);
    bool moved = false;
    for (std::size_t i = 0; i < laid.size(); ++i) {
      const base::Pt own = laid[i].fragment.first_baseline;
      const base::Pt down = own.v > 0 ? std::max(base::Pt{}, baseline - own) : base::Pt{};
      if (down.v <= downs[i].v + 1e-6)
        continue;
      if (cells.stays_as_it_is(i, down + laid[i].fragment.size.height)) {
        downs[i] = down;
        continue;
      }
      auto again = cells.laid(i, lefts[i], widths[i], down);
      if (!again.progressed)
        continue;
      moved = true;
      laid[i] = std::move(again);
      downs[i] = down;
    }
    if (!moved)
      break;
  }
  return downs;
}

} // namespace

Context cell_context(const Context &columns, std::size_t cell, base::Pt left) {
  Context context = moved(columns, left);
  context.id = child_id(columns.id, cell);
  return context;
}

Outcome lay_columns(const content::Columns &columns, const Resume &from, const Region &region,
                    const Context &context) {
  const auto &lattice = style::lattice(context.style, columns.lattice);
  Cells cells{columns, from, region, context};
  std::vector<base::Pt> lefts{base::Pt{}};
  for (std::size_t i = 0; i + 1 < lattice.widths.size(); ++i)
    lefts.push_back(lefts[i] + lattice.widths[i] + lattice.gutters.at(i));
  std::vector<CellOutcome> laid;
  for (std::size_t i = 0; i < columns.cells.size(); ++i)
    laid.push_back(cells.laid(i, lefts.at(i), lattice.widths.at(i), {}));
  if (starts_apart(laid, region, from))
    return cells.refusal;
  const auto downs = brought_level(cells, laid, lefts, lattice.widths);
  Fragment set;
  set.size.width = region.width;
  for (std::size_t i = 0; i < laid.size(); ++i) {
    set.first_baseline = std::max(set.first_baseline, downs[i] + laid[i].fragment.first_baseline);
    set.size.height = std::max(set.size.height, downs[i] + laid[i].fragment.size.height);
    append(set.items, std::move(laid[i].fragment), {lefts[i], downs[i]});
  }
  return outcome_of(std::move(laid), std::move(set), std::move(cells.refusal));
}

Outcome lay_together(const content::Together &together, const Resume &from, const Region &region,
                     const Context &context) {
  auto outcome = lay_sequence(together.blocks, from, region, context);
  if (std::holds_alternative<Whole>(outcome) || !from.at_start() || region.empty_page())
    return outcome;
  const Region empty{region.width, region.full_height, region.full_height};
  if (std::holds_alternative<Whole>(lay_sequence(together.blocks, from, empty, context)))
    return NextPage{"blocks that stay together", context.origin, context.id};
  return outcome;
}

} // namespace strakebook::typeset
