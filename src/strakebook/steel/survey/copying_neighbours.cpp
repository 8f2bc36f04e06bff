#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/survey/copying_rows.h"

/// Readings that do not fit those about them: digits exchanged, a jump, a difference from the other side.
namespace strakebook::survey::copying {

using base::Length;

namespace {

/// A mark and those that it is held against; nullptr: there is none.
struct Surroundings {
  const Mark &mark;
  const Mark *before = nullptr, *after = nullptr;
  const Mark *next_but_one = nullptr; ///< at a row's end, the second mark from it
  const Mark *mirror = nullptr, *mirror_before = nullptr, *mirror_after = nullptr;
};

const Mark *beside(const std::vector<const Mark *> &marks, std::size_t at, int step) {
  const auto i = static_cast<std::ptrdiff_t>(at) + step;
  return i < 0 || i >= static_cast<std::ptrdiff_t>(marks.size()) ? nullptr : marks[static_cast<std::size_t>(i)];
}

Surroundings surroundings(const MarkedRow &row, std::size_t at) {
  Surroundings out{.mark = *row.sound[at], .before = beside(row.sound, at, -1), .after = beside(row.sound, at, 1)};
  if (!out.before || !out.after)
    out.next_but_one = beside(row.sound, at, out.before ? -2 : 2);
  if (!row.mirror)
    return out;
  const auto &other = row.mirror->sound;
  const auto k = sound_at(*row.mirror, out.mark.station.value);
  if (k == other.size())
    return out;
  out.mirror = other[k];
  out.mirror_before = beside(other, k, -1);
  out.mirror_after = beside(other, k, 1);
  return out;
}

/// Two that a reading can be held against: its neighbours, or at a row's end the two nearest.
std::vector<const Mark *> two_witnesses(const Surroundings &all) {
  std::vector<const Mark *> out;
  for (const auto *one : {all.before, all.after, all.next_but_one})
    if (one)
      out.push_back(one);
  return out.size() == 2 ? out : std::vector<const Mark *>{};
}

bool digit(char c) { return c >= '0' && c <= '9'; }

/// The figure with each pair of neighbouring digits exchanged, as far as that is a figure: 6.4 -> 4.6.
std::vector<base::Measured> exchanged(const base::Measured &figure) {
  std::vector<std::size_t> digits;
  for (std::size_t i = 0; i < figure.raw.size() && figure.raw[i] != ' '; ++i)
    if (digit(figure.raw[i]))
      digits.push_back(i);
  std::vector<base::Measured> out;
  for (std::size_t i = 1; i < digits.size(); ++i) {
    auto text = figure.raw;
    std::swap(text[digits[i - 1]], text[digits[i]]);
    base::MeasuredError wrong;
    if (text == figure.raw || text.find('/') != std::string::npos)
      continue;
    if (auto other = base::parse_measured(text, figure.unit, wrong))
      out.push_back(std::move(*other));
  }
  return out;
}

bool fits_all(Length value, const std::vector<const Mark *> &others, Length agree) {
  return std::all_of(others.begin(), others.end(), [&](const Mark *other) {
    const auto difference = value - least(*other).value;
    return std::max(difference, -difference) <= agree;
  });
}

/// What the least reading would be with two digits exchanged, if every repeat has an exchange that fits.
std::optional<base::Measured> fitting_exchange(const Mark &mark, const std::vector<const Mark *> &others, Length agree) {
  std::optional<base::Measured> of_least;
  for (const auto &repeat : mark.repeats) {
    const auto all = exchanged(repeat);
    const auto fits = std::find_if(all.begin(), all.end(), [&](const auto &one) { return fits_all(one.value, others, agree); });
    if (fits == all.end())
      return std::nullopt;
    if (&repeat == &least(mark))
      of_least = *fits;
  }
  return of_least;
}

std::string reading_at(const Mark &mark) { return fmt::format("{} at {}", least(mark).raw, mark.id()); }

bool digits_exchanged(const Surroundings &all, Length agree, base::Diagnostics &sink) {
  const auto witnesses = two_witnesses(all);
  const auto far = [&](const Mark *other) { return apart(all.mark, *other) > agree; };
  if (witnesses.empty() || !std::all_of(witnesses.begin(), witnesses.end(), far))
    return false;
  const auto would_be = fitting_exchange(all.mark, witnesses, agree);
  if (!would_be)
    return false;
  warn(sink, all.mark.span,
       {base::Code::digits_swapped, "digits-swapped " + all.mark.id(),
        fmt::format("{} reads {}, beside {} and {}; with two digits exchanged, {}, it would fit", all.mark.id(),
                    least(all.mark).raw, reading_at(*witnesses[0]), reading_at(*witnesses[1]), would_be->raw),
        fmt::format("a reading within {} mm of those beside it, or the reason why it is not", base::mm_exact(agree))});
  return true;
}

bool jump(const Surroundings &all, Length most, base::Diagnostics &sink) {
  if (!all.before || !all.after || apart(all.mark, *all.before) <= most || apart(all.mark, *all.after) <= most)
    return false;
  warn(sink, all.mark.span,
       {base::Code::neighbour_jump, "neighbour-jump " + all.mark.id(),
        fmt::format("{} reads {} between {} and {}", all.mark.id(), least(all.mark).raw, reading_at(*all.before),
                    reading_at(*all.after)),
        fmt::format("a reading within {} mm of one neighbour, or the reason why it is not", base::mm_exact(most))});
  return true;
}

/// True where there is a neighbour, and every one there is stands so to the mark.
template <class Stands> bool all_there(const Mark *one, const Mark *other, Stands stands) {
  return (one || other) && (!one || stands(*one)) && (!other || stands(*other));
}

void differs_from_mirror(const Surroundings &all, const policy::CopyingChecks &policy, base::Diagnostics &sink) {
  if (!all.mirror || apart(all.mark, *all.mirror) <= policy.mirror_apart)
    return;
  const auto agrees_there = [&](const Mark &other) { return apart(*all.mirror, other) <= policy.agree; };
  const auto alone_here = [&](const Mark &other) { return apart(all.mark, other) > policy.agree; };
  if (!all_there(all.mirror_before, all.mirror_after, agrees_there) || !all_there(all.before, all.after, alone_here))
    return;
  warn(sink, all.mark.span,
       {base::Code::mirror_differs, "mirror-differs " + all.mark.id(),
        fmt::format("{} reads {} and agrees with none beside it; on the other side it is {}, which agrees with its neighbours",
                    all.mark.id(), least(all.mark).raw, reading_at(*all.mirror)),
        fmt::format("a reading within {} mm of the other side's, or the reason why it is not",
                    base::mm_exact(policy.mirror_apart))});
}

} // namespace

void neighbours(const MarkedRows &rows, const policy::Policy &policy, base::Diagnostics &sink) {
  for (const auto &row : rows)
    for (std::size_t i = 0; i < row.sound.size(); ++i) {
      const auto all = surroundings(row, i);
      if (!digits_exchanged(all, policy.copying.agree, sink) && !jump(all, policy.neighbour_jump, sink))
        differs_from_mirror(all, policy.copying, sink);
    }
}

} // namespace strakebook::survey::copying
