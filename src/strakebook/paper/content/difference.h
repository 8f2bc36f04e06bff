#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "strakebook/paper/content/document.h"

/// What differs between two editions of a document, so that a bar can stand beside it.
namespace strakebook::content {

/// Of each text of `now`, which of `before` it goes on from: the longest common sequence, in order. nullopt: it is not there.
std::vector<std::optional<std::size_t>> matched(const std::vector<std::string> &now, const std::vector<std::string> &before);

/// Places of the notes of `now` that `before` does not have.
std::vector<std::size_t> unmatched(const std::vector<Inlines> &now, const std::vector<Inlines> &before);

/// Marks in `now` what `before` does not say in the same words: paragraphs, headings, photographs, rows and their heads, entries,
/// captions, notes, panels, and in a drawing the signs that differ. Rows with an id are held against the row with that id, others and
/// blocks in their order. Where something is gone, the caption or heading over it is marked. Pages, running numbers and scales make no
/// difference (see said()); nor does a column that most rows gain or lose: the caption alone is marked. Sections in `left_out` are left
/// as they are.
void mark_changes(Document &now, const Document &before, const std::set<std::string> &left_out);

} // namespace strakebook::content
