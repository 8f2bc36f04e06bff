"""The thick bottom that percent limits condemn: the report says what is left, what falls short, what is met, and why nothing is renewed."""
import json
import re
from fractions import Fraction
from pathlib import Path

from judge import expect, finish, folder, load, need, plain, program, run, typeset

NEVER = ("insert", "overplate")


def judge_numbers(binary, survey, text):
    """Extent, spacing and factor worked here from the survey file; ASTM G46: deepest penetration over mean loss."""
    given = load(survey)
    zone = next(z for z in json.loads(run(binary, "assess", survey, "--format", "json").stdout)["zones"] if z["zone"] == "B")
    declared, original = given["zones"]["B"]["pitting"], Fraction(given["zones"]["B"]["original"])
    pits = {k: (*p["at"].split(), Fraction(p["adjacent"]) - Fraction(p["depth"])) for k, p in given["pits"].items()}
    apart = min(abs(Fraction(a[1]) - Fraction(b[1])) for i, a in pits.items() for j, b in pits.items() if i < j and a[0] == b[0])
    expect(zone["extent"] == "isolated" and f"least spacing {apart * 1000} mm" in text, f"isolated, the pits of a row {apart} m apart")
    per_m2 = Fraction(declared["count"]) / Fraction(declared["over-m2"])
    expect(f"Pits declared: {declared['count']} over {declared['over-m2']} m², {float(per_m2):.2f} per m²" in text, "count, area and count per m2 are printed")
    deepest = original - min(left for _, _, left in pits.values())
    factor = deepest / (original - Fraction(zone["mean"]))
    expect(Fraction(zone["pitting"]["factor"]) == factor, f"the pitting factor is {factor}")
    expect(f"Pitting factor {float(factor):.1f}: deepest 4.1 over mean loss" in text, "the pitting factor is printed with its figures")
    expect(Fraction(zone["under_pit"]["share"]["nominal"]) == deepest / original == Fraction(41, 120), "41/120 has gone under P1")
    expect(Fraction(zone["general"]["share"]["nominal"]) == (original - Fraction(zone["mean"])) / original, "general is of the mean")
    expect(zone["general"]["n"] == zone["count"]["used"] and zone["under_pit"]["n"] == len(pits), "each figure says what it is taken from")
    for kind in ("General", "Local", "Pit"):
        expect(re.search(rf"{kind} wastage \d+\.\d+ mm, \d+ %", text), f"{kind.lower()} wastage stands by itself")


def main():
    need("pdftotext")
    binary, root = program()
    survey = root / "example-surveys/thick-bottom/survey.yaml"
    with folder() as work:
        pdf = Path(work) / "report.pdf"
        if typeset(binary, survey, pdf):
            text = plain(pdf)
            for said in ("7.9 mm", "34.2 %", "falls short", "20 %", "25 %", "30 %"):
                expect(said in text, f"the report says {said}")
            given = load(survey)
            judge_numbers(binary, survey, text)
            under_pit = text[text.index("bottom under pit P1"):]
            for name in ("20 %", "25 %", "30 %"):
                expect(re.search(rf"{name} of original lost [^a-z]*falls short", under_pit), f"{name} falls short under P1")
            for name in ("4.0 mm", "3.0 mm"):
                expect(re.search(rf"{name} remaining (\(governs\) )?[^a-z]*meets", under_pit), f"{name} is met under P1")
            because = " ".join(given["decisions"]["B"]["conflict"]["because"].split())
            expect("conflict" in text.lower(), "the report names the conflict")
            # Lines of prose stand beside margin notes: the words are looked for without them, a few at a time.
            expect(" ".join(because.split()[:5]) in text, "the report gives the answer to the conflict")
            for part in ("recommendations", "steelwork"):
                for key, item in given[part].items():
                    expect(item["action"] not in NEVER, f"{part} {key} does not renew plate")
            items = re.split(r"\d+ Limitations ", re.split(r"\d+ Recommendations ", text)[-1])[0].lower()
            expect("weld" in items, "the items are found in the report")
            for action in NEVER:
                expect(not re.search(rf"action:? {action}", items), f"no printed item has the action {action}")
    finish("thick_bottom")


main()
