#include "strakebook/compose/chapters.h"

/// What changed since the issue that this one replaces.
namespace strakebook::compose {

content::Section changes(const Scope &scope) {
  if (!scope.source.amended) return {};
  return section_of(scope);
}

} // namespace strakebook::compose
