#include <nlohmann/json.hpp>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/policy/formula.h"
#include "strakebook/steel/works/works.h"

namespace strakebook::works {

namespace {

using Json = nlohmann::ordered_json;

std::string mm(Length length) { return base::mm_exact(length); }

/// A station in metres, every digit it needs and one at least.
std::string station(Length at) {
  std::string text = base::to_text(base::round_to({at.nm(), policy::nm_in_m}, 9));
  while (text.back() == '0' && text[text.size() - 2] != '.') text.pop_back();
  return text;
}

template <class T> Json number(const std::optional<T> &value) { return value ? Json(*value) : Json(nullptr); }

Json form(const std::optional<NearestFrame> &frame) {
  if (!frame) return nullptr;
  return {{"frame", frame->number}, {"off", mm(frame->off)}};
}

std::string word(Area::Kind kind) { return kind == Area::Kind::falls_short ? "falls-short" : "too-close"; }
std::string word(Option::Kind kind) { return kind == Option::Kind::insert ? "insert" : "overplate"; }

Json form(const Area &area) {
  return {{"id", area.id},
          {"zone", area.zone},
          {"rows", area.rows},
          {"from", mm(area.along.from)},
          {"to", mm(area.along.to)},
          {"length", mm(area.along.length())},
          {"breadth", area.breadth ? Json(mm(*area.breadth)) : Json(nullptr)},
          {"area_m2", number(area.area_m2)},
          {"least", mm(area.least)},
          {"at", area.at},
          {"kind", word(area.kind)},
          {"places", area.places},
          {"unseen", area.unseen},
          {"ladder", area.suggested},
          {"covered_by", area.covered_by},
          {"recommended_by", area.recommended_by},
          {"uncovered", area.uncovered},
          {"frames", {{"from", form(area.frame_from)}, {"to", form(area.frame_to)}}}};
}

Json form(const std::optional<Plugs> &plugs) {
  if (!plugs) return nullptr;
  return {{"along", plugs->along}, {"across", plugs->across}, {"count", plugs->count()}};
}

Json form(const Item &item) {
  return {{"id", item.id},
          {"plate_m2", number(item.plate_m2)},
          {"weight_kg", number(item.weight_kg)},
          {"removed_kg", number(item.removed_kg)},
          {"net_kg", number(item.net_kg)},
          {"weld_m", number(item.weld_m)},
          {"plugs", form(item.plugs)},
          {"centre", item.centre ? Json(station(*item.centre)) : Json(nullptr)},
          {"frame", form(item.frame)}};
}

Json form(const Option &option) {
  return {{"area", option.area},
          {"kind", word(option.kind)},
          {"thickness", mm(option.thickness)},
          {"net_kg", option.net_kg},
          {"centre", station(option.centre)}};
}

template <class T> Json list(const std::vector<T> &all) {
  Json out = Json::array();
  for (const T &one : all) out.push_back(form(one));
  return out;
}

} // namespace

Json json(const Works &found) {
  return {{"areas", list(found.areas)}, {"items", list(found.items)}, {"options", list(found.options)}};
}

} // namespace strakebook::works
