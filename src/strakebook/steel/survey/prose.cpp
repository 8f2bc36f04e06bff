#include "strakebook/steel/survey/prose.h"

#include <algorithm>

#include "strakebook/steel/survey/pointer_scan.h"

namespace strakebook::survey {

namespace {

/// A stretch of text and whether it stands between asterisks.
struct Stretch {
  std::string_view text;
  bool emphasis = false;
};

bool blank(char c) { return c == ' ' || c == '\n' || c == '\t'; }

/// Where the asterisk that opens at `open` is closed again; npos: it is only an asterisk.
std::size_t closing(std::string_view text, std::size_t open) {
  if (open + 1 >= text.size() || blank(text[open + 1]) || text[open + 1] == '*')
    return std::string_view::npos;
  const auto close = text.find('*', open + 1);
  return close != std::string_view::npos && !blank(text[close - 1]) ? close : std::string_view::npos;
}

std::vector<Stretch> stretches(std::string_view text) {
  std::vector<Stretch> all;
  std::size_t begin = 0;
  for (std::size_t at = text.find('*'); at != std::string_view::npos; at = text.find('*', at)) {
    const auto close = closing(text, at);
    if (close == std::string_view::npos) {
      ++at;
      continue;
    }
    if (at > begin)
      all.push_back({text.substr(begin, at - begin)});
    all.push_back({text.substr(at + 1, close - at - 1), true});
    begin = at = close + 1;
  }
  if (begin < text.size())
    all.push_back({text.substr(begin)});
  return all;
}

} // namespace

std::vector<Piece> pieces(const Survey &survey, std::string_view text) {
  std::vector<Piece> all;
  for (const auto &stretch : stretches(text)) {
    std::size_t begin = 0;
    const auto plain_up_to = [&](std::size_t end) {
      if (end > begin)
        all.emplace_back(Plain{std::string(stretch.text.substr(begin, end - begin)), stretch.emphasis});
    };
    for (const auto &found : scan_pointers(survey, stretch.text)) {
      if (!found.leads)
        continue;
      plain_up_to(found.begin);
      all.emplace_back(
          Pointer{found.target, found.id, std::string(stretch.text.substr(found.begin, found.length))});
      begin = found.begin + found.length;
    }
    plain_up_to(stretch.text.size());
  }
  return all;
}

std::vector<std::string> dangling(const Survey &survey, std::string_view text) {
  std::vector<std::string> lost;
  for (const auto &found : scan_pointers(survey, text))
    if (!found.leads && !found.place)
      lost.emplace_back(text.substr(found.begin, found.length));
  return lost;
}

} // namespace strakebook::survey
