#include "strakebook/steel/assess/readings.h"

#include <algorithm>
#include <stdexcept>
#include <tuple>

#include "strakebook/steel/assess/originals.h"
#include "strakebook/steel/assess/spots.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/policy/fraction.h"
#include "strakebook/steel/survey/pitting.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::assess {

namespace {

Length mean_of(const std::vector<base::Measured> &repeats) {
  std::int64_t sum_nm = 0;
  for (const base::Measured &repeat : repeats) sum_nm += repeat.value.nm();
  return Length::nanometres(sum_nm / static_cast<std::int64_t>(repeats.size()));
}

MarkResult result_of(const survey::Survey &survey, const policy::Policy &policy, std::size_t index) {
  const survey::Mark &mark = survey.marks[index];
  MarkResult result{.mark = index};
  if (mark.status != survey::Status::read) {
    result.left_out = word_of(mark.status);
    return result;
  }
  if (mark.plate == survey::Plate::doubler) {
    result.left_out = doubler_word;
    return result;
  }
  const survey::Zone &zone = survey::zone_of_row(survey, mark.row);
  result.used = true;
  result.remaining = reduced(mark);
  result.loss = zone.original.nominal.value - result.remaining;
  result.share = loss_share(zone, policy, {result.remaining.nm(), 1});
  return result;
}

void add(Count &count, const survey::Mark &mark, const MarkResult &result) {
  ++count.planned;
  if (mark.status == survey::Status::rejected) ++count.rejected;
  else if (mark.status != survey::Status::read) ++count.not_read[mark.status];
  else {
    ++count.read;
    ++(result.used ? count.used : count.doubler);
  }
}

/// The order of a file is its writer's: it does not decide which of two equal places is judged. Of equal figures the most
/// doubtful is worse, then the first by row and station.
template <class Figure>
bool worse_mark(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const MarkResult &a, const MarkResult &b,
                Figure figure) {
  if (figure(a) != figure(b)) return figure(a) < figure(b);
  const Length doubt_a = band(plate_spot(survey, policy, gauges, a).doubt), doubt_b = band(plate_spot(survey, policy, gauges, b).doubt);
  const survey::Mark &at_a = survey.marks[a.mark], &at_b = survey.marks[b.mark];
  return std::tie(doubt_b, at_a.row, at_a.station.value) < std::tie(doubt_a, at_b.row, at_b.station.value);
}

bool worse_pit(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const PitResult &a, const PitResult &b) {
  if (a.judged() != b.judged()) return a.judged() < b.judged();
  const Length doubt_a = band(pit_spot(survey, policy, gauges, a).doubt), doubt_b = band(pit_spot(survey, policy, gauges, b).doubt);
  const std::string &id_a = survey.pits[a.pit].id, &id_b = survey.pits[b.pit].id;
  const auto length_a = id_a.size(), length_b = id_b.size(); // P9 before P10
  return std::tie(doubt_b, length_a, id_a) < std::tie(doubt_a, length_b, id_b);
}

template <class Items, class Belongs> std::vector<std::size_t> indices_where(const Items &items, Belongs belongs) {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (belongs(items[i])) found.push_back(i);
  return found;
}

bool in_zone(const survey::Survey &survey, std::string_view row, std::string_view zone) {
  const survey::Row *known = survey::row_of(survey, row);
  return known && known->zone == zone;
}

} // namespace

Length reduced(const survey::Mark &mark) {
  if (mark.repeats.empty()) throw std::logic_error("a mark read without a figure: " + mark.id());
  if (mark.reduce == survey::Reduction::mean_of_repeats) return mean_of(mark.repeats);
  return std::ranges::min(mark.repeats, {}, &base::Measured::value).value;
}

std::vector<MarkResult> mark_results(const survey::Survey &survey, const policy::Policy &policy) {
  std::vector<MarkResult> results;
  for (std::size_t i = 0; i < survey.marks.size(); ++i) results.push_back(result_of(survey, policy, i));
  return results;
}

std::vector<PitResult> pit_results(const survey::Survey &survey, const policy::Policy &policy) {
  std::vector<PitResult> results;
  for (std::size_t i = 0; i < survey.pits.size(); ++i) {
    const survey::Pit &pit = survey.pits[i];
    const survey::Zone &zone = survey::zone_of_row(survey, pit.at.row);
    const Length remaining = pit.adjacent.value - pit.depth.value;
    PitResult result{.pit = i, .doubler = survey::doubler_of(survey, pit), .remaining = remaining};
    if (result.doubler.empty()) {
      result.loss = zone.original.nominal.value - remaining;
      result.share = loss_share(zone, policy, {remaining.nm(), 1});
    }
    results.push_back(std::move(result));
  }
  return results;
}

Tally tally(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, std::span<const MarkResult> results,
            std::span<const std::size_t> marks) {
  Tally tally;
  std::int64_t sum_nm = 0;
  for (const std::size_t i : marks) {
    const MarkResult &result = results[i];
    add(tally.count, survey.marks[i], result);
    if (!result.used) continue;
    sum_nm += result.remaining.nm();
    const auto worse = [&](std::optional<std::size_t> than, auto figure) {
      return !than || worse_mark(survey, policy, gauges, result, results[*than], figure);
    };
    if (worse(tally.least, [](const MarkResult &mark) { return mark.remaining; })) {
      tally.min = result.remaining;
      tally.least = i;
    }
    if (worse(tally.worst, [](const MarkResult &mark) { return mark.judged(); })) tally.worst = i;
    if (!tally.max || result.remaining > *tally.max) tally.max = result.remaining;
  }
  if (tally.count.used > 0) tally.mean_nm = base::reduced({sum_nm, tally.count.used});
  return tally;
}

std::vector<std::size_t> marks_of_row(const survey::Survey &survey, std::string_view row) {
  return indices_where(survey.marks, [&](const survey::Mark &mark) { return mark.row == row; });
}

std::vector<std::size_t> marks_of_zone(const survey::Survey &survey, std::string_view zone) {
  return indices_where(survey.marks, [&](const survey::Mark &mark) { return in_zone(survey, mark.row, zone); });
}

std::vector<std::size_t> pits_of_zone(const survey::Survey &survey, std::string_view zone) {
  return indices_where(survey.pits, [&](const survey::Pit &pit) { return in_zone(survey, pit.at.row, zone); });
}

std::optional<std::size_t> worst_pit(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges,
                                     std::span<const PitResult> results, std::span<const std::size_t> pits) {
  std::optional<std::size_t> worst;
  for (const std::size_t i : pits)
    if (results[i].doubler.empty() && (!worst || worse_pit(survey, policy, gauges, results[i], results[*worst]))) worst = i;
  return worst;
}

std::vector<RowSummary> row_summaries(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges,
                                      std::span<MarkResult> results) {
  std::vector<RowSummary> rows;
  for (const survey::Row &row : survey.rows) {
    const Tally all = tally(survey, policy, gauges, results, marks_of_row(survey, row.id));
    RowSummary summary{.row = row.id, .count = all.count, .min = all.min, .max = all.max, .mean_nm = all.mean_nm,
                       .worst = {}, .worst_loss = {}};
    if (all.least) {
      results[*all.least].lowest_of_row = true;
      summary.worst = survey.marks[*all.least].id();
      summary.worst_loss = results[*all.worst].loss; // of the mark judged by the least, which need not show the least
    }
    rows.push_back(std::move(summary));
  }
  return rows;
}

} // namespace strakebook::assess
