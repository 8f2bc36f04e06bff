#include "strakebook/base/decimal.h"

#include <algorithm>

#include "strakebook/base/wide.h"

namespace strakebook::base {
namespace {

constexpr int most_digits = 15;
constexpr int nanometre_places = 6;
constexpr int percent_places = 15;
constexpr std::int64_t nm_per_mm = 1'000'000;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::size_t digits_from(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_digit(text[end]))
    ++end;
  return end - at;
}

Ratio in_mm(Length value) { return {value.nm(), nm_per_mm}; }

bool keeps_order(Decimal rounded, Ratio value, Ratio limit) {
  const auto order = value <=> limit;
  return (rounded.ratio() <=> limit) == order &&
         (rounded.ratio() <=> round_to(limit, rounded.places).ratio()) == order;
}

std::string clear_of(Ratio value, Ratio limit, int least, int most) {
  for (int places = least; places <= most; ++places)
    if (const Decimal figure = round_to(value, places); keeps_order(figure, value, limit))
      return to_text(figure);
  // On the limit exactly, and no decimal says so (a third): more digits would not tell more.
  return to_text(round_to(value, value == limit ? least : std::max(least, most)));
}

} // namespace

Ratio Decimal::ratio() const { return reduced({digits, power_of_ten(places)}); }

std::optional<Decimal> parse_decimal(std::string_view text) {
  const bool minus = text.starts_with('-');
  std::size_t at = minus ? 1 : 0;
  const std::size_t whole = digits_from(text, at);
  if (whole == 0 || (whole > 1 && text[at] == '0'))
    return std::nullopt;
  std::size_t places = 0;
  std::size_t end = at + whole;
  if (end < text.size() && text[end] == '.') {
    places = digits_from(text, end + 1);
    if (places == 0)
      return std::nullopt;
    end += 1 + places;
  }
  if (end != text.size() || whole + places > most_digits)
    return std::nullopt;
  std::int64_t digits = 0;
  for (const char c : text.substr(at))
    if (c != '.')
      digits = digits * 10 + (c - '0');
  return Decimal{minus ? -digits : digits, static_cast<int>(places)};
}

Decimal round_to(Ratio value, int places) {
  const Ratio r = reduced(value);
  const Wide scaled = static_cast<Wide>(r.num) * power_of_ten(places);
  const Wide cut = scaled / r.den;
  const Wide left = scaled % r.den;
  const Wide size = left < 0 ? -left : left;
  const bool away = size >= r.den - size;
  return {narrow(away ? cut + (scaled < 0 ? -1 : 1) : cut), places};
}

std::string to_text(Decimal value) {
  const bool minus = value.digits < 0;
  std::string figures = std::to_string(value.digits).substr(minus ? 1 : 0);
  const auto places = static_cast<std::size_t>(value.places);
  if (figures.size() <= places)
    figures.insert(0, places + 1 - figures.size(), '0');
  if (places > 0)
    figures.insert(figures.size() - places, 1, '.');
  return minus ? "-" + figures : figures;
}

std::string mm_text(Length value, int places) { return to_text(round_to(in_mm(value), places)); }

std::string mm_exact(Length value, int least) {
  int places = least;
  while (places < nanometre_places && round_to(in_mm(value), places).ratio() != in_mm(value))
    ++places;
  return mm_text(value, places);
}

std::string mm_clear_of(Length value, Length limit, int least) {
  return clear_of(in_mm(value), in_mm(limit), least, nanometre_places);
}

std::string percent_clear_of(Ratio r, std::optional<Ratio> limit, int least) {
  const auto percent = [](Ratio of) {
    const Ratio low = reduced(of);
    return low.den % 100 == 0 ? Ratio{low.num, low.den / 100}
                              : Ratio{narrow(static_cast<Wide>(low.num) * 100), low.den};
  };
  if (!limit)
    return to_text(round_to(percent(r), least));
  return clear_of(percent(r), percent(*limit), least, percent_places);
}

} // namespace strakebook::base
