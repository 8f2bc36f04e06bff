#pragma once

#include <span>

#include "strakebook/steel/assess/assessment.h"

/// What marks and pits say one by one, and what many of them say together.
namespace strakebook::assess {

/// The figure of a mark that was read: the least of its repeats, or their mean, rounded down to a nanometre, as its set says.
Length reduced(const survey::Mark &mark);

/// One result for each mark, same order, its low side not yet set. A mark is used when it was read on the hull's own plate.
std::vector<MarkResult> mark_results(const survey::Survey &survey, const policy::Policy &policy);

/// One result for each pit, same order, its low side not yet set: remaining = adjacent - depth.
std::vector<PitResult> pit_results(const survey::Survey &survey, const policy::Policy &policy);

using Gauges = std::span<const GaugeResult>;

/// Statistics over some of the marks, by index.
struct Tally {
  Count count;
  std::optional<Length> min, max;
  std::optional<Ratio> mean_nm;
  std::optional<std::size_t> least; ///< mark with the least displayed; of equals the most doubtful, then by row and station
  std::optional<std::size_t> worst; ///< mark that is judged by the least; of equals likewise
};
Tally tally(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, std::span<const MarkResult> results,
            std::span<const std::size_t> marks);

std::vector<std::size_t> marks_of_row(const survey::Survey &survey, std::string_view row);
std::vector<std::size_t> marks_of_zone(const survey::Survey &survey, std::string_view zone);
std::vector<std::size_t> pits_of_zone(const survey::Survey &survey, std::string_view zone);

/// The pit of the hull's own plate that is judged by the least; of equals the most doubtful, then the one with the least number.
std::optional<std::size_t> worst_pit(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges,
                                     std::span<const PitResult> results, std::span<const std::size_t> pits);

/// One summary for each row, same order; marks the lowest of each row in `results`.
std::vector<RowSummary> row_summaries(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges,
                                      std::span<MarkResult> results);

} // namespace strakebook::assess
