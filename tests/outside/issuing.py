"""Surveys to issue, and what lies in a folder of issues as an outsider reads it: the lines of the register, and SHA-256."""
import hashlib
import re
import shutil
from pathlib import Path

RECIPIENTS = """
recipients:
  - {who: the owner, how: by letter}
  - {who: the yard}
"""
# What the second issue corrects: one figure of the table, in a row of four sound ones.
WRONG, RIGHT = ".201", ".202"
AMENDMENT = """
amendment:
  cause: A figure was copied wrongly from the notebook.
  found-by: the surveyor
  found-on: 2026-08-20
  checked: Every line of the table was held against the notebook; nothing else differed.
  changes:
    - {what: SC 3, why: "The notebook says .202."}
  told:
    - {who: the owner, how: by letter, on: 2026-08-21}
    - {who: the yard, how: by telephone, on: 2026-08-21}
"""


def first_issue(root, to):
    """A small final survey in inches, without photographs, in a folder that is made for it; to be issued as it is."""
    shutil.copytree(root / "example-surveys/imperial-notes", to)
    survey = to / "survey.yaml"
    survey.write_text(survey.read_text() + RECIPIENTS)
    return survey


def second_issue(survey):
    """Makes it the next issue of the same report."""
    readings = survey.parent / "readings/notebook.csv"
    text = readings.read_text()
    assert text.count(WRONG) == 1, "the example no longer has that figure once"
    readings.write_text(text.replace(WRONG, RIGHT))
    text = survey.read_text()
    for old, new in (("  issue: 1\n", "  issue: 2\n"), ("issued: 2026-08-18", "issued: 2026-08-21"), ("supersedes: none", "supersedes: issue 1")):
        assert old in text, f"the example no longer says {old!r}"
        text = text.replace(old, new, 1)
    survey.write_text(text + AMENDMENT)


def tree(folder):
    """Every file by its path, with its bytes."""
    return {str(p.relative_to(folder)): p.read_bytes() for p in sorted(folder.rglob("*")) if p.is_file()}


def sha256(data):
    return hashlib.sha256(data).hexdigest()


def entries(text):
    """The entries of a register, each a list of (key, value), the chain checked on the way."""
    found, covered, lines = [], "", []
    for line in text.splitlines(keepends=True):
        key, colon, value = line.rstrip("\n").partition(": ")
        if key == "chain":
            assert value == sha256(covered.encode()), f"chain of entry {len(found) + 1}"
            found.append(lines)
            covered, lines = "", []
        elif colon and not line.startswith("#"):
            lines.append((key, value))
        covered += line
    assert not lines, "lines after the last chain"
    assert len(found) == len(re.findall("^report: ", text, re.M)), "an entry for each report"
    return found


def value(entry, key):
    return next((v for k, v in entry if k == key), None)


def files_of(entry):
    """Path in its folder -> digest, of everything that lies there."""
    listed = [v.split(" ", 2) for k, v in entry if k in ("document", "beside")]
    return {path: (digest, int(size)) for digest, size, path in listed}


def check_whole(survey_folder):
    """A register that chains, each folder of it in place or under the name of one begun, and nothing in place that it does not have."""
    issued = Path(survey_folder) / "issued"
    register = issued / "register.txt"
    text = register.read_text() if register.exists() else ""
    registered = {}
    for entry in entries(text):
        name = value(entry, "folder")
        assert name not in registered, f"{name} is registered twice"
        registered[name] = entry
        places = [p for p in (issued / name, issued / f".begun-{name}") if p.exists()]
        assert len(places) == 1, f"{name} lies in one place: {places}"
        there = {path: (sha256(data), len(data)) for path, data in tree(places[0]).items()}
        assert there == files_of(entry), f"{name} is whole"
    if issued.exists():
        in_place = {p.name for p in issued.iterdir() if not p.name.startswith(".")} - {"register.txt"}
        assert in_place <= set(registered), f"not registered: {in_place - set(registered)}"
    return text


def check_clean(survey_folder):
    """The same, and no leftovers."""
    check_whole(survey_folder)
    hidden = {p.name for p in (Path(survey_folder) / "issued").iterdir() if p.name.startswith(".")}
    assert hidden <= {".lock"}, f"left over: {hidden}"
