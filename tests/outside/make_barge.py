"""Writes a 38.5 m barge: 24 rows of 50 bays with two readings each (2,400 marks), and 300 pits. The same bytes each time."""
import re
import sys
from pathlib import Path

ROWS = [("PT", i) for i in range(1, 13)] + [("SB", i) for i in range(1, 13)]
BAYS, BAY = 50, 0.77
STATIONS = [f"{b * BAY + off:.3f}" for b in range(BAYS) for off in (0.20, 0.57)]


def zone_of(strake):
    return "B" if strake <= 5 else "C" if strake == 6 else "M" if strake <= 9 else "W"


def reading(row, station):
    """Tenths of a millimetre: the original less a little, scattered without a pattern that repeats, the same each time."""
    scatter = (row * len(STATIONS) + station + 1) * 2654435761 % 2**32 # Knuth's multiplicative hash
    scatter = (scatter ^ scatter >> 15) * 2246822519 % 2**32 >> 16
    return 100 - 3 - scatter % 6 if row % 12 < 5 else 60 - 2 - scatter % 5


def names():
    return [f"{side}{strake}" for side, strake in ROWS]


def grid():
    head = "station m, " + ", ".join(names())
    body = [f"{at}, " + ", ".join(f"{reading(r, s) / 10:.1f}" for r in range(24)) for s, at in enumerate(STATIONS)]
    return "\n".join([head] + body) + "\n"


def pits():
    out = []
    for i in range(300):
        row = i % 24
        adjacent = 9.5 if row % 12 < 5 else 5.6
        station = (i * 13) % len(STATIONS)
        out.append(f"  P{i + 1}: {{at: {names()[row]} {float(STATIONS[station]) + 0.1:.2f}, adjacent: {adjacent}, depth: "
                   f"{0.5 + (i % 6) / 10:.1f}, across: {5 + i % 9}, face: outside, activity: old, per-m2: 1, "
                   f"share-percent: 0.1, gauge: depth}}")
    return "pits:\n" + "\n".join(out) + "\n"


def pits_in(zone):
    return sum(zone_of(ROWS[i % 24][1]) == zone for i in range(300))


ZONES = {"W": ("wind-and-water", "side", 6), "M": ("mid side", "side", 6), "C": ("chines", "bilge", 6),
         "B": ("bottom", "bottom", 10)}


def zones():
    return "zones:\n" + "".join(
        f"  {z}:\n    name: {name}\n    plating: {plating}\n    original: {t}.0\n    basis: builder's invoice\n"
        f"    source: document, builder's invoice of 1962\n    tolerance: EN 10029:1991 A\n    area-m2: 120.0\n"
        f"    preparation: scraped, each mark ground bright\n    general-order: fair, light even wasting\n"
        f"    pitting: {{count: {pits_in(z)}, over-m2: 100, share-percent: 0.1}}\n" for z, (name, plating, t) in ZONES.items())


def rows():
    side = {"PT": "port", "SB": "starboard"}
    return "rows:\n" + "".join(f"  {s}{n}: {{zone: {zone_of(n)}, side: {side[s]}, name: strake {n}, height: {n * 0.2:.1f} m}}\n"
                               for s, n in ROWS)


def decisions():
    mark = {"W": "PT10", "M": "PT7", "C": "PT6", "B": "PT1"}
    return "decisions:\n" + "".join(
        f"  {z}:\n    action: clean and recoat\n    claim: The {name} plating is sound and is to be cleaned and recoated.\n"
        f"    criterion: absolute-4.0\n    facts:\n      - measured: Every mark keeps more than 4.0 mm, {mark[z]} {STATIONS[10 % len(STATIONS)]} among them.\n"
        f"    why: Wasting is light and the pits leave more than the limit that governs.\n"
        f"    evidence: [{mark[z]} {STATIONS[10 % len(STATIONS)]}]\n    instead-of:\n      monitor: The boat is out and coating is cheap now.\n"
        f"    others-may-say: A surveyor might leave the coating until the next docking.\n"
        f"    would-change: A mark below 4.2 mm at the next survey.\n    confidence: high\n    activity: old\n    cause: age\n"
        for z, (name, _, _) in ZONES.items())


def make(folder):
    """Takes the prose of the thick-bottom example and gives it the barge's hull."""
    root = Path(__file__).resolve().parents[2]
    text = (root / "example-surveys/thick-bottom/survey.yaml").read_text()
    blocks = dict((m.group(1), m.group(0)) for m in re.finditer(r"(?ms)^([a-z-]+):.*?(?=^[a-z-]+:|\Z)", text))
    blocks["vessel"] = re.sub(r"length: \{value: [0-9.]+ m", "length: {value: 38.5 m", blocks["vessel"])
    blocks["vessel"] = re.sub(r"beam: \{value: [0-9.]+ m", "beam: {value: 5.05 m", blocks["vessel"])
    blocks["vessel"] = re.sub(r"draught: \{value: [0-9.]+ m", "draught: {value: 1.8 m", blocks["vessel"])
    blocks["vessel"] = blocks["vessel"].replace("name: Marsh Lantern", "name: Long Measure").replace("12 mm\n", "10 mm\n").replace("12 mm bottom", "10 mm bottom")
    blocks["zones"], blocks["rows"], blocks["pits"], blocks["decisions"] = zones(), rows(), pits(), decisions()
    blocks["readings"] = blocks["readings"].replace("stations: 17", "stations: 100").replace("marks: 153", "marks: 2400")
    blocks["notes"] = "notes:\n  N1: {kind: hammer, at: whole shell, text: Rings clear wherever it was struck.}\n"
    blocks["none-found"] = "none-found:\n  - {what: cracks at welds, at: whole shell, how: by eye with a lamp}\n"
    blocks["recommendations"] = (
        "recommendations:\n  1:\n    title: Clean and recoat the shell\n    action: clean and recoat\n    at: zone W\n"
        "    class: C\n    deadline: next docking\n    reason: The coating is thin.\n    alternative: Touch up where thin.\n"
        "    feasible: \"Yes, in the dry dock.\"\n    binds: the buyer\n    proof: dry film readings at twenty points\n"
        f"    status: open\n    evidence: [N1, PT10 {STATIONS[10 % len(STATIONS)]}]\n")
    blocks["limitations"] = (
        "limitations:\n  1:\n    at: whole shell\n    area: the shell between the marks\n    why: plate was read only at the marks\n"
        "    prevents: an opinion on steel that was not read\n    cure: read more marks\n")
    blocks["coating"] = ("coating:\n  found: Two-pack coating, thin in places.\n  anodes: Eight, about half gone.\n"
                         "  recommended: Coat the shell; renew the anodes.\n")
    for gone in ("photos", "steelwork"):
        blocks.pop(gone, None)
    blocks["answer"] = re.sub(r"(?s)reason: \|.*?(?=  next-survey:)", "reason: Every mark keeps more than the underwriter asks. The shell wants coating and no more.\n", blocks["answer"])
    folder.mkdir(parents=True)
    (folder / "readings").mkdir()
    (folder / "readings/hull.csv").write_text(grid())
    (folder / "survey.yaml").write_text("strakebook: 1\nhouse: river-desk\n\n" + "\n".join(
        b for k, b in blocks.items() if k not in ("strakebook", "house")))
    return folder / "survey.yaml"


if __name__ == "__main__":
    print(make(Path(sys.argv[1])))
