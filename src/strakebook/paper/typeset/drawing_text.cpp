#include "strakebook/paper/typeset/drawing_text.h"

#include <algorithm>
#include <map>
#include <utility>

#include "strakebook/paper/typeset/drawing_lane.h"
#include "strakebook/paper/typeset/drawing_turn.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

using base::Point;
using base::Pt;
using content::Anchor;
using content::Level;

/// How far letters reach under the baseline, over the height of capitals, in the bundled faces (read in their outlines:
/// "p" reaches 205 and 660 units in the sans).
constexpr double descent_share = 0.32;

std::vector<content::Inlines> split_lines(const content::Inlines &text) {
  std::vector<content::Inlines> lines(1);
  for (const auto &part : text) {
    if (std::holds_alternative<content::LineBreak>(part)) lines.emplace_back();
    else lines.back().push_back(part);
  }
  return lines;
}

bool descends(const Fragment &line) {
  return std::any_of(line.items.begin(), line.items.end(), [](const page::Item &item) {
    const auto *run = std::get_if<page::Run>(&item.what);
    return run && run->text.find_first_of("gjpqyQ,;()[]{}_") != std::string::npos;
  });
}

/// From the place to the first baseline.
Pt first_baseline(Level level, Pt cap, Pt gap, Pt below_first) {
  switch (level) {
  case Level::above: return -gap - below_first;
  case Level::below: return gap + cap;
  case Level::middle: return (cap - below_first) / 2;
  case Level::baseline: break;
  }
  return {};
}

/// From the place to the left end of text of a width.
Pt left_end(Anchor anchor, Pt beside, Pt width) {
  switch (anchor) {
  case Anchor::left: return beside;
  case Anchor::right: return -beside - width;
  case Anchor::centre: break;
  }
  return -width / 2;
}

PlacedText placed_lines(std::vector<Fragment> lines, const style::TextStyle &style, const TextPlace &place,
                        const Context &context) {
  const Pt gap = style::measure(context.style, "label-pad"), cap = cap_height(style, context.fonts);
  const Pt beside = place.level == Level::middle ? gap : Pt{};
  const Pt below_first = style.leading * static_cast<double>(lines.size() - 1);
  const Pt first = place.at.y + first_baseline(place.level, cap, gap, below_first);
  const Pt foot = descends(lines.back()) ? cap * descent_share : Pt{};
  Pt widest{};
  for (const auto &line : lines) widest = std::max(widest, line.size.width);
  PlacedText placed;
  placed.box = {{place.at.x + left_end(place.anchor, beside, widest), first - cap},
                {widest, cap + below_first + foot}};
  Pt baseline = first;
  for (auto &line : lines) {
    const Pt left = place.at.x + left_end(place.anchor, beside, line.size.width);
    const Pt top = baseline - line.first_baseline;
    append(placed.items, std::move(line), {left, top});
    baseline += style.leading;
  }
  return placed;
}

/// The lane that a label stands in.
using LaneKey = std::pair<double, Level>;

void push_lane(std::span<const std::size_t> members, const Lane &lane, std::vector<PlacedText> &placed) {
  std::vector<LaneLabel> wanted;
  for (const auto i : members) wanted.push_back({placed[i].box.at.x, placed[i].box.size.width});
  const auto lefts = pushed_apart(wanted, lane);
  for (std::size_t k = 0; k < members.size(); ++k) {
    const Pt by = lefts[k] - wanted[k].left;
    if (by.v != 0) translate(placed[members[k]], {by, {}});
  }
}

} // namespace

Context label_context(const content::Label &label, std::size_t index, const Context &context) {
  if (label.target.empty()) return context;
  return tagged(context, {.role = page::Role::link, .key = static_cast<std::int64_t>(index)});
}

Pt cap_height(const style::TextStyle &style, const FontSet &fonts) {
  return fonts.vertical(fonts.index_of(style.face)).cap_height * style.size.v;
}

void translate(PlacedText &text, Point by) {
  for (auto &item : text.items) translate(item, by);
  text.box.at = text.box.at + by;
}

std::string words_of(const PlacedText &text) {
  std::string words;
  for (const auto &item : text.items)
    if (const auto *run = std::get_if<page::Run>(&item.what)) words += run->text;
  return words;
}

PlacedText placed_text(const content::Inlines &text, const std::string &text_style, const TextPlace &place,
                       const Context &context) {
  if (text.empty()) return {{}, {place.at, {}}};
  const auto &style = style::text_style(context.style, text_style);
  const TextOptions options{true, {}};
  std::vector<Fragment> lines;
  for (const auto &line : split_lines(text)) lines.push_back(set_line(line, style, options, context));
  auto placed = placed_lines(std::move(lines), style, place, context);
  if (!place.upwards) return placed;
  for (auto &item : placed.items) turn_upwards(item, place.at);
  placed.box = turned_upwards(placed.box, place.at);
  return placed;
}

std::vector<PlacedText> placed_labels(const content::Drawing &drawing, const DrawingScale &scale,
                                      const Context &context) {
  std::vector<PlacedText> placed;
  std::map<LaneKey, std::vector<std::size_t>> lanes;
  for (const auto &element : drawing.elements) {
    const auto *label = std::get_if<content::Label>(&element);
    if (!label) continue;
    if (!label->upwards && !label->stays && !label->text.empty()) lanes[{label->at.y, label->level}].push_back(placed.size());
    const TextPlace place{scale.place(label->at), label->anchor, label->level, label->upwards};
    placed.push_back(placed_text(label->text, label->text_style, place, label_context(*label, placed.size(), context)));
  }
  if (lanes.empty()) return placed;
  const Lane lane{{}, scale.size.width, style::measure(context.style, "label-clear"),
                  style::measure(context.style, "label-shift")};
  for (const auto &[key, members] : lanes) push_lane(members, lane, placed);
  return placed;
}

} // namespace strakebook::typeset
