"""How a verdict moves when the limit, the original or the doubt does, each alone."""
from fractions import Fraction

from .criteria import limit_of
from .lengths import length, up
from .read_layout import percent


def verdict(margin, place, times):
    if margin**2 < place.doubt.square * times**2:
        return "too-close"
    return "meets" if margin >= 0 else "falls-short"


def originals(original):
    """Thinnest tenable, nominal and thickest; on a weak basis every nominal alive."""
    if original.weak:
        return original.alive
    low, high = original.span or (original.nominal, original.nominal)
    return sorted({low, original.nominal, high})


class Tried:
    def __init__(self, zone, policy):
        rule = policy.given["robustness"]
        self.zone = zone
        self.limits, self.losses = [length(l) for l in rule["limits"]], [percent(l) for l in rule["losses"]]
        self.doubts = [Fraction(d) for d in rule["doubts"]]
        self.originals = originals(zone.original)

    def at_limits(self, place):
        return [{"limit": l, "doubt": d, "verdict": verdict(place.judged - l, place, d), "margin": place.judged - l}
                for l in self.limits for d in self.doubts]

    def at_losses(self, place):
        for share in self.losses:
            for t0 in self.originals:
                limit = t0 * (1 - share)
                yield {"loss": share, "original": t0, "verdict": verdict(place.judged - limit, place, 1), "margin": place.judged - up(limit)}

    def moved(self, place):
        """The governing criterion's verdicts as one thing moves."""
        c = next((c for c in self.zone.criteria if c.id == self.zone.by), None)
        if c is None:
            return {}
        original = self.zone.zone.original
        used = limit_of(c, self.zone.zone, self.zone.survey)
        of_original = c.kind in ("percent", "margin")
        limits = [original * (1 - s) for s in self.losses] if of_original else self.limits
        by_original = [t0 * (1 - c.most_loss) for t0 in self.originals] if of_original else []
        return {"limit": {verdict(place.judged - l, place, 1) for l in [used, *limits]},
                "original": {verdict(place.judged - l, place, 1) for l in [used, *by_original]},
                "doubt": {verdict(place.judged - used, place, d) for d in [1, *self.doubts]}}

    def flips(self):
        moved = [self.moved(p) for p in self.zone.subjects]
        return {k: any(len(m.get(k, ())) > 1 for m in moved) for k in ("limit", "original", "doubt")}

    def answer(self):
        return {"zone": self.zone.zone.name, "subjects": [{"id": p.name, "limits": self.at_limits(p), "losses": list(self.at_losses(p))}
                                                          for p in self.zone.subjects],
                "flips": self.flips()}


def answer(policy, zones):
    return {"zones": [Tried(z, policy).answer() for z in zones]}
