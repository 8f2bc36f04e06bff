#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// Something in the survey that prose can point at.
enum class Target { mark, pit, doubler, note, photo, recommendation, steelwork, limitation, zone };

struct Pointer {
  Target target{};
  std::string id;   ///< "PW 9", "P3", "4"
  std::string text; ///< as it stood in the prose: "photo 4", "P5-P8"
};

struct Plain {
  std::string text;
  bool emphasis = false; ///< written between asterisks
};

/// Prose cut into plain stretches and pointers. A pointer is: `P3`, `D1`, `N2`, `S1` (ids that the survey's
/// maps give), `PW 9` (row and station), `photo 4`, `item 2`, `limitation 1`, `zone W`.
using Piece = std::variant<Plain, Pointer>;
std::vector<Piece> pieces(const Survey &survey, std::string_view text);

/// Pointers in `text` that look like references but lead to nothing ("P9" when there is no P9, "photo 12").
std::vector<std::string> dangling(const Survey &survey, std::string_view text);

} // namespace strakebook::survey
