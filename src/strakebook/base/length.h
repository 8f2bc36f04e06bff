#pragma once

#include <compare>
#include <cstdint>

namespace strakebook::base {

/// A length of steel or along the hull: an exact whole number of nanometres. One inch is 25 400 000 nm and
/// 1/64 in is 396 875 nm (international inch, 1959), so every unit a surveyor writes is exact.
/// Range: +-9.2e18 nm; a survey never comes near it (readers refuse more than 1000 m).
class Length {
public:
  constexpr Length() = default;
  static constexpr Length nanometres(std::int64_t n) { return Length(n); }
  static constexpr Length micrometres(std::int64_t n) { return Length(n * 1'000); }
  static constexpr Length millimetres(std::int64_t n) { return Length(n * 1'000'000); }

  constexpr std::int64_t nm() const { return nm_; }

  constexpr auto operator<=>(const Length &) const = default;
  constexpr Length operator-() const { return Length(-nm_); }
  constexpr Length operator+(Length o) const { return Length(nm_ + o.nm_); }
  constexpr Length operator-(Length o) const { return Length(nm_ - o.nm_); }
  constexpr Length operator*(std::int64_t k) const { return Length(nm_ * k); }

private:
  explicit constexpr Length(std::int64_t nm) : nm_(nm) {}
  std::int64_t nm_ = 0;
};

} // namespace strakebook::base
