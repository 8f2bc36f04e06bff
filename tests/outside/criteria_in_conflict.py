"""A low side of 6 mm with 4.6 mm left, and chines with 4.9: every criterion's verdict and nearness, in the JSON and in the finished PDF.

Substantial corrosion: loss in excess of 75 % of the allowable margin, IACS UR Z10.1, ESP Code 1.2.9. Probability of conformity:
JCGM 106:2012, Phi(margin / u), here from the error function of Python's own library. Rule minimum: Directive 2006/87/EC Annex II
Art. 3.02: 3.0 at the side and 3.225 at the bilge for 18 m. 25 % for thin plate and the limits on what is left: common practice.
"""
import json
import re
from decimal import Decimal
from math import erf, sqrt
from pathlib import Path

from judge import expect, finish, folder, need, plain, program, run, typeset

U = Decimal("0.10")  # of the survey's gauge
# criterion: limit, margin, verdict, words of the table
AT_SIDE = {
    "absolute-4.0": ("4", "0.6", "meets"),
    "absolute-3.0": ("3", "1.6", "meets"),
    "margin-20": ("4.8", "-0.2", "falls-short"),
    "margin-25": ("4.5", "0.1", "too-close"),
    "inland-rule": ("3", "1.6", "meets"),
}
AT_CHINE = {
    "absolute-4.0": ("4", "0.9", "meets"),
    "margin-20": ("4.8", "0.1", "too-close"),
    "margin-25": ("4.5", "0.4", "meets"),
    "inland-rule": ("3.225", "1.675", "meets"),
}
NOT_APPLIED = {"percent-15": "not-declared", "passenger-rule": "not-declared", "percent-25-thin": "thicker"}


def subject(done, zone):
    return next(z for z in done["zones"] if z["zone"] == zone)["subjects"][0]


def judge_subject(found, left, wanted):
    expect(Decimal(found["remaining"]) == Decimal(left), f"{found['id']} keeps {left}")
    results = {r["criterion"]: r for r in found["results"]}
    for criterion, (limit, margin, verdict) in wanted.items():
        r = results[criterion]
        expect((Decimal(r["limit"]), Decimal(r["margin"]), r["verdict"]) == (Decimal(limit), Decimal(margin), verdict),
               f"{found['id']} under {criterion}: {limit}, {margin}, {verdict}, not {r}")
        p = (1 + erf(float(Decimal(margin) / U) / sqrt(2))) / 2
        said = f"{min(max(p, 0.000001), 0.999999):.6f}"
        expect(r["conformance"] == said, f"{found['id']} under {criterion}: probability {said}, not {r['conformance']}")
    for criterion, why in NOT_APPLIED.items():
        expect(results[criterion].get("why_not") == why, f"{found['id']}: {criterion} is not applied, {why}")
    return results


def judge_json(done):
    side = judge_subject(subject(done, "L"), "4.6", AT_SIDE)
    # 1.4 lost: beyond 1.125 and within 1.5 of 25 %; beyond the 1.2 that 20 % lets go
    expect(side["margin-25"]["substantial"] and side["margin-25"]["substantial_below"] == "4.875", "substantial under 25 %")
    expect(not side["margin-20"]["substantial"] and side["margin-20"]["bare"] == "over", "past substantial under 20 %")
    chine = judge_subject(subject(done, "C"), "4.9", AT_CHINE)
    expect(chine["margin-20"]["substantial"], "the chine's 1.1 lost is beyond 0.9 and within 1.2 of 20 %")
    expect(not chine["margin-25"]["substantial"], "and not beyond 1.125 of 25 %")
    low = next(z for z in done["zones"] if z["zone"] == "L")
    expect(low["local"]["share"]["nominal"] == "7/30", "23.3 % is gone")
    expect(low["conflict"] and low["short_of"] == ["margin-20"], "the conflict is found")
    expect(low["suggested"] == ["monitor"] and not low["departs"], "the ladder says monitor")
    bilge = done["workings"]["inland-rule/bilge"]["read_otherwise"]
    expect({"reading": "floor-times-b", "limit": "3.75"} in bilge, "the other reading of the floor is worked")


def judge_pdf(text):
    decision = text[text.rindex("Decision for low sides"):text.rindex("Decision for chines")]
    for name, said in (("4.0 mm remaining \\(governs\\)", r"4\.00 4\.6 \+0\.60 over 99 ?% meets"),
                       ("3.0 mm remaining", r"3\.00 4\.6 \+1\.60 over 99 ?% meets"),
                       ("20 % allowable loss", r"4\.80 4\.6 −0\.20 2 ?% falls short · past substantial"),
                       ("25 % allowable loss", r"4\.50 4\.6 \+0\.10 84 ?% too close to call · substantial"),
                       ("European inland rule minimum", r"3\.00 4\.6 \+1\.60 over 99 ?% meets")):
        expect(re.search(name + r" .{0,60}?" + said, decision), f"the decision's table: {name}: {said}")
    for said in ("light scantlings are not declared", "not declared to carry passengers", "original thicker than 4.0 mm", "23.3 %", "4.875"):
        expect(said in text, f"the report says: {said}")
    expect("3.225" in text and "3.75, floor times b" in text, "both readings of the floor")
    expect("decides no verdict" in text, "the report says what a probability is worth")


def main():
    need("pdftotext")
    binary, root = program()
    survey = root / "tests/outside/surveys/criteria-in-conflict/survey.yaml"
    done = run(binary, "assess", "--format", "json", survey)
    expect(done.returncode == 0, f"assess leaves with 0: {done.stderr[:500]}")
    if done.returncode == 0:
        judge_json(json.loads(done.stdout))
    with folder() as work:
        pdf = Path(work) / "report.pdf"
        if typeset(binary, survey, pdf):
            judge_pdf(plain(pdf).replace("\u00a0", " "))
    finish("criteria_in_conflict")


main()
