"""The original that nobody knows: every size that fits stays alive, percent is a range over them, and absolute limits govern."""
import json
import re
from fractions import Fraction
from pathlib import Path

from judge import expect, finish, folder, load, need, plain, program, run, typeset

# Upper and lower bound on nominal 5, 6 and 8. EN 10029:1991 Table 1 class A (published summary sheets); EN 10051: the widest
# figure of trade tables, none for 8.
DELIVERED = {"EN 10029:1991 A": {"5": ("4.6", "6.1"), "6": ("5.6", "7.1"), "8": ("7.5", "9.2")},
             "EN 10051": {"5": ("4.71", "5.29"), "6": ("5.69", "6.31")}}


def fits(tolerance, thickest):
    return [n for n, (low, high) in DELIVERED[tolerance].items() if Fraction(low) <= thickest <= Fraction(high)]


def judge_json(binary, survey):
    zone = next(z for z in json.loads(run(binary, "assess", survey, "--format", "json").stdout)["zones"] if z["zone"] == "L")
    expect((zone["count"]["used"], zone["min"], zone["max"]) == (38, "4.6", "6.1"), f"38 marks from 4.6 to 6.1: {zone['count']}")
    for tolerance in DELIVERED:
        alive = [n["nominal"].removesuffix(".0") for n in zone["nominals"] for f in n["fits"] if f["tolerance"] == tolerance and f["state"] == "alive"]
        expect(alive == fits(tolerance, Fraction("6.1")), f"under {tolerance} there fits {alive}")
    state = {n["nominal"]: n["state"] for n in zone["nominals"]}
    expect(state["8.0"] == "set-aside" and state["4.0"] == "excluded", f"8 is set aside, 4 excluded: {state}")
    low, high = ((Fraction(n) - Fraction("4.6")) / Fraction(n) for n in ("5", "6"))
    expect((Fraction(zone["alive_low"]), Fraction(zone["alive_high"])) == (low, high), "8 % of 5 to 23.3 % of 6")
    results = {r["criterion"]: r for r in zone["subjects"][0]["results"]}
    expect(results["absolute-4.0"]["governs"] and results["absolute-4.0"]["margin"] == "0.6", "4.0 governs and is met by 0.6")
    for name in ("percent-20", "percent-25"):
        expect(results[name].get("why_not") == "weak-basis", f"{name} is not applied")
    expect(zone["told"] and "monitor" in zone["suggested"], "the original was told, and monitoring is on the ladder's row")


def judge_without_assumption(binary, survey, work):
    """8 mm is not excluded by a reading: without the stated assumption it is alive again."""
    text = survey.read_text()
    (work / "readings").mkdir()
    (work / "readings/hull.csv").write_text((survey.parent / "readings/hull.csv").read_text())
    (work / "survey.yaml").write_text(re.sub(r"(?m)^    assumption: .*\n", "", text).replace("state: final", "state: draft"))
    zones = json.loads(run(binary, "assess", work / "survey.yaml", "--format", "json").stdout)["zones"]
    sizes = {n["nominal"]: n["state"] for z in zones if z["zone"] == "L" for n in z["nominals"]}
    expect(sizes.get("8.0") == "alive" and sizes.get("4.0") == "excluded", f"without the assumption 8 is alive: {sizes}")


def judge_print(survey, text):
    for said in ("Fits under EN 10029:1991 A: 5 and 6 mm.", "Fits under EN 10051: 6 mm.", "8.0 % to 23.3 %", "8 mm: set aside by the assumption",
                 "4 mm: excluded by the thickest reading", "The original thickness rests on a weak basis (owner's word)"):
        expect(said in text, f"the report says: {said}")
    expect(re.search(r"6\.0 † owner's word", text), "the original is marked as told")
    expect(re.search(r"† rests on what was told, not measured: owner\.", text), "the mark is explained")
    given = load(survey)["decisions"]["L"]
    expect(given["action"] == "monitor" and given["criterion"] == "absolute-4.0", "the low side is monitored under 4.0 mm")
    expect(re.search(r"4\.0 mm remaining \(governs\) 4\.00 4\.6 \+0\.60 over 99 % .{0,4}meets", text), "4.0 is met with 0.60 in hand")
    expect(not re.search(r"percent-2\d|20 % of original lost \d", text), "no percent criterion is judged on the low side")


def main():
    need("pdftotext")
    binary, root = program()
    survey = root / "example-surveys/original-unknown/survey.yaml"
    with folder() as work:
        work = Path(work)
        judge_json(binary, survey)
        judge_without_assumption(binary, survey, work)
        if typeset(binary, survey, work / "report.pdf"):
            judge_print(survey, plain(work / "report.pdf"))
    finish("original_unknown")


main()
