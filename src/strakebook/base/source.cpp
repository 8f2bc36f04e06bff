#include "strakebook/base/source.h"

namespace strakebook::base {

std::string_view line_text(const SourceFile &file, int line) {
  std::string_view rest = file.text;
  for (int n = 1; n < line; ++n) {
    const std::size_t end = rest.find('\n');
    if (end == rest.npos)
      return {};
    rest.remove_prefix(end + 1);
  }
  if (line < 1)
    return {};
  std::string_view text = rest.substr(0, rest.find('\n'));
  if (text.ends_with('\r'))
    text.remove_suffix(1);
  return text;
}

} // namespace strakebook::base
