#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

namespace strakebook::house {
namespace {

using base::Code;
using policy::Rung;

struct Advice {
  std::vector<std::string> &actions;
  std::string &words;
};

void read_advice(const YamlNode &node, Advice into, const policy::Policy &policy, Diagnostics &sink) {
  Binding(sink).need("actions", into.actions).need("words", into.words).apply(node);
  const YamlNode *actions = node.find("actions");
  for (std::size_t i = 0; i < into.actions.size(); ++i)
    known_in(policy.actions, into.actions[i], "an action", actions->items[i].span, sink);
}

Rung read_rung(const YamlNode::Entry &entry, const policy::Policy &policy, Diagnostics &sink) {
  Rung rung;
  rung.id = entry.key;
  Binding(sink)
      .need("when", rung.when)
      .may("below", rung.below)
      .may("below-part", rung.below_part)
      .by("isolated", true,
          [&](const YamlNode &n) {
            read_advice(n, {rung.isolated, rung.isolated_words}, policy, sink);
          })
      .by("extensive", true,
          [&](const YamlNode &n) {
            read_advice(n, {rung.extensive, rung.extensive_words}, policy, sink);
          })
      .need("classes", rung.classes)
      .known("after")
      .apply(entry.value);
  return rung;
}

bool bounded(const Rung &rung) { return rung.below || rung.below_part; }

/// A rung must not be hidden by one above it: bounds ascend, and what has no bound in mm stands under what
/// has one.
bool reached_after(const Rung &above, const Rung &rung) {
  if (!bounded(above))
    return false;
  if (above.below && rung.below)
    return *above.below < *rung.below;
  if (rung.below)
    return false;
  return !above.below_part || !rung.below_part || above.below || *above.below_part < *rung.below_part;
}

void check_order(const std::vector<const YamlNode::Entry *> &entries, const std::vector<Rung> &rungs,
                 Diagnostics &sink) {
  for (std::size_t i = 0; i < rungs.size(); ++i) {
    const auto &at = entries[i]->key_span;
    const bool last = i + 1 == rungs.size();
    if (i > 0 && !reached_after(rungs[i - 1], rungs[i]))
      sink.error(
          Code::layout_order, at,
          fmt::format("the rung \"{}\" can never be reached after \"{}\"", rungs[i].id, rungs[i - 1].id),
          "bounds that ascend from rung to rung, the rung without bounds last");
    if (last && bounded(rungs[i]))
      sink.error(Code::layout_order, at,
                 fmt::format("the last rung, \"{}\", does not hold for every thickness", rungs[i].id),
                 "a last rung without bounds");
  }
}

} // namespace

void read_ladder(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  Binding(sink)
      .need("source", into.ladder.source)
      .need("too-few", into.ladder.too_few_words)
      .by("rungs", true,
          [&](const YamlNode &rungs) {
            const std::size_t before = sink.errors();
            const auto entries = in_order(rungs, sink);
            for (const auto *entry : entries)
              into.ladder.rungs.push_back(read_rung(*entry, into, sink));
            if (sink.errors() == before)
              check_order(entries, into.ladder.rungs, sink);
          })
      .apply(node);
}

} // namespace strakebook::house
