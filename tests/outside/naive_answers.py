"""Three answers that come to mind first, beside the program's: each is wrong on the safe-looking side, and the report has the right one.

Station against station of the same number, whatever either counts from; the mean of gains and losses; the deepest pit seen taken
for the deepest there is. API 570, 7.1 asks for the rate at the same place; extreme values after Gumbel say how much deeper the whole
area is likely to go.
"""
import json
import re
from fractions import Fraction
from pathlib import Path

from judge import expect, finish, folder, need, plain, program, run, typeset
from second.read_survey import read_survey
from second.years import Earlier

NANOMETRES = 10**6


def earlier_surveys(survey):
    return [Earlier(k, g, survey) for k, g in survey.given.get("earlier-surveys", {}).items()]


def by_number(survey, earlier):
    """{mark: mm a year} of marks whose station has the number of one there, whatever either counts from."""
    there = {(t.row, Fraction(t.written)): t.remaining for t in earlier.marks}
    return {m.name: (there[m.row, Fraction(m.station)] - m.remaining) / earlier.years
            for m in survey.marks if m.used and (m.row, Fraction(m.station)) in there}


def rate_of(place):
    """By the latest survey that has it, mm a year."""
    return Fraction(place["short"]["rate"]) / NANOMETRES


def judge_stations(survey, said, text):
    places = {p["place"]: p for p in said["years"]["places"] if p["short"]}
    greatest = max((z["greatest"] for z in said["years"]["zones"] if z["greatest"]), key=lambda g: Fraction(g["rate"]))
    for earlier in earlier_surveys(survey):
        naive = by_number(survey, earlier)
        expect(naive, f"{earlier.name}: some stations have the same numbers")
        wrong = {name: per_year for name, per_year in naive.items() if name in places and per_year != rate_of(places[name])}
        expect(wrong, f"{earlier.name}: by number the rates come out otherwise")
        safe = [name for name, per_year in wrong.items() if per_year < rate_of(places[name])]
        expect(safe, f"{earlier.name}: by number some plate wastes slower than it does")
        print(f"{earlier.name}: {len(wrong)} of {len(naive)} marks compared by number are wrong, {len(safe)} of them on the safe-looking side, as",
              *(f"{n}: {float(wrong[n]):.3f} for {float(rate_of(places[n])):.3f} mm a year" for n in safe[:1]))
    expect(greatest["place"] in text, f"the greatest rate is told of {greatest['place']}")
    printed(text, float(Fraction(greatest["rate"])) / NANOMETRES, "the greatest rate")


def printed(text, value, what):
    """Somewhere with two or three decimals."""
    expect(any(re.search(rf"(?<![\d.]){re.escape(f'{value:.{n}f}')}(?!\d)", text) for n in (3, 2)), f"{what}, {value:.3f}, is printed")


def judge_means(said, text):
    seen = 0
    for zone in said["years"]["zones"]:
        places = [p for p in said["years"]["places"] if p["short"] and p["place"] in {m["place"] for m in zone_places(said, zone["zone"])}]
        grown = [p for p in places if p["change"] == "grown"]
        if not grown or zone["mean_lost"] is None:
            continue
        seen += 1
        naive = sum(rate_of(p) for p in places) / len(places)
        right = Fraction(zone["mean_lost"]) / NANOMETRES
        expect(naive < right, f"zone {zone['zone']}: the mean of gains and losses, {float(naive):.4f}, hides the loss, {float(right):.4f} mm a year")
        printed(text, float(right), f"zone {zone['zone']}: the mean of the places that lost")
        for p in grown:
            expect(p["place"] in text, f"{p['place']} has grown, and is told")
        print(f"zone {zone['zone']}: mean of gains and losses {float(naive):.4f}, of what was lost {float(right):.4f} mm a year")
    expect(seen, "some zone holds a place that has grown beyond doubt, and others that lost")


def zone_places(said, name):
    """Places of the comparison whose row lies in the zone."""
    rows = {z["zone"]: z["rows"] for z in said["rows_of"]}[name]
    return [p for p in said["years"]["places"] if p["row"] in rows]


def judge_deepest(survey, said, text):
    seen = 0
    for zone in said["unseen"]["zones"]:
        pits = zone["pits"]
        if not pits or pits["refused"]:
            continue
        seen += 1
        naive = max(Fraction(d) for d in survey.given["zones"][zone["zone"]]["pit-blocks"]["deepest"])
        expect(naive < Fraction(pits["level"]), f"zone {zone['zone']}: the deepest pit to expect, {pits['level']:.2f}, lies beyond the deepest seen, {float(naive)}")
        expect(pits["level"] < pits["upper"], "and its bound beyond it")
        for value, what in ((pits["level"], "the deepest pit to expect"), (pits["upper"], "its bound")):
            expect(re.search(rf"(?<![\d.]){value:.1f}\d?(?!\d)", text) or f"{value:.2f}" in text, f"zone {zone['zone']}: {what}, {value:.2f}, is printed")
        print(f"zone {zone['zone']}: deepest seen {float(naive)}, to expect {pits['level']:.2f}, bound {pits['upper']:.2f} mm")
    expect(seen, "some zone has blocks enough to say how deep the deepest pit may be")


def opened(binary, survey_file, work):
    """(survey, what the program computed, what it printed)."""
    survey = read_survey(survey_file)
    said = json.loads(run(binary, "assess", survey_file, "--format", "json").stdout)
    said["rows_of"] = [{"zone": z.name, "rows": z.rows} for z in survey.zones]
    row_at = {m.name: m.row for m in survey.marks} | {p.name: p.row for p in survey.pits}
    for place in said["years"]["places"]:
        place["row"] = row_at[place["place"]]
    pdf = Path(work) / f"{survey_file.parent.name}.pdf"
    return survey, said, plain(pdf) if typeset(binary, survey_file, pdf) else ""


def main():
    need("pdftotext")
    binary, root = program()
    with folder() as work:
        survey, said, text = opened(binary, root / "example-surveys/five-years-on/survey.yaml", work)
        judge_stations(survey, said, text)
        judge_means(said, text)
        survey, said, text = opened(binary, root / "example-surveys/long-chines/survey.yaml", work)
        judge_deepest(survey, said, text)
    finish("naive_answers")


main()
