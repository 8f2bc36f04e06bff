"""Paint to buy, and anodes: DNV-RP-B401 for current and mass, 8760 hours a year; counts round up."""
from datetime import date
from fractions import Fraction
from math import ceil

from .dates import day, months_later
from .lengths import length
from .read_survey import plain, read_reach


def percent_of(given, key):
    return Fraction(given[key]) / 100


def litres(scheme):
    """V = A DFT / (10 VS%), and the loss divides; A in m2, film in um."""
    if not {"area-m2", "dry-film", "solids-percent", "loss-percent"} <= scheme.keys():
        return None
    film = length(scheme["dry-film"]) * 1000
    return float(Fraction(scheme["area-m2"]) * film / (10 * Fraction(scheme["solids-percent"])) / (1 - percent_of(scheme, "loss-percent")))


def anodes(plan, rule):
    if not {"metal", "area-m2", "bare-percent", "current-ma-m2", "years", "net-kg"} <= plan.keys():
        return None
    current = Fraction(plan["area-m2"]) * Fraction(plan["current-ma-m2"]) * percent_of(plan, "bare-percent") / 1000
    mass = current * Fraction(plan["years"]) * 8760 / (Fraction(rule["utilisation"]) * Fraction(rule["metals"][plan["metal"]]["capacity"]))
    return {"current_a": float(current), "mass_kg": float(mass), "count": ceil(mass / Fraction(plan["net-kg"]))}


def beam_over_all(survey, policy, plan):
    """With anodes on both sides, and the thickest plate that is laid over on each. Plate under the bottom makes nobody wider. Not
    known where the thickness of such a plate, or how far planned anodes stand out, is not."""
    given, beam = survey.given, length(plain(survey.given["vessel"]["beam"]))
    zone_of, thickest = {r: row["zone"] for r, row in given["rows"].items()}, {}
    under = {z.name for z in survey.zones if z.plating == "bottom"}
    for item in given.get("steelwork", {}).values():
        if policy.given["actions"][item["action"]]["doubler"] == "yes":
            for row in read_reach(item["at"], zone_of, given["datum"]["station-unit"]).rows:
                side = given["rows"][row]["side"]
                if side != "centre" and zone_of[row] not in under:
                    if "thickness" not in item:
                        return None
                    thickest[side] = max(thickest.get(side, 0), length(item["thickness"]))
    if "stands-out" not in plan and (plan or not thickest):
        return None
    return beam + (2 * length(plan["stands-out"]) if "stands-out" in plan else 0) + sum(thickest.values())


def unworn(survey, fitted, rule):
    if not ({"on", "worn-percent"} <= fitted.keys() and survey.inspected):
        return None
    long_on = months_later(day(fitted["on"]), int(rule["unworn-months"])) <= date.fromisoformat(survey.inspected)
    return long_on and Fraction(fitted["worn-percent"]) < Fraction(rule["unworn-percent"])


def answer(survey, policy):
    coating, rule = survey.given.get("coating", {}), policy.given["protection"]
    plan, fitted = coating.get("anode-plan", {}), coating.get("fitted", {})
    return {"schemes": [{"id": k, "litres": litres(s)} for k, s in coating.get("schemes", {}).items()], "anodes": anodes(plan, rule),
            "beam_over_all": beam_over_all(survey, policy, plan), "unworn": unworn(survey, fitted, rule)}
