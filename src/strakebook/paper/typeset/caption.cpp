#include "strakebook/paper/typeset/caption.h"

#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

/// Puts `right` in italic at the right edge of `width`, on the first baseline of `left`.
Fragment with_right(Fragment left, const std::string &right, const style::TextStyle &style, base::Pt width,
                    const Context &context) {
  left.size.width = width;
  if (right.empty())
    return left;
  auto words = set_line(content::italic(right), style, {true, {}}, repeated(context));
  const base::Pt top = left.first_baseline.v > 0 ? left.first_baseline - words.first_baseline : base::Pt{};
  if (left.first_baseline.v == 0)
    left.first_baseline = words.first_baseline;
  left.size.height = std::max(left.size.height, top + words.size.height);
  const base::Pt x = width - words.size.width;
  append(left.items, std::move(words), {x, top});
  return left;
}

base::Pt room_beside(const std::string &right, const style::TextStyle &style, base::Pt most, base::Pt width,
                     const Context &context) {
  if (right.empty())
    return std::min(most, width);
  const base::Pt taken = line_width(content::italic(right), style, {true, {}}, context) +
                         style::measure(context.style, "furniture-gap");
  return std::min(most, width - taken);
}

} // namespace

Fragment set_caption(const std::string &label, const content::Inlines &text, const style::TextStyle &style,
                     const std::string &right, base::Pt width, const Context &context) {
  const base::Pt room =
      room_beside(right, style, style::measure(context.style, "caption-measure"), width, context);
  content::Inlines words;
  if (!label.empty()) // the label is set off by two blanks, of which one does not shrink
    words = content::strong(label) + content::plain(text.empty() ? "" : "\xC2\xA0 ");
  auto set = set_text(std::move(words) + text, style, room, {true, {}},
                      tagged(context, {.role = page::Role::caption}));
  return with_right(std::move(set), right, style, width, context);
}

Fragment set_notes(const std::vector<content::Inlines> &notes, const std::vector<std::size_t> &changed, const style::TextStyle &style,
                   base::Pt width, const Context &context) {
  return set_foot(notes, changed, style, {}, width, context);
}

Fragment set_foot(const std::vector<content::Inlines> &notes, const std::vector<std::size_t> &changed, const style::TextStyle &style,
                  const std::string &right, base::Pt width, const Context &context) {
  const base::Pt room =
      room_beside(right, style, style::measure(context.style, "note-measure"), width, context);
  Fragment set;
  for (std::size_t i = 0; i < notes.size(); ++i)
    stack(set,
          barred(set_text(notes[i], style, room, {true, {}},
                          tagged(context, {.role = page::Role::note, .key = static_cast<std::int64_t>(i)})),
                 std::ranges::find(changed, i) != changed.end(), context),
          base::Pt{});
  return with_right(std::move(set), right, style, width, context);
}

} // namespace strakebook::typeset
