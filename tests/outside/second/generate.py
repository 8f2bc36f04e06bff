"""Small surveys of every kind, written as folders: the same for the same seed.

Readings lie by chance, or on and one nanometre to either side of what decides about them: limits, the edges of the doubt,
the ladder's bounds, the ends of tolerances. They are drafts, so that nothing but reading and computing is asked for.
"""
import random
from fractions import Fraction
from types import SimpleNamespace

from .criteria import rule_minimum
from .generate_implied import Implied
from .lengths import NANOMETRE, length, root_up, up
from .doubt import doubt_of
from .original import spans
from .read_layout import load_text
from .read_survey import STATUS

LENGTHS = ("18.0", "24.999", "25", "25.001", "38.5", "39.999", "40", "40.001", "60")
PLATES = ("3.0", "4.0", "5.0", "5.1", "6.0", "6.35", "8.0", "10.0", "12.0", "1/4 in", "50.0")
DOUBTS = ("0.05", "0.10", "0.15", "0.07", "0.000001", "0.3")
SHARES_PITTED = ("0.1", "4.999", "5", "5.001", "14.999", "15", "20")
SHARES = ("20", "25", "12.5", "33.33333", "7.77", "30.001")
BUDGET = ("resolution: {half-width: 0.05}", "block: {u: 0.02, degrees: 50}", "velocity: {share: 1}", "repeatability: {u: 0.07, degrees: 3}",
          "surface: {half-width: 0.08, degrees: 8}")
SHOWN = ("5.0", "5.05", "5.1", "5.100001", "5.2", "5.33", "4.9", "4.8", None)     # on a block of 5.0
SURFACES = ("bare", "bare", "coated echo-to-echo", "coated single-echo", "coated single-echo, coating-thickness: 120 um")


def decimal(value):
    """A whole number of nanometres, written in mm."""
    whole, part = divmod(int(value / NANOMETRE), 10**6)
    return f"{whole}.{part:06d}".rstrip("0").rstrip(".") or "0"


class Maker(Implied):
    """One survey; every choice comes from its seed."""

    def __init__(self, seed, policy, house):
        self.rng, self.policy, self.house = random.Random(seed), policy, house
        self.pick, self.files = self.rng.choice, {}
        self.read, self.pits_at = {}, []    # (row, mm along) -> least figure in mm, or nothing

    def chance(self, p):
        return self.rng.random() < p

    def maybe(self, p, text):
        return text if self.chance(p) else ""

    def vessel(self):
        self.hull = SimpleNamespace(length=length(self.pick(LENGTHS) + " m"), wing_voids=self.chance(0.3),
                                    draught=length(self.pick(("0.7", "1.2", "1.44", "1.8", "2.7")) + " m"),
                                    spacing=length(self.pick(("400", "500", "500.001", "600", "1200"))))
        return ("vessel:\n  name: Test Tank\n  source: measured\n  beam: 5.0 m\n"
                f"  length: {decimal(self.hull.length)} mm\n  draught: {decimal(self.hull.draught)} mm\n"
                f"  frame-spacing: {decimal(self.hull.spacing)} mm\n"
                + ("  wing-voids: yes\n" if self.hull.wing_voids else self.maybe(0.5, "  wing-voids: no\n"))
                + self.maybe(0.5, f"  carries: {self.pick(('passengers', 'cargo'))}\n") + self.maybe(0.5, "  light-scantlings: yes\n")
                + self.maybe(0.3, "  waterline-length: {value: 17.3 m, source: 'told, owner'}\n")
                + self.maybe(0.6, f"  built: {self.pick((1984, 2019))}\n"))

    def gauges(self):
        self.gauge = [f"g{i}" for i in range(self.rng.randint(1, 3))]
        self.u, out = {}, "gauges:\n"
        for name in [*self.gauge, "depth"]:
            if self.chance(0.7):
                doubt = f"u: {self.pick(DOUBTS)}"
            else:
                doubt = f"doubt: {{{', '.join(self.rng.sample(BUDGET, self.rng.randint(1, 4)))}}}"
            # A share is of the thickest figure, which is not known yet.
            self.u[name] = doubt_of(load_text(f"{{{doubt}}}"), Fraction(10), self.policy).u
            shown = [self.pick(SHOWN) for _ in range(2)] if self.chance(0.3) else ["5.0", "5.0"]
            checks = "".join(f", {when}: {s}" for when, s in zip(("before", "after"), shown) if s)
            wrong = self.maybe(0.06, ", velocity: 5920 m/s, true-velocity: 5850, true-velocity-basis: a block of the plate")
            out += f"  {name}: {{{doubt}, block: 5.0{checks}{wrong}{self.maybe(0.6, ', crystal: 13 mm')}}}\n"
        return out

    def criteria(self):
        used = self.rng.sample(list(self.policy.criteria), self.rng.randint(0, len(self.policy.criteria)))
        out = "criteria:\n" + "".join(f"  {c}: {{asked-by: the surveyor, why: a test}}\n" for c in used) if used else ""
        own = ""
        for i in range(self.rng.randint(0, 3)):
            parts = self.maybe(0.4, ", plating: " + self.pick(("[side]", "[bottom, bilge]", "side", "[bilge]")))
            kind = self.pick((f"absolute, limit: {self.pick(('3.3', '3/16 in', '5.500001', '3.0'))}",
                              f"percent, most-loss-percent: {self.pick(SHARES)}"))
            own += f"  own-{i}: {{name: own {i}, kind: {kind}, authority: nobody, edition: none, scope: a test{parts}}}\n"
            used.append(f"own-{i}")
        self.used = used
        return out + ("own-criteria:\n" + own if own else "")

    def zones(self):
        self.zone, out = {}, "zones:\n"
        for i in range(self.rng.randint(1, 4)):
            z = SimpleNamespace(original=self.pick(PLATES), plating=self.pick(("bottom", "side", "bilge")),
                                tolerances=self.rng.sample(list(self.policy.tolerances), self.pick((0, 1, 1, 2))), sound=self.chance(0.25))
            self.zone[f"Z{i}"] = z
            out += (f"  Z{i}:\n    name: zone {i}\n    plating: {z.plating}\n    original: {z.original}\n"
                    f"    basis: {self.pick(list(self.policy.weak))}\n    source: {self.pick(('measured', 'told, owner'))}\n"
                    + (f"    tolerance: [{', '.join(z.tolerances)}]\n" if z.tolerances else "") + self.maybe(0.4, "    assumption: Sheltered, so unwasted.\n")
                    + self.maybe(0.9, f"    area-m2: {self.pick(('0.5', '3', '9.25', '40'))}\n") + self.maybe(0.5, self.pitting()) + self.block_lines(z))
        return out

    def pitting(self):
        count, over = self.pick((("3", "1"), ("4", "1"), ("31", "10"), ("30", "10"), ("1", "7")))
        return (f"    pitting: {{count: {count}, over-m2: {over}, share-percent: {self.pick(SHARES_PITTED)}"
                + self.maybe(0.3, f", spacing: {self.pick(('99.999999', '100', '400'))} mm") + "}\n")

    def rows(self):
        names = [side + strake for strake in ("W", "M", "C7") for side in "PS"] + ["BC"]
        self.row = {n: self.pick(list(self.zone)) for n in self.rng.sample(names, self.rng.randint(1, 5))}
        side = {"P": "port", "S": "starboard", "B": "centre"}
        return "rows:\n" + "".join(f"  {n}: {{zone: {z}, side: {side[n[0]]}, name: line {n}{self.breadths()}}}\n" for n, z in self.row.items())

    def deciding(self, zone):
        """Lengths at which something about this zone is decided."""
        t0 = length(zone.original)
        out = [length(x) for x in ("2.5", "3.0", "3.3", "3.5", "4.0", "3/16 in", "5.500001")] + [t0 * 4 / 5]
        out += [t0 * (1 - Fraction(p) / 100) for p in (*SHARES, "15", "30")]
        out.append(rule_minimum(self.policy.criteria["inland-rule"]["rule"], self.hull, zone.plating)["limit"])
        named = zone.tolerances or self.policy.usual_tolerances
        return out + [end for n in (*self.policy.usual, t0) for _, span in spans(n, named, self.policy) for end in span]

    def figure(self, zone, variance):
        """What is left at a place read with this variance: a whole number of nanometres, in mm."""
        if zone.sound or self.chance(0.5):
            return Fraction(max(1, int(length(zone.original) * self.rng.randint(82 if zone.sound else 60, 102) / 10)), 10)
        at = up(self.pick(self.deciding(zone)))
        edge = self.pick((0, 0, 1, -1)) * root_up(self.policy.factor**2 * variance)
        return max(Fraction(1, 10), at + edge + self.pick((-1, 0, 0, 1)) * NANOMETRE)

    def cell(self, row, gauge, unit):
        self.least = None
        if self.chance(0.12):
            return self.pick(STATUS)
        times = range(self.pick((1, 1, 2, 3)))
        if unit == "mm":
            figures = [self.figure(self.zone[self.row[row]], self.u[gauge]**2) for _ in times]
            text, self.least = [decimal(f) for f in figures], min(figures)
        else:  # hundred-thousandths of an inch are whole nanometres
            text = [f"0.{f:05d}" if unit == "in" else f"{f / 100:.2f}" for f in (self.rng.randint(10000, 48000) for _ in times)]
        return " ".join(text) + self.maybe(0.06, " rejected")

    def stations(self, number):
        first, step = self.pick((50, 100, -100)), self.pick((100, 50, 77))
        places = [6000 * number + first + i * step for i in range(self.rng.randint(19, 41) if self.chance(0.06) else self.rng.randint(1, 7))]
        self.rng.shuffle(places)
        return [f"{p / 100:.2f}" if self.chance(0.3) else f"{p / 100:g}" for p in places]

    def reading_set(self, number, rows):
        gauge, unit = self.pick(list(self.gauge)), self.pick(("mm", "mm", "mm", "mm", "in", "thou"))
        stations = self.stations(number)
        table = {}
        for s in stations:
            table[s] = {}
            for r in rows:
                table[s][r] = self.cell(r, gauge, unit)
                self.read[r, length(s, "m")] = self.least
        form = self.pick((self.inline, self.grid, self.long))(number, rows, table, unit)
        gone = {f"{r} {s}": "wet" for s, line in table.items() for r, c in line.items() if c.endswith("rejected")}
        rejected = ", rejected: {" + ", ".join(f"{k}: {v}" for k, v in gone.items()) + "}" if gone else ""
        how = f"surface: {self.pick(SURFACES)}, reduce: {self.pick(('least of repeats', 'least of repeats', 'mean of repeats'))}"
        return f"  - {{{form}, unit: {unit}, marks: {len(stations) * len(rows)}, gauge: {gauge}, {how}{rejected}}}\n"

    def inline(self, number, rows, table, unit):
        return "inline: {" + ", ".join(f"{r}: {{" + ", ".join(f"{s}: {line[r]}" for s, line in table.items()) + "}" for r in rows) + "}"

    def grid(self, number, rows, table, unit):
        name, mark = self.pick((("comma", ","), ("semicolon", ";"), ("tab", "\t")))
        lines = [mark.join(["station m", *rows])] + [mark.join([s, *(line[r] for r in rows)]) for s, line in table.items()]
        self.files[f"set{number}.csv"] = "# A comment.\n" + "\n".join(lines) + "\n"
        return f"file: readings/set{number}.csv, form: grid, separator: {name}, stations: {len(table)}"

    def long(self, number, rows, table, unit):
        name, mark = self.pick((("comma", ","), ("semicolon", ";")))
        by_mark = self.chance(0.5)
        head = (["mark"] if by_mark else ["row", "station m"]) + [f"reading {unit}", "plate"]
        places = [([f"{r} {s}"] if by_mark else [r, s], c) for s, line in table.items() for r, c in line.items()]
        body = [[*place, c, "doubler" if self.chance(0.05) else "hull"] for place, c in places]
        self.rng.shuffle(body)
        self.files[f"set{number}.csv"] = "\n".join(mark.join(line) for line in [head, *body]) + "\n"
        return f"file: readings/set{number}.csv, form: long, separator: {name}, lines: {len(body)}"

    def readings(self):
        out = ""
        for number in range(self.rng.randint(1, 3)):
            out += self.reading_set(number, self.rng.sample(list(self.row), self.rng.randint(1, len(self.row))))
        return "readings:\n" + out

    def pits(self):
        out = ""
        for i in range(1, self.pick((1, 1, 2, 3, 5))):
            row = self.pick(list(self.row))
            depth = self.pick((Fraction(1, 2), Fraction(6, 5), 2 + NANOMETRE, Fraction(1, 10)))
            left = self.figure(self.zone[self.row[row]], self.u[self.pick(list(self.gauge))]**2 + self.u["depth"]**2)
            more = self.maybe(0.7, ", gauge: depth") + self.maybe(0.5, self.pick((", face: outside", ", face: inside")))
            more += self.maybe(0.2, ", per-m2: 4, share-percent: 6")
            place = f"{row} {self.rng.randint(0, 500) / 100 if self.chance(0.7) else self.pick((1, 1.05, 1.1)):g}"
            self.pits_at.append((row, length(place.split()[1], "m")))
            out += f"  P{i}: {{at: {place}, adjacent: {decimal(left + depth)}, depth: {decimal(depth)}{more}}}\n"
        return "pits:\n" + out if out else ""

    def doublers(self):
        out = ""
        for i, row in enumerate(self.rng.sample(list(self.row), min(len(self.row), self.pick((0, 0, 0, 1, 2)))), 1):
            start = self.rng.randint(0, 4)
            out += f"  D{i}: {{over: {self.pick((f'{row} {start} to {start + 2}', f'{row} {start}', row))}}}\n"
        return "doublers:\n" + out if out else ""

    def decisions(self):
        out = ""
        for name in self.zone:
            if self.chance(0.6):
                action = self.pick(("continue", "monitor", "clean and recoat", "insert", "overplate", "no opinion", "do not refloat"))
                criterion = f", criterion: {self.pick(self.used)}" if self.used and self.chance(0.8) else ""
                out += f"  {name}: {{action: {action}{criterion}}}\n"
        return "decisions:\n" + out if out else ""

    def text(self):
        head = f"strakebook: 1\nhouse: {self.house}\nreport: {{number: SECOND, issue: 1, state: draft, inspected: 2026-10-14}}\n"
        self.counts_forward = self.chance(0.3)
        head += f"datum:\n  from: an end\n  towards: {'forward' if self.counts_forward else 'aft'}\n  station-unit: m\n{self.frames()}"
        parts = (self.vessel, self.gauges, self.criteria, self.zones, self.rows, self.readings, self.pits, self.doublers, self.decisions,
                 self.steelwork, self.coating, self.afloat, self.earlier_surveys, self.answered)
        return head + "".join(part() for part in parts)


def write(folder, seed, policies):
    """policies: house -> policy. The survey file's path."""
    house = sorted(policies)[seed % len(policies)]
    maker = Maker(seed, policies[house], house)
    text = maker.text()
    (folder / "readings").mkdir(parents=True)
    for name, content in maker.files.items():
        (folder / "readings" / name).write_text(content)
    (folder / "survey.yaml").write_text(text)
    return folder / "survey.yaml"
