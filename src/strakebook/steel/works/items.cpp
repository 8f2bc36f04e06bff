#include "strakebook/steel/works/items.h"

#include <algorithm>
#include <numbers>

#include "strakebook/base/approximate.h"
#include "strakebook/steel/survey/reach.h"
#include "strakebook/steel/works/frames.h"

namespace strakebook::works {

namespace {

constexpr double pi = std::numbers::pi;

template <class T> std::optional<Length> value_of(const std::optional<T> &written) {
  return written ? std::optional(written->value) : std::nullopt;
}

std::int64_t between(Length edge, Length pitch) { return (edge.nm() + pitch.nm() - 1) / pitch.nm() - 1; }

std::optional<Plugs> plugs_of(const Item &item, const policy::WorksRule &rule, std::optional<Length> pitch) {
  if (!item.doubler || !item.length || !item.breadth || !pitch || *pitch <= Length{}) return std::nullopt;
  if (std::min(*item.length, *item.breadth) <= rule.plugs_over) return std::nullopt;
  return Plugs{between(*item.length, *pitch), between(*item.breadth, *pitch), *pitch};
}

void set_removed(Item &item, const survey::Survey &survey, const assess::Assessment &assessment, const survey::Reach &at,
                 double density) {
  const auto mean = mean_remaining(survey, assessment, at);
  if (!mean) return;
  item.mean_removed_mm = mean->mm;
  item.removed_marks = mean->marks;
  if (item.plate_m2) item.removed_kg = density * *item.plate_m2 * mean->mm;
}

void set_weights(Item &item, double density) {
  if (!outlined(item)) return;
  const Length radius = item.radius.value_or(Length{});
  item.plate_m2 = plate_area(*item.length, *item.breadth, radius);
  item.weld_m = edge_length(*item.length, *item.breadth, radius);
  item.weight_kg = density * *item.plate_m2 * base::in_millimetres(*item.thickness);
}

std::optional<double> net_of(const Item &item) {
  if (!item.adds_steel || !item.weight_kg) return std::nullopt;
  if (!item.insert) return item.weight_kg;
  return item.removed_kg ? std::optional(*item.weight_kg - *item.removed_kg) : std::nullopt;
}

} // namespace

std::optional<MeanRemaining> mean_remaining(const survey::Survey &survey, const assess::Assessment &assessment,
                                            const survey::Reach &reach) {
  MeanRemaining mean;
  for (const assess::MarkResult &mark : assessment.marks) {
    const survey::Mark &written = survey.marks[mark.mark];
    if (!mark.used || !survey::covers(survey, reach, written.row, written.station.value)) continue;
    mean.mm += base::in_millimetres(mark.judged());
    ++mean.marks;
  }
  if (mean.marks == 0) return std::nullopt;
  mean.mm /= mean.marks;
  return mean;
}

double plate_area(Length length, Length breadth, Length radius) {
  return base::in_metres(length) * base::in_metres(breadth) - (4 - pi) * base::in_metres(radius) * base::in_metres(radius);
}

double edge_length(Length length, Length breadth, Length radius) {
  return 2 * (base::in_metres(length) + base::in_metres(breadth)) - (8 - 2 * pi) * base::in_metres(radius);
}

bool outlined(const Item &item) {
  return item.length && item.breadth && item.thickness && *item.length > Length{} && *item.breadth > Length{} &&
         item.radius.value_or(Length{}) * 2 <= std::min(*item.length, *item.breadth);
}

Item item_of(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy,
             const survey::SteelworkItem &written) {
  Item item{.id = written.id, .action = written.action};
  if (const auto action = policy.actions.find(written.action); action != policy.actions.end()) {
    item.adds_steel = action->second.adds_steel;
    item.doubler = action->second.doubler;
  }
  item.insert = item.adds_steel && written.action == policy.works.insert;
  item.length = value_of(written.length);
  item.breadth = value_of(written.breadth);
  item.thickness = value_of(written.thickness);
  item.radius = value_of(written.radius);
  const double density = base::approximate(base::parse_decimal(policy.steel_density_kg_m2_mm).value());
  set_weights(item, density);
  if (item.insert) set_removed(item, survey, assessment, written.at, density);
  item.net_kg = net_of(item);
  item.plugs = plugs_of(item, policy.works, value_of(written.plug_pitch));
  if (written.at.from && written.at.to) item.centre = Stretch{written.at.from->value, written.at.to->value}.middle();
  item.frame = nearest(framing(survey), item.centre);
  return item;
}

} // namespace strakebook::works
