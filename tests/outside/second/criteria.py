"""Limits, doubt and verdicts.

Rule minimum: Directive 2006/87/EC Annex II Art. 3.02 (ES-TRIN Art. 3.02); its limit is rounded up to the next nanometre.
Doubt: JCGM 106:2012, a guard band of so many standard uncertainties; compared by squares, so no root is taken.
"""
from dataclasses import dataclass
from fractions import Fraction

from .lengths import length, root_up, up
from .read_layout import percent


@dataclass(frozen=True)
class Criterion:
    id: str
    kind: str
    limit: Fraction | None
    most_loss: Fraction | None
    rule: dict | None
    plating: tuple | None   # nothing: any


def of_house(key, given):
    return Criterion(key, given["kind"], length(given["limit"]) if "limit" in given else None,
                     percent(given["most-loss"]) if "most-loss" in given else None, given.get("rule"), None)


def of_survey(key, given):
    parts = given.get("plating")
    return Criterion(key, given["kind"], length(given["limit"]) if "limit" in given else None,
                     Fraction(given["most-loss-percent"]) / 100 if "most-loss-percent" in given else None, None,
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
    limit = max(by_length, by_draught, floor)
    return {"limit": limit, "by_length": by_length, "by_draught": by_draught, "floored": floor > max(by_length, by_draught),
            "f": f, "b": b, "c": c}


def why_not(criterion, zone, original):
    if criterion.plating and zone.plating not in criterion.plating:
        return "scope"
    return "weak-basis" if criterion.kind == "percent" and original.weak else None


def limit_of(criterion, zone, survey):
    """What must remain, exactly."""
    if criterion.kind == "absolute":
        return criterion.limit
    if criterion.kind == "percent":
        return zone.original * (1 - criterion.most_loss)
    if criterion.kind == "rule-minimum":
        return rule_minimum(criterion.rule, survey, zone.plating)["limit"]
    raise LookupError(f"a criterion of the kind {criterion.kind} is not computed here yet: add it to limit_of")


@dataclass(frozen=True)
class Doubt:
    variance: Fraction      # mm2
    factor: Fraction

    @property
    def square(self):
        return self.factor**2 * self.variance

    @property
    def band(self):
        return root_up(self.square)


def verdict(margin, doubt):
    if margin**2 < doubt.square:
        return "too-close"
    return "meets" if margin >= 0 else "falls-short"


def judged(criterion, zone, survey, original, remaining, doubt):
    """One criterion at one place."""
    out = {"criterion": criterion.id, "governs": criterion.id == zone.governing}
    reason = why_not(criterion, zone, original)
    if reason:
        return {**out, "verdict": "not-applicable", "why_not": reason}
    limit = limit_of(criterion, zone, survey)
    margin = remaining - limit
    return {**out, "verdict": verdict(margin, doubt), "limit": up(limit), "margin": remaining - up(limit),
            "bare": "at-limit" if margin == 0 else "inside" if margin > 0 else "over"}
