#include <algorithm>
#include <utility>
#include <vector>

#include "strakebook/paper/typeset/grid.h"
#include "strakebook/paper/typeset/layout.h"
#include "strakebook/paper/typeset/spacing.h"

namespace strakebook::typeset {
namespace {

/// A block already placed, with what is needed to take it back.
struct Placed {
  Resume at;         ///< where to go on if it moves to the next page
  std::size_t items; ///< before it
  base::Pt height;   ///< before it
  bool keep_with_next;
};

class Sequence {
public:
  Sequence(const std::vector<content::Block> &blocks, const Resume &from, const Region &region,
           const Context &context)
      : blocks_(blocks), region_(region), context_(context), here_(from) {}

  Outcome laid() {
    while (here_.index < blocks_.size()) {
      const auto &block = blocks_[here_.index];
      if (const auto *space = std::get_if<content::Space>(&block.what)) {
        add_space(style::measure(context_.style, space->measure));
      } else if (std::holds_alternative<content::PageBreak>(block.what)) {
        if (!placed_.empty() || !region_.empty_page())
          return page_broken();
        here_ = {here_.index + 1, {}};
      } else if (auto stop = lay_block(block)) {
        return std::move(*stop);
      }
    }
    if (placed_.empty())
      return Nothing{};
    return Whole{std::move(set_)};
  }

private:
  void add_space(base::Pt space) {
    if (!placed_.empty())
      extra_ += space;
    here_ = {here_.index + 1, {}};
  }

  Outcome page_broken() {
    if (placed_.empty())
      return NextPage{"a page break", context_.origin, context_.id};
    return Part{std::move(set_), {here_.index + 1, {}}};
  }

  /// Lays the block at here_; an outcome is returned when this page is done.
  std::optional<Outcome> lay_block(const content::Block &block) {
    const auto space = spacing(block, context_.style);
    base::Pt gap = placed_.empty() ? base::Pt{} : std::max(after_, space.before) + extra_;
    if (stands_on_grid(block))
      gap += down_to_grid(set_.size.height + gap, region_, context_.style);
    const base::Pt used = set_.size.height + gap;
    const Resume from = here_.inner.empty() ? Resume{} : here_.inner.front();
    auto outcome = lay(block, from, {region_.width, region_.height_left - used, region_.full_height},
                       inside(context_, block, here_.index));
    if (auto *next = std::get_if<NextPage>(&outcome))
      return next_page(std::move(*next));
    if (auto *part = std::get_if<Part>(&outcome)) {
      place(std::move(part->fragment), gap, space);
      return Part{std::move(set_), {here_.index, {std::move(part->rest)}}};
    }
    if (auto *whole = std::get_if<Whole>(&outcome))
      place(std::move(whole->fragment), gap + above_head(block, used, *whole, space), space);
    here_ = {here_.index + 1, {}};
    return std::nullopt;
  }

  /// Columns and groups see to it themselves, cell by cell.
  bool stands_on_grid(const content::Block &block) const {
    const bool plain = std::holds_alternative<content::Paragraph>(block.what) ||
                       std::holds_alternative<content::List>(block.what);
    return plain && begins_on_grid(block, context_.style);
  }

  /// What brings the text under a heading to the grid stands above the heading, not between the two.
  base::Pt above_head(const content::Block &block, base::Pt used, const Whole &whole, const Spacing &space) const {
    const bool heads_text = std::holds_alternative<content::Heading>(block.what) &&
                            here_.index + 1 < blocks_.size() &&
                            begins_on_grid(blocks_[here_.index + 1], context_.style);
    if (!heads_text || placed_.empty())
      return {};
    const auto next = spacing(blocks_[here_.index + 1], context_.style);
    return down_to_grid(used + whole.fragment.size.height + std::max(space.after, next.before), region_,
                        context_.style);
  }

  void place(Fragment fragment, base::Pt gap, const Spacing &space) {
    placed_.push_back({here_, set_.items.size(), set_.size.height, space.keep_with_next});
    // At the top there is no gap but the way down to the grid.
    if (placed_.size() == 1)
      fragment = lowered(std::move(fragment), gap);
    stack(set_, std::move(fragment), gap);
    after_ = space.after;
    extra_ = {};
  }

  /// Takes headings at the bottom of the page back, so that they go with what did not fit.
  Outcome next_page(NextPage next) {
    std::size_t keep = placed_.size();
    while (keep > 0 && placed_[keep - 1].keep_with_next)
      --keep;
    if (placed_.empty() || (keep == 0 && !region_.empty_page()))
      return next;
    if (keep == 0) // nothing but headings fill the page: to move them would move them for ever
      return Part{std::move(set_), here_};
    if (keep < placed_.size()) {
      here_ = placed_[keep].at;
      set_.items.resize(placed_[keep].items);
      set_.size.height = placed_[keep].height;
    }
    return Part{std::move(set_), here_};
  }

  const std::vector<content::Block> &blocks_;
  const Region &region_;
  const Context &context_;
  Resume here_;
  Fragment set_;
  std::vector<Placed> placed_;
  base::Pt after_, extra_;
};

} // namespace

Outcome lay_sequence(const std::vector<content::Block> &blocks, const Resume &from, const Region &region,
                     const Context &context) {
  return Sequence(blocks, from, region, context).laid();
}

} // namespace strakebook::typeset
