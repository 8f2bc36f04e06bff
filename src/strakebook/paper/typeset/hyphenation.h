#pragma once

#include <cstddef>
#include <filesystem>
#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"

namespace strakebook::typeset {

/// Where words of one language may be divided. Moves, does not copy.
class Hyphenation {
public:
  /// Divides nothing: a language without patterns.
  Hyphenation();
  /// The patterns for a language (BCP 47, "en-GB") that are bundled in `folder`; a language that has none there
  /// divides nothing. Patterns that are missing or are not the recorded ones add patterns_damaged.
  static std::optional<Hyphenation> load(const std::filesystem::path &folder, std::string_view language,
                                         base::Diagnostics &sink);
  Hyphenation(Hyphenation &&) noexcept;
  Hyphenation &operator=(Hyphenation &&) noexcept;
  ~Hyphenation();

  /// Byte offsets at which a word in small letters may be divided, with at least `left` letters before the
  /// hyphen and `right` after it. Asked once a word: answers are kept, for the same `left` and `right`.
  const std::vector<std::size_t> &breaks(std::string_view word, int left, int right) const;

private:
  struct State;
  std::unique_ptr<State> state_;
};

} // namespace strakebook::typeset
