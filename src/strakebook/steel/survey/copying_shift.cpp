#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/survey/copying_rows.h"

/// Rows written down one station off: the two sides of a hull waste alike, so a row that fits the other side much better
/// when moved by one station is looked at.
namespace strakebook::survey::copying {

namespace {

using Pairs = std::vector<std::pair<const Mark *, const Mark *>>;

/// Stations at which both sides were read.
Pairs common_stations(const MarkedRow &row) {
  Pairs out;
  for (const auto *mark : row.sound)
    if (const auto at = sound_at(*row.mirror, mark->station.value); at < row.mirror->sound.size())
      out.emplace_back(mark, row.mirror->sound[at]);
  return out;
}

/// Sum in nm of what the row differs from the other side by, each station against the one `step` further on; the ends that
/// have no partner in either direction are left out, so that sums compare.
std::int64_t difference(const Pairs &pairs, std::ptrdiff_t step) {
  std::int64_t sum = 0;
  for (std::size_t i = 1; i + 1 < pairs.size(); ++i)
    sum += apart(*pairs[i].first, *pairs[static_cast<std::size_t>(static_cast<std::ptrdiff_t>(i) + step)].second).nm();
  return sum;
}

} // namespace

void shifted_rows(const MarkedRows &rows, const policy::CopyingChecks &policy, base::Diagnostics &sink) {
  for (const auto &row : rows) {
    if (!row.mirror || row.row->side != Side::port)
      continue;
    const auto pairs = common_stations(row);
    if (pairs.size() < static_cast<std::size_t>(std::max(3, policy.shift_marks)))
      continue;
    const auto as_written = difference(pairs, 0), moved = std::min(difference(pairs, 1), difference(pairs, -1));
    const auto compared = static_cast<std::int64_t>(pairs.size()) - 2;
    const bool differs = as_written >= policy.shift_apart.nm() * compared;
    if (!differs || moved * policy.shift_part.den > as_written * policy.shift_part.num)
      continue;
    warn(sink, row.sound.front()->span,
         {base::Code::row_shifted, "row-shifted " + row.row->id,
          fmt::format("rows {} and {} differ by {} mm a station as written, and by {} mm when one is moved by a station",
                      row.row->id, row.mirror->row->id, base::mm_text(base::Length::nanometres(as_written / compared), 2),
                      base::mm_text(base::Length::nanometres(moved / compared), 2)),
          "stations that were checked against the notes, or the reason why the sides differ so"});
  }
}

} // namespace strakebook::survey::copying
