"""The corrected example, issued in a folder of its own: issue 1, issue 2 and the addendum to it."""
import shutil
from pathlib import Path

from judge import expect, run

FIRST, SECOND, CLOSING = "RD-2702-issue-1", "RD-2702-issue-2", "RD-2702-issue-2-addendum-1"


def issued(binary, root, work):
    """The folder of issues."""
    survey = Path(shutil.copytree(root / "tests/outside/surveys/two-issues", work / "survey")) / "survey.yaml"
    done = [run(binary, "issue", survey)]
    for path in ("survey.yaml", "readings/hull.csv"):
        shutil.copy(root / "example-surveys/two-issues" / path, survey.parent / path)
    done += [run(binary, "issue", survey), run(binary, "issue", survey, "--addendum", "1")]
    for one in done:
        expect(one.returncode == 0, f"issued: {one.stderr[:800]}")
    return survey.parent / "issued"


def document(where, name):
    return where / name / f"{name}.pdf"
