#include "strakebook/compose/appendix_lists.h"

/// The usual figures of plate work that the schedule was looked over by.
namespace strakebook::compose {

void add_works_rule(const Scope &scope, Entries &entries) {
  if (scope.survey().steelwork.empty()) return;
  const auto &rule = scope.policy().works;
  const auto mm = [&](Length length) { return unit_mm(scope, base::mm_exact(length, 0)); };
  add(entries, scope.say("works.rule"),
      content::plain(scope.say("works.rule-text", {{"plate", mm(rule.least_side_plate)}, {"least-lap", base::mm_exact(rule.least_lap, 0)},
                                                   {"most-lap", mm(rule.most_lap)}, {"sound", mm(rule.sound_under_lap)},
                                                   {"doubler", mm(rule.least_doubler)}, {"insert", mm(rule.least_insert)}, {"pad", mm(rule.least_pad)},
                                                   {"radius", mm(rule.least_radius)}, {"pitch", mm(rule.plug_pitch)}, {"over", mm(rule.plugs_over)},
                                                   {"source", rule.source}})));
}

} // namespace strakebook::compose
