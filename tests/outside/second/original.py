"""What the plate may have been: over the delivery tolerance where the basis is strong, over the nominals alive where it is weak."""
from dataclasses import dataclass
from fractions import Fraction


def loss_share(original, remaining):
    return (original - remaining) / original


def delivered(nominal, tolerance, policy):
    """(least, most) that plate of this nominal may measure new; nothing where no tolerance is named or it does not reach."""
    for band in policy.tolerances[tolerance] if tolerance else ():
        if band.start <= nominal < band.end:
            return nominal - band.minus, nominal + band.plus
    return None


@dataclass(frozen=True)
class Nominal:
    size: Fraction
    state: str              # alive, excluded, set-aside
    span: tuple | None


def state_of(span, thickest, assumption):
    """A thick reading bounds from below only: thinner sizes are excluded. Thicker ones stay, unless an assumption sets them aside."""
    if span is None or thickest is None:
        return "alive"
    if thickest > span[1]:
        return "excluded"
    return "set-aside" if assumption and thickest < span[0] else "alive"


def nominals(zone, thickest, policy):
    """Every usual size, and the one stated, with what becomes of it."""
    out = []
    for size in sorted({*policy.usual, zone.original}):
        span = delivered(size, zone.tolerance, policy)
        out.append(Nominal(size, state_of(span, thickest, zone.assumption), span))
    return tuple(out)


@dataclass(frozen=True)
class Original:
    weak: bool
    nominal: Fraction
    span: tuple | None
    sizes: tuple            # of a weak basis
    highest: Fraction       # the highest tenable original

    @property
    def alive(self):
        return [n.size for n in self.sizes if n.state == "alive"]


def read_original(zone, thickest, policy):
    if not policy.weak[zone.basis]:
        return Original(False, zone.original, delivered(zone.original, zone.tolerance, policy), (), zone.original)
    sizes = nominals(zone, thickest, policy)
    alive = [n.size for n in sizes if n.state == "alive"]
    # Where no size fits, neither what is told nor what was read can be gone below.
    return Original(True, zone.original, None, sizes, max(alive) if alive else max(zone.original, thickest))


def share(original, remaining):
    """Loss of the nominal, and over the delivery tolerance: most is gone if the plate came thick. None on a weak basis."""
    if original.weak:
        return None
    low, high = (loss_share(s, remaining) for s in original.span) if original.span else (None, None)
    return {"nominal": loss_share(original.nominal, remaining), "low": low, "high": high}
