"""Field by field: what the program printed against what was computed here."""
import json
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations
from pathlib import Path

from judge import run

from .assess import assess
from .read_layout import read_policy
from .read_survey import read_survey
from .ways import OPEN


def differences(ours, theirs, at=""):
    """(place, ours, theirs) wherever they differ. Fields that only the program has are not looked at: see only_theirs."""
    if isinstance(ours, dict) and isinstance(theirs, dict):
        for key, value in ours.items():
            if key in theirs:
                yield from differences(value, theirs[key], f"{at}.{key}" if at else key)
            else:
                yield f"{at}.{key}", value, "nothing"
    elif isinstance(ours, list) and isinstance(theirs, list) and len(ours) == len(theirs):
        for i, (a, b) in enumerate(zip(ours, theirs)):
            yield from differences(a, b, f"{at}[{i}]")
    elif not same(ours, theirs):
        yield at, str(ours), theirs


def same(ours, theirs):
    if isinstance(ours, Fraction):
        return isinstance(theirs, str) and Fraction(theirs) == ours
    return type(ours) is type(theirs) and ours == theirs


def only_theirs(ours, theirs, at=""):
    """Names of the fields that the program prints and that are not computed here."""
    if isinstance(ours, dict) and isinstance(theirs, dict):
        for key, value in theirs.items():
            name = f"{at}.{key}" if at else key
            if key not in ours:
                yield name
            elif at != "workings":
                yield from only_theirs(ours[key], value, name)
    elif isinstance(ours, list) and isinstance(theirs, list):
        for a, b in zip(ours, theirs):
            yield from only_theirs(a, b, at)


def program_says(binary, layouts, survey):
    """What it computed; where it refused, the errors as text."""
    done = run(binary, "assess", "--layouts", layouts, "--format", "json", survey)
    if done.returncode == 0:
        return json.loads(done.stdout)
    said = json.loads(done.stderr) if done.stderr.startswith("{") else {"diagnostics": []}
    return "; ".join(d["message"] for d in said["diagnostics"] if d["severity"] == "error") or done.stderr[:500]


def explained(survey, policy, theirs):
    """The fewest open disagreements under which nothing differs; nothing if there are none such."""
    for n in range(1, len(OPEN) + 1):
        for ways in combinations(sorted(OPEN), n):
            if not list(differences(assess(survey, policy, frozenset(ways)), theirs)):
                return ways
    return ()


@dataclass(frozen=True)
class Judged:
    ours: dict
    found: list             # differences that nothing explains
    ways: tuple             # open disagreements that showed
    only: tuple             # fields that the program prints and that are not computed here


def judge(binary, root, path):
    layouts, survey = Path(root) / "layouts", read_survey(path)
    policy = read_policy(layouts, survey.house)
    ours, theirs = assess(survey, policy), program_says(binary, layouts, path)
    if isinstance(theirs, str):
        return Judged(ours, [("the program refused it", "", theirs)], (), ())
    found = list(differences(ours, theirs))
    ways = explained(survey, policy, theirs) if found else ()
    return Judged(ours, [] if ways else found, ways, tuple(sorted(set(only_theirs(ours, theirs)))))
