#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace strakebook::file {

/// A file as it was before any update was appended.
struct FirstRevision {
  std::size_t end = 0;        ///< one past its last byte
  std::size_t references = 0; ///< where its cross-reference table, or stream, begins
};

/// Found from the front: the first "startxref" that leads back to a table of references (ISO 32000-1, 7.5.4, 7.5.8), so that nothing
/// appended later changes the answer. nullopt: `pdf` is none.
std::optional<FirstRevision> first_revision(std::string_view pdf);

} // namespace strakebook::file
