#include "strakebook/paper/content/difference.h"

#include <algorithm>
#include <map>

#include "strakebook/paper/content/said.h"
#include "strakebook/paper/content/table_difference.h"

namespace strakebook::content {
namespace {

using Blocks = std::vector<Block>;
using Texts = std::vector<std::string>;

template <class T> Texts all_said(const std::vector<T> &parts) {
  Texts out;
  for (const auto &part : parts)
    out.push_back(said(part));
  return out;
}

/// The id of a block, or of the first thing in it that has one: by it a group is known again.
std::string name_of(const Block &block) {
  if (!block.id.empty())
    return block.id;
  const auto first_in = [](const Blocks &blocks) {
    std::string name;
    for (const auto &one : blocks)
      if (name = name_of(one); !name.empty())
        break;
    return name;
  };
  if (const auto *together = std::get_if<Together>(&block.what))
    return first_in(together->blocks);
  if (const auto *columns = std::get_if<Columns>(&block.what))
    for (const auto &cell : columns->cells)
      if (const auto name = first_in(cell); !name.empty())
        return name;
  return {};
}

std::string kind_of(const Block &block) { return std::to_string(block.what.index()) + '\n' + name_of(block); }

void mark_sequence(Blocks &now, const Blocks &before);

/// Signs of `now` that differ, or whose label does.
void mark_signs(Drawing &now, const Drawing &before) {
  const auto said_before = all_said(before.elements);
  const std::set<std::string> known(said_before.begin(), said_before.end());
  std::set<std::string> places;
  for (const auto &element : now.elements)
    if (const auto *label = std::get_if<Label>(&element); label && !label->target.empty() && !known.contains(said(element)))
      places.insert(label->target);
  for (auto &element : now.elements)
    if (auto *spot = std::get_if<Spot>(&element); spot && !spot->target.empty())
      spot->changed = places.contains(spot->target) || !known.contains(said(element));
}

void mark_figure(Figure &now, const Figure &before) {
  std::map<std::string, const Figure::Panel *> panels;
  for (std::size_t i = 0; i < before.panels.size(); ++i)
    panels.emplace(before.panels[i].id.empty() ? std::to_string(i) : before.panels[i].id, &before.panels[i]);
  const bool shown_by_caption = now.panels.size() == 1 && (!now.label.empty() || !now.caption.empty());
  bool any = now.panels.size() != before.panels.size();
  for (std::size_t i = 0; i < now.panels.size(); ++i) {
    auto &panel = now.panels[i];
    const auto found = panels.find(panel.id.empty() ? std::to_string(i) : panel.id);
    const bool differs = found == panels.end() || said(*found->second) != said(panel);
    panel.changed = differs && !shown_by_caption;
    any = any || differs;
    if (differs && found != panels.end())
      mark_signs(panel.drawing, found->second->drawing);
  }
  now.caption_changed = any || said(now.caption) != said(before.caption);
  now.changed_notes = unmatched(now.notes, before.notes);
}

void mark_keys(KeyValues &now, const KeyValues &before) {
  const auto found = matched(all_said(now.entries), all_said(before.entries));
  for (std::size_t i = 0; i < now.entries.size(); ++i)
    now.entries[i].changed = !found[i];
}

/// What differs inside two blocks of one kind that do not say the same.
struct MarkWithin {
  Block &now;
  const Block &before;

  void operator()(Table &table) const { mark_table(table, of<Table>()); }
  void operator()(Figure &figure) const { mark_figure(figure, of<Figure>()); }
  void operator()(KeyValues &keys) const { mark_keys(keys, of<KeyValues>()); }
  void operator()(Together &together) const { mark_sequence(together.blocks, of<Together>().blocks); }
  void operator()(Columns &columns) const {
    const auto &others = of<Columns>().cells;
    if (columns.cells.size() != others.size())
      now.changed = true;
    else
      for (std::size_t i = 0; i < others.size(); ++i)
        mark_sequence(columns.cells[i], others[i]);
  }
  template <class T> void operator()(T &) const { now.changed = true; }

private:
  template <class T> const T &of() const { return std::get<T>(before.what); }
};

bool has_ink(const Block &block) {
  return !std::holds_alternative<Space>(block.what) && !std::holds_alternative<PageBreak>(block.what) &&
         !std::holds_alternative<Rule>(block.what) && !std::holds_alternative<EndMark>(block.what);
}

/// The heading over the place at `at`, where something is gone.
void mark_heading(Blocks &now, std::size_t at) {
  while (at > 0)
    if (auto &block = now[--at]; std::holds_alternative<Heading>(block.what)) {
      block.changed = true;
      return;
    }
}

/// Blocks between two that are the same in both editions.
struct Gap {
  std::size_t now, now_end, before, before_end;
};

void mark_gap(Blocks &now, const Blocks &before, const Gap &gap) {
  Texts kinds, kinds_before;
  for (std::size_t i = gap.now; i < gap.now_end; ++i)
    kinds.push_back(kind_of(now[i]));
  for (std::size_t i = gap.before; i < gap.before_end; ++i)
    kinds_before.push_back(kind_of(before[i]));
  const auto found = matched(kinds, kinds_before);
  std::size_t paired = 0;
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    auto &block = now[gap.now + i];
    if (found[i]) {
      ++paired;
      std::visit(MarkWithin{block, before[gap.before + *found[i]]}, block.what);
    } else {
      block.changed = has_ink(block);
    }
  }
  if (paired < kinds_before.size() && paired == kinds.size())
    mark_heading(now, gap.now_end);
}

void mark_sequence(Blocks &now, const Blocks &before) {
  const auto found = matched(all_said(now), all_said(before));
  Gap gap{0, 0, 0, 0};
  for (std::size_t i = 0; i <= now.size(); ++i) {
    if (i < now.size() && !found[i])
      continue;
    gap.now_end = i;
    gap.before_end = i < now.size() ? *found[i] : before.size();
    mark_gap(now, before, gap);
    gap = {i + 1, i + 1, gap.before_end + 1, gap.before_end + 1};
  }
}

} // namespace

std::vector<std::optional<std::size_t>> matched(const std::vector<std::string> &now, const std::vector<std::string> &before) {
  std::vector<std::optional<std::size_t>> out(now.size());
  std::size_t head = 0, end = now.size(), end_before = before.size();
  for (; head < std::min(end, end_before) && now[head] == before[head]; ++head)
    out[head] = head;
  for (; end > head && end_before > head && now[end - 1] == before[end_before - 1]; --end, --end_before)
    out[end - 1] = end_before - 1;
  const std::size_t rows = end - head, width = end_before - head;
  // longest[i][j]: of what follows place i of `now` and place j of `before`
  std::vector<std::vector<std::size_t>> longest(rows + 1, std::vector<std::size_t>(width + 1));
  for (std::size_t i = rows; i-- > 0;)
    for (std::size_t j = width; j-- > 0;)
      longest[i][j] = now[head + i] == before[head + j] ? longest[i + 1][j + 1] + 1 : std::max(longest[i + 1][j], longest[i][j + 1]);
  for (std::size_t i = 0, j = 0; i < rows && j < width;)
    if (now[head + i] == before[head + j])
      out[head + i++] = head + j++;
    else
      ++(longest[i + 1][j] >= longest[i][j + 1] ? i : j);
  return out;
}

std::vector<std::size_t> unmatched(const std::vector<Inlines> &now, const std::vector<Inlines> &before) {
  const auto found = matched(all_said(now), all_said(before));
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < found.size(); ++i)
    if (!found[i])
      out.push_back(i);
  return out;
}

void mark_changes(Document &now, const Document &before, const std::set<std::string> &left_out) {
  for (auto &section : now.sections) {
    if (left_out.contains(section.id))
      continue;
    const auto found = std::ranges::find(before.sections, section.id, &Section::id);
    mark_sequence(section.blocks, found == before.sections.end() ? Blocks{} : found->blocks);
  }
}

} // namespace strakebook::content
