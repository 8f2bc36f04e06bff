"""The policy of a layout: its parts laid together, then what a firm's layout writes over them."""
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path

import yaml

from .lengths import NANOMETRE, length

LOADER = getattr(yaml, "CBaseLoader", yaml.BaseLoader)


def load_text(text):
    """Every scalar stays the text that was written."""
    return yaml.load(text, Loader=LOADER)


def load(path):
    return load_text(Path(path).read_text(encoding="utf-8"))


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
    coverage: Fraction      # of Student's one-sided factor
    most_per_m2: Fraction
    under_share: Fraction
    least_spacing: Fraction
    extensive_from: Fraction
    intense_over: Fraction
    least_measured: int
    rungs: tuple
    weak: dict              # basis -> bool
    usual: tuple
    usual_tolerances: tuple
    tolerances: dict        # name -> bands
    least_marks: int
    least_read: Fraction
    spot_per_m2: Fraction
    block_agreement: Fraction
    retake_within: Fraction
    repeat_spread: Fraction
    single_echo: dict       # least, most: steel that an echo counts for a film, in films
    given: dict             # all of it, every scalar as text


def rung(name, given):
    bound = given.get("below")
    part = given.get("below-part")
    return Rung(name, length(bound) if bound else None, Fraction(part) if part else None,
                tuple(given["isolated"]["actions"]), tuple(given["extensive"]["actions"]))


def bands(given):
    """A single size is a band that holds that nanometre alone."""
    sizes = [{**s, "from": s["size"], "to": s["size"]} for s in given.get("sizes", ())]
    return tuple(Band(length(b["from"]), length(b["to"]) + (NANOMETRE if "size" in b else 0), length(b["minus"]), length(b["plus"]))
                 for b in [*given.get("bands", ()), *sizes])


@cache
def read_policy(layouts, house):
    p = whole(Path(layouts), house)["policy"]
    doubt, extent, pitting, checks, opinion = (p[k] for k in ("doubt", "extent", "pitting", "checks", "opinion"))
    return Policy(
        criteria=p["criteria"], factor=Fraction(doubt["band"]), coverage=percent(doubt["coverage"]),
        most_per_m2=Fraction(extent["most-per-m2"]), under_share=percent(extent["under"]),
        least_spacing=length(extent["least-spacing"]), extensive_from=percent(extent["extensive-from"]),
        intense_over=percent(pitting["intense-over"]), least_measured=int(pitting["least-measured"]),
        rungs=tuple(rung(k, v) for k, v in p["ladder"]["rungs"].items()),
        weak={k: v["weak"] == "yes" for k, v in p["bases"].items()},
        usual=tuple(length(n) for n in p["usual-nominals"]), usual_tolerances=tuple(p["usual-tolerances"]),
        tolerances={k: bands(v) for k, v in p["tolerances"].items()},
        least_marks=int(opinion["least-marks"]), least_read=percent(opinion["least-read"]),
        spot_per_m2=Fraction(checks["spot-check-per-m2"]), block_agreement=length(checks["block-agreement"]),
        retake_within=length(checks["retake-within"]), repeat_spread=length(checks["repeat-spread"]),
        single_echo={k: Fraction(checks["single-echo-factor"][k]) for k in ("least", "most")},
        given=p)
