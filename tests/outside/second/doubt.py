"""Doubt, by the GUM (JCGM 100:2008): 4.3.7 for half-widths, 5.1.2 for the sum, G.4.1 for the degrees of freedom, G.3 for the factor."""
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, cached_property
from math import atan, cos, floor, pi, sin, sqrt

from .lengths import length, root_up


@dataclass(frozen=True)
class Part:
    name: str | None
    variance: Fraction          # mm2
    degrees: Fraction | None    # nothing: infinite


@dataclass(frozen=True)
class Doubt:
    """Of a gauge, or of two together under a pit."""
    budgets: tuple          # of parts, one budget a gauge
    policy: object

    @cached_property
    def variance(self):
        """Of each gauge's u, which is rounded up to the next nanometre."""
        return sum((root_up(summed(b))**2 for b in self.budgets), Fraction(0))

    @cached_property
    def degrees(self):
        """Welch and Satterthwaite, cut to a whole number; nothing where infinite."""
        return effective([part for b in self.budgets for part in b])

    @cached_property
    def factor(self):
        nu = self.degrees
        return self.policy.factor if nu is None else max(self.policy.factor, student_up(self.policy.coverage, nu, int(self.policy.factor * 1000)))

    @cached_property
    def square(self):
        return self.factor**2 * self.variance

    @cached_property
    def u(self):
        return root_up(self.variance)

    @cached_property
    def band(self):
        return root_up(self.square)

    def __add__(self, other):
        return Doubt(self.budgets + other.budgets, self.policy)


def summed(parts):
    return sum((p.variance for p in parts), Fraction(0))


def effective(parts):
    spread = sum((p.variance**2 / p.degrees for p in parts if p.degrees and p.variance), Fraction(0))
    return floor(summed(parts)**2 / spread) if spread else None


def student_cdf(t, nu):
    """Of a whole number of degrees: the finite sums in Abramowitz and Stegun, 26.7.3 and 26.7.4."""
    theta = atan(t / sqrt(nu))
    square = cos(theta)**2
    term = total = cos(theta) if nu % 2 else 1.0
    for k in range(3 if nu % 2 else 2, nu - 1, 2):
        term *= (k - 1) / k * square
        total += term
    if nu % 2:
        return 0.5 + (theta + (sin(theta) * total if nu > 1 else 0)) / pi
    return 0.5 + sin(theta) * total / 2


@cache
def student_up(coverage, nu, least):
    """One-sided factor, rounded up to a thousandth; not under the least, in thousandths."""
    high = least
    while student_cdf(high / 1000, nu) < coverage:
        least, high = high, 2 * high
    while high - least > 1:
        middle = (least + high) // 2
        least, high = (middle, high) if student_cdf(middle / 1000, nu) < coverage else (least, middle)
    return Fraction(high, 1000)


def part(name, given, thickest):
    degrees = Fraction(given["degrees"]) if "degrees" in given else None
    if "u" in given:
        return Part(name, length(given["u"])**2, degrees)
    if "half-width" in given:
        return Part(name, length(given["half-width"])**2 / 3, degrees)
    return Part(name, (Fraction(given["share"]) / 100 * thickest)**2, degrees)


def doubt_of(given, thickest, policy):
    """given: a gauge as written."""
    if "u" in given:
        return Doubt(((Part(None, length(given["u"])**2, None),),), policy)
    return Doubt((tuple(part(k, p, thickest) for k, p in given["doubt"].items()),), policy)
