#include "strakebook/house/layers.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/house/find_layout.h"
#include "strakebook/house/layout_file.h"
#include "strakebook/house/unknown_name.h"

namespace strakebook::house {
namespace {

using base::Code;

/// Follows `extends` to the end; `layers` are collected with the base last.
bool collect(std::string_view name, const Folders &folders, const base::SourceSpan &from,
             std::vector<Layer> &layers, base::Diagnostics &sink) {
  const auto again = [&](const Layer &layer) { return layer.name == name; };
  if (std::any_of(layers.begin(), layers.end(), again)) {
    std::string circle;
    for (const Layer &layer : layers)
      circle += layer.name + " -> ";
    sink.error(Code::layout_cycle, from,
               fmt::format("layouts extend each other in a circle: {}{}", circle, name),
               "a layout that in the end extends nothing");
    return false;
  }
  const auto found = find_layout(name, folders, from, sink);
  if (!found)
    return false;
  auto file = read_layout_file(std::string(name), *found, from, sink);
  if (!file)
    return false;
  layers.push_back(std::move(file->layer));
  if (!file->extends.value.empty())
    return collect(file->extends.value, folders, file->extends.span, layers, sink);
  if (found->installed)
    return true;
  sink.error(Code::layout_loosens, file->top,
             fmt::format("the layout \"{}\" beside the survey extends nothing", name),
             "a layout that extends one of the installed ones", "extends: base");
  return false;
}

} // namespace

std::optional<std::vector<Layer>> layers_of(std::string_view name, const Folders &folders,
                                            const base::SourceSpan &from, base::Diagnostics &sink) {
  std::vector<Layer> layers;
  if (!collect(name, folders, from, layers, sink))
    return std::nullopt;
  std::reverse(layers.begin(), layers.end());
  return layers;
}

} // namespace strakebook::house
