#include "strakebook/paper/typeset/once.h"

#include <set>
#include <string>
#include <tuple>

namespace strakebook::typeset {

void add_once_each(const base::Diagnostics &from, base::Diagnostics &to) {
  std::set<std::tuple<base::Code, const base::SourceFile *, int, int, std::string>> seen;
  for (const auto &d : from.all())
    if (seen.emplace(d.code, d.span.file.get(), d.span.line, d.span.column, d.message).second)
      to.add(d);
}

} // namespace strakebook::typeset
