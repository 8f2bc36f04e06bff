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


GRAVITY = ("falls-short", "too-close", "meets")


class Tried:
    def __init__(self, zone, policy):
        rule = policy.given["robustness"]
        self.zone, self.doubts, self.originals = zone, [Fraction(d) for d in rule["doubts"]], originals(zone.original)
        self.criterion = next((c for c in zone.criteria if c.id == zone.by), None)
        self.limit = limit_of(self.criterion, zone.zone, zone.survey) if self.criterion else None
        self.of_original = self.criterion is not None and self.criterion.kind in ("percent", "margin")
        # What governs is among what is tried.
        self.limits = sorted({*(length(l) for l in rule["limits"]), *([self.limit] if self.criterion and not self.of_original else [])})
        self.losses = sorted({*(percent(l) for l in rule["losses"]), *([self.criterion.most_loss] if self.of_original else [])})

    def at_limits(self, place):
        return [{"limit": l, "doubt": d, "verdict": verdict(place.judged - l, place, d), "margin": place.judged - l,
                 "used": not self.of_original and l == self.limit and d == 1} for l in self.limits for d in self.doubts]

    def at_losses(self, place):
        for share in self.losses:
            for t0 in self.originals:
                limit = t0 * (1 - share)
                yield {"loss": share, "original": t0, "verdict": verdict(place.judged - limit, place, 1), "margin": place.judged - up(limit),
                       "used": self.of_original and share == self.criterion.most_loss and t0 == self.zone.zone.original}

    def moved(self, place):
        """The governing criterion's verdicts as one thing moves."""
        if self.criterion is None:
            return {}
        limits = [self.zone.zone.original * (1 - s) for s in self.losses] if self.of_original else self.limits
        by_original = [t0 * (1 - self.criterion.most_loss) for t0 in self.originals] if self.of_original else [self.limit]
        return {"limit": {verdict(place.judged - l, place, 1) for l in limits},
                "original": {verdict(place.judged - l, place, 1) for l in by_original},
                "doubt": {verdict(place.judged - self.limit, place, d) for d in [1, *self.doubts]}}

    def flips(self):
        moved = [self.moved(p) for p in self.zone.subjects]
        return {k: any(len(m.get(k, ())) > 1 for m in moved) for k in ("limit", "original", "doubt")}

    def verdict(self):
        """The gravest of its places."""
        found = [verdict(p.judged - self.limit, p, 1) for p in self.zone.subjects] if self.criterion else []
        return min(found, key=GRAVITY.index, default=None)

    def answer(self):
        return {"zone": self.zone.zone.name, "criterion": self.criterion and self.criterion.id, "verdict": self.verdict(),
                "subjects": [{"id": p.name, "limits": self.at_limits(p), "losses": list(self.at_losses(p))} for p in self.zone.subjects],
                "flips": self.flips()}


def answer(policy, zones):
    return {"zones": [Tried(z, policy).answer() for z in zones]}
