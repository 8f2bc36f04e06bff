#include "strakebook/house/find_layout.h"

#include <set>

#include "strakebook/house/unknown_name.h"

namespace strakebook::house {
namespace {

constexpr std::string_view ending = ".yaml";

bool is_plain_name(std::string_view name) {
  constexpr std::string_view allowed = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
  return !name.empty() && name.find_first_not_of(allowed) == name.npos;
}

std::set<std::string> layouts_in(const base::Folder &folder) {
  std::set<std::string> names;
  for (const std::string &file : folder.names())
    if (file.ends_with(ending))
      names.insert(file.substr(0, file.size() - ending.size()));
  return names;
}

} // namespace

std::optional<FoundLayout> find_layout(std::string_view name, const Folders &folders,
                                       const base::SourceSpan &from, base::Diagnostics &sink) {
  if (is_plain_name(name)) {
    const std::string file = std::string(name) + std::string(ending);
    if (folders.own.has(file))
      return FoundLayout{folders.own, file, false};
    if (folders.installed.has(file))
      return FoundLayout{folders.installed, file, true};
  }
  std::set<std::string> known = layouts_in(folders.installed);
  known.merge(layouts_in(folders.own));
  refuse_unknown(sink, base::Code::layout_unknown, from, name, "a layout",
                 std::vector<std::string>(known.begin(), known.end()));
  return std::nullopt;
}

} // namespace strakebook::house
