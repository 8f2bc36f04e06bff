#include "strakebook/steel/survey/transcription.h"

#include <fmt/format.h>

#include <algorithm>

#include "strakebook/base/decimal.h"

namespace strakebook::survey {

using base::Length;

namespace {

constexpr auto by_value = [](const base::Measured &a, const base::Measured &b) { return a.value < b.value; };

const base::Measured &least(const Mark &mark) {
  return *std::min_element(mark.repeats.begin(), mark.repeats.end(), by_value);
}

void warn(base::Diagnostics &sink, base::Code code, const Mark &mark, std::string_view subject,
          std::string message, std::string expected) {
  sink.add({.severity = base::Severity::warning,
            .code = code,
            .span = mark.span,
            .message = std::move(message),
            .expected = std::move(expected),
            .write = fmt::format("acknowledged: {{{} {}: why it stands}}", subject, mark.id()),
            .subject = fmt::format("{} {}", subject, mark.id())});
}

void repeats_apart(const Mark &mark, Length most, base::Diagnostics &sink) {
  if (spread(mark) <= most)
    return;
  const auto [low, high] = std::minmax_element(mark.repeats.begin(), mark.repeats.end(), by_value);
  warn(sink, base::Code::unequal_repeats, mark, "repeats-apart",
       fmt::format("the repeats at {} run from {} to {}", mark.id(), low->raw, high->raw),
       fmt::format("repeats within {} mm of each other", base::mm_exact(most)));
}

void jump(const Mark &before, const Mark &mark, const Mark &after, Length most, base::Diagnostics &sink) {
  const auto apart = [&](const Mark &neighbour) {
    const auto difference = least(mark).value - least(neighbour).value;
    return std::max(difference, -difference) > most;
  };
  if (!apart(before) || !apart(after))
    return;
  warn(sink, base::Code::neighbour_jump, mark, "neighbour-jump",
       fmt::format("{} reads {} between {} at {} and {} at {}", mark.id(), least(mark).raw, least(before).raw,
                   before.id(), least(after).raw, after.id()),
       fmt::format("a reading within {} mm of one neighbour, or the reason why it is not",
                   base::mm_exact(most)));
}

/// How far above its nominal new plate may be; nullopt: no tolerance says.
std::optional<Length> most_above(const Original &original, const policy::Policy &policy) {
  std::optional<Length> most;
  for (const auto &[id, tolerance] : policy.tolerances) {
    const auto *band = policy::band_for(tolerance, original.nominal.value);
    const bool named = std::ranges::find(original.tolerances, id) != original.tolerances.end();
    if (!band || (!original.tolerances.empty() && !named))
      continue;
    if (!most || *most < band->upper)
      most = band->upper;
  }
  return most;
}

void over_original(const Mark &mark, const Zone &zone, const policy::Policy &policy,
                   base::Diagnostics &sink) {
  const auto above = most_above(zone.original, policy);
  if (!above || least(mark).value <= zone.original.nominal.value + *above)
    return;
  warn(sink, base::Code::reading_over_original, mark, "over-original",
       fmt::format("{} reads {}, more than the original {} and its tolerance", mark.id(), least(mark).raw,
                   zone.original.nominal.raw),
       fmt::format("at most {} mm, or a doubler, or another original",
                   base::mm_exact(zone.original.nominal.value + *above)));
}

} // namespace

void warn_of_transcription(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  std::vector<const Mark *> sound; // of one row after the other, in order of station
  for (const auto &mark : survey.marks)
    if (mark.status == Status::read && !mark.repeats.empty()) {
      repeats_apart(mark, policy.repeat_spread, sink);
      if (mark.plate != Plate::hull)
        continue;
      over_original(mark, zone_of_row(survey, mark.row), policy, sink);
      sound.push_back(&mark);
    }
  for (std::size_t i = 1; i + 1 < sound.size(); ++i)
    if (sound[i - 1]->row == sound[i]->row && sound[i + 1]->row == sound[i]->row)
      jump(*sound[i - 1], *sound[i], *sound[i + 1], policy.neighbour_jump, sink);
}

} // namespace strakebook::survey
