"""Every example survey and the big barge: the program and the second implementation agree in every field that both compute.

Then the open disagreements: each still shows in its own small survey, and nothing else differs there.
"""
import copy

from judge import expect, finish, folder, program, surveys
from second.assess import assess
from second.compare import differences, judge, program_says
from second.read_layout import read_policy
from second.read_survey import read_survey
from second.ways import OPEN


def judge_the_judge(binary, root, path):
    """A digit, a word or a mark changed in what the program said is noticed."""
    said, survey = program_says(binary, root / "layouts", path), read_survey(path)
    ours = assess(survey, read_policy(root / "layouts", survey.house))
    for change in (lambda d: d["marks"][0].update(remaining="9.9"), lambda d: d["zones"][0].update(rung="unsafe"),
                   lambda d: d["zones"][0]["subjects"][0]["results"][0].update(verdict="falls-short"), lambda d: d["marks"].pop()):
        changed = copy.deepcopy(said)
        change(changed)
        expect(list(differences(ours, changed)), "a change in the program's answer is noticed")


def main():
    binary, root = program()
    unseen = set()
    with folder() as work:
        paths = surveys(root, work)
        judge_the_judge(binary, root, paths[0])
        for path in paths:
            got = judge(binary, root, path)
            for at, ours, theirs in got.found[:20]:
                expect(False, f"{path.parent.name}: {at}: {ours} here, {theirs} there")
            expect(not got.ways, f"{path.parent.name}: it rests on no open disagreement: {got.ways}")
            unseen |= set(got.only)
    for name in OPEN:
        got = judge(binary, root, root / "tests/outside/second/open" / name / "survey.yaml")
        for at, ours, theirs in got.found[:20]:
            expect(False, f"open/{name}: {at}: {ours} here, {theirs} there")
        expect(got.ways == (name,), f"{name} still shows in its survey; if the program has changed, close it in DISAGREEMENTS.md and take it from ways.py")
    print("not computed here:", ", ".join(sorted(unseen)))
    finish(f"second_examples: {len(paths)} surveys")


main()
