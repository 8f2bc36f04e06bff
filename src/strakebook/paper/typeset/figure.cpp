#include "strakebook/paper/typeset/figure.h"

#include <algorithm>
#include <array>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/caption.h"
#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/drawing.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

using base::Pt;
using Panel = content::Figure::Panel;

/// A column that panels stand in.
struct Slot {
  Pt left, width;
};

std::vector<Slot> slots_of(const content::Figure &figure, Pt width, const style::Style &style) {
  if (figure.lattice.empty()) return {{{}, width}};
  const auto &lattice = style::lattice(style, figure.lattice);
  std::vector<Slot> slots;
  Pt left{};
  for (std::size_t i = 0; i < lattice.widths.size(); ++i) {
    slots.push_back({left, lattice.widths[i]});
    left += lattice.widths[i];
    if (i < lattice.gutters.size()) left += lattice.gutters[i];
  }
  return slots;
}

/// The panels of a figure with what they share.
struct Panels {
  const content::Figure &figure;
  std::vector<Slot> slots;
  ScaleLimit limit;

  std::size_t rows() const { return (figure.panels.size() + slots.size() - 1) / slots.size(); }
  std::size_t first(std::size_t row) const { return std::min(row * slots.size(), figure.panels.size()); }
  const Slot &slot_of(std::size_t panel) const { return slots[panel % slots.size()]; }
};

Panels panels_of(const content::Figure &figure, Pt width, const style::Style &style) {
  Panels panels{figure, slots_of(figure, width, style), {}};
  std::vector<const content::Drawing *> drawings;
  std::vector<Pt> widths;
  for (std::size_t i = 0; i < figure.panels.size(); ++i) {
    drawings.push_back(&figure.panels[i].drawing);
    widths.push_back(panels.slot_of(i).width);
  }
  panels.limit = common_limit(drawings, widths, style);
  return panels;
}

Fragment stacked(Fragment upper, Fragment lower, Pt width) {
  Fragment head;
  head.first_baseline = upper.first_baseline;
  head.size = {width, upper.size.height + lower.size.height};
  const Pt down = upper.size.height;
  append(head.items, std::move(upper), {});
  append(head.items, std::move(lower), {{}, down});
  return head;
}

/// Title at the left and at the right, on one baseline, the right one under the left where both do not fit on one; nothing
/// when both are empty.
Fragment panel_head(const Panel &panel, Pt width, const Context &context) {
  if (panel.title.empty() && panel.title_right.empty()) return {};
  const TextOptions options{true, {}};
  const Context words = tagged(context, {.role = page::Role::paragraph});
  auto left = set_line(panel.title, style::text_style(context.style, "panel-title"), options, words);
  auto right = set_line(panel.title_right, style::text_style(context.style, "figure-label"), options, words);
  Fragment head;
  head.first_baseline = std::max(left.first_baseline, right.first_baseline);
  const bool beside = left.size.width + right.size.width <= width;
  if (!beside) {
    left = set_text(panel.title, style::text_style(context.style, "panel-title"), width, options, words);
    right = set_text(panel.title_right, style::text_style(context.style, "figure-label"), width, options, words);
    return stacked(std::move(left), std::move(right), width);
  }
  const Pt right_at = width - right.size.width;
  const Pt left_down = head.first_baseline - left.first_baseline;
  const Pt right_down = head.first_baseline - right.first_baseline;
  head.size = {width, std::max(left_down + left.size.height, right_down + right.size.height)};
  append(head.items, std::move(left), {{}, left_down});
  append(head.items, std::move(right), {right_at, right_down});
  return head;
}

Pt title_gap(const Fragment &head, const style::Style &style) {
  return head.size.height.v > 0 ? style::measure(style, "panel-title-gap") : Pt{};
}

Fragment set_panel(const Panel &panel, Pt width, ScaleLimit limit, const Context &context) {
  Context own = context;
  if (!panel.id.empty()) own.id = panel.id;
  Fragment set = panel_head(panel, width, own);
  if (!panel.id.empty()) set.items.insert(set.items.begin(), anchor(panel.id, {}));
  const Pt gap = title_gap(set, context.style);
  stack(set, draw_at(panel.drawing, scaled(panel.drawing, context.style, width, limit), own, own.id), gap);
  return set;
}

Pt panel_height(const Panel &panel, Pt width, ScaleLimit limit, const Context &context) {
  const Fragment head = panel_head(panel, width, context);
  return head.size.height + title_gap(head, context.style) +
         scaled(panel.drawing, context.style, width, limit).size.height;
}

/// Known before the row is drawn: a row that does not fit is not drawn, so that nothing in it is reported twice.
Pt row_height(const Panels &panels, std::size_t row, const Context &context) {
  Pt height{};
  for (std::size_t i = panels.first(row); i < panels.first(row + 1); ++i)
    height = std::max(height, panel_height(panels.figure.panels[i], panels.slot_of(i).width, panels.limit, context));
  return height;
}

Fragment set_row(const Panels &panels, std::size_t row, const Context &context) {
  Fragment set;
  for (std::size_t i = panels.first(row); i < panels.first(row + 1); ++i) {
    const Slot &slot = panels.slot_of(i);
    const Context own = tagged(context, {.role = page::Role::group, .key = static_cast<std::int64_t>(i)});
    Fragment panel = set_panel(panels.figure.panels[i], slot.width, panels.limit, own);
    panel = barred(std::move(panel), panels.figure.panels[i].changed, moved(context, slot.left));
    set.size.height = std::max(set.size.height, panel.size.height);
    set.size.width = std::max(set.size.width, slot.left + panel.size.width);
    append(set.items, std::move(panel), {slot.left, {}});
  }
  return set;
}

bool captioned(const content::Figure &figure) { return !figure.label.empty() || !figure.caption.empty(); }

Fragment set_figure_caption(const content::Figure &figure, Pt width, const Context &context) {
  return barred(set_caption(figure.label, figure.caption, style::text_style(context.style, "caption"), {}, width, context),
                figure.caption_changed, context);
}

/// What stands over the panels of this page: the caption, or after a break the label and where the figure began.
Fragment set_head(const content::Figure &figure, bool at_start, Pt width, const Context &context) {
  if (!captioned(figure)) return {};
  if (at_start) return figure.caption_above ? set_figure_caption(figure, width, context) : Fragment{};
  const std::array fills{base::Fill{"page", std::to_string(context.page - 1)}};
  return set_caption(figure.label, {}, style::text_style(context.style, "caption"),
                     base::filled(context.labels.continued_from, fills), width, repeated(context));
}

/// What stands under the last row: the caption if it is not above, and the notes.
Fragment set_foot(const content::Figure &figure, Pt width, const Context &context) {
  Fragment foot;
  if (!figure.caption_above && captioned(figure)) stack(foot, set_figure_caption(figure, width, context), {});
  if (!figure.notes.empty())
    stack(foot, set_notes(figure.notes, figure.changed_notes, style::text_style(context.style, "note"), width, context),
          style::measure(context.style, "note-gap"));
  return foot;
}

Pt gap_unless_first(const Fragment &above, Pt gap) { return above.size.height.v > 0 ? gap : Pt{}; }

/// The measure that keeps the foot from the panels.
std::string foot_gap(const content::Figure &figure) {
  return !figure.caption_above && captioned(figure) ? "caption-gap" : "note-gap";
}

Outcome next_page(const Context &context, std::string reason) {
  return NextPage{std::move(reason), context.origin, context.id};
}

} // namespace

Outcome lay_figure(const content::Figure &figure, const Resume &from, const Region &region, const Context &context) {
  const Panels panels = panels_of(figure, region.width, context.style);
  Fragment body = set_head(figure, from.at_start(), region.width, context);
  Fragment foot = set_foot(figure, region.width, context);
  const Pt foot_room = foot.size.height.v > 0
                           ? foot.size.height + style::measure(context.style, foot_gap(figure))
                           : Pt{};
  Pt gap = style::measure(context.style, "caption-gap");
  std::size_t row = from.index;
  for (; row < panels.rows(); ++row) {
    const Pt under = row + 1 == panels.rows() ? foot_room : Pt{};
    const Pt over = gap_unless_first(body, gap);
    if (body.size.height + over + row_height(panels, row, context) + under > region.height_left) break;
    stack(body, set_row(panels, row, context), over);
    gap = style::measure(context.style, "panel-gap");
  }
  if (row < panels.rows()) {
    if (row == from.index) return next_page(context, "a row of panels of a figure does not fit");
    return Part{std::move(body), {row, {}}};
  }
  if (foot.size.height.v > 0) stack(body, std::move(foot), style::measure(context.style, foot_gap(figure)));
  if (body.items.empty()) return Nothing{};
  return whole_or_next(std::move(body), region, "a figure does not fit");
}

} // namespace strakebook::typeset
