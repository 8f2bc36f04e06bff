#include "strakebook/house/find_layout.h"

#include <set>

#include "strakebook/house/unknown_name.h"

namespace strakebook::house {
namespace {

namespace fs = std::filesystem;
constexpr std::string_view ending = ".yaml";

bool is_plain_name(std::string_view name) {
  constexpr std::string_view allowed = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
  return !name.empty() && name.find_first_not_of(allowed) == name.npos;
}

std::set<std::string> layouts_in(const fs::path &folder) {
  std::set<std::string> names;
  std::error_code failed;
  for (fs::directory_iterator at(folder, failed), end; !failed && at != end; at.increment(failed))
    if (at->path().extension() == ending)
      names.insert(at->path().stem().string());
  return names;
}

} // namespace

std::optional<FoundLayout> find_layout(std::string_view name, const Folders &folders,
                                       const base::SourceSpan &from, base::Diagnostics &sink) {
  if (is_plain_name(name)) {
    const std::string file = std::string(name) + std::string(ending);
    std::error_code failed;
    for (const fs::path &folder : {folders.own, folders.installed})
      if (fs::is_regular_file(folder / file, failed))
        return FoundLayout{folder, folder / file, folder == folders.installed};
  }
  std::set<std::string> known = layouts_in(folders.installed);
  known.merge(layouts_in(folders.own));
  refuse_unknown(sink, base::Code::layout_unknown, from, name, "a layout",
                 std::vector<std::string>(known.begin(), known.end()));
  return std::nullopt;
}

} // namespace strakebook::house
