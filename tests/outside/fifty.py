"""Fifty processes issue in one folder at once: the same survey, and fifty surveys. Nothing is lost, and nothing is there twice."""
import subprocess
import tempfile
from pathlib import Path

from issuing import check_clean, entries, first_issue, value
from judge import expect, finish, program

COUNT = 50


def all_at_once(binary, surveys):
    running = [subprocess.Popen([binary, "issue", survey], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) for survey in surveys]
    return [(one.communicate(), one.returncode) for one in running]


def judge(what, folder, ended, count):
    expect(all(code == 0 for _, code in ended), f"{what}: each leaves with 0: {[(err[:300], code) for (_, err), code in ended if code][:2]}")
    check_clean(folder)
    found = entries((folder / "issued/register.txt").read_text())
    expect(len(found) == count, f"{what}: {count} entries, not {len(found)}")
    return found


def same_survey(binary, root, work):
    survey = first_issue(root, work / "same")
    ended = all_at_once(binary, [survey] * COUNT)
    judge("the same survey", survey.parent, ended, 1)
    again = sum("already issued" in out for (out, _), _ in ended)
    expect(again == COUNT - 1, f"the same survey: one issues, {COUNT - 1} find it issued, not {again}")


def fifty_surveys(binary, root, work):
    survey = first_issue(root, work / "many")
    text = survey.read_text()
    names = []
    for n in range(COUNT):
        one = survey.with_name(f"survey-{n}.yaml")
        one.write_text(text.replace("number: RD 2644", f"number: RD {5000 + n}", 1))
        names.append(one)
    found = judge("fifty surveys", survey.parent, all_at_once(binary, names), COUNT)
    numbers = {value(entry, "report") for entry in found}
    expect(numbers == {f"RD {5000 + n}" for n in range(COUNT)}, f"fifty surveys: each number once: {sorted(numbers)}")


def main():
    binary, root = program()
    with tempfile.TemporaryDirectory(prefix="strakebook-judge-") as work:
        same_survey(binary, root, Path(work))
        fifty_surveys(binary, root, Path(work))
    finish("fifty")


main()
