#pragma once

#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// Was it written? "whole shell" is a reach without rows; only its place tells it from one that nobody wrote.
bool written(const Reach &reach);
/// Does a row belong to a reach? A reach without rows or zone is the whole shell.
bool covers_row(const Survey &survey, const Reach &reach, std::string_view row);
/// Does the reach cover this place? Its ends are part of it.
bool covers(const Survey &survey, const Reach &reach, std::string_view row, base::Length station);
/// Do two reaches share any place?
bool overlap(const Survey &survey, const Reach &a, const Reach &b);

} // namespace strakebook::survey
