"""The same survey issued by another user, elsewhere, at another time and under other habits: the same bytes, of PDFs and register."""
import os
import shutil
import subprocess
import tempfile
from pathlib import Path

from issuing import first_issue, second_issue, tree
from judge import expect, finish, program


def comma_locale(work):
    """Environment of a locale that writes 1,5; None where none can be had."""
    known = subprocess.run(["locale", "-a"], capture_output=True, text=True).stdout.split()
    there = [name for name in known if name.lower().startswith(("de_", "fr_", "nl_", "es_"))]
    if there:
        return {"LC_ALL": there[0]}
    if shutil.which("localedef") is None or not Path("/usr/share/i18n/locales/de_DE").exists():
        return None
    made = subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", work / "de_DE.UTF-8"], capture_output=True)
    return {"LC_ALL": "de_DE.UTF-8", "LOCPATH": str(work)} if made.returncode == 0 else None


def ways(work):
    """Name -> (changes to the environment, umask, words before the command, folder to be in)."""
    home = work / "home of another"
    home.mkdir()
    out = {"a plain run": ({}, 0o022, [], None),
           "another time zone": ({"TZ": "Pacific/Kiritimati"}, 0o022, [], None),
           "another umask": ({}, 0o077, [], None),
           "another user": ({"HOME": str(home), "USER": "other", "LOGNAME": "other", "TMPDIR": str(home)}, 0o022, [], None),
           "no environment": (None, 0o022, [], None),
           "run from its folder": ({}, 0o022, [], "."),
           "an older machine's day": ({"SOURCE_DATE_EPOCH": "86400"}, 0o022, [], None)}
    if comma := comma_locale(work):
        out["decimals with a comma"] = (comma, 0o022, [], None)
    else:
        print("SKIPPED: no locale with a decimal comma", flush=True)
    if shutil.which("faketime"):
        out["another day"] = ({}, 0o022, ["faketime", "2031-02-03 04:05:06"], None)
    else:
        print("SKIPPED: faketime is not installed", flush=True)
    return out


def issue(binary, survey, way):
    changes, umask, before, inside = way
    environment = {} if changes is None else {**os.environ, **changes}
    command = [*before, str(binary), "issue", survey.name if inside else str(survey)]
    return subprocess.run(command, capture_output=True, text=True, env=environment, umask=umask, cwd=survey.parent if inside else "/")


def both_issues(binary, root, folder, way):
    survey = first_issue(root, folder)
    done = [issue(binary, survey, way)]
    second_issue(survey)
    done.append(issue(binary, survey, way))
    for one in done:
        expect(one.returncode == 0, f"{folder.parent.name}: leaves with 0: {one.stderr[:400]}")
    return tree(folder / "issued")


def main():
    binary, root = program()
    with tempfile.TemporaryDirectory(prefix="strakebook-judge-") as temporary:
        work = Path(temporary)
        first = None
        for number, (name, way) in enumerate(ways(work).items()):
            place = work / f"place {number}" / ("n\u00e9w \u2013 " * number + "folder")
            place.parent.mkdir()
            made = both_issues(binary, root, place, way)
            first = first or made
            expect(len(made) >= 5, f"{name}: a register and the documents of two issues: {sorted(made)}")
            differ = {path for path in first.keys() | made.keys() if first.get(path) != made.get(path)}
            expect(not differ, f"{name}: other bytes in {sorted(differ)}")
    finish("same_everywhere")


main()
