"""Limits and verdicts.

Rule minimum: Directive 2006/87/EC Annex II Art. 3.02 (ES-TRIN Art. 3.02), passenger vessels Art. 15.02; a limit is rounded up to the
next nanometre. Substantial corrosion: IACS UR Z10.1, ESP Code 1.2.9: a loss beyond so much of what may go, and not beyond all of it.
Doubt: JCGM 106:2012, a guard band of so many standard uncertainties; compared by squares, so no root is taken.
"""
from dataclasses import dataclass
from fractions import Fraction
from math import erfc, sqrt

from .lengths import length, root_up, up
from .read_layout import percent


@dataclass(frozen=True)
class Criterion:
    id: str
    kind: str
    limit: Fraction | None
    most_loss: Fraction | None
    substantial_from: Fraction | None
    original_at_most: Fraction | None
    declared: str | None
    rule: dict | None
    plating: tuple | None   # nothing: any


def of_house(key, given):
    def read(name, how):
        return how(given[name]) if name in given else None
    return Criterion(key, given["kind"], read("limit", length), read("most-loss", percent), read("substantial-from", percent),
                     read("original-at-most", length), given.get("declared"), given.get("rule"), None)


def of_survey(key, given):
    parts = given.get("plating")
    return Criterion(key, given["kind"], length(given["limit"]) if "limit" in given else None,
                     Fraction(given["most-loss-percent"]) / 100 if "most-loss-percent" in given else None, None, None, None, None,
                     tuple([parts] if isinstance(parts, str) else parts) if parts else None)


def in_use(survey, policy):
    """The house's in the house's order, then the survey's own."""
    return ([of_house(k, c) for k, c in policy.criteria.items() if k in survey.house_criteria]
            + [of_survey(k, c) for k, c in survey.own_criteria.items()])


def rule_minimum(rule, survey, plating):
    """Every step of the formula; a in mm, L and T in m, result in mm."""
    metres = survey.length / 1000
    line = rule["shorter"] if survey.length <= length(rule["split"]) else rule["longer"]
    beyond = survey.spacing - length(rule["spacing"])
    f = 1 + Fraction(rule["spacing-slope"]) * beyond if beyond > 0 else Fraction(1)
    b = Fraction(rule["bilge-factor"]) if plating == "bilge" else Fraction(1)
    c = Fraction(rule["wing-factor"]) if survey.wing_voids else Fraction(1)
    by_length = up(f * b * c * (Fraction(line["constant"]) + Fraction(line["slope"]) * metres))
    by_draught = root_up((Fraction(rule["draught-factor"]) * survey.spacing) ** 2 * survey.draught / 1000)
    floor = length(rule["floor"]) if survey.length <= length(rule["split"]) else Fraction(0)
    limit, worn = max(by_length, by_draught, floor), 1 - percent(rule["local-wear"])
    return {"limit": limit, "by_length": by_length, "by_draught": by_draught, "floored": floor > max(by_length, by_draught),
            "f": f, "b": b, "c": c, "spacing": survey.spacing,
            "read_otherwise": read_otherwise(limit, {
                "floor-times-b": max(by_length, by_draught, floor * b), "local-wear": max(up(limit * worn), floor),
                "local-wear-under-floor": up(limit * worn)})}


def read_otherwise(limit, readings):
    """Where the text is silent: what each other reading of it would ask."""
    asked = {}
    for name, other in readings.items():
        if other != limit:
            asked.setdefault(other, name)
    return [{"reading": name, "limit": other} for other, name in asked.items()]


def passenger_minimum(rule, survey):
    """A spacing closer than the least counts as that; the length is that of the waterline, or the hull's where it is not given."""
    spacing = max(survey.spacing, length(rule["least-spacing"]))
    f = 1 + Fraction(rule["spacing-slope"]) * (spacing - length(rule["spacing"]))
    by_draught = root_up((Fraction(rule["draught-factor"]) * spacing) ** 2 * survey.draught / 1000)
    by_length = root_up((f * Fraction(rule["length-factor"])) ** 2 * (survey.waterline or survey.length) / 1000)
    floor = length(rule["floor"])
    return {"limit": max(by_length, by_draught, floor), "by_length": by_length, "by_draught": by_draught,
            "floored": floor > max(by_length, by_draught), "f": f, "b": Fraction(1), "c": Fraction(1), "spacing": spacing,
            "read_otherwise": []}


RULES = {"rule-minimum": rule_minimum, "passenger-minimum": lambda rule, survey, plating: passenger_minimum(rule, survey)}


def why_not(criterion, zone, survey, original):
    if criterion.plating and zone.plating not in criterion.plating:
        return "scope"
    if criterion.declared and criterion.declared not in survey.declared:
        return "not-declared"
    if criterion.kind in ("percent", "margin") and original.weak:
        return "weak-basis"
    return "thicker" if criterion.original_at_most is not None and zone.original > criterion.original_at_most else None


def limit_of(criterion, zone, survey):
    """What must remain, exactly."""
    if criterion.kind == "absolute":
        return criterion.limit
    if criterion.kind in ("percent", "margin"):
        return zone.original * (1 - criterion.most_loss)
    return RULES[criterion.kind](criterion.rule, survey, zone.plating)["limit"]


def rests_on_told(criterion, zone, survey):
    """Whether the limit is worked from what somebody told."""
    if criterion.kind in ("percent", "margin"):
        return zone.told
    if criterion.kind == "passenger-minimum":
        used = {"draught", "frame-spacing", "carries", "waterline-length" if survey.waterline else "length"}
    else:
        used = {"length", "draught", "frame-spacing", "wing-voids"} if criterion.rule else set()
    return bool(used & survey.told)


def verdict(margin, doubt):
    if margin**2 < doubt.square:
        return "too-close"
    return "meets" if margin >= 0 else "falls-short"


def conformance(margin, doubt):
    """JCGM 106:2012: the normal probability that the limit is met. Printed only; never quite nought or one."""
    p = erfc(-float(margin) / sqrt(float(doubt.variance)) / sqrt(2)) / 2
    return f"{min(max(p, 1e-6), 1 - 1e-6):.6f}"


def substantial(criterion, zone, remaining, limit):
    if criterion.kind != "margin":
        return {}
    below = zone.original * (1 - criterion.most_loss * criterion.substantial_from)
    return {"substantial_below": up(below), "substantial": limit <= remaining < below}


def judged(criterion, zone, survey, original, remaining, doubt):
    """One criterion at one place."""
    out = {"criterion": criterion.id, "governs": criterion.id == zone.governing}
    reason = why_not(criterion, zone, survey, original)
    if reason:
        return {**out, "verdict": "not-applicable", "why_not": reason}
    limit = limit_of(criterion, zone, survey)
    margin = remaining - limit
    return {**out, "verdict": verdict(margin, doubt), "limit": up(limit), "margin": remaining - up(limit),
            "bare": "at-limit" if margin == 0 else "inside" if margin > 0 else "over", "told": rests_on_told(criterion, zone, survey),
            "conformance": conformance(margin, doubt), **substantial(criterion, zone, remaining, limit)}


def applied(criterion, zone, survey, original):
    """What a criterion asks of a zone, before anything is read there."""
    reason = why_not(criterion, zone, survey, original)
    if reason:
        return {"criterion": criterion.id, "applies": False, "why_not": reason}
    return {"criterion": criterion.id, "applies": True, "limit": up(limit_of(criterion, zone, survey))}
