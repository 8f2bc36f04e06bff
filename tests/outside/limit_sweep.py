"""Every original from 3.0 to 60.0 mm by 0.1 under every allowed loss from 5 to 40 % by 0.5, read at its limit and one nanometre to
either side: 571 x 71 x 3 cases, each against whole numbers of nanometres.

Limits are strict: a loss of exactly the share allowed is at the limit, not over it. The share is a criterion of the survey's own;
a zone has one original, and a survey a few dozen zones.
"""
import os
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

from judge import expect, finish, folder, program
from second.compare import program_says
from second.generate import decimal
from second.lengths import NANOMETRE

ORIGINALS = range(30, 601)      # tenths of a millimetre
TOGETHER = 64                   # zones in one survey
LOSSES = range(10, 81)          # halves of a percent
SIDES = ((1, -1, "over"), (2, 0, "at-limit"), (3, 1, "inside"))    # station, nanometres from the limit, what it is

HEAD = """strakebook: 1
house: base
report: {number: SWEEP, issue: 1, state: draft}
vessel: {name: Test Tank, source: measured, length: 18.0 m, beam: 2.0 m}
datum: {from: fore face of stem, towards: aft, station-unit: m}
gauges: {ut: {u: 0.000001, block: 5.0, before: 5.0, after: 5.0}}
"""


def limit(original, loss):
    """Nanometres that must remain: 0.1 mm x 0.5 % is 500 of them, so nothing is rounded."""
    return original * (200 - loss) * 500


def write(path, originals, loss):
    rows = [f"R{t}" for t in originals]
    lines = [",".join([str(at)] + [decimal((limit(t, loss) + off) * NANOMETRE) for t in originals]) for at, off, _ in SIDES]
    (path / "readings").mkdir(parents=True)
    (path / "readings/hull.csv").write_text("\n".join([",".join(["station m", *rows]), *lines]) + "\n")
    (path / "survey.yaml").write_text(
        HEAD + f"own-criteria:\n  share: {{name: share, kind: percent, most-loss-percent: {loss / 2}, authority: nobody, edition: none, scope: a test}}\n"
        + "zones:\n" + "".join(f"  Z{t}: {{name: zone {t}, plating: side, original: {t // 10}.{t % 10}, basis: drawing, source: measured}}\n" for t in originals)
        + "rows:\n" + "".join(f"  R{t}: {{zone: Z{t}, side: port, name: line {t}}}\n" for t in originals)
        + f"readings:\n  - {{file: readings/hull.csv, form: grid, separator: comma, unit: mm, stations: 3, marks: {3 * len(originals)}, "
        + "surface: bare, gauge: ut, reduce: least of repeats}\n")
    return path / "survey.yaml"


def wrong(said, originals, loss):
    """Cases that differ."""
    standing = {m["mark"]: m["standing"] for m in said["marks"]}
    for t in originals:
        for at, off, bare in SIDES:
            got = standing[f"R{t} {at}"]
            seen = (got["bare"], got["verdict"], in_nanometres(got["limit"]), in_nanometres(got["margin"]))
            # The doubt is 1.645 nm: a nanometre to either side is within it.
            if seen != (bare, "too-close", limit(t, loss), off):
                yield f"{t / 10} mm under {loss / 2} %, {off} nm off: {seen}, not {bare}"


def in_nanometres(text):
    whole, part = text.split(".")
    return int(whole + part.ljust(6, "0"))


def one(job):
    binary, layouts, work, originals, loss = job
    said = program_says(binary, layouts, write(Path(work) / f"{originals[0]}-{loss}", originals, loss))
    if isinstance(said, str):
        return 0, [f"{loss / 2} %: refused: {said[:300]}"]
    return len(said["marks"]), list(wrong(said, originals, loss))


def main():
    binary, root = program()
    cases = differ = 0
    with folder() as work, ProcessPoolExecutor(min(2, os.cpu_count())) as pool:
        jobs = [(binary, root / "layouts", work, ORIGINALS[i:i + TOGETHER], loss) for loss in LOSSES for i in range(0, len(ORIGINALS), TOGETHER)]
        for seen, found in pool.map(one, jobs):
            cases, differ = cases + seen, differ + len(found)
            for case in found[:5] if differ < 20 else ():
                expect(False, case)
    expect(differ == 0, f"{differ} cases differ")
    expect(cases == len(ORIGINALS) * len(LOSSES) * len(SIDES), f"all cases were looked at, not {cases}")
    print(f"{cases} cases in {len(jobs)} surveys")
    finish("limit_sweep")


if __name__ == "__main__":
    main()
