#include "strakebook/steel/survey/pitting.h"

#include <fmt/format.h>

#include <algorithm>

#include "strakebook/steel/survey/reach.h"

namespace strakebook::survey {

namespace {

base::Length apart(const Pit &a, const Pit &b) {
  const auto difference = a.at.station.value - b.at.station.value;
  return std::max(difference, -difference);
}

void warn(base::Diagnostics &sink, base::Code code, const Zone &zone, std::string subject, std::string message,
          std::string expected) {
  sink.add({.severity = base::Severity::warning,
            .code = code,
            .span = zone.pitting ? zone.pitting->span : zone.span,
            .message = std::move(message),
            .expected = std::move(expected),
            .write = fmt::format("acknowledged: {{{}: why it stands}}", subject),
            .subject = std::move(subject)});
}

void count_differs(const Survey &survey, const Zone &zone, base::Diagnostics &sink) {
  const auto listed = static_cast<std::int64_t>(pits_of(survey, zone.id).size());
  if (!zone.pitting || zone.pitting->count.ratio() == base::Ratio{listed, 1})
    return;
  const auto declared = base::to_text(zone.pitting->count);
  warn(sink, base::Code::pit_count, zone, fmt::format("pit-count {}", zone.id),
       fmt::format("zone {} declares {} pits, and {} are listed", zone.id, declared, listed),
       fmt::format("{} pits listed on its rows, or why the others are not", declared));
}

void few_measured(const Survey &survey, const Zone &zone, const policy::PittingRule &rule, base::Diagnostics &sink) {
  if (!too_few_pits_measured(survey, zone, rule))
    return;
  warn(sink, base::Code::pits_unmeasured, zone, fmt::format("pits-measured {}", zone.id),
       fmt::format("pits cover {} % of zone {}, over {} %, and {} of them are measured", base::to_text(*pitting_intensity(survey, zone)),
                   zone.id, base::to_text(rule.intense_over_percent), pits_of(survey, zone.id).size()),
       fmt::format("the {} deepest pits measured ({})", rule.least_measured, rule.source));
}

} // namespace

std::string doubler_of(const Survey &survey, const Pit &pit) {
  constexpr std::string_view inside = "inside";
  if (pit.face.text == inside) return {};
  for (const Doubler &doubler : survey.doublers)
    if (covers(survey, doubler.over, pit.at.row, pit.at.station.value)) return doubler.id;
  return {};
}

std::vector<const Pit *> pits_of(const Survey &survey, std::string_view zone) {
  std::vector<const Pit *> found;
  for (const auto &pit : survey.pits)
    if (const auto *row = row_of(survey, pit.at.row); row && row->zone == zone && doubler_of(survey, pit).empty())
      found.push_back(&pit);
  return found;
}

std::optional<base::Length> spacing_of_pits(const Survey &survey, std::string_view zone) {
  const auto pits = pits_of(survey, zone);
  std::optional<base::Length> least;
  for (std::size_t i = 0; i < pits.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (pits[i]->at.row == pits[k]->at.row)
        least = std::min(least.value_or(apart(*pits[i], *pits[k])), apart(*pits[i], *pits[k]));
  return least;
}

std::optional<base::Decimal> pitting_intensity(const Survey &survey, const Zone &zone) {
  std::optional<base::Decimal> greatest;
  const auto see = [&](const base::Decimal &share) {
    if (!greatest || share.ratio() > greatest->ratio())
      greatest = share;
  };
  if (zone.pitting)
    see(zone.pitting->share_percent);
  for (const auto *pit : pits_of(survey, zone.id))
    if (pit->share_percent)
      see(*pit->share_percent);
  return greatest;
}

bool too_few_pits_measured(const Survey &survey, const Zone &zone, const policy::PittingRule &rule) {
  const auto intensity = pitting_intensity(survey, zone);
  return intensity && intensity->ratio() > rule.intense_over_percent.ratio() &&
         std::ssize(pits_of(survey, zone.id)) < rule.least_measured;
}

void warn_of_pitting(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  for (const auto &zone : survey.zones) {
    count_differs(survey, zone, sink);
    few_measured(survey, zone, policy.pitting, sink);
  }
}

} // namespace strakebook::survey
