"""Days and the years between them."""
from calendar import monthrange
from datetime import date, timedelta
from fractions import Fraction


def day(text):
    return date.fromisoformat(text)


def months_later(when, months):
    """The same day, or the last one of a shorter month."""
    year, month = divmod(when.year * 12 + when.month - 1 + months, 12)
    return date(year, month + 1, min(when.day, monthrange(year, month + 1)[1]))


def years_between(then, now):
    """Whole anniversaries, then the days over as a share of the days of that last year."""
    whole = now.year - then.year
    while months_later(then, 12 * whole) > now:
        whole -= 1
    last, following = months_later(then, 12 * whole), months_later(then, 12 * (whole + 1))
    return whole + Fraction((now - last).days, (following - last).days)


def years_later(when, years):
    """So many years on, cut to the day: whole years, then a share of the days of the year after."""
    whole = years.numerator // years.denominator
    last, following = months_later(when, 12 * whole), months_later(when, 12 * (whole + 1))
    return last + timedelta(days=int((years - whole) * (following - last).days))
