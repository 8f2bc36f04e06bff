#include "strakebook/paper/typeset/table_rules.h"

namespace strakebook::typeset {

void add_rule(Fragment &fragment, base::Pt y, base::Pt width, const std::string &tone,
              const Context &context) {
  if (width.v <= 0)
    return;
  fragment.items.push_back(rule({}, fragment.size.width, y, width, colour(style::tone(context.style, tone))));
}

} // namespace strakebook::typeset
