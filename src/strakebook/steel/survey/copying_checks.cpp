#include "strakebook/steel/survey/copying_checks.h"

#include <algorithm>
#include <map>
#include <tuple>

#include <fmt/format.h>

#include "strakebook/steel/survey/copying_rows.h"

namespace strakebook::survey {

namespace copying {

namespace {

MarkedRow *row_named(MarkedRows &rows, std::string_view id) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const MarkedRow &row) { return row.row->id == id; });
  return found == rows.end() ? nullptr : &*found;
}

/// A row and what it is called without its side.
using Place = std::tuple<std::string_view, std::string_view, std::string_view>;

void pair_sides(MarkedRows &rows) {
  std::map<Place, std::vector<MarkedRow *>> sides;
  for (auto &row : rows)
    if (row.row->side != Side::centre)
      sides[{row.row->zone, row.row->name.text, row.row->height.text}].push_back(&row);
  for (auto &[place, both] : sides)
    if (both.size() == 2 && both[0]->row->side != both[1]->row->side) {
      both[0]->mirror = both[1];
      both[1]->mirror = both[0];
    }
}

} // namespace

MarkedRows marked_rows(const Survey &survey, const Misfits &misfits) {
  MarkedRows rows;
  for (const auto &row : survey.rows)
    rows.push_back({.row = &row, .zone = zone_of(survey, row.zone)});
  MarkedRow *at = nullptr;
  for (const auto &mark : survey.marks) {
    if (!at || at->row->id != mark.row)
      at = row_named(rows, mark.row);
    if (!at)
      continue;
    at->all.push_back(&mark);
    if (mark.status == Status::read && mark.plate == Plate::hull && !mark.repeats.empty() && !misfits.contains(&mark))
      at->sound.push_back(&mark);
  }
  std::erase_if(rows, [](const MarkedRow &row) { return row.all.empty() || !row.zone; });
  pair_sides(rows);
  return rows;
}

std::size_t sound_at(const MarkedRow &row, base::Length station) {
  const auto found = std::lower_bound(row.sound.begin(), row.sound.end(), station,
                                      [](const Mark *mark, base::Length at) { return mark->station.value < at; });
  const bool there = found != row.sound.end() && (*found)->station.value == station;
  return static_cast<std::size_t>((there ? found : row.sound.end()) - row.sound.begin());
}

const base::Measured &least(const Mark &mark) {
  return *std::min_element(mark.repeats.begin(), mark.repeats.end(),
                           [](const auto &a, const auto &b) { return a.value < b.value; });
}

base::Length apart(const Mark &a, const Mark &b) {
  const auto difference = least(a).value - least(b).value;
  return std::max(difference, -difference);
}

void warn(base::Diagnostics &sink, const base::SourceSpan &span, Warning warning) {
  sink.add({.severity = base::Severity::warning,
            .code = warning.code,
            .span = span,
            .message = std::move(warning.message),
            .expected = std::move(warning.expected),
            .write = fmt::format("the figure put right, or acknowledged: {{{}: why it stands}}", warning.id),
            .subject = warning.id});
}

} // namespace copying

void warn_of_copying(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  const auto rows = copying::marked_rows(survey, copying::figures(survey, policy, sink));
  copying::neighbours(rows, policy, sink);
  copying::repeated_runs(rows, policy.copying, sink);
  copying::shifted_rows(rows, policy.copying, sink);
  copying::swapped_pits(survey, policy.copying, sink);
}

} // namespace strakebook::survey
