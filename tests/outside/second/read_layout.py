"""The policy of a layout: its parts laid together, then what a firm's layout writes over them."""
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path

import yaml

from .lengths import length

LOADER = getattr(yaml, "CBaseLoader", yaml.BaseLoader)


def load(path):
    """Every scalar stays the text that was written."""
    return yaml.load(Path(path).read_text(encoding="utf-8"), Loader=LOADER)


def laid_over(below, above):
    if isinstance(below, dict) and isinstance(above, dict):
        return {**below, **{k: laid_over(below.get(k), v) for k, v in above.items()}}
    return above


def whole(folder, name):
    given = load(folder / f"{name}.yaml")
    out = whole(folder, given["extends"]) if "extends" in given else {}
    for part in given.get("parts", []):
        out = laid_over(out, load(folder / part))
    return laid_over(out, given)


def percent(text):
    return Fraction(text.removesuffix("%").strip()) / 100


@dataclass(frozen=True)
class Rung:
    name: str
    below: Fraction | None
    below_part: Fraction | None
    isolated: tuple
    extensive: tuple

    def holds(self, r, t0):
        """Every bound that is given lies above r."""
        return not ((self.below is not None and r >= self.below) or (self.below_part is not None and r >= self.below_part * t0))


@dataclass(frozen=True)
class Band:
    start: Fraction
    end: Fraction
    minus: Fraction
    plus: Fraction


@dataclass(frozen=True)
class Policy:
    criteria: dict          # as written, in printed order
    factor: Fraction        # a margin nearer than this many standard uncertainties is too close to call
    most_per_m2: Fraction
    under_share: Fraction
    rungs: tuple
    weak: dict              # basis -> bool
    usual: tuple
    tolerances: dict        # name -> bands
    least_marks: int
    least_read: Fraction
    spot_per_m2: Fraction


def rung(name, given):
    bound = given.get("below")
    part = given.get("below-part")
    return Rung(name, length(bound) if bound else None, Fraction(part) if part else None,
                tuple(given["isolated"]["actions"]), tuple(given["extensive"]["actions"]))


def bands(given):
    return tuple(Band(*(length(b[k]) for k in ("from", "to", "minus", "plus"))) for b in given["bands"])


@cache
def read_policy(layouts, house):
    p = whole(Path(layouts), house)["policy"]
    return Policy(
        criteria=p["criteria"], factor=Fraction(p["doubt"]["band"]),
        most_per_m2=Fraction(p["extent"]["most-per-m2"]), under_share=percent(p["extent"]["under"]),
        rungs=tuple(rung(k, v) for k, v in p["ladder"]["rungs"].items()),
        weak={k: v["weak"] == "yes" for k, v in p["bases"].items()},
        usual=tuple(length(n) for n in p["usual-nominals"]),
        tolerances={k: bands(v) for k, v in p["tolerances"].items()},
        least_marks=int(p["opinion"]["least-marks"]), least_read=percent(p["opinion"]["least-read"]),
        spot_per_m2=Fraction(p["checks"]["spot-check-per-m2"]))
