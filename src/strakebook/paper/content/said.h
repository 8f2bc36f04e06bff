#pragma once

#include <string>

#include "strakebook/paper/content/document.h"

/// Content as one text, so that two editions can be held against each other. Two parts have the same text exactly when a reader
/// finds the same in them: where they stand, on which page, under which running number and at which scale they are drawn is not in it.
namespace strakebook::content {

std::string said(const Inlines &text);
std::string said(const Drawing &drawing);
std::string said(const Cell &cell);
std::string said(const Row &row);
std::string said(const KeyValues::Entry &entry);
std::string said(const Figure::Panel &panel);
std::string said(const Block &block);

/// One shape or label of a drawing. A sign, label or area that has an id or leads somewhere is known by that, not by its place on
/// paper.
std::string said(const Element &element);

/// Whether a cell has a letter, a figure, a sign or a drawing; a dash says nothing.
bool says_anything(const Cell &cell);

} // namespace strakebook::content
