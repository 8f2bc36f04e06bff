#include <algorithm>

#include "strakebook/base/in_order.h"
#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// Over which ranges a verdict is tried.
namespace strakebook::house {

namespace {

void read_doubts(const YamlNode &node, std::vector<base::Decimal> &into, Diagnostics &sink) {
  if (!read(node, into, sink)) return;
  constexpr base::Ratio least{1, 100}, most{100, 1};
  constexpr int most_places = 3;
  for (const auto &doubt : into)
    if (doubt.ratio() < least || most < doubt.ratio() || doubt.places > most_places)
      sink.error(base::Code::out_of_range, node.span, base::to_text(doubt) + " times the doubt is not tried", "0.01 to 100, with three decimals at most");
  base::put_in_order(into, &base::Decimal::ratio);
  if (std::ranges::find(into, base::Ratio{1, 1}, &base::Decimal::ratio) == into.end())
    sink.error(base::Code::out_of_range, node.span, "the doubt as it is, 1, is not among these", "factors, 1 among them", "['0.5', '1', '2']");
}

} // namespace

void read_robustness(const YamlNode &node, policy::RobustnessRule &into, Diagnostics &sink) {
  Binding(sink)
      .need("limits", into.limits)
      .need("losses", into.losses)
      .by("doubts", true, [&](const YamlNode &n) { read_doubts(n, into.doubts, sink); })
      .need("source", into.source)
      .apply(node);
  base::put_in_order(into.limits); // a layout that extends another adds its values at the end
  base::put_in_order(into.losses);
}

} // namespace strakebook::house
