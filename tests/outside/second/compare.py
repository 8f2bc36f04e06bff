"""Field by field: what the program printed against what was computed here."""
import json
import re
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations
from math import isclose
from pathlib import Path

from judge import run

from .assess import assess
from .read_layout import read_policy
from .read_survey import read_survey
from .ways import OPEN

# What the program prints and is not computed here, each with the reason. A field in neither is a difference.
COPIED = "words of the layout or the survey, copied"
NOT_COMPUTED = {
    **{f"criteria.{k}": COPIED for k in ("name", "authority", "edition", "scope", "asked_by")},
    "decision_rule": COPIED, "marks.displayed": COPIED, "doublers": COPIED,
    "statistics": "the policy's figures for zones.statistics, copied",
    "zones.statistics": "judges nothing; held to published data sets by the program's own tests",
    **{f"unseen.zones.pits.fit.{k}": "a bootstrap of the program's own seed; tried apart" for k in ("p", "poor")},
    "quantities": "the same figures again with what went in; each is worked again from its inputs by `formulas.py`",
    "addenda": "readings after repair, judged as marks are; held by the program's own tests",
    "amended": "what differs from the issue before; found again from the inputs of both by `amended.py`",
    "defaults": "names what was assumed where the survey is silent; what follows from it is compared wherever it is used",
}


def differences(ours, theirs, at=""):
    """(place, ours, theirs) wherever they differ, either way."""
    if isinstance(ours, dict) and isinstance(theirs, dict):
        for key in {**ours, **theirs}:
            name = f"{at}.{key}" if at else key
            if key in ours and key in theirs:
                yield from differences(ours[key], theirs[key], name)
            elif key in ours:
                yield name, str(ours[key]), "nothing"
            elif plain_name(name) not in NOT_COMPUTED:
                yield name, "nothing", theirs[key]
    elif isinstance(ours, list) and isinstance(theirs, list) and len(ours) == len(theirs):
        for i, (a, b) in enumerate(zip(ours, theirs)):
            yield from differences(a, b, f"{at}[{i}]")
    elif not same(ours, theirs):
        yield at, str(ours), theirs


def plain_name(at):
    """Without places in lists, and without the names of formulas."""
    return re.sub(r"^workings\.[^.]*(\.[0-9][^.]*)?", "workings", re.sub(r"\[\d+\]", "", at))


def same(ours, theirs):
    if isinstance(ours, Fraction):
        return isinstance(theirs, str) and Fraction(theirs) == ours
    if isinstance(ours, float):
        return isinstance(theirs, (int, float)) and isclose(ours, theirs, rel_tol=1e-9, abs_tol=1e-9)
    return type(ours) is type(theirs) and ours == theirs


def program_says(binary, layouts, survey):
    """What it computed; where it refused, the errors as text."""
    done = run(binary, "assess", "--layouts", layouts, "--format", "json", survey)
    if done.returncode == 0:
        return json.loads(done.stdout)
    said = json.loads(done.stderr) if done.stderr.startswith("{") else {"diagnostics": []}
    return "; ".join(d["message"] for d in said["diagnostics"] if d["severity"] == "error") or done.stderr[:500] or f"it left with {done.returncode}"


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
    said: dict              # the program's answer
    policy: object


def judge(binary, root, path):
    layouts, survey = Path(root) / "layouts", read_survey(path)
    policy = read_policy(layouts, survey.house)
    ours, theirs = assess(survey, policy), program_says(binary, layouts, path)
    if isinstance(theirs, str):
        return Judged(ours, [("the program refused it", "", theirs)], (), {}, policy)
    found = list(differences(ours, theirs))
    ways = explained(survey, policy, theirs) if found else ()
    return Judged(ours, [] if ways else found, ways, theirs, policy)
