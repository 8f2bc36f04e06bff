"""A gauge that read high on its block and was not checked before: raw figures kept, both estimates shown, the low side judged.

Everything is reckoned here anew from the survey file, in exact fractions. 5.20 shown on 5.00 makes of 4.1 the velocity-type
estimate 4.1 x 5.00 / 5.20 = 3.9423 and the zero-type estimate 4.1 - 0.20 = 3.90 (computed).
"""
import json
import math
import re
from fractions import Fraction
from pathlib import Path

from judge import copy_of, expect, finish, folder, load, need, plain, program, run, typeset
from readback import NUMBER, input_marks

RETAKE = Fraction("0.3")  # common practice, no source


def low_side(figure, gauge):
    block, shown = Fraction(gauge["block"]), Fraction(gauge["after"])
    return min(figure, figure * block / shown, figure - (shown - block))


def judge_budget(gauge, said):
    """JCGM 100:2008: 4.3.7 for half-widths, 5.1.2 for the sum, G.4.1 for the degrees of freedom."""
    thickest = Fraction(said["thickest"])
    square = {"u": lambda v: Fraction(v) ** 2, "half-width": lambda v: Fraction(v) ** 2 / 3,
              "share": lambda v: (Fraction(v) * thickest / 100) ** 2}
    parts = [(next(square[k](c[k]) for k in square if k in c), c.get("degrees")) for c in gauge["doubt"].values()]
    total = sum(u2 for u2, _ in parts)
    u = Fraction(math.isqrt(math.ceil(total * 10 ** 12) - 1) + 1, 10 ** 6)
    expect(Fraction(said["u"]) == u, f"u is {float(u)}, not {said['u']}")
    degrees = total ** 2 / sum(u2 ** 2 / Fraction(nu) for u2, nu in parts if nu)
    expect(said["degrees"] == math.floor(degrees), f"degrees of freedom are {float(degrees)}, not {said['degrees']}")
    band = Fraction(said["band"])
    expect(0 <= band - Fraction(said["factor"]) * u < Fraction(1, 10 ** 6), "w is the factor times u, rounded up")


def judge_marks(survey, gauge, assessed):
    least = {f"{row} {at.normalize():f}": min(map(Fraction, cell.split())) for (row, at), cell in input_marks(survey).items()
             if NUMBER.match(cell.split()[0])}
    limits = [Fraction(c["limit"]) for c in assessed["criteria"]]
    near = []
    for mark in assessed["marks"]:
        if not mark["used"]:
            continue
        raw, low = least[mark["mark"]], low_side(least[mark["mark"]], gauge)
        expect(Fraction(mark["remaining"]) == raw, f"{mark['mark']}: {mark['remaining']} is as displayed")
        expect(0 <= low - Fraction(mark["low_side"]) < Fraction(1, 10 ** 6), f"{mark['mark']}: low side {mark['low_side']}, not {float(low)}")
        expect(mark["indicative"], f"{mark['mark']} is indicative")
        if any(low - RETAKE <= limit <= raw + RETAKE for limit in limits):
            near.append(mark["mark"])
    expect([r["place"] for r in assessed["retakes"]] == near, f"to be retaken: {near}")
    return near


def judge_worst(assessed):
    gauge = assessed["gauges"][0]
    expect((gauge["lapsed"], gauge["before"]["state"], gauge["after"]["off"]) == (True, "missing", "0.2"), "lapsed, no check before, 0.2 high after")
    expect(gauge["worst_shown"] == "4.1", "the worst mark is displayed as 4.1")
    made = gauge["corrections"][0]
    expect((made["velocity_type"][:6], made["zero_type"]) == ("3.9423", "3.9"), f"3.9423 and 3.9, not {made}")
    expect((assessed["worst"], assessed["worst_remaining"]) == (gauge["worst"], "3.9"), "the worst place is judged by 3.9")
    subject = next(s for z in assessed["zones"] for s in z["subjects"] if s["id"] == gauge["worst"])
    result = next(r for r in subject["results"] if r["criterion"] == "absolute-4.0")
    expect((subject["remaining"], result["margin"], result["bare"]) == ("4.1", "-0.1", "over"), f"4.1 displayed, past 4.0 by 0.1: {result}")


def judge_page(page_one, text, near):
    expect("3.90 mm" in page_one and "Low side of 4.1 displayed; indicative" in page_one, "page one gives the low side, and what was displayed")
    for said in ("are indicative", "velocity-type", "zero-type", "3.94", "after: 5.20 on 5.00", "2026, before the inspection",
                 "judged on the low side, by 3.90", "Readings here are indicative"):
        expect(said in text, f"the report says: {said}")
    listed = re.search(r"To be retaken, indicative and within 0\.3.mm of a limit \((\d+)\): ([^.]*)\.", text)
    expect(listed and int(listed.group(1)) == len(near), f"{len(near)} marks are said to be retaken")
    if listed:
        expect([" ".join(m.split()) for m in listed.group(2).split(",")] == near, f"they are {near}: {listed.group(2)}")


def judge_without_limitation(binary, survey, work):
    other = copy_of(survey, work / "silent")
    other.write_text(re.sub(r"(?m)^    why: the gauge's certificate.*$", "    why: it rained", other.read_text()))
    done = run(binary, "check", other)
    expect(done.returncode == 1 and "SB0507" in done.stdout + done.stderr, "without the limitation a final is refused")


def main():
    need("pdftotext")
    binary, root = program()
    survey = root / "example-surveys/lapsed-gauge/survey.yaml"
    gauge = load(survey)["gauges"]["ut"]
    with folder() as work:
        work = Path(work)
        done = run(binary, "assess", survey, "--format", "json")
        expect(done.returncode == 0, f"assess leaves with 0: {done.stderr[:300]}")
        assessed = json.loads(done.stdout)
        judge_budget(gauge, assessed["gauges"][0])
        judge_worst(assessed)
        near = judge_marks(survey, gauge, assessed)
        if typeset(binary, survey, work / "report.pdf"):
            # Page one is set in columns: it is read column by column, not line by line.
            page_one = " ".join(run("pdftotext", "-f", "1", "-l", "1", work / "report.pdf", "-").stdout.split())
            judge_page(page_one, plain(work / "report.pdf"), near)
        judge_without_limitation(binary, survey, work)
    finish("lapsed_gauge")


main()
