#include <algorithm>

#include "strakebook/steel/works/items.h"

#include "strakebook/base/approximate.h"

namespace strakebook::works {

namespace {

/// The first covering item that gives a thickness; nullptr: none does.
const Item *pricing(const std::vector<Item> &items, const Area &area) {
  for (const auto &id : area.covered_by) {
    const auto item = std::ranges::find(items, id, &Item::id);
    if (item != items.end() && item->thickness) return &*item;
  }
  return nullptr;
}

} // namespace

std::vector<Option> options_of(const survey::Survey &survey, const assess::Assessment &assessment, const std::vector<Item> &items,
                               const Area &area, base::Decimal density) {
  if (!area.area_m2 || area.along.length() <= Length{}) return {};
  const Item *item = pricing(items, area);
  Option option{.area = area.id, .area_m2 = *area.area_m2, .centre = area.along.middle()};
  option.thickness = item ? *item->thickness : survey::zone_of(survey, area.zone)->original.nominal.value;
  option.thickness_from = item ? item->id : std::string();
  option.weight_kg = base::approximate(density) * *area.area_m2 * base::in_millimetres(option.thickness);
  std::vector<Option> out;
  const survey::Reach own{.rows = area.rows, .from = base::Measured{area.along.from}, .to = base::Measured{area.along.to}};
  if (const auto mean = mean_remaining(survey, assessment, own)) {
    option.kind = Option::Kind::insert;
    option.mean_removed_mm = mean->mm;
    option.removed_marks = mean->marks;
    option.removed_kg = base::approximate(density) * *area.area_m2 * mean->mm;
    option.net_kg = option.weight_kg - option.removed_kg;
    out.push_back(option);
  }
  option.kind = Option::Kind::overplate;
  option.mean_removed_mm = option.removed_kg = 0;
  option.removed_marks = 0;
  option.net_kg = option.weight_kg;
  out.push_back(option);
  return out;
}

} // namespace strakebook::works
