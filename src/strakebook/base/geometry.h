#pragma once

#include <compare>

namespace strakebook::base {

/// A length on paper, in PostScript points (1/72 in). A type of its own: never mixed with lengths of steel.
/// A double inside: positions are laid out, not judged.
struct Pt {
  double v = 0;
  constexpr auto operator<=>(const Pt &) const = default;
  constexpr Pt operator-() const { return {-v}; }
  constexpr Pt operator+(Pt o) const { return {v + o.v}; }
  constexpr Pt operator-(Pt o) const { return {v - o.v}; }
  constexpr Pt operator*(double k) const { return {v * k}; }
  constexpr Pt operator/(double k) const { return {v / k}; }
  constexpr double operator/(Pt o) const { return v / o.v; }
  constexpr Pt &operator+=(Pt o) { v += o.v; return *this; }
  constexpr Pt &operator-=(Pt o) { v -= o.v; return *this; }
};

/// A place on a page: x to the right, y DOWN from the page's top left corner.
struct Point {
  Pt x, y;
  constexpr bool operator==(const Point &) const = default;
  constexpr Point operator+(Point o) const { return {x + o.x, y + o.y}; }
};

struct Size {
  Pt width, height;
  constexpr bool operator==(const Size &) const = default;
};

struct Rect {
  Point at; ///< top left
  Size size;
  constexpr bool operator==(const Rect &) const = default;
  constexpr Pt right() const { return at.x + size.width; }
  constexpr Pt bottom() const { return at.y + size.height; }
};

} // namespace strakebook::base
