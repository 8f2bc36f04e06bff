"""Surveys of other years at the same places: by true position, never by the number of a station.

Rate, remaining life and interval: API 570, 7.1 (the larger of short and long term governs; the next look at half the remaining
life). What is thicker than before beyond the doubt is not corrosion and enters no mean.
"""
import csv
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from math import inf, sqrt

from .criteria import limit_of, why_not
from .dates import day, months_later, years_between, years_later
from .lengths import length, up
from .read_survey import SEPARATOR, cell, listed, plain

STATION_UNIT = {"m": "m", "ft": "ft"}


@dataclass(frozen=True)
class Then:
    """A place of an earlier survey."""
    survey: str
    row: str
    written: str            # its station there
    at: Fraction            # true position, in this survey's datum
    remaining: Fraction
    variance: Fraction
    name: str               # as that survey would call it


class Earlier:
    def __init__(self, name, given, survey):
        self.name, self.given, self.on = name, given, day(given["inspected"])
        self.years = years_between(self.on, day(survey.inspected))
        datum = given["datum"]
        forward = "forward" in survey.given["datum"]["towards"]
        self.sign = 1 if (datum["counts"] == "forward") == forward else -1
        self.zero = length(datum["zero"])
        self.unit = datum["stations-in"]
        self.frame = length(datum["frame-spacing"]) if "frame-spacing" in datum else None
        self.u, self.depth_u = length(given["u"]), length(given["depth-u"]) if "depth-u" in given else None
        self.marks = list(self.read_marks(survey)) if "readings" in given else []
        self.pits = [self.pit(name, p) for name, p in given.get("pits", {}).items()]

    def position(self, station):
        """Of a station as written there, along this survey's hull."""
        along = Fraction(station) * self.frame if self.unit == "frames" else length(station, STATION_UNIT[self.unit])
        return self.zero + self.sign * along

    def read_marks(self, survey):
        given = self.given["readings"]
        text = [l for l in (survey.folder / given["file"]).read_text(encoding="utf-8").splitlines() if not l.startswith("#")]
        head, *body = [[c.strip() for c in line] for line in csv.reader(text, delimiter=SEPARATOR[given["separator"]])]
        for line in body:
            for row, written in zip(head[1:], line[1:]):
                figures, status = cell(written, given["unit"])
                if status == "read":
                    yield Then(self.name, row, line[0], self.position(line[0]), min(figures), self.u**2, f"{row} {line[0]}")

    def pit(self, name, given):
        row, station = given["at"].split(" ", 1)
        left = length(given["adjacent"]) - length(given["depth"])
        return Then(self.name, row, station, self.position(station), left, self.u**2 + self.depth_u**2, name)


def matched(here, there, radius):
    """{place here: place there}: one to one, nearest first, of equals the lower position here, then there."""
    pairs = sorted((abs(at - t.at), at, t.at, p.name, i) for p, at in here for i, t in enumerate(there)
                   if t.row == p.row and abs(at - t.at) <= radius)
    out, taken = {}, set()
    for *_, name, i in pairs:
        if name not in out and i not in taken:
            out[name] = there[i]
            taken.add(i)
    return out, [t for i, t in enumerate(there) if i not in taken]


@dataclass(frozen=True)
class Rate:
    per_year: Fraction      # mm
    square: Fraction        # of its spread
    upper: float

    @property
    def answer(self):
        return {"rate": self.per_year * 10**6, "spread": sqrt(self.square) * 1e6, "upper": self.upper * 1e6}


def rate(lost, variance, years, factor):
    per_year, square = lost / years, variance / years**2
    return Rate(per_year, square, float(per_year) + float(factor) * sqrt(square))


def lifetime(left, per_year):
    """Years until so much is gone; none at a rate of nought or less, nought where nothing is left to go."""
    if left <= 0:
        return 0.0
    return float(left) / float(per_year) if per_year > 0 else None


def limits(zone):
    """Of the criteria that apply there."""
    for c in zone.criteria:
        if not why_not(c, zone.zone, zone.survey, zone.original):
            yield c, up(limit_of(c, zone.zone, zone.survey))


class PlaceCompared:
    def __init__(self, place, at, zone, found, history):
        """found: [(earlier, then)] with the latest first."""
        self.place, self.at, self.zone, self.found, self.history = place, at, zone, found, history
        self.short = self.of(*found[0]) if found else None
        self.long = self.of(*found[-1]) if len(found) > 1 else None
        self.as_built = None if found else self.since_built()
        rates = [(k, r) for k, r in (("short", self.short), ("long", self.long), ("as-built", self.as_built)) if r]
        self.governs, self.rate = max(rates, key=lambda kr: kr[1].per_year, default=(None, None))
        self.change, self.limits = self.changed(), history.limits[zone.zone.name]

    def of(self, earlier, then):
        return rate(then.remaining - self.place.judged, then.variance + self.place.doubt.variance, earlier.years, self.history.factor)

    def since_built(self):
        original = self.zone.original
        if original.weak or self.history.since_built is None:
            return None
        half = (original.span[1] - original.span[0]) / 2 if original.span else Fraction(0)
        return rate(self.zone.zone.original - self.place.judged, self.place.doubt.variance + half**2 / 3, self.history.since_built,
                    self.history.factor)

    def changed(self):
        """Beyond the doubt against any survey: what has grown against one of them is flagged, whatever the others say."""
        changes = {self.change_since(then) for _, then in self.found}
        return next((c for c in ("grown", "lost", "within-doubt") if c in changes), None)

    def change_since(self, then):
        lost = then.remaining - self.place.judged
        beyond = lost**2 > self.history.factor**2 * (then.variance + self.place.doubt.variance)
        return ("lost" if lost > 0 else "grown") if beyond else "within-doubt"

    def life_to(self, limit):
        left = self.place.judged - limit
        if self.rate is None:
            return None, None
        return lifetime(left, self.rate.per_year), lifetime(left, max(r.upper for r in (self.short, self.long, self.as_built) if r))

    def lives(self):
        for c, limit in self.limits:
            mean, upper = self.life_to(limit)
            yield {"criterion": c.id, "mean": mean, "upper": upper}

    def governing_limit(self):
        return next((limit for c, limit in self.limits if c.id == self.zone.by), None)

    def answer(self):
        return {"place": self.place.name,
                "earlier": [{"survey": e.name, "at": t.written, "position": t.at, "off": t.at - self.at, "remaining": t.remaining}
                            for e, t in self.found],
                "remaining": self.place.judged, "short": self.short and self.short.answer, "long": self.long and self.long.answer,
                "as_built": self.as_built and {"since": self.history.built.isoformat(), **self.as_built.answer}, "governs": self.governs, "change": self.change,
                "life": list(self.lives())}


def endless(life):
    return inf if life is None else life


GRAVITY = ("falls-short", "too-close", "meets")


class History:
    def __init__(self, survey, policy, zones):
        rule = policy.given["years"]
        self.survey, self.policy, self.zones, self.factor = survey, policy, zones, policy.factor
        self.radius = length(rule["match-radius"])
        self.part, self.cap = Fraction(rule["life-part"].removesuffix("%").strip()) / 100, int(rule["longest-months"])
        self.inspected = day(survey.inspected) if survey.inspected else None
        self.surveys = [Earlier(k, g, survey) for k, g in survey.given.get("earlier-surveys", {}).items()]
        self.since_built = self.years_since_built()
        self.limits = {z.zone.name: list(limits(z)) for z in zones}
        self.places, self.unmatched = [], {"here": []}
        if self.surveys:
            self.compare()

    @property
    def built(self):
        """The middle of the year she was built in."""
        year = plain(self.survey.given["vessel"].get("built"))
        return date(int(year), 7, 1) if year and year.isdigit() else None

    def years_since_built(self):
        known = self.built and self.inspected and self.built < self.inspected
        return years_between(self.built, self.inspected) if known else None

    def stations(self):
        at = {m.name: m.at for m in self.survey.marks}
        return {**at, **{p.name: p.at for p in self.survey.pits}}

    def compare(self):
        at = self.stations()
        newest = sorted(self.surveys, key=lambda e: e.on, reverse=True)
        plate = [(p, at[p.name]) for z in self.zones for p in z.plate]
        pits = [(p, at[p.name]) for z in self.zones for p in z.pits]
        met = {}
        for e in self.surveys:
            marks, left_marks = matched(plate, e.marks, self.radius)
            under, left_pits = matched(pits, e.pits, self.radius)
            met[e.name] = {**dict(self.plate_before(pits, under, e.marks)), **marks, **under}
            rows = self.survey.rows
            self.unmatched[e.name] = [t.name for t in sorted(left_marks, key=lambda t: (rows.index(t.row), e.sign * t.at)) + left_pits]
        for z in self.zones:
            for p in z.plate + z.pits:
                found = [(e, met[e.name][p.name]) for e in newest if p.name in met[e.name]]
                self.places.append(PlaceCompared(p, at[p.name], z, found, self))
        self.unmatched["here"] = [c.place.name for c in self.places if not c.found]

    def plate_before(self, pits, under, marks):
        """A pit that none was before stands against the plate that was read nearest to it on its row."""
        for p, at in pits:
            near = [t for t in marks if p.name not in under and t.row == p.row and abs(t.at - at) <= self.radius]
            if near:
                yield p.name, min(near, key=lambda t: (abs(t.at - at), t.at))

    def zone_answer(self, zone):
        places = [c for c in self.places if c.zone is zone]
        met = [c for c in places if c.found]
        kinds = {k: [c for c in met if c.change == k] for k in ("lost", "within-doubt", "grown")}
        rates = [c for c in met if c.change != "grown"]
        greatest = max(rates, key=lambda c: c.rate.per_year, default=None)
        lost = [c.rate.per_year for c in kinds["lost"]]
        return {"zone": zone.zone.name, "matched": len(met), **{k.replace("-", "_"): len(v) for k, v in kinds.items()},
                "greatest": greatest and {"place": greatest.place.name, "rate": greatest.rate.per_year * 10**6},
                "mean_lost": sum(lost) / len(lost) * 10**6 if lost else None,
                "rate_criterion": self.rate_criterion([c for c in places if c.rate]) if met and zone.by else None}

    def horizon(self):
        by = self.survey.given.get("answer", {}).get("next-survey-by")
        look = self.next_look()
        return day(by) if by else look and day(look["date"])

    def rate_criterion(self, met):
        horizon = self.horizon()
        if horizon is None:
            return None
        ahead = years_between(self.inspected, horizon)
        judged = [(self.by_then(c, ahead), c) for c in met]
        worst, at = min(judged, key=lambda vc: (GRAVITY.index(vc[0]), endless(vc[1].life_to(vc[1].governing_limit())[1])))
        return {"verdict": worst, "at": at.place.name, "limit_of": at.zone.by, "horizon": horizon.isoformat()}

    def by_then(self, c, ahead):
        """Will it keep its limit until then: at the upper rate, not even at the mean one, or too close to call."""
        mean, upper = c.life_to(c.governing_limit())
        if c.place.judged <= c.governing_limit():
            return "falls-short"
        if upper is None or upper >= ahead:
            return "meets"
        return "falls-short" if mean is not None and mean < ahead else "too-close"

    def next_look(self):
        if not any(c.rate for c in self.places):
            return None
        lives = [(c.life_to(c.governing_limit())[1], c) for c in self.places if c.zone.by]
        shortest, at = min(((life, c) for life, c in lives if life is not None), key=lambda lc: lc[0], default=(None, None))
        cap = months_later(self.inspected, self.cap)
        if at is None:
            return {"date": cap.isoformat(), "at": None, "capped": True}
        due = years_later(self.inspected, self.part * Fraction(shortest))
        return {"date": min(due, cap).isoformat(), "at": at.place.name, "capped": cap < due}

    def answer(self):
        return {"surveys": [{"id": e.name, "inspected": e.on.isoformat(), "years": e.years} for e in self.surveys],
                "places": [c.answer() for c in self.places], "unmatched": self.unmatched,
                "zones": [self.zone_answer(z) for z in self.zones], "next_look": self.next_look()}
