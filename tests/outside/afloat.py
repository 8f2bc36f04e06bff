"""Surveyed afloat: page one says first what was not seen, and no figure of the dry side stands for the hull.

Areas and counts are worked here by hand: 0.45 m x 18 m x 2 sides = 16.2 m2 of 73.4 m2 is 22 %; 22 readings from outside and 12
from inside are 34 of 38 marks planned, and 4 were unstable.
"""
import json
from fractions import Fraction
from pathlib import Path

from judge import expect, finish, folder, lines, need, pages, plain, program, run, typeset

SURVEY = Path(__file__).parent / "surveys/afloat/survey.yaml"
UNSEEN = {"W": "wind-and-water", "C": "chine", "B": "bottom"}


def judge_figures(binary):
    done = run(binary, "assess", "--format", "json", SURVEY)
    expect(done.returncode == 0, f"assess leaves with 0: {done.stderr[:400]}")
    if done.returncode:
        return
    given = json.loads(done.stdout)
    expect((Fraction(given["read_m2"]), Fraction(given["shell_m2"])) == (Fraction("16.2"), Fraction("73.4")), "16.2 of 73.4 m2 were read")
    count = given["coverage"]
    expect((count["planned"], count["read"], count["not_read"]) == (38, 34, {"unstable": 4}), f"34 of 38 read, 4 unstable: {count}")
    inside = [m for m in given["marks"] if m["mark"].startswith(("PI", "SI")) and m["used"]]
    expect(len(inside) == 12, f"12 were read from inside, not {len(inside)}")
    read = [Fraction(m["remaining"]) for m in given["marks"] if m["used"]]
    expect((min(read), max(read)) == (Fraction("5.7"), Fraction("6.0")), "readings run from 5.7 to 6.0 mm")
    for zone in given["zones"]:
        if zone["zone"] in UNSEEN:
            expect(zone["too_few"] and not zone["subjects"] and not zone["suggested"], f"zone {zone['zone']} is judged by nothing")


def judge_page_one(pdf):
    first = lines(pages(pdf)[0][2])
    said = " ".join(w.text for line in first for w in line)
    column = " ".join(" ".join(w.text for w in line if w.x1 < 260) for line in first)
    for words in ("Not applicable", "No opinion is given on", "16.2 of 73.4 m² of the shell, 22 %", "34 read"):
        expect(words in column or words in said, f"page one says '{words}': {column[:900]}")
    for zone in UNSEEN.values():
        expect(zone in column[column.find("No opinion"):column.find("WORST REMAINING")], f"page one names the {zone} before any thickness")
    expect(0 <= column.find("afloat") < column.find("No opinion") < column.find("WORST REMAINING"), "afloat and no opinion come first")
    expect("Lift the boat" in said and "before contract" in said, "page one has the class A item")
    expect(" mean " not in said.lower(), "page one prints no mean")


def main():
    need("pdftotext")
    binary, _ = program()
    judge_figures(binary)
    with folder() as work:
        pdf = Path(work) / "report.pdf"
        if typeset(binary, SURVEY, pdf):
            judge_page_one(pdf)
            text = plain(pdf)
            for zone in UNSEEN.values():
                expect(f"Decision for {zone}: no opinion" in text, f"no opinion is decided on the {zone}")
            expect("4 unstable" in text, "the report counts the 4 unstable marks")
    finish("afloat")


main()
