#include "strakebook/house/house.h"
#include "strakebook/house/layers.h"
#include "strakebook/house/merge.h"
#include "strakebook/house/read_issue.h"
#include "strakebook/house/read_policy.h"
#include "strakebook/house/read_style.h"
#include "strakebook/house/read_wording.h"

namespace strakebook::house {

std::optional<House> read_house(std::string_view name, const base::Folder &layouts, const base::Folder &survey_folder,
                                const base::SourceSpan &from,
                                base::Diagnostics &sink) {
  const std::size_t before = sink.errors();
  auto layers = layers_of(name, {layouts, survey_folder.in("layouts")}, from, sink);
  if (!layers)
    return std::nullopt;

  House house;
  house.name = std::string(name);
  base::YamlNode tree = std::move(layers->front().tree);
  for (std::size_t i = 1; i < layers->size(); ++i)
    lay_over(tree, (*layers)[i].tree, sink);
  for (Layer &layer : *layers)
    house.inputs.insert(house.inputs.end(), layer.inputs.begin(), layer.inputs.end());

  if (const base::YamlNode *policy = tree.find("policy"))
    house.policy = read_policy(*policy, sink);
  if (const base::YamlNode *style = tree.find("style"))
    house.style = read_style(*style, sink);
  if (const base::YamlNode *issue = tree.find("issue"))
    house.issue = read_issue(*issue, sink);
  house.wording = read_wording(tree, house.style, sink);
  if (const base::YamlNode *formulas = tree.find("formulas"))
    house.wording.formulas = read_formulas(*formulas, house.policy.steel_density_kg_m2_mm, sink);
  if (sink.errors() != before)
    return std::nullopt;
  return house;
}

} // namespace strakebook::house
