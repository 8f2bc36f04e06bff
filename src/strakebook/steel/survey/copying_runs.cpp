#include <algorithm>
#include <bit>
#include <map>

#include <fmt/format.h>

#include "strakebook/steel/survey/copying_rows.h"

/// The same run of readings in two rows, or twice in one. How telling a run is, is counted in bits: a reading that one in
/// eight marks of its zone shows tells three, and one that repeats the reading before it tells none, because plate that does
/// not change tells nothing. A run is reported when its bits outweigh all the places at which two runs of the survey could
/// have met, by the odds that the policy asks for.
namespace strakebook::survey::copying {

namespace {

/// One mark of the long line of all marks; rows are kept apart by marks without one.
struct Step {
  const Mark *mark = nullptr;
  int reading = 0; ///< equal for equal cells; a number of its own between rows
  int bits = 0;    ///< rounded down
};

std::string cell_of(const Mark &mark) {
  std::string text = mark.status == Status::read ? "" : fmt::format("status {}", static_cast<int>(mark.status));
  for (const auto &repeat : mark.repeats)
    text += fmt::format("{} {};", repeat.raw, base::name_of(repeat.unit));
  return text;
}

using Line = std::vector<Step>;

Line line_of(const MarkedRows &rows) {
  std::map<std::string, int> numbers;
  std::map<std::pair<const Zone *, int>, unsigned> shown;
  std::map<const Zone *, unsigned> in_zone;
  Line line;
  std::vector<const Zone *> zones;
  for (const auto &row : rows) {
    for (const auto *mark : row.all) {
      const int number = numbers.emplace(cell_of(*mark), static_cast<int>(numbers.size())).first->second;
      line.push_back({mark, number, 0});
      zones.push_back(row.zone);
      ++shown[{row.zone, number}];
      ++in_zone[row.zone];
    }
    line.push_back({nullptr, -static_cast<int>(line.size()) - 1, 0});
    zones.push_back(nullptr);
  }
  for (std::size_t i = 0; i < line.size(); ++i)
    if (line[i].mark && line[i].mark->status == Status::read)
      line[i].bits = std::bit_width(in_zone[zones[i]] / shown[{zones[i], line[i].reading}]) - 1;
  return line;
}

struct Run {
  std::size_t first = 0, second = 0; ///< where it stands, in the line
  std::size_t length = 0;
};

/// From where two windows are equal, as far as they go on; a run does not overlap itself.
Run grown(const Line &line, std::size_t first, std::size_t second) {
  std::size_t length = 0;
  while (second + length < line.size() && first + length < second && line[first + length].mark &&
         line[first + length].reading == line[second + length].reading)
    ++length;
  return {first, second, length};
}

struct Telling {
  int bits = 0, changes = 0;
};
Telling telling(const Line &line, const Run &run) {
  Telling out;
  for (std::size_t i = 0; i < run.length; ++i) {
    const auto &a = line[run.first + i], &b = line[run.second + i];
    if (a.mark->status != Status::read || (i > 0 && a.reading == line[run.first + i - 1].reading))
      continue;
    out.bits += std::min(a.bits, b.bits);
    ++out.changes;
  }
  return out;
}

/// Every place whose window of `width` stands earlier in the line too, with the nearest earlier one.
std::vector<std::pair<std::size_t, std::size_t>> met_again(const Line &line, std::size_t width) {
  std::vector<std::size_t> at;
  for (std::size_t i = 0, clear = 0; i < line.size(); ++i) {
    clear = line[i].mark ? clear + 1 : 0;
    if (clear >= width)
      at.push_back(i + 1 - width);
  }
  const auto compare = [&](std::size_t a, std::size_t b) {
    for (std::size_t i = 0; i < width; ++i)
      if (line[a + i].reading != line[b + i].reading)
        return line[a + i].reading < line[b + i].reading ? -1 : 1;
    return 0;
  };
  std::sort(at.begin(), at.end(), [&](std::size_t a, std::size_t b) {
    const int order = compare(a, b);
    return order != 0 ? order < 0 : a < b;
  });
  std::vector<std::pair<std::size_t, std::size_t>> out;
  for (std::size_t i = 1; i < at.size(); ++i)
    if (compare(at[i - 1], at[i]) == 0)
      out.emplace_back(at[i], at[i - 1]);
  std::sort(out.begin(), out.end());
  return out;
}

void report(const Line &line, const Run &run, base::Diagnostics &sink) {
  const auto id = [&](std::size_t at) { return line[at].mark->id(); };
  const std::size_t last = run.length - 1;
  warn(sink, line[run.second].mark->span,
       {base::Code::readings_repeated, "readings-repeated " + id(run.second),
        fmt::format("the {} marks {} to {} show the same readings as {} to {}", run.length, id(run.second),
                    id(run.second + last), id(run.first), id(run.first + last)),
        "readings of their own, or the reason why they are the same"});
}

} // namespace

void repeated_runs(const MarkedRows &rows, const policy::CopyingChecks &policy, base::Diagnostics &sink) {
  const Line line = line_of(rows);
  const int meetings = 2 * static_cast<int>(std::bit_width(line.size())) - 1;
  const int enough = meetings + std::bit_width(static_cast<unsigned>(policy.run_odds));
  std::map<std::size_t, std::size_t> looked_at; // by how far apart the two stand: up to where
  for (const auto &[second, first] : met_again(line, static_cast<std::size_t>(std::max(1, policy.run_marks)))) {
    auto &end = looked_at[second - first];
    if (second < end)
      continue;
    const Run run = grown(line, first, second);
    end = second + run.length;
    const auto [bits, changes] = telling(line, run);
    if (run.length > 0 && changes >= policy.run_marks && bits >= enough)
      report(line, run, sink);
  }
}

} // namespace strakebook::survey::copying
