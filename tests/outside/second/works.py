"""Plate that does not meet its limit, gathered into areas, and the steel that the schedule asks for.

Mild steel weighs 7.85 kg a square metre and millimetre (density 7850 kg/m3); the rest is plane geometry and common practice.
"""
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, pi

from .lengths import length
from .read_survey import read_reach


@dataclass(frozen=True)
class Run:
    """Neighbouring planned marks of one row that do not meet their limit."""
    row: str
    kind: str
    start: Fraction
    end: Fraction
    marks: tuple


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


def runs_of(row, marks, standing):
    """marks: planned, along the hull. Each end lies half-way to the next planned mark, or at the row's last one."""
    out, at = [], 0
    while at < len(marks):
        kind, last = standing.get(marks[at].name), at
        if kind in ("falls-short", "too-close"):
            while last + 1 < len(marks) and standing.get(marks[last + 1].name) == kind:
                last += 1
            start = (marks[at - 1].at + marks[at].at) / 2 if at else marks[at].at
            end = (marks[last].at + marks[last + 1].at) / 2 if last + 1 < len(marks) else marks[last].at
            out.append(Run(row, kind, start, end, tuple(marks[at:last + 1])))
        at = last + 1
    return out


def gathered(zone, survey):
    """Runs of adjoining rows of a zone that lie beside each other are one area."""
    standing = {p.name: zone.standing(p)["verdict"] for p in zone.plate if zone.standing(p)}
    groups = []
    order = {r: i for i, r in enumerate(survey.rows)}
    for row in zone.zone.rows:
        for run in runs_of(row, [m for m in zone.marks if m.row == row], standing):
            beside = [g for g in groups if any(abs(order[r.row] - order[row]) == 1 and r.kind == run.kind and r.start < run.end
                                               and run.start < r.end for r in g)]
            groups = [g for g in groups if g not in beside] + [[r for g in beside for r in g] + [run]]
    return [Area(zone, g[0].kind, tuple(sorted(g, key=lambda r: (order[r.row], r.start)))) for g in groups]


class Works:
    def __init__(self, survey, policy, zones):
        self.survey, self.policy, self.zones = survey, policy, zones
        self.rule, self.density = policy.given["works"], Fraction(policy.given["steel-density"])
        self.zone_of_row = {r: z.zone.name for z in zones for r in z.zone.rows}
        self.unit = survey.given["datum"]["station-unit"]
        self.items = [self.item(k, g) for k, g in survey.given.get("steelwork", {}).items()]
        # Named in the order of the zones, then of the rows and along the hull.
        found = [a for z in zones for a in sorted(gathered(z, survey), key=lambda a: (survey.rows.index(a.rows[0]), a.start))]
        self.areas = {f"A{i}": a for i, a in enumerate(found, 1)}

    def reach(self, given):
        return read_reach(given["at"], self.zone_of_row, self.unit)

    def within(self, reach):
        return [p for z in self.zones for p in z.plate if reach.covers(p.row, p.order[1])]

    def item(self, name, given):
        reach, action = self.reach(given), self.policy.given["actions"][given["action"]]
        sizes = [length(given[k]) for k in ("length", "breadth", "thickness") if k in given]
        out = {"id": name, "plate_m2": None, "weight_kg": None, "removed_kg": None, "net_kg": None, "weld_m": None, "plugs": None,
               "centre": sum(reach.ends) / 2000 if reach.ends else None}
        if len(sizes) < 3:
            return out
        along, across, thick = sizes
        radius = float(length(given["radius"])) if "radius" in given else 0.0
        square = (float(along) * float(across) - (4 - pi) * radius**2) / 1e6
        weight = square * float(thick * self.density)
        replaces = action["adds-steel"] == "yes" and action["doubler"] == "no"
        left = [p.judged for p in self.within(reach)]
        removed = square * float(sum(left) / len(left) * self.density) if replaces and left else None
        return {**out, "plate_m2": square, "weight_kg": weight, "removed_kg": removed, "net_kg": weight - (removed or 0),
                "weld_m": (2 * float(along + across) - (8 - 2 * pi) * radius) / 1000,
                "plugs": self.plugs(given, along, across) if action["doubler"] == "yes" else None}

    def plugs(self, given, along, across):
        if min(along, across) <= length(self.rule["plugs-over"]):
            return None
        pitch = length(given.get("plug-pitch", self.rule["plug-pitch"]))
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

    def covered_by(self, area):
        return [k for k, g in self.survey.given.get("steelwork", {}).items()
                if any(self.reach(g).meets(r.row, r.start, r.end) for r in area.runs)]

    def lowest(self, area):
        names = {m.name for r in area.runs for m in r.marks}
        return min((p for p in area.zone.plate if p.name in names), key=lambda p: (p.judged, -p.doubt.square, p.order))

    def area_answer(self, name, area):
        breadth, lowest = self.breadth(area), self.lowest(area)
        along = area.end - area.start
        return {"id": name, "zone": area.zone.zone.name, "rows": area.rows, "from": area.start, "to": area.end, "length": along,
                "breadth": breadth, "area_m2": None if breadth is None else float(along * breadth) / 1e6, "least": lowest.judged,
                "at": lowest.name, "kind": area.kind, "covered_by": self.covered_by(area),
                "frames": {"from": self.frame(area.start), "to": self.frame(area.end)}}

    def options(self):
        for name, area in self.areas.items():
            breadth = self.breadth(area)
            if breadth is None:
                continue
            names = {m.name for r in area.runs for m in r.marks}
            left = [p.judged for p in area.zone.plate if p.name in names]
            items = self.survey.given.get("steelwork", {})
            thick = next((length(items[k]["thickness"]) for k in self.covered_by(area) if "thickness" in items[k]), area.zone.zone.original)
            square = float((area.end - area.start) * breadth) / 1e6
            for kind, gone in (("insert", sum(left) / len(left)), ("overplate", Fraction(0))):
                yield {"area": name, "kind": kind, "thickness": thick, "net_kg": square * float((thick - gone) * self.density),
                       "centre": (area.start + area.end) / 2000}

    def answer(self):
        return {"areas": [self.area_answer(k, a) for k, a in self.areas.items()], "items": self.items, "options": list(self.options())}
