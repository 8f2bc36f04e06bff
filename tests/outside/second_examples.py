"""Every example survey, the big barge and the surveys on which the two once differed: the program and the second implementation
agree in every field but those that `compare.py` lists with a reason.

Then the open disagreements: each still shows in its own small survey, and nothing else differs there.
"""
import copy
from collections import Counter

from judge import expect, finish, folder, program, surveys
from second.compare import NOT_COMPUTED, differences, judge
from second.formulas import wrong
from second.read_layout import percent, whole
from second.unseen import probability
from second.ways import OPEN


def judge_the_judge(got):
    """A digit, a word or a mark changed in what the program said is noticed, and so is a field that came anew."""
    for change in (lambda d: d["marks"][0].update(remaining="9.9"), lambda d: d["zones"][0].update(rung="unsafe"),
                   lambda d: d["zones"][0]["subjects"][0]["results"][0].update(verdict="falls-short"), lambda d: d["marks"].pop(),
                   lambda d: d["zones"][0].update(anew=True)):
        changed = copy.deepcopy(got.said)
        change(changed)
        expect(list(differences(got.ours, changed)), "a change in the program's answer is noticed")


def judge_fits(got, name):
    """The program's bootstrap has a seed of its own: ours, of another generator, comes near it."""
    for zone in got.said["unseen"]["zones"]:
        pits = zone["pits"]
        if pits and not pits["refused"]:
            ours, theirs = probability(pits["fit"]["a2"], pits["blocks"]), pits["fit"]["p"]
            expect(abs(ours - theirs) < 0.05, f"{name}: zone {zone['zone']}: a fit as bad as this comes out {ours:.3f} here, {theirs:.3f} there")
            significance = float(percent(got.policy.given["unseen"]["significance"]))
            expect(pits["fit"]["poor"] == (theirs < significance), f"{name}: zone {zone['zone']}: poor where p is under {significance}")


def judge_formulas(got, layouts, name):
    """The printed formula, worked from the printed inputs, gives the printed figure."""
    formulas = whole(layouts, "base")["formulas"]
    for what, said, ours in wrong(got.policy, formulas, got.said["quantities"]):
        expect(False, f"{name}: {what}: {said} there, {ours} by its own formula")
    return Counter(q["formula"] for q in got.said["quantities"])


def main():
    binary, root = program()
    with folder() as work:
        settled = sorted((root / "tests/outside/second/settled").glob("*/survey.yaml"))
        expect(settled, "the surveys on which the two once differed are there")
        paths, worked = surveys(root, work) + settled, Counter()
        for path in paths:
            got = judge(binary, root, path)
            for at, ours, theirs in got.found[:20]:
                expect(False, f"{path.parent.name}: {at}: {ours} here, {theirs} there")
            expect(not got.ways, f"{path.parent.name}: it rests on no open disagreement: {got.ways}")
            if path == paths[0] and got.said:
                judge_the_judge(got)
            if got.said:
                judge_fits(got, path.parent.name)
                worked.update(judge_formulas(got, root / "layouts", path.parent.name))
    for name in OPEN:
        got = judge(binary, root, root / "tests/outside/second/open" / name / "survey.yaml")
        for at, ours, theirs in got.found[:20]:
            expect(False, f"open/{name}: {at}: {ours} here, {theirs} there")
        expect(name in got.ways, f"{name} still shows in its survey; if the program has changed, close it in DISAGREEMENTS.md and take it from ways.py")
    for name, reason in sorted(NOT_COMPUTED.items()):
        print(f"not computed here: {name}: {reason}")
    print("quantities worked again:", dict(sorted(worked.items())))
    finish(f"second_examples: {len(paths)} surveys")


main()
