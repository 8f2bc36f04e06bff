"""Extent by rule, whether there is enough to have an opinion on, and what the firm's ladder suggests."""
from fractions import Fraction


def extent(zone, pits, policy):
    """Isolated is at most so many pits a square metre and under so much of the area."""
    if not zone.pitting:
        return "not-declared" if pits else "none"
    count, over, share = zone.pitting
    return "isolated" if count / over <= policy.most_per_m2 and share < policy.under_share else "extensive"


def too_few(count, policy, ways):
    """No usable reading, fewer than the policy asks, or too small a share of the planned marks read. What lies on a doubler says
    nothing of the hull's plate, so it is not usable."""
    usable = count["read"] if "doublers-count" in ways else count["used"]
    if count["used"] == 0 or usable < policy.least_marks:
        return True
    return Fraction(count["read"], count["planned"]) < policy.least_read


def rung_of(r, t0, policy):
    return next(rung for rung in policy.rungs if rung.holds(r, t0))


def suggestion(zone, places, highest, how_far, few, policy):
    """places: the plate readings used, the worst place and whether that is a pit."""
    readings, worst, is_pit = places
    if few or worst is None:
        return {"rung": None, "share_at_rung": None, "suggests_extensive": False, "suggested": [], "departs": False}
    rung = rung_of(worst, highest, policy)
    at_rung = Fraction(sum(rung_of(r, highest, policy) == rung for r in readings), len(readings))
    # Under a pit nobody has declared the extent of, the graver column is taken.
    wide = at_rung >= policy.under_share or (is_pit and how_far in ("extensive", "not-declared"))
    actions = rung.extensive if wide else rung.isolated
    departs = zone.action is not None and zone.action not in actions
    return {"rung": rung.name, "share_at_rung": at_rung, "suggests_extensive": wide, "suggested": list(actions), "departs": departs}
