"""What the plate may have been: over the delivery tolerance where the basis is strong, over the nominals alive where it is weak."""
from dataclasses import dataclass
from fractions import Fraction


def loss_share(original, remaining):
    return (original - remaining) / original


def delivered(nominal, tolerance, policy):
    """(least, most) that plate of this nominal may measure new; nothing where the tolerance does not reach."""
    for band in policy.tolerances[tolerance]:
        if band.start <= nominal < band.end:
            return nominal - band.minus, nominal + band.plus
    return None


def spans(nominal, tolerances, policy):
    """[(tolerance, span)] of those that reach."""
    found = [(t, delivered(nominal, t, policy)) for t in tolerances]
    return tuple((t, span) for t, span in found if span)


def union(found):
    return (min(low for _, (low, _) in found), max(high for _, (_, high) in found)) if found else None


def state_of(span, thickest, assumption):
    """A thick reading bounds from below only: thinner sizes are excluded. Thicker ones stay, unless an assumption sets them aside."""
    if thickest is None:
        return "alive"
    if thickest > span[1]:
        return "excluded"
    return "set-aside" if assumption and thickest < span[0] else "alive"


@dataclass(frozen=True)
class Nominal:
    size: Fraction
    fits: tuple             # (tolerance, span, state)

    @property
    def state(self):
        """Alive under any tolerance is alive; no tolerance that reaches excludes nothing."""
        states = [state for *_, state in self.fits]
        return next((s for s in ("alive", "set-aside", "excluded") if s in states), "alive")

    @property
    def span(self):
        return union([(t, span) for t, span, _ in self.fits])


def considered(zone, policy):
    return zone.tolerances or (policy.usual_tolerances if policy.weak[zone.basis] else ())


def nominals(zone, thickest, policy):
    """Every usual size, and the one stated, with what becomes of it. Where no tolerance named reaches a size, the usual ones do."""
    for size in sorted({*policy.usual, zone.original}):
        found = spans(size, considered(zone, policy), policy) or spans(size, policy.usual_tolerances, policy)
        yield Nominal(size, tuple((t, span, state_of(span, thickest, zone.assumption)) for t, span in found))


@dataclass(frozen=True)
class Original:
    weak: bool
    nominal: Fraction
    tolerances: tuple
    span: tuple | None      # of a strong basis
    sizes: tuple            # of a weak one
    highest: Fraction       # the highest tenable original

    @property
    def alive(self):
        return [n.size for n in self.sizes if n.state == "alive"]


def read_original(zone, thickest, policy):
    named = considered(zone, policy)
    if not policy.weak[zone.basis]:
        return Original(False, zone.original, named, union(spans(zone.original, named, policy)), (), zone.original)
    sizes = tuple(nominals(zone, thickest, policy))
    alive = [n.size for n in sizes if n.state == "alive"]
    # Where no size fits, neither what is told nor what was read can be gone below.
    return Original(True, zone.original, named, None, sizes, max(alive) if alive else max(zone.original, thickest))


def share(original, remaining):
    """Loss of the nominal, and over the delivery tolerance: most is gone if the plate came thick. None on a weak basis."""
    if original.weak:
        return None
    low, high = (loss_share(s, remaining) for s in original.span) if original.span else (None, None)
    return {"nominal": loss_share(original.nominal, remaining), "low": low, "high": high}


def alive_range(original, remaining):
    gone = [loss_share(s, remaining) for s in original.alive]
    return {"alive_low": min(gone, default=None), "alive_high": max(gone, default=None)}
