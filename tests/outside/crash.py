"""An issue and a re-issue, ended at every call that changes a file, and on a disk that is full or fails: the register and its folders are as
they were or as they are to be, and the next run finishes or clears what was left."""
import shutil
from pathlib import Path

from interrupted import Case, need_tracing, sweep
from issuing import check_clean, check_whole, first_issue, second_issue, tree
from judge import expect, finish, folder, program, run


def issued(binary, survey):
    done = run(binary, "issue", survey)
    assert done.returncode == 0, done.stderr[:600]


def case_of(name, binary, start):
    """Issues the survey in a copy of `start`. An undisturbed run in another copy says what is to be there."""
    after = start.with_name(start.name + "-after")
    shutil.copytree(start, after)
    issued(binary, after / "survey.yaml")
    old, new = tree(start), tree(after)
    registers = {tree_.get("issued/register.txt", b"").decode() for tree_ in (old, new)}

    def check(place, well):
        text = check_whole(place)
        assert text in registers, "the register is as it was or as it is to be"
        now = tree(place)
        kept = {path: data for path, data in old.items() if not path.startswith("issued/")}
        assert {p: d for p, d in now.items() if not p.startswith("issued/")} == kept, "the survey's own files are left alone"
        if well:
            check_clean(place)
            assert now == new, f"all is as it is to be: {set(now) ^ set(new)}"

    return Case(name, lambda place: shutil.copytree(start, place), lambda place: [binary, "issue", place / "survey.yaml"], check)


def left_over(start):
    """What three ended runs may leave: one that was registered, one that was not, and a half-written register."""
    issues = start / "issued"
    (issues / "RD-2644-issue-1").rename(issues / ".begun-RD-2644-issue-1")
    (issues / ".begun-RD-2644-issue-2").mkdir()
    (issues / ".begun-RD-2644-issue-2/RD-2644-issue-2.pdf").write_bytes(b"%PDF half")
    (issues / ".strakebook-1-0.tmp").write_text("# Register")


def judge(binary, root, work, errors, samples):
    """What did not hold of an issue, a re-issue, and a re-issue where ended runs left something."""
    first = first_issue(root, work / "first")
    faults = sweep(case_of(f"{binary.name}: issue", binary, first.parent), errors, samples)

    second = work / "second"
    shutil.copytree(first.parent, second)
    issued(binary, second / "survey.yaml")
    second_issue(second / "survey.yaml")
    faults += sweep(case_of(f"{binary.name}: re-issue", binary, second), errors, samples)
    if not errors:
        return faults

    third = work / "third"
    shutil.copytree(second, third)
    left_over(third)
    return faults + sweep(case_of(f"{binary.name}: re-issue after ended runs", binary, third), errors, samples)


def main():
    need_tracing()
    binary, root = program()
    with folder() as work:
        # A report takes a second to make: the command itself is ended only where it changes files, and seldom elsewhere.
        faults = judge(binary.with_name("issue_files"), root, Path(work) / "files", ("ENOSPC", "EIO", "EINTR"), 1000)
        faults += judge(binary, root, Path(work) / "report", (), 5)
    for fault in faults:
        expect(False, fault)
    finish("crash")


main()
