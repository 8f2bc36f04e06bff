"""What each gauge may have read: its doubt, its block checks, and the low side of a figure where a check is off.

Velocity-type: a figure times block over shown (true over set velocity). Zero-type: a figure less what was shown too much. Neither is
applied; the least of the figure and of both, over all checks that are off, is what is judged. A depth is taken on the high side.
"""
import re
from dataclasses import dataclass
from fractions import Fraction

from .doubt import Doubt, doubt_of
from .lengths import down, length, root_up, up


@dataclass(frozen=True)
class Correction:
    by: str                 # before, after, true-velocity
    scale: Fraction
    shift: Fraction | None

    def figures(self, shown):
        return [shown * self.scale] + ([shown - self.shift] if self.shift is not None else [])


@dataclass(frozen=True)
class Gauge:
    name: str
    doubt: Doubt
    thickest: Fraction | None
    checks: dict            # before, after: (state, off)
    checked: bool           # a block check is due: it reads plate, or has a block
    lapsed: bool
    corrections: tuple

    @property
    def indicative(self):
        return self.lapsed or (self.checked and any(state != "agrees" for state, _ in self.checks.values()))

    def least(self, shown):
        return min([shown, *(down(f) for c in self.corrections for f in c.figures(shown))])

    def most(self, shown):
        return max([shown, *(up(f) for c in self.corrections for f in c.figures(shown))])


def beside(pit, survey):
    """The gauges that may have read the plate beside a pit: those that read marks of its row, or else any that read plate."""
    row = {m.gauge for m in survey.marks if m.row == pit.row and m.status == "read"}
    return row or {m.gauge for m in survey.marks if m.status == "read"} or set(survey.gauges)


def taken(name, survey):
    """Every figure a gauge took, as far as it is known."""
    for mark in survey.marks:
        if mark.gauge == name and mark.status == "read":
            yield from mark.figures
    for pit in survey.pits:
        if name in beside(pit, survey):
            yield pit.adjacent
        if pit.gauge == name:
            yield pit.depth


def check(given, when, agreement):
    if "block" not in given or when not in given:
        return "missing", None
    off = length(given[when]) - length(given["block"])
    return ("differs" if abs(off) > agreement else "agrees"), off


def velocity(text):
    """The metres a second in a gauge's own words; a bare figure, or inches a microsecond."""
    figure, unit = re.match(r"([0-9.]+) ?(.*)", text).groups()
    return Fraction(figure) * (25400 if unit.startswith("in") else 1)


def corrections(given, checks):
    """Where one check is off, the other is as good a witness of what the gauge did between the two: both are asked."""
    if any(state == "differs" for state, _ in checks.values()):
        for when, (_, off) in checks.items():
            if off is not None:
                yield Correction(when, length(given["block"]) / length(given[when]), off)
    if "true-velocity" in given:
        yield Correction("true-velocity", Fraction(given["true-velocity"]) / velocity(given["velocity"]), None)


def read_gauges(survey, policy):
    out = {}
    for name, given in survey.gauges.items():
        thickest = max(taken(name, survey), default=None)
        reads_plate = any(m.gauge == name for m in survey.marks)
        checks = {when: check(given, when, policy.block_agreement) for when in ("before", "after")}
        until = given.get("certificate-until")
        lapsed = until is not None and survey.inspected is not None and until < survey.inspected
        out[name] = Gauge(name, doubt_of(given, thickest or Fraction(0), policy), thickest, checks, reads_plate or "block" in given, lapsed,
                          tuple(corrections(given, checks)))
    return out


def correction_answer(c, shown):
    types = {} if shown is None else {"velocity_type": down(shown * c.scale), "zero_type": None if c.shift is None else down(shown - c.shift)}
    return {"by": c.by, "scale": c.scale, "shift": c.shift, **types}


def answer(gauge, worst):
    """worst: the place where it displayed the least."""
    state = {when: {"state": state, "off": off} for when, (state, off) in gauge.checks.items()}
    off = [o for _, o in gauge.checks.values()]
    return {"gauge": gauge.name, "u": gauge.doubt.u, "degrees": gauge.doubt.degrees, "factor": gauge.doubt.factor, "band": gauge.doubt.band,
            "thickest": gauge.thickest, "checked": gauge.checked, **state, "drift": None if None in off else off[1] - off[0],
            "lapsed": gauge.lapsed, "indicative": gauge.indicative,
            "worst": worst and worst.name, "worst_shown": worst and worst.shown,
            "parts": [{"component": p.name, "u": root_up(p.variance), "degrees": p.degrees} for p in gauge.doubt.budgets[0]],
            "corrections": [correction_answer(c, worst and worst.shown) for c in gauge.corrections]}
