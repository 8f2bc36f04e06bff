"""Extent by rule, whether there is enough to have an opinion on, and what the firm's ladder suggests."""
from fractions import Fraction
from itertools import combinations


def spacing(zone, pits):
    """The least distance along a row between two of the pits measured in the hull's plate, or what is declared if that is less."""
    apart = [abs(a.at - b.at) for a, b in combinations(pits, 2) if a.row == b.row]
    if zone.pitting and zone.pitting.spacing is not None:
        apart.append(zone.pitting.spacing)
    return min(apart, default=None)


def extent(zone, pits, policy):
    """Isolated is at most so many pits a square metre, under so much of the area and no two nearer than the spacing; extensive is
    from the larger share on; scattered lies between."""
    declared = zone.pitting
    if not declared:
        return "not-declared" if pits else "none"
    covered = declared.share_percent / 100
    if covered >= policy.extensive_from:
        return "extensive"
    near = spacing(zone, pits)
    apart = near is None or near >= policy.least_spacing
    return "isolated" if declared.per_m2 <= policy.most_per_m2 and covered < policy.under_share and apart else "scattered"


def too_few(count, policy):
    """No usable reading, fewer than the policy asks, or too small a share of the planned marks. What lies on a doubler says nothing of
    the hull's plate, so it is not usable."""
    if count["used"] == 0 or count["used"] < policy.least_marks:
        return True
    return Fraction(count["used"], count["planned"]) < policy.least_read


def rung_of(r, t0, policy):
    return next(i for i, rung in enumerate(policy.rungs) if rung.holds(r, t0))


def suggestion(zone, places, highest, how_far, few, policy):
    """places: what is judged at the plate readings used and at the worst place, and whether that is a pit."""
    readings, worst, is_pit = places
    if few or worst is None:
        return {"rung": None, "share_at_rung": None, "suggests_extensive": False, "suggested": [], "departs": False}
    at = rung_of(worst, highest, policy)
    at_rung = Fraction(sum(rung_of(r, highest, policy) <= at for r in readings), len(readings))
    # All pitting that is not isolated takes the graver column; so does a pit where nobody has declared the extent.
    wide = at_rung >= policy.under_share or (is_pit and how_far in ("scattered", "extensive", "not-declared"))
    rung = policy.rungs[at]
    actions = rung.extensive if wide else rung.isolated
    departs = zone.action is not None and zone.action not in actions
    return {"rung": rung.name, "share_at_rung": at_rung, "suggests_extensive": wide, "suggested": list(actions), "departs": departs}
