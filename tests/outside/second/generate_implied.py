"""What a survey implies beyond its marks, made for the occasion: surveys of other years, blocks of pits, plate, floating, paint.

Stations of other years lie on a place of this one, on the edge of what counts as the same place, or one nanometre beyond it.
"""
from fractions import Fraction

from .lengths import NANOMETRE, length

NEAR = (0, 0, 0, 25, -50, 75, -75, 120, 149, 150, -150, 150 + NANOMETRE, -150 - NANOMETRE, 260)
DAYS = ("2025-10-14", "2021-10-14", "2021-10-15", "2023-02-28", "2020-02-29", "2016-05-01", "2026-10-13", "2006-12-31")
EARLIER_U = ("0.05", "0.10", "0.15", "0.2", "0.000001")
PLACES = ("{row} {a} to {b}", "{row} {a} to {b}", "{row} {a} to {b}", "{row} {a}", "zone {zone}", "{row}, {other} {a} to {b}", "whole shell")


def exact(value):
    """A fraction whose decimals end, written out."""
    digits = 0
    while (value * 10**digits).denominator > 1:
        digits += 1
    whole = abs(int(value * 10**digits))
    text = str(whole).rjust(digits + 1, "0")
    text = f"{text[:-digits]}.{text[-digits:]}" if digits else text
    return "-" + text if value < 0 else text


class Implied:
    """Mixed into the maker of surveys; `self.read` holds where marks were planned and the least figure read there."""

    def block_lines(self, zone):
        if not self.chance(0.3):
            return ""
        n = self.pick((3, 9, 10, 11, 12, 16, 30))
        depths = [Fraction(self.rng.randint(0 if self.chance(0.02) else 1, 24), 10) for _ in range(n)]
        if self.chance(0.06):
            depths = [depths[0] or Fraction(1, 2)] * n
        least_zone = Fraction(1, 2)   # more blocks than their zone holds are refused
        block = self.pick([b for b in ("0.05", "0.05", "0.02", "0.01") if n * Fraction(b) <= least_zone])
        return (f"    pit-blocks: {{block-m2: {block}, blocks: {n}, deepest: [{', '.join(exact(d) for d in depths)}], "
                f"chosen: by lot{self.maybe(0.7, ', gauge: depth')}}}\n")

    def breadths(self):
        return self.maybe(0.8, f", stands-for: {self.pick(('300', '400', '250.5', '650'))} mm")

    def frames(self):
        if not self.chance(0.7):
            return ""
        return (f"  frame-zero: {self.pick(('0', '0.25', '17.5', '0.6'))} m\n"
                f"  frames-run: {self.pick(('with stations', 'against stations'))}\n")

    def along(self):
        return {r: sorted(at for row, at in self.read if row == r) for r in self.row}

    def place(self, form=None):
        row, other = self.pick(list(self.row)), self.pick(list(self.row))
        form = form or self.pick(PLACES)
        if row == other:
            form = form.replace("{row}, {other}", "{row}")
        known = self.along()[row] or [Fraction(1000)]
        a, b = sorted((self.pick(known), self.pick(known)))
        step = self.pick((0, 100, 500, -200))
        a, b = (a - step, b + step) if a - step <= b + step else (a, b)
        ends = {"a": exact(a / 1000), "b": exact(b / 1000)} if a < b else {"a": exact(a / 1000), "b": exact((a + 1000) / 1000)}
        return form.format(row=row, other=other, zone=self.row[row], **ends)

    def steelwork(self):
        out = ""
        for i in range(1, self.pick((1, 1, 2, 3, 4))):
            action = self.pick(("insert", "insert", "overplate", "overplate", "pad weld", "weld build-up", "clean and recoat"))
            sizes = {"length": ("300 mm", "2.4 m", "8.2 m", "600 mm", "601 mm"), "breadth": ("450 mm", "300 mm", "350 mm", "351 mm", "1.2 m"),
                     "thickness": ("4", "5", "6", "3.5", "1/4 in"), "radius": ("0 mm", "50 mm", "75 mm"), "plug-pitch": ("300 mm", "250 mm"),
                     "lap-width": ("40 mm", "20 mm")}
            given = "".join(f", {k}: {self.pick(v)}" for k, v in sizes.items() if self.chance(0.85))
            out += f"  S{i}: {{action: {action}, at: \"{self.place()}\"{given}}}\n"
        return "steelwork:\n" + out if out else ""

    def afloat(self):
        if not self.chance(0.7):
            return ""
        parts = {"water": self.pick(("fresh", "salt", "brackish")), "waterplane-coefficient": self.pick(("0.9", "0.82", "1")),
                 "freeboard": f"{{value: {self.pick(('0.45', '0.255'))} m, source: measured}}",
                 "downflooding": f"{{value: {self.pick(('300', '251'))} mm, source: measured}}"}
        return "afloat: {" + ", ".join(f"{k}: {v}" for k, v in parts.items() if self.chance(0.85)) + "}\n"

    def coating(self):
        out = ""
        for i in range(1, self.pick((1, 2, 3))):
            parts = {"area-m2": ("16.2", "100", "7"), "dry-film": ("125 um", "250 um", "0.3 mm"), "solids-percent": ("65", "100", "47.5"),
                     "loss-percent": ("30", "0", "12.5")}
            given = "".join(f", {k}: {self.pick(v)}" for k, v in parts.items() if self.chance(0.85))
            out += f"    {i}: {{at: \"{self.place()}\"{given}}}\n"
        out = "  schemes:\n" + out if out else ""
        if self.chance(0.5):
            parts = {"metal": ("magnesium", "zinc", "aluminium"), "on": ("2025-10-14", "2025-10-15", "2020-01-01"), "worn-percent": ("3", "5", "4.9", "60")}
            out += "  fitted: {count: 4" + "".join(f", {k}: {self.pick(v)}" for k, v in parts.items() if self.chance(0.9)) + "}\n"
        if self.chance(0.5):
            parts = {"metal": ("magnesium", "zinc", "aluminium"), "area-m2": ("40", "62.5"), "bare-percent": ("5", "15", "100"),
                     "current-ma-m2": ("30", "12.5"), "years": ("4", "2.5", "25"), "net-kg": ("2.5", "10"), "stands-out": ("60 mm", "20 mm")}
            out += "  anode-plan: {current-from: a test" + "".join(f", {k}: {self.pick(v)}" for k, v in parts.items() if self.chance(0.93)) + "}\n"
        return "coating:\n" + out if out else ""

    def earlier_surveys(self):
        if not self.read or not self.chance(0.6):
            return ""
        days = self.rng.sample(DAYS, self.pick((1, 1, 2, 3)))
        return "earlier-surveys:\n" + "".join(self.earlier(f"V{i}", day) for i, day in enumerate(days, 1))

    def earlier(self, name, day):
        unit, forward = self.pick(("m", "m", "ft", "frames")), self.chance(0.5)
        ends = [at for _, at in self.read]
        with_ours = forward == self.counts_forward
        zero = Fraction(self.pick((0, 250)) + int(min(ends)) - 2000) if with_ours else Fraction(int(max(ends)) + self.pick((2000, 2500)))
        sign, frame = 1 if with_ours else -1, Fraction(self.pick((500, 450, 50)))
        rows = self.rng.sample(list(self.row), self.rng.randint(1, len(self.row)))
        stations, marks = {}, {}
        for row, at in self.rng.sample(sorted(self.read), min(len(self.read), self.rng.randint(1, 8))):
            stations.setdefault(self.station(sign * (at + Fraction(self.pick(NEAR)) - zero), unit, frame), None)
        # Each of them has a figure or a status in every row.
        lines = [[s, *(self.then(r, zero + sign * self.millimetres(s, unit, frame)) for r in rows)] for s in stations]
        file = f"{name.lower()}.csv"
        self.files[file] = "\n".join(",".join(l) for l in [[f"station {unit}", *rows], *lines]) + "\n"
        return (f"  {name}:\n    inspected: {day}\n    source: document, a report\n    gauge: another gauge\n    u: {self.pick(EARLIER_U)}\n"
                f"    depth-u: {self.pick(EARLIER_U)}\n    datum: {{from: somewhere, counts: {'forward' if forward else 'aft'}, zero: {exact(zero / 1000)} m, "
                f"stations-in: {unit}{f', frame-spacing: {exact(frame)} mm' if unit == 'frames' else ''}}}\n"
                f"    readings: {{file: readings/{file}, separator: comma, unit: mm, stations: {len(lines)}, marks: {len(lines) * len(rows)}}}\n"
                + self.earlier_pits(zero, sign, unit, frame))

    def millimetres(self, station, unit, frame):
        return int(station) * frame if unit == "frames" else length(station, unit)

    def station(self, along, unit, frame):
        if unit == "frames":
            return str(max(0, round(along / frame)))
        return exact(along / 1000) if unit == "m" else f"{round(along / Fraction(3048, 10) * 100) / 100:g}"

    def then(self, row, at):
        """What stood there then: by chance, or near what is read now at the nearest mark."""
        if self.chance(0.1):
            return self.pick(("no-echo", "not-cleaned", "weld-or-fitting"))
        near = min((k for k in self.read if k[0] == row), key=lambda k: abs(k[1] - at), default=None)
        now = self.read.get(near)
        if now is None or self.chance(0.3):
            return exact(self.figure(self.zone[self.row[row]], Fraction(1, 100)))
        return exact(max(Fraction(1, 10), now + Fraction(self.rng.randint(-4, 12), 10)))

    def earlier_pits(self, zero, sign, unit, frame):
        out = ""
        for i, (row, at) in enumerate(self.pits_at if self.chance(0.8) else (), 1):
            if self.chance(0.7):
                where = self.station(sign * (at + Fraction(self.pick(NEAR)) - zero), unit, frame)
                out += f"      P{i}: {{at: {row} {where}, adjacent: {self.pick(('4.9', '5.6', '7.3'))}, depth: {self.pick(('0.2', '0.9', '1.6'))}}}\n"
        return "    pits:\n" + out if out else ""

    def answered(self):
        by = self.maybe(0.5, f", next-survey-by: {self.pick(('2027-10-14', '2028-10-14', '2031-01-01', '2027-03-02'))}")
        return f"answer: {{next-survey: later{by}}}\n" if by else ""
