"""What is refused, with which exit code, in which words, and that earlier output is left as it was."""
import json
import re
from pathlib import Path

from judge import copy_of, expect, finish, folder, program, run

KEPT = b"earlier output"
HEAD = re.compile(r"^\S[^\n]*:\d+:\d+: error ", re.M)


def edit(path, old, new):
    text = path.read_text()
    assert old in text, f"the example no longer holds {old!r}"
    path.write_text(text.replace(old, new, 1))


def short_photo(survey):
    photo = survey.parent / "photos/p1.jpg"
    photo.write_bytes(photo.read_bytes()[:1500])


def short_csv(survey):
    table = survey.parent / "readings/hull.csv"
    table.write_text("\n".join(table.read_text().splitlines()[:9]) + "\n")


def cut_inside_a_line(survey):
    table = survey.parent / "readings/hull.csv"
    table.write_text(table.read_text()[:1203])


BAD_INPUT = {
    "unreadable photo": short_photo,
    "truncated CSV": short_csv,
    "CSV cut inside a line": cut_inside_a_line,
    "duplicate key": lambda s: edit(s, "  W:\n    name: wind-and-water", "  W:\n    name: sides\n    name: wind-and-water"),
    "comma decimal": lambda s: edit(s, "    original: 6.0", "    original: 6,0"),
    "pit with one figure": lambda s: edit(s, "adjacent: 11.4, depth: 3.5,", "adjacent: 11.4,"),
    "conflict unanswered": lambda s: s.write_text(re.sub(r"(?ms)^    conflict:\n.*?^(?=\S)", "\n", s.read_text(), count=1)),
}


def judge_text(name, done):
    expect(done.returncode == 1, f"{name}: leaves with 1, not {done.returncode}")
    expect(HEAD.match(done.stderr), f"{name}: begins with its place: {done.stderr[:200]}")
    blocks = [b for b in re.split(r"\n\n", done.stderr) if ": error " in b]
    expect(blocks, f"{name}: says an error")
    for block in blocks:
        expect("\n  write: " in block, f"{name}: says what to write: {block}")


def judge_json(name, done):
    expect(done.returncode == 1, f"{name}: the JSON form leaves with 1 too, not {done.returncode}")
    try:
        found = [d for d in json.loads(done.stderr)["diagnostics"] if d["severity"] == "error"]
    except (ValueError, KeyError):
        return expect(False, f"{name}: the JSON form is JSON: {done.stderr[:200]}")
    expect(found, f"{name}: the JSON form says an error")
    for d in found:
        expect(d["line"] >= 1 and d["column"] >= 1 and d["file"] and d["code"] and d.get("write"), f"{name}: JSON has place, code and remedy: {d}")


def bad_inputs(binary, example, work):
    for number, (name, spoil) in enumerate(BAD_INPUT.items()):
        survey = copy_of(example, work / f"bad{number}")
        spoil(survey)
        out = work / f"out{number}"
        out.mkdir()
        pdf = out / "report.pdf"
        pdf.write_bytes(KEPT)
        judge_text(name, run(binary, "typeset", survey, "-o", pdf))
        judge_json(name, run(binary, "typeset", survey, "-o", pdf, "--format", "json"))
        expect(pdf.read_bytes() == KEPT and len(list(out.iterdir())) == 1, f"{name}: earlier output is untouched and alone")


def usage(binary, example, work):
    commands = re.findall(r"(?m)^  ([a-z]+) +[A-Z]", run(binary, "--help").stdout.split("ommands:")[-1])
    expect({"check", "assess", "quantities", "typeset", "preview"} <= set(commands), f"--help names the commands: {commands}")
    for command in [""] + commands:
        done = run(*filter(None, [str(binary), command, "--help"]))
        expect(done.returncode == 0 and len(done.stdout) > 80, f"{command} --help teaches and leaves with 0")
    expect(run(binary, "typeset", example, "-o", work / "x.pdf", "--no-such-option").returncode == 2, "an unknown option leaves with 2")
    expect(run(binary, "typeset", example).returncode == 2, "no output named leaves with 2")
    expect(run(binary).returncode == 2, "no command leaves with 2")
    expect(run(binary, "typeset", work / "none.yaml", "-o", work / "x.pdf").returncode == 3, "a missing survey leaves with 3")
    expect(run(binary, "typeset", example, "-o", work / "none" / "x.pdf").returncode == 3, "a missing output folder leaves with 3")
    expect(not (work / "x.pdf").exists() and not (work / "none").exists(), "nothing was written")


def bare_name(binary, example, work):
    survey = copy_of(example, work / "bare")
    before = sorted(p.relative_to(survey.parent) for p in survey.parent.rglob("*"))
    done = run(binary, "typeset", "survey.yaml", "-o", "../bare.pdf", cwd=survey.parent)
    expect(done.returncode == 0, f"a survey named without a folder is read beside itself: {done.stderr[:400]}")
    expect(before == sorted(p.relative_to(survey.parent) for p in survey.parent.rglob("*")), "nothing is written beside the survey")


def main():
    binary, root = program()
    example = root / "example-surveys/thick-bottom/survey.yaml"
    with folder() as work:
        work = Path(work)
        bad_inputs(binary, example, work)
        usage(binary, example, work)
        bare_name(binary, example, work)
    finish("refusals")


main()
