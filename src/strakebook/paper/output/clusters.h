#pragma once

#include <span>
#include <string_view>

#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Glyphs of a run that stand together for one piece of its text: nearly always one glyph.
struct Cluster {
  std::span<const page::Glyph> glyphs;
  std::string_view text;
};

/// Calls `use(Cluster)` for each cluster of a sound run, in order.
template <class Use> void for_each_cluster(const page::Run &run, Use use) {
  const std::span<const page::Glyph> glyphs = run.glyphs;
  const std::string_view text = run.text;
  for (std::size_t first = 0; first < glyphs.size();) {
    const auto begin = glyphs[first].cluster;
    auto next = first + 1;
    while (next < glyphs.size() && glyphs[next].cluster == begin)
      ++next;
    const auto end = next < glyphs.size() ? glyphs[next].cluster : text.size();
    use(Cluster{glyphs.subspan(first, next - first), text.substr(begin, end - begin)});
    first = next;
  }
}

} // namespace strakebook::output
