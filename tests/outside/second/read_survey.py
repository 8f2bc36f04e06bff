"""A survey as plain values, read from survey.yaml and the readings beside it by a reader of our own.

It trusts that the file is sound: what a malformed file does is the program's own matter and is tested elsewhere.
"""
import csv
import re
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from .lengths import length
from .read_layout import load

STATUS = ("no-echo", "unstable", "not-cleaned", "no-access", "weld-or-fitting")
SEPARATOR = {"comma": ",", "semicolon": ";", "tab": "\t"}


@dataclass(frozen=True)
class Mark:
    row: str
    station: str            # as written
    figures: tuple          # in mm, every repeat
    status: str             # read, rejected, or why it would not read
    on_doubler: bool
    gauge: str

    @property
    def name(self):
        return f"{self.row} {self.station}"

    @property
    def at(self):
        return Fraction(self.station)

    @property
    def used(self):
        return self.status == "read" and not self.on_doubler

    @property
    def remaining(self):
        """The least of the repeats."""
        return min(self.figures)


@dataclass(frozen=True)
class Pit:
    name: str
    row: str
    at: Fraction
    adjacent: Fraction
    depth: Fraction
    gauge: str | None
    on_doubler: bool

    @property
    def remaining(self):
        """From the steel beside it, never from the nominal."""
        return self.adjacent - self.depth


@dataclass(frozen=True)
class Zone:
    name: str
    plating: str
    original: Fraction
    basis: str
    tolerance: str | None
    assumption: bool
    area: Fraction | None
    pitting: tuple | None   # pits, over m2, share of the area
    rows: tuple
    action: str | None
    governing: str | None


@dataclass(frozen=True)
class Survey:
    house: str
    length: Fraction
    draught: Fraction | None
    spacing: Fraction | None
    wing_voids: bool
    u: dict                 # gauge -> standard uncertainty, mm
    zones: tuple
    rows: tuple             # in the order of the file
    marks: tuple            # by row, then along the hull
    pits: tuple
    house_criteria: tuple
    own_criteria: dict


def plain(value):
    return value["value"] if isinstance(value, dict) else value


def covers(place, rows, zone_of):
    """'PW 4 to 13', 'PW, PC', 'zone W', 'whole shell': a function of row and station."""
    if place == "whole shell":
        return lambda row, at: True
    if place.startswith("zone "):
        return lambda row, at: zone_of[row] == place[5:]
    names, low, high = re.fullmatch(r"([A-Z0-9, ]*?[A-Z][0-9]*)(?: (-?[0-9.]+)(?: to (-?[0-9.]+))?)?", place).groups()
    wanted = {n.strip() for n in names.split(",")}
    start = Fraction(low) if low else None
    end = Fraction(high) if high else start
    return lambda row, at: row in wanted and (start is None or start <= at <= end)


def cell(text, unit):
    """(figures, status) of one mark."""
    text = text.strip()
    if text in STATUS:
        return (), text
    *figures, last = text.split()
    if last != "rejected":
        figures, last = [*figures, last], "read"
    return tuple(length(f, unit) for f in figures), last


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
        row, station = got["mark"].split() if "mark" in got else (got["row"], got["station"])
        yield row, station, got["reading"], got.get("plate", "hull")


def cells(given, folder):
    if "inline" in given:
        return [(row, at, text, "hull") for row, marks in given["inline"].items() for at, text in marks.items()]
    text = [l for l in (folder / given["file"]).read_text(encoding="utf-8").splitlines() if not l.startswith("#")]
    lines = [[c.strip() for c in line] for line in csv.reader(text, delimiter=SEPARATOR[given["separator"]])]
    return {"grid": grid, "long": long}[given["form"]](lines)


def read_marks(given, folder, rows, doubled):
    sets = given["readings"] if isinstance(given["readings"], list) else [given["readings"]]
    marks = []
    for one in sets:
        for row, station, text, plate in cells(one, folder):
            figures, status = cell(text, one["unit"])
            over = plate == "doubler" or doubled(row, Fraction(station))
            marks.append(Mark(row, station, figures, status, over, one["gauge"]))
    return tuple(sorted(marks, key=lambda m: (rows.index(m.row), m.at)))


def read_pits(given, doubled):
    for name, p in given.get("pits", {}).items():
        row, station = p["at"].split()
        # A pit on the inside face under a doubler is in the hull's own plate.
        over = doubled(row, Fraction(station)) and p.get("face") != "inside"
        yield Pit(name, row, Fraction(station), length(p["adjacent"]), length(p["depth"]), p.get("gauge"), over)


def read_zones(given):
    for name, z in given["zones"].items():
        decision = given.get("decisions", {}).get(name, {})
        p = z.get("pitting")
        pitting = (Fraction(p["count"]), Fraction(p["over-m2"]), Fraction(p["share-percent"]) / 100) if p else None
        yield Zone(name, z["plating"], length(z["original"]), z["basis"], z.get("tolerance"), "assumption" in z,
                   Fraction(z["area-m2"]) if "area-m2" in z else None, pitting,
                   tuple(r for r, row in given["rows"].items() if row["zone"] == name),
                   decision.get("action"), decision.get("criterion"))


def read_survey(path):
    path = Path(path)
    given = load(path)
    rows, vessel = list(given["rows"]), given["vessel"]
    zone_of = {r: row["zone"] for r, row in given["rows"].items()}
    plates = [covers(d["over"], rows, zone_of) for d in given.get("doublers", {}).values()]

    def doubled(row, at):
        return any(over(row, at) for over in plates)

    def size(key):
        return length(plain(vessel[key])) if key in vessel else None

    return Survey(given["house"], size("length"), size("draught"), size("frame-spacing"), vessel.get("wing-voids") == "yes",
                  {k: length(g["u"]) for k, g in given.get("gauges", {}).items()}, tuple(read_zones(given)), tuple(rows),
                  read_marks(given, path.parent, rows, doubled), tuple(read_pits(given, doubled)),
                  tuple(given.get("criteria", {})), given.get("own-criteria", {}))
