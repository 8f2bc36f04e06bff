"""What is said of plate that nobody measured: coverage, and the deepest pit to expect (Gumbel, from block maxima).

E. J. Gumbel, Statistics of Extremes (1958); return period as total over block area (M. Shibata, J. Res. NIST 99, 327, 1994);
L-moments: J. R. M. Hosking (1990). Goodness of fit: Anderson and Darling.
"""
import random
from fractions import Fraction
from math import exp, log, pi, sqrt
from statistics import NormalDist

from .lengths import length
from .places import counted
from .read_layout import percent

EULER = 0.57721566490153286


def gap(zone):
    """The longest stretch of a row without a used mark, from its first planned mark to its last."""
    found = []
    for row in zone.zone.rows:
        marks = [m for m in zone.marks if m.row == row]
        stops = [m for i, m in enumerate(marks) if m.used or i in (0, len(marks) - 1)]
        found += [(b.at - a.at, row, a.name, b.name) for a, b in zip(stops, stops[1:])]
    longest = max(found, key=lambda f: f[0], default=None)
    return longest and {"row": longest[1], "from": longest[2], "to": longest[3], "length": longest[0]}


def touched(marks, area, survey):
    """Share of the area that the readings used really took in."""
    used = [m for m in marks if m.used]
    crystals = [survey.gauges[m.gauge].get("crystal") for m in used]
    if area is None or not used or None in crystals:
        return None
    return pi / 4 * sum(float(length(c))**2 for c in crystals) / 1e6 / float(area)


def likely(depths, halvings=200):
    """Maximum likelihood: the root of its one equation in beta, by halving."""
    n, mean, low_end = len(depths), sum(depths) / len(depths), min(depths)

    def off(beta):
        weights = [exp(-(x - low_end) / beta) for x in depths]
        return mean - sum(x * w for x, w in zip(depths, weights)) / sum(weights) - beta
    low, high = (max(depths) - low_end) / 1e4, mean - low_end + (max(depths) - low_end)
    for _ in range(halvings):
        middle = (low + high) / 2
        low, high = (middle, high) if off(middle) > 0 else (low, middle)
    beta = (low + high) / 2
    return low_end - beta * log(sum(exp(-(x - low_end) / beta) for x in depths) / n), beta


def information(depths, mu, beta):
    """Covariance of (mu, beta): the inverse of the observed information at the maximum."""
    z = [(x - mu) / beta for x in depths]
    weighted = [exp(-a) for a in z]
    mm, mb = len(z) / beta**2, sum(a * w for a, w in zip(z, weighted)) / beta**2
    bb = (len(z) + sum(a * a * w for a, w in zip(z, weighted))) / beta**2
    # The slope with respect to mu is nought at the maximum, so the cross term is minus what hangs on it.
    det = mm * bb - mb * mb
    return bb / det, mm / det, -mb / det


def misfit(depths, mu, beta):
    """Anderson and Darling's A2."""
    p = sorted(min(max(exp(-exp(-(x - mu) / beta)), 1e-300), 1 - 2**-53) for x in depths)
    n = len(p)
    return -n - sum((2 * i + 1) * (log(p[i]) + log(1 - p[n - 1 - i])) for i in range(n)) / n


def probability(a2, n, draws=3000):
    """Of a fit at least as bad as this, if the law holds: by drawing. It hangs on neither mu nor beta, as both are fitted anew."""
    rng, worse = random.Random(n), 0
    for _ in range(draws):
        drawn = [-log(-log(rng.random())) for _ in range(n)]
        worse += misfit(drawn, *likely(drawn, 45)) >= a2
    return worse / draws


def l_moments(depths):
    ordered, n = sorted(depths), len(depths)
    mean = sum(ordered) / n
    beta = (2 * sum(i * x for i, x in enumerate(ordered)) / (n * (n - 1)) - mean) / log(2)
    return {"mu": mean - EULER * beta, "beta": beta}


def refused(depths, zone, period, rule):
    if len(depths) < int(rule["least-blocks"]):
        return "few-blocks"
    if min(depths) == 0:
        return "blocks-without-pits"
    if zone.zone.area is None:
        return "no-area"
    if period <= len(depths):  # blocks that fill the zone leave nothing to expect
        return "all-seen"
    return "all-alike" if min(depths) == max(depths) else None


def expected(depths, zone, period, rule):
    mu, beta = likely(depths)
    var_mu, var_beta, cov = information(depths, mu, beta)
    y = -log(-log(1 - 1 / float(period)))
    level, se = mu + beta * y, sqrt(var_mu + 2 * y * cov + y * y * var_beta)
    confidence = float(percent(rule["confidence"]))
    two, one = NormalDist().inv_cdf((1 + confidence) / 2), NormalDist().inv_cdf(confidence)
    nll = sum(log(beta) + (x - mu) / beta + exp(-(x - mu) / beta) for x in depths)
    left = [p.judged for p in zone.plate]
    return {"ml": {"mu": mu, "beta": beta, "se_mu": sqrt(var_mu), "se_beta": sqrt(var_beta), "cov": cov, "nll": nll},
            "lmoments": l_moments(depths), "fit": {"a2": misfit(depths, mu, beta)}, "period": period, "level": level, "se": se,
            "low": level - two * se, "high": level + two * se, "upper": level + one * se, "mode": mu + beta * log(float(period)),
            "within": mu - beta * log(-log(confidence) / float(period)), "chance_deeper": 1 - (1 - 1 / float(period))**float(period),
            "beside_mean": float(sum(left) / len(left)) - level if left else None}


EXPECTED = ("ml", "lmoments", "fit", "period", "level", "se", "low", "high", "upper", "mode", "within", "chance_deeper", "beside_mean")


def blocks(zone, survey, rule):
    given = survey.given["zones"][zone.zone.name].get("pit-blocks")
    if not given:
        return None
    depths = [float(length(d)) for d in given["deepest"]]
    period = zone.zone.area / Fraction(given["block-m2"]) if zone.zone.area is not None else None
    seen = max(length(d) for d in given["deepest"])
    deeper = [p for p in survey.pits if p.row in zone.zone.rows and p in zone.counted and p.depth > seen]
    out = {"blocks": len(depths), "without_pits": depths.count(0), "block_m2": Fraction(given["block-m2"]), "deepest_seen": seen,
           "deeper_pit": max(deeper, key=lambda p: p.depth).name if deeper else None}
    reason = refused(depths, zone, period, rule)
    if reason:
        return {**out, "refused": reason, **dict.fromkeys(EXPECTED)}
    return {**out, "refused": None, **expected(depths, zone, period, rule)}


def coverage(marks, area, gap, touched):
    count = counted(marks)
    return {**{k: count[k] for k in ("planned", "read", "used")}, "area_m2": area,
            "used_per_m2": None if area is None else count["used"] / area, "touched_share": touched, "largest_gap": gap}


def answer(survey, policy, zones):
    rule, areas = policy.given["unseen"], [z.zone.area for z in zones]
    area = None if None in areas else sum(areas)
    gaps = [gap(z) for z in zones]
    longest = max((g for g in gaps if g), key=lambda g: g["length"], default=None)
    whole = coverage(survey.marks, area, longest, touched(survey.marks, area, survey))
    return {"zones": [{"zone": z.zone.name, **coverage(z.marks, z.zone.area, g, touched(z.marks, z.zone.area, survey)), "pits": blocks(z, survey, rule)}
                      for z, g in zip(zones, gaps)], "whole": whole}
