"""Lengths as exact fractions of a millimetre. A steel length is a whole number of nanometres."""
import re
from fractions import Fraction
from math import ceil, isqrt

NANOMETRE = Fraction(1, 10**6)
# The inch is 25.4 mm exactly (international yard and pound agreement of 1959); the foot is twelve of them.
MM_IN = {"mm": Fraction(1), "m": Fraction(1000), "in": Fraction(254, 10), "thou": Fraction(254, 10000), "ft": Fraction(3048, 10)}


def length(text, unit="mm"):
    """'6.0', '18.0 m', '3/16 in': in mm; a bare figure is in the unit given."""
    figure, own = re.fullmatch(r"(\S+)(?: (mm|m|in|thou|ft))?", str(text).strip()).groups()
    return Fraction(figure) * MM_IN[own or unit]


def up(value):
    """Rounded up to the next whole nanometre."""
    return ceil(value / NANOMETRE) * NANOMETRE


def root_up(square):
    """The root of a square in mm2, rounded up to the next whole nanometre, by whole numbers only."""
    wanted = square / NANOMETRE**2
    n = isqrt(wanted.numerator // wanted.denominator)
    while n * n * wanted.denominator < wanted.numerator:
        n += 1
    return n * NANOMETRE
