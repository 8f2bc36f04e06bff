#include "strakebook/compose/voice.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/wide.h"

namespace strakebook::compose {

namespace {

constexpr std::string_view no_break = "\u00A0";
constexpr std::string_view minus = "\u2212";
constexpr int most_places = 3; // finer than any gauge shows: beyond it a limit is rounded up

int places_needed(Length value, int most) {
  std::int64_t step = 1'000'000;
  int places = 0;
  while (places < most && value.nm() % step != 0) {
    step /= 10;
    ++places;
  }
  return value.nm() % step == 0 ? places : most + 1;
}

std::string longest(std::string a, std::string b) { return b.size() > a.size() ? b : a; }

std::vector<Length> limits_in(const Scope &scope, std::string_view zone) {
  std::vector<Length> limits;
  for (const auto &subject : assess::zone_result(scope.assessment(), zone).subjects)
    for (const auto &result : subject.results)
      if (result.verdict != assess::Verdict::not_applicable)
        limits.push_back(result.limit);
  return limits;
}

} // namespace

std::string with_minus(std::string figure) {
  if (!figure.empty() && figure.front() == '-')
    figure.replace(0, 1, minus);
  return figure;
}

std::string with_sign(std::string figure) {
  const bool bare = !figure.empty() && figure.front() != '-' && !figure.starts_with(minus);
  return bare ? "+" + figure : with_minus(std::move(figure));
}

std::string tied(std::string_view figure, std::string_view unit) {
  return std::string(figure) + std::string(no_break) + std::string(unit);
}

std::string fixed_mm(Length value, int places) { return with_minus(base::mm_text(value, places)); }

std::string unit_mm(const Scope &scope, std::string_view figure) {
  return tied(figure, scope.say("voice.mm"));
}

std::string untorn(std::string_view text) {
  std::string out;
  for (const char c : text)
    out += c == ' ' ? std::string(no_break) : std::string(1, c);
  return out;
}

std::string as_written(const base::Measured &value) {
  const std::string text = untorn(value.raw);
  return base::unit_written(value) ? text : tied(text, base::name_of(value.unit));
}

std::string in_mm(const base::Measured &value) {
  if (value.unit != base::Unit::millimetre)
    return base::mm_exact(value.value, 1);
  return value.raw.substr(0, value.raw.find_first_of(" ?"));
}

std::string with_mm(const Scope &scope, const base::Measured &value) {
  if (value.unit == base::Unit::millimetre)
    return as_written(value);
  return scope.say("voice.with-mm", {{"written", as_written(value)}, {"mm", unit_mm(scope, in_mm(value))}});
}

std::string figure(const base::Decimal &value) { return with_minus(base::to_text(value)); }

std::string rounded(double value, int places) {
  const std::string text = fmt::format("{:.{}f}", value, places);
  const bool nought = text.find_first_of("123456789") == std::string::npos;
  return with_minus(nought && text.starts_with('-') ? text.substr(1) : text);
}

std::string in_station_unit(const Scope &scope, Length length, int places) {
  constexpr std::int64_t nm_in_metre = 1'000'000'000, nm_in_foot = 304'800'000;
  const bool feet = scope.survey().datum.station_unit == base::Unit::foot;
  return with_minus(base::to_text(base::round_to({length.nm(), feet ? nm_in_foot : nm_in_metre}, places)));
}

std::string short_mm(Length value) {
  return with_minus(places_needed(value, 2) <= 2 ? base::mm_exact(value, 1) : base::mm_text(value, 2));
}

std::string doubt_mm(Length doubt, int places) {
  const std::int64_t step = base::power_of_ten(6 - places);
  return base::mm_text(Length::nanometres((doubt.nm() + step - 1) / step * step), places);
}

std::string remaining_text(const Scope &scope, const std::string &zone, Length value) {
  if (places_needed(value, 2) <= 2)
    return with_minus(base::mm_exact(value, 1));
  std::string text = base::mm_text(value, 2);
  for (const Length limit : limits_in(scope, zone))
    text = longest(text, base::mm_clear_of(value, limit, 2));
  return with_minus(text);
}

std::string limit_text(Length limit) {
  if (places_needed(limit, most_places) <= most_places)
    return base::mm_exact(limit, 2);
  const auto up = (limit.nm() + 999) / 1000;
  return base::mm_text(Length::micrometres(up), most_places);
}

std::string margin_text(const assess::CriterionResult &result, Length band) {
  const int least = places_needed(result.limit, 2) <= 2 ? 2 : most_places;
  std::string text = base::mm_clear_of(result.margin, Length{}, least);
  for (const Length edge : {band, -band})
    text = longest(text, base::mm_clear_of(result.margin, edge, least));
  return with_sign(text);
}

std::string percent_figure(const Scope &scope, Ratio share, int least) {
  std::string text = base::percent_clear_of(share, std::nullopt, least);
  for (const auto &used : scope.assessment().criteria)
    if (used.kind == policy::CriterionKind::percent || used.kind == policy::CriterionKind::margin)
      text = longest(text, base::percent_clear_of(share, used.most_loss, least));
  return with_minus(text);
}

std::string percent(const Scope &scope, Ratio share) {
  return tied(percent_figure(scope, share), scope.say("voice.percent"));
}

std::string share_text(const Scope &scope, const assess::LossShare &share) {
  const std::string at_nominal = percent(scope, share.nominal);
  if (!share.low || !share.high)
    return at_nominal;
  return scope.say("voice.share-range", {{"share", at_nominal},
                                         {"low", percent_figure(scope, *share.low)},
                                         {"high", percent_figure(scope, *share.high)}});
}

std::string probability_text(const Scope &scope, const std::optional<double> &probability) {
  constexpr double most = 0.99, least = 0.01;
  if (!probability)
    return scope.say("voice.dash");
  const std::string sign = scope.say("voice.percent");
  const auto whole = [&](double share) { return tied(std::to_string(static_cast<int>(share * 100)), sign); };
  if (*probability > most)
    return scope.say("voice.over", {{"figure", whole(most)}});
  if (*probability < least)
    return scope.say("voice.under", {{"figure", whole(least)}});
  return whole(*probability);
}

std::string date(const Scope &scope, base::Date day) {
  return scope.say("voice.date",
                   {{"day", std::to_string(day.day)},
                    {"month", scope.wording().months.at(static_cast<std::size_t>(day.month - 1))},
                    {"year", std::to_string(day.year)}});
}

} // namespace strakebook::compose
