"""Plate that does not meet its limit, gathered into areas, and the steel that the schedule asks for.

Mild steel weighs 7.85 kg a square metre and millimetre (density 7850 kg/m3); the rest is plane geometry and common practice.
"""
from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby
from math import ceil, pi

from .ladder import extent, suggestion, too_few
from .lengths import length
from .places import counted
from .read_survey import read_reach


@dataclass(frozen=True)
class Run:
    """Neighbouring places of one row that do not meet their limit."""
    row: str
    kind: str
    start: Fraction
    end: Fraction
    places: tuple


@dataclass(frozen=True)
class Area:
    zone: object
    kind: str
    runs: tuple

    @property
    def start(self):
        return min(r.start for r in self.runs)

    @property
    def end(self):
        return max(r.end for r in self.runs)

    @property
    def rows(self):
        return list(dict.fromkeys(r.row for r in self.runs))


WORSE = ("falls-short", "too-close", "meets", "not-applicable")


def runs_of(row, planned, places, kind):
    """planned: where marks were planned. places: [(at, place, verdict)] that were judged.

    Only a mark that is otherwise ends a run, half-way to it; where there is none, the row's last planned mark does. What a pit
    of another kind keeps says nothing of the plate about it.
    """
    spots = [(at, list(group)) for at, group in groupby(sorted(places, key=lambda p: p[0]), key=lambda p: p[0])]
    worst = [min((v for *_, v in group), key=WORSE.index) for _, group in spots]
    told = [(s, w == kind) for s, w in zip(spots, worst) if w == kind or any(p.kind == "plate" for _, p, _ in s[1])]
    spots, of = [s for s, _ in told], [o for _, o in told]
    out, i = [], 0
    while i < len(spots):
        last = i
        while last + 1 < len(spots) and of[last + 1] == of[i]:
            last += 1
        if of[i]:
            first, end = spots[i][0], spots[last][0]
            start = (spots[i - 1][0] + first) / 2 if i else min(planned + [first])
            stop = (end + spots[last + 1][0]) / 2 if last + 1 < len(spots) else max(planned + [end])
            out.append(Run(row, kind, start, stop, tuple(p for _, group in spots[i:last + 1] for _, p, v in group if v != "meets")))
        i = last + 1
    return out


def gathered(zone, survey):
    """Runs of adjoining rows of a zone that lie beside each other are one area; port and starboard do not adjoin."""
    along, order = positions(survey), {r: i for i, r in enumerate(survey.rows)}
    groups = []
    for row in zone.zone.rows:
        places = [(along[p.name], p, zone.standing(p)["verdict"]) for p in zone.plate + zone.pits if p.row == row and zone.standing(p)]
        planned = [m.at for m in zone.marks if m.row == row]
        for run in [r for kind in ("falls-short", "too-close") for r in runs_of(row, planned, places, kind)]:
            beside = [g for g in groups if any(abs(order[r.row] - order[row]) == 1 and {side(survey, r.row), side(survey, row)} != {"port", "starboard"}
                                               and r.kind == run.kind and r.start < run.end and run.start < r.end for r in g)]
            groups = [g for g in groups if g not in beside] + [[r for g in beside for r in g] + [run]]
    return [Area(zone, g[0].kind, tuple(sorted(g, key=lambda r: (order[r.row], r.start)))) for g in groups]


def side(survey, row):
    return survey.given["rows"][row]["side"]


def positions(survey):
    return {m.name: m.at for m in survey.marks} | {p.name: p.at for p in survey.pits}


class Works:
    def __init__(self, survey, policy, zones):
        self.survey, self.policy, self.zones = survey, policy, zones
        self.rule, self.density = policy.given["works"], Fraction(policy.given["steel-density"])
        self.zone_of_row = {r: z.zone.name for z in zones for r in z.zone.rows}
        self.unit = survey.given["datum"]["station-unit"]
        self.items = [self.item(k, g) for k, g in survey.given.get("steelwork", {}).items()]
        # Named in the order of the zones, then of the rows and along the hull.
        found = [a for z in zones for a in sorted(gathered(z, survey), key=lambda a: (survey.rows.index(a.runs[0].row), a.runs[0].start))]
        self.areas = {f"A{i}": a for i, a in enumerate(found, 1)}

    def reach(self, given):
        return read_reach(given["at"], self.zone_of_row, self.unit)

    def within(self, reach):
        return [p for z in self.zones for p in z.plate if reach.covers(p.row, p.order[1])]

    def item(self, name, given):
        reach, action = self.reach(given), self.policy.given["actions"][given["action"]]
        sizes = [length(given[k]) for k in ("length", "breadth", "thickness") if k in given]
        lays = action["doubler"] == "yes" and {"length", "breadth", "plug-pitch"} <= given.keys()
        out = {"id": name, "plate_m2": None, "weight_kg": None, "removed_kg": None, "net_kg": None, "weld_m": None, "plugs": self.plugs(given) if lays else None,
               "centre": sum(reach.ends) / 2000 if reach.ends else None, "frame": self.frame(sum(reach.ends) / 2) if reach.ends else None}
        if len(sizes) < 3:
            return out
        along, across, thick = sizes
        radius = float(length(given["radius"])) if "radius" in given else 0.0
        square = (float(along) * float(across) - (4 - pi) * radius**2) / 1e6
        weight = square * float(thick * self.density)
        replaces = action["adds-steel"] == "yes" and action["doubler"] == "no"
        left = [p.judged for p in self.within(reach)]
        removed = square * float(sum(left) / len(left) * self.density) if replaces and left else None
        return {**out, "plate_m2": square, "weight_kg": weight, "removed_kg": removed, "net_kg": None if action["adds-steel"] != "yes" or (replaces and removed is None) else weight - (removed or 0),
                "weld_m": (2 * float(along + across) - (8 - 2 * pi) * radius) / 1000}

    def plugs(self, given):
        along, across, pitch = (length(given[k]) for k in ("length", "breadth", "plug-pitch"))
        if min(along, across) <= length(self.rule["plugs-over"]):
            return None
        nx, ny = (max(ceil(side / pitch) - 1, 0) for side in (along, across))
        return {"along": nx, "across": ny, "count": nx * ny}

    def breadth(self, area):
        rows = [self.survey.given["rows"][r].get("stands-for") for r in area.rows]
        return None if None in rows else sum(length(r) for r in rows)

    def frame(self, at):
        """The nearest frame and how far the place lies beyond it, the way stations count."""
        datum, spacing = self.survey.given["datum"], self.survey.spacing
        if "frame-zero" not in datum or "frames-run" not in datum or spacing is None:
            return None
        sign = 1 if datum["frames-run"] == "with stations" else -1
        number = sign * (at - length(datum["frame-zero"])) / spacing
        nearest = (2 * number + 1) // 2
        return {"frame": int(nearest), "off": at - (length(datum["frame-zero"]) + sign * nearest * spacing)}

    def unread(self, area):
        """Planned stations inside an area of which nothing is known, neither plate nor pit."""
        along = positions(self.survey)
        known = {(p.row, along[p.name]) for p in area.zone.plate + area.zone.pits}
        return sum(m.row == r.row and r.start <= m.at <= r.end and (m.row, m.at) not in known for r in area.runs for m in area.zone.marks)

    def ladder(self, area):
        """What the firm's ladder says of the area's own least place."""
        zone, lowest = area.zone, self.lowest(area)
        few, how_far = too_few(counted(zone.marks), self.policy), extent(zone.zone, zone.counted, self.policy)
        places = [p.judged for p in zone.plate], lowest.judged, lowest.kind == "pit"
        return suggestion(zone.zone, places, zone.original.highest, how_far, few, self.policy)["suggested"]

    def uncovered(self, area):
        """Places that neither a schedule item nor a recommendation reaches."""
        along = positions(self.survey)
        reaches = [self.reach(g) for which in ("steelwork", "recommendations") for g in self.survey.given.get(which, {}).values() if "at" in g]
        return [p.name for r in area.runs for p in r.places if not any(reach.covers(p.row, along[p.name]) for reach in reaches)]

    def covered_by(self, area, which="steelwork"):
        return [k for k, g in self.survey.given.get(which, {}).items()
                if "at" in g and any(self.reach(g).meets(r.row, r.start, r.end) for r in area.runs)]

    def lowest(self, area):
        return min((p for r in area.runs for p in r.places), key=lambda p: p.judged)

    def area_answer(self, name, area):
        breadth, lowest = self.breadth(area), self.lowest(area)
        along = area.end - area.start
        return {"id": name, "zone": area.zone.zone.name, "rows": area.rows, "from": area.start, "to": area.end, "length": along,
                "breadth": breadth, "area_m2": None if breadth is None else float(along * breadth) / 1e6, "least": lowest.judged,
                "at": lowest.name, "kind": area.kind,
                "places": [p.name for r in area.runs for p in r.places], "unseen": self.unread(area),
                "ladder": self.ladder(area), "uncovered": self.uncovered(area), "covered_by": self.covered_by(area),
                "recommended_by": self.covered_by(area, "recommendations"),
                "frames": {"from": self.frame(area.start), "to": self.frame(area.end)}}

    def options(self):
        for name, area in self.areas.items():
            breadth = self.breadth(area)
            if breadth is None or area.start == area.end:
                continue
            # The plate is a rectangle: what comes off is all that was read within it.
            left = [p.judged for p in area.zone.plate if p.row in area.rows and area.start <= p.order[1] <= area.end]
            items = self.survey.given.get("steelwork", {})
            thick = next((length(items[k]["thickness"]) for k in self.covered_by(area) if "thickness" in items[k]), area.zone.zone.original)
            square = float((area.end - area.start) * breadth) / 1e6
            # What comes off is not known where nothing but pits was read.
            removed = {"insert": sum(left) / len(left)} if left else {}
            for kind, gone in {**removed, "overplate": Fraction(0)}.items():
                yield {"area": name, "kind": kind, "thickness": thick, "net_kg": square * float((thick - gone) * self.density),
                       "centre": (area.start + area.end) / 2000}

    def answer(self):
        return {"areas": [self.area_answer(k, a) for k, a in self.areas.items()], "items": self.items, "options": list(self.options())}
