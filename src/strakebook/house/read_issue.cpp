#include "strakebook/house/read_issue.h"

#include "strakebook/house/bind.h"

namespace strakebook::house {

IssueRule read_issue(const base::YamlNode &node, base::Diagnostics &sink) {
  static constexpr Choice<bool> places[] = {{"attached", false}, {"beside", true}};
  IssueRule rule;
  Binding(sink).need_word<bool>("inputs", rule.inputs_beside, places).apply(node);
  return rule;
}

} // namespace strakebook::house
