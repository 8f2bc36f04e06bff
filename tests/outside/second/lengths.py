"""Lengths as exact fractions of a millimetre. A steel length is a whole number of nanometres."""
import re
from fractions import Fraction
from math import ceil, floor, isqrt

NANOMETRE = Fraction(1, 10**6)
# The inch is 25.4 mm exactly (international yard and pound agreement of 1959); the foot is twelve of them.
MM_IN = {"mm": Fraction(1), "m": Fraction(1000), "um": Fraction(1, 1000), "in": Fraction(254, 10), "thou": Fraction(254, 10000),
         "ft": Fraction(3048, 10)}
FEET = re.compile(r"(\d+)(?: ft |' ?)(.+?)(?: in|\")")
OWN = re.compile(r"(.+?)(?: (mm|m|um|in|thou|ft))?")


def number(text):
    """'6.0', '3/16', '.187', '1 1/4'."""
    return sum((Fraction(part) for part in text.split()), Fraction(0))


def length(text, unit="mm"):
    """'6.0', '18.0 m', '3/16 in', '12 ft 6 in': in mm; a bare figure is in the unit given."""
    text = str(text).strip()
    feet = FEET.fullmatch(text)
    if feet:
        return int(feet[1]) * MM_IN["ft"] + number(feet[2]) * MM_IN["in"]
    figure, own = OWN.fullmatch(text).groups()
    return number(figure) * MM_IN[own or unit]


def up(value):
    """Rounded up to the next whole nanometre."""
    return ceil(value / NANOMETRE) * NANOMETRE


def down(value):
    return floor(value / NANOMETRE) * NANOMETRE


def root_up(square):
    """The root of a square in mm2, rounded up to the next whole nanometre, by whole numbers only."""
    wanted = square / NANOMETRE**2
    n = isqrt(wanted.numerator // wanted.denominator)
    while n * n * wanted.denominator < wanted.numerator:
        n += 1
    return n * NANOMETRE
