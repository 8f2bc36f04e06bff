#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

/// What the checks of copying look at, and how they speak.
namespace strakebook::survey::copying {

/// One row's marks, stations ascending.
struct MarkedRow {
  const Row *row = nullptr;
  const Zone *zone = nullptr;
  std::vector<const Mark *> all;
  std::vector<const Mark *> sound;   ///< read, on hull plate, in the unit it seems to be in
  const MarkedRow *mirror = nullptr; ///< the one row of the same name, zone and height on the other side
};
using MarkedRows = std::vector<MarkedRow>;

/// Marks that seem to be in another unit: reported as such, and held against no other.
using Misfits = std::set<const Mark *>;

/// Rows that have marks, in the survey's order. They point at each other: the vector is not to be changed.
MarkedRows marked_rows(const Survey &survey, const Misfits &misfits);

/// Where the sound mark of a row at that station stands in `sound`; its size: there is none.
std::size_t sound_at(const MarkedRow &row, base::Length station);

const base::Measured &least(const Mark &mark);
base::Length apart(const Mark &a, const Mark &b);

struct Warning {
  base::Code code{};
  std::string id; ///< "neighbour-jump PW 9"
  std::string message, expected;
};
void warn(base::Diagnostics &sink, const base::SourceSpan &span, Warning warning);

// The checks, each in a file of its own.
Misfits figures(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);
void neighbours(const MarkedRows &rows, const policy::Policy &policy, base::Diagnostics &sink);
void repeated_runs(const MarkedRows &rows, const policy::CopyingChecks &policy, base::Diagnostics &sink);
void shifted_rows(const MarkedRows &rows, const policy::CopyingChecks &policy, base::Diagnostics &sink);
void swapped_pits(const Survey &survey, const policy::CopyingChecks &policy, base::Diagnostics &sink);

} // namespace strakebook::survey::copying
