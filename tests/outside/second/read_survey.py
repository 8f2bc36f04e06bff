"""A survey as plain values, read from survey.yaml and the readings beside it by a reader of our own.

It trusts that the file is sound: what a malformed file does is the program's own matter and is tested elsewhere.
"""
import csv
import re
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from .lengths import down, length
from .read_layout import load

STATUS = ("no-echo", "unstable", "not-cleaned", "no-access", "weld-or-fitting")
SEPARATOR = {"comma": ",", "semicolon": ";", "tab": "\t"}
FIGURE = re.compile(r"((?:\d+ )?\d+/\d+|\d*\.?\d+)(?: (mm|um|in|thou))?(\?)?(?: |$)")


@dataclass(frozen=True)
class Mark:
    row: str
    station: str            # as written
    at: Fraction            # mm along the hull
    figures: tuple          # in mm, every repeat
    status: str             # read, rejected, queried, or why it would not read
    on_doubler: bool
    gauge: str
    reduce: str
    single_echo: bool
    film: Fraction | None   # of a coating that single echoes were read through

    @property
    def name(self):
        return f"{self.row} {self.station}"

    @property
    def used(self):
        return self.status == "read" and not self.on_doubler

    @property
    def remaining(self):
        """As displayed: the least of the repeats, or their mean rounded down."""
        return min(self.figures) if self.reduce == "least of repeats" else down(sum(self.figures) / len(self.figures))


@dataclass(frozen=True)
class Pit:
    name: str
    row: str
    at: Fraction
    adjacent: Fraction
    depth: Fraction
    gauge: str | None
    doubler: str | None     # that covers its place
    inside: bool            # on the inside face
    share_percent: Fraction | None  # of the area about it

    @property
    def remaining(self):
        """From the steel beside it, never from the nominal."""
        return self.adjacent - self.depth


@dataclass(frozen=True)
class Pitting:
    per_m2: Fraction
    share_percent: Fraction
    spacing: Fraction | None


@dataclass(frozen=True)
class Zone:
    name: str
    plating: str
    original: Fraction
    basis: str
    told: bool
    tolerances: tuple
    assumption: bool
    area: Fraction | None
    pitting: Pitting | None
    rows: tuple
    action: str | None
    governing: str | None


@dataclass(frozen=True)
class Survey:
    house: str
    inspected: str | None
    length: Fraction
    draught: Fraction | None
    spacing: Fraction | None
    waterline: Fraction | None
    wing_voids: bool
    declared: frozenset     # what the vessel is declared to be
    told: frozenset         # figures of the vessel that somebody told
    gauges: dict            # as written
    zones: tuple
    rows: tuple             # in the order of the file
    marks: tuple            # by row, then along the hull
    pits: tuple
    house_criteria: tuple
    own_criteria: dict
    given: dict             # the file, every scalar as text
    folder: Path


def plain(value):
    return value["value"] if isinstance(value, dict) else value


def listed(value):
    return tuple(value) if isinstance(value, list) else (value,) if value else ()


@dataclass(frozen=True)
class Reach:
    rows: tuple
    ends: tuple             # (from, to) along the hull; empty: the whole length

    def covers(self, row, at):
        return row in self.rows and (not self.ends or self.ends[0] <= at <= self.ends[1])

    def meets(self, row, start, end):
        """Whether it has a place in common with a stretch of a row; ends belong to it."""
        return row in self.rows and (not self.ends or (self.ends[0] <= end and start <= self.ends[1]))


def read_reach(place, zone_of, unit):
    """'PW 4 to 13', 'PW, PC', 'zone W', 'whole shell'."""
    if place == "whole shell":
        return Reach(tuple(zone_of), ())
    if place.startswith("zone "):
        return Reach(tuple(r for r, z in zone_of.items() if z == place[5:]), ())
    names, _, stretch = re.fullmatch(r"([A-Z]+[0-9]*(, *[A-Z]+[0-9]*)*) ?(.*)", place).groups()
    ends = [length(end, unit) for end in stretch.split(" to ")] if stretch else []
    return Reach(tuple(n.strip() for n in names.split(",")), (ends[0], ends[-1]) if ends else ())


def cell(text, unit):
    """(figures, status) of one mark."""
    text = text.strip()
    if text in STATUS:
        return (), text
    rejected = text.endswith(" rejected")
    found = FIGURE.findall(text.removesuffix(" rejected"))
    status = "rejected" if rejected else "queried" if any(query for *_, query in found) else "read"
    return tuple(length(figure, own or unit) for figure, own, _ in found), status


def grid(lines):
    head, *body = lines
    for line in body:
        for row, text in zip(head[1:], line[1:]):
            yield row, line[0], text, "hull"


def long(lines):
    head, *body = lines
    kinds = [h.split()[0] for h in head]
    for line in body:
        got = dict(zip(kinds, line))
        row, station = got["mark"].split(" ", 1) if "mark" in got else (got["row"], got["station"])
        yield row, station, got["reading"], got.get("plate", "hull")


def cells(given, folder):
    if "inline" in given:
        return [(row, at, text, "hull") for row, marks in given["inline"].items() for at, text in marks.items()]
    text = [l for l in (folder / given["file"]).read_text(encoding="utf-8").splitlines() if not l.startswith("#")]
    lines = [[c.strip() for c in line] for line in csv.reader(text, delimiter=SEPARATOR[given["separator"]])]
    return {"grid": grid, "long": long}[given["form"]](lines)


def read_marks(given, folder, rows, doubled, unit):
    marks = []
    for one in given["readings"] if isinstance(given["readings"], list) else [given["readings"]]:
        film = length(one["coating-thickness"]) if "coating-thickness" in one else None
        for row, station, text, plate in cells(one, folder):
            figures, status = cell(text, one["unit"])
            at = length(station, unit)
            marks.append(Mark(row, station, at, figures, status, plate == "doubler" or doubled(row, at) is not None, one["gauge"], one["reduce"],
                              one["surface"] == "coated single-echo", film))
    return tuple(sorted(marks, key=lambda m: (rows.index(m.row), m.at)))


def read_pits(given, doubled, unit):
    for name, p in given.get("pits", {}).items():
        row, station = p["at"].split(" ", 1)
        at = length(station, unit)
        yield Pit(name, row, at, length(p["adjacent"]), length(p["depth"]), p.get("gauge"), doubled(row, at), p.get("face") == "inside",
                  Fraction(p["share-percent"]) if "share-percent" in p else None)


def read_pitting(p):
    spacing = length(p["spacing"]) if "spacing" in p else None
    return Pitting(Fraction(p["count"]) / Fraction(p["over-m2"]), Fraction(p["share-percent"]), spacing)


def read_zones(given):
    for name, z in given["zones"].items():
        decision = given.get("decisions", {}).get(name, {})
        yield Zone(name, z["plating"], length(z["original"]), z["basis"], z["source"].startswith("told"), listed(z.get("tolerance")),
                   "assumption" in z, Fraction(z["area-m2"]) if "area-m2" in z else None,
                   read_pitting(z["pitting"]) if "pitting" in z else None,
                   tuple(r for r, row in given["rows"].items() if row["zone"] == name),
                   decision.get("action"), decision.get("criterion"))


def declared(vessel):
    """Light scantlings, and what she carries."""
    carries = plain(vessel.get("carries"))
    return frozenset(([carries] if carries else []) + (["light-scantlings"] if plain(vessel.get("light-scantlings")) == "yes" else []))


def told(vessel):
    def source(value):
        return value["source"] if isinstance(value, dict) else vessel.get("source", "")
    return frozenset(k for k, v in vessel.items() if not isinstance(v, list) and source(v).startswith("told"))


def read_survey(path):
    path = Path(path)
    given = load(path)
    rows, vessel, unit = list(given["rows"]), given["vessel"], given["datum"]["station-unit"]
    zone_of = {r: row["zone"] for r, row in given["rows"].items()}
    plates = {name: read_reach(d["over"], zone_of, unit) for name, d in given.get("doublers", {}).items()}

    def doubled(row, at):
        return next((name for name, over in plates.items() if over.covers(row, at)), None)

    def size(key):
        return length(plain(vessel[key])) if key in vessel else None

    return Survey(given["house"], given["report"].get("inspected"), size("length"), size("draught"), size("frame-spacing"),
                  size("waterline-length"), plain(vessel.get("wing-voids")) == "yes", declared(vessel), told(vessel),
                  given.get("gauges", {}), tuple(read_zones(given)), tuple(rows), read_marks(given, path.parent, rows, doubled, unit),
                  tuple(read_pits(given, doubled, unit)), tuple(given.get("criteria", {})), given.get("own-criteria", {}),
                  given, path.parent)
