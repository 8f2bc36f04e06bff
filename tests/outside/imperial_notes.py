"""Notes in inches, thou, feet and one figure in millimetres: every figure kept as noted, exact in mm, and nothing guessed.

An inch is 25.4 mm exactly (NIST SP 811, Appendix B), a thou a thousandth of it, a foot 12 of it; all figures are worked here from that.
The rule floor of a bilge is 1.25 x (1.5 + 0.06 x 18) = 3.225 mm (Directive 2006/87/EC Annex II Art. 3.02).
"""
import json
from fractions import Fraction
from pathlib import Path

from judge import copy_of, expect, finish, folder, need, plain, program, run, typeset

INCH = Fraction("25.4")
ADJACENT, DEPTH, QUERIED = Fraction("0.187") * INCH, 60 * INCH / 1000, Fraction(5, 16) * INCH
FLOOR = Fraction("1.25") * (Fraction("1.5") + Fraction("0.06") * 18)
SAID = ("3.226", "3.225", "3.2258 mm", ".187 in", "4.7498", "5/16? in", "7.9375", "4.6 mm", "60 thou", "1.524", "1/4 in", "6.35",
        "too close to call", "held for query", "57 ft 6 in")


def figures(binary, survey):
    done = run(binary, "assess", "--format", "json", survey)
    expect(done.returncode == 0, f"assess leaves with 0: {done.stderr[:400]}")
    return json.loads(done.stdout) if done.returncode == 0 else None


def judge_figures(given):
    marks = {m["mark"]: m for m in given["marks"]}
    for mark, noted, mm, used in (("PC 3", ".187 in", ADJACENT, True), ("PC 4", "5/16? in", QUERIED, False), ("PC 5", "4.6 mm", Fraction("4.6"), True)):
        found = marks[mark]
        expect(found["displayed"] == [noted] and [Fraction(x) for x in found["displayed_mm"]] == [mm] and found["used"] == used, f"{mark}: {found}")
    expect(marks["PC 4"]["left_out"] == "queried", "PC 4 is held for query")
    expect((ADJACENT, DEPTH, QUERIED, ADJACENT - DEPTH) == tuple(map(Fraction, ("4.7498", "1.524", "7.9375", "3.2258"))), "the conversions are as worked by hand")
    pit = given["pits"][0]
    expect([Fraction(pit[k]) for k in ("adjacent", "depth", "remaining")] == [ADJACENT, DEPTH, ADJACENT - DEPTH], f"the pit closes: {pit}")
    stands = pit["standing"]
    expect(Fraction(stands["limit"]) == FLOOR == Fraction("3.225"), f"the floor is 3.225: {stands}")
    expect(Fraction(stands["margin"]) == Fraction("0.0008") and stands["verdict"] == "too-close", f"0.0008 in hand, too close to call: {stands}")
    count = given["coverage"]
    expect(count["not_read"].get("queried") == 1 and count["planned"] == count["read"] + count["rejected"] + sum(count["not_read"].values()), f"counts add up: {count}")
    lower = next(z for z in given["zones"] if z["zone"] == "C")
    expect(lower["worst"] == "PC 5" and Fraction(lower["max"]) < QUERIED, "the queried figure is neither least nor greatest")


def judge_refusal(binary, survey, work):
    """Without its unit, 4.6 cannot be inches: it is refused, and the message says what it can be."""
    other = copy_of(survey, work / "bare")
    table = other.parent / "readings/notebook.csv"
    table.write_text(table.read_text().replace("4.6 mm", "4.6   "))
    done = run(binary, "check", other)
    said = " ".join((done.stdout + done.stderr).split())
    expect(done.returncode == 1 and "116.84 mm" in said and "can only be 4.6 mm" in said, f"a bare 4.6 is refused: {said[:400]}")


def main():
    need("pdftotext")
    binary, root = program()
    survey = root / "example-surveys/imperial-notes/survey.yaml"
    given = figures(binary, survey)
    if given:
        judge_figures(given)
    with folder() as work:
        work = Path(work)
        judge_refusal(binary, survey, work)
        if typeset(binary, survey, work / "report.pdf"):
            text = plain(work / "report.pdf").replace("\u00a0", " ")
            for said in SAID:
                expect(said in text, f"the report says {said}")
    finish("imperial_notes")


main()
