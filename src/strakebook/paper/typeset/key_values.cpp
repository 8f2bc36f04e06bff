#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/blocks.h"
#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

Fragment set_entry(const content::KeyValues::Entry &entry, const style::KeyStyle &look, base::Pt width,
                   const Context &context) {
  Context own = context;
  if (!entry.id.empty())
    own.id = entry.id;
  const base::Pt left = look.label_width + look.gap;
  const Context body = moved(tagged(own, {.role = page::Role::list_body}), left);
  auto label = set_text(content::plain(entry.label), style::text_style(context.style, look.label),
                        look.label_width, {}, tagged(own, {.role = page::Role::label}));
  auto value = set_text(entry.value, style::text_style(context.style, look.value), width - left, {}, body);
  auto row = beside(std::move(label), std::move(value), left);
  if (!entry.id.empty())
    row.items.insert(row.items.begin(), anchor(entry.id, {}));
  if (entry.changed)
    row.items.push_back(change_bar({}, row.size.height, context));
  return row;
}

} // namespace

Outcome lay_key_values(const content::KeyValues &keys, const Resume &from, const Region &region,
                       const Context &context) {
  const auto &look = style::key_style(context.style, keys.style);
  const auto columns = static_cast<std::size_t>(std::max(1, keys.columns));
  const base::Pt gutter = style::measure(context.style, "column-gutter");
  const base::Pt width =
      (region.width - gutter * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  const auto make = [&](std::size_t row) {
    Fragment set;
    for (std::size_t c = 0; c < columns && row * columns + c < keys.entries.size(); ++c) {
      const base::Pt left = (width + gutter) * static_cast<double>(c);
      const std::size_t at = row * columns + c;
      const page::Tag item{.role = page::Role::list_item, .key = static_cast<std::int64_t>(at)};
      auto entry = set_entry(keys.entries[at], look, width, moved(tagged(context, item), left));
      set = c == 0 ? std::move(entry) : beside(std::move(set), std::move(entry), left);
    }
    return set;
  };
  return split_rows((keys.entries.size() + columns - 1) / columns, look.row_gap, make, from, region);
}

} // namespace strakebook::typeset
