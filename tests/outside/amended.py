"""A report corrected after it left, the whole way: issue 1; the corrected survey refused until every change has its reason; issue 2 with
notices and bars; issue 1 as it was; the addendum after repair.

What changed is found here from the inputs attached to the two PDFs, without the program, and must be what the program lists and what
the new PDF prints: nothing missing, nothing more.
"""
import hashlib
import json
import re
import shutil
from pathlib import Path

import yaml

from bars import barred, bars
from input_changes import differences, things
from judge import expect, finish, folder, lines, load, need, pages, program, run
from pdf_links import Pdf

FIRST, SECOND, CLOSING = "RD-2702-issue-1", "RD-2702-issue-2", "RD-2702-issue-2-addendum-1"
REASON = re.compile(r"(?m)^    - \{what: (.*), why: .*\}\n")
# Figures typed wrongly: mark, as issue 1 has it, as it was read.
CORRECTED = {"SL 7": ("6.4", "4.6"), "PW 11": ("4.2", "3.2")}
PRIVATE = b"notebook 14"
LINE = 6  # points below an anchor, within the line that it names


def sha(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


def snapshot(where):
    """Digests of what lies in a folder; what begins with a dot is the program's own while it works."""
    return {str(p.relative_to(where)): sha(p) for p in sorted(where.rglob("*")) if p.is_file() and not p.name.startswith(".")}


def pdf_of(survey, name):
    return survey.parent / "issued" / name / f"{name}.pdf"


def attached(pdf, work):
    """{path: bytes} of the files attached to a PDF, by poppler."""
    names, out = re.findall(r"(?m)^\d+: (.*)$", run("pdfdetach", "-list", pdf).stdout), {}
    for number, name in enumerate(names, 1):
        one = work / "attached"
        run("pdfdetach", "-save", number, "-o", one, pdf)
        out[name] = one.read_bytes()
    return out


def without(text, dropped):
    """The survey's text without the reasons for which `dropped(what)` holds, and without keys that are left empty."""
    return re.sub(r"(?m)^  (changes|stands):\n(?!    - )", "", REASON.sub(lambda m: "" if dropped(m.group(1)) else m.group(0), text))


def names(what):
    return [w.strip() for w in what.strip("[]").split(",")]


def refused(binary, survey, text, wanted, what):
    """The survey with this text is refused, the refusal names exactly these, and nothing is changed by it."""
    before = snapshot(survey.parent / "issued")
    survey.write_text(text)
    done = run(binary, "issue", survey)
    expect(done.returncode == 1, f"{what}: refused with 1, not {done.returncode}: {done.stderr[:400]}")
    blocks = re.findall(r"(?s)error SB057[02]: .*?(?=\n\n|\Z)", done.stderr)
    asked = sorted(name for block in blocks for name in names(re.search(r"what: (\[.*?\]|[^,}\n]+)", block).group(1)))
    expect(asked == sorted(wanted), f"{what}: asked for {asked}, not {sorted(wanted)}")
    expect(snapshot(survey.parent / "issued") == before, f"{what}: a refusal changes nothing that was issued")


def judge_refusals(binary, survey, text, found):
    reasons = REASON.findall(text)
    stands = names(REASON.findall(text[text.index("  stands:"):])[0])
    expect(sorted(n for what in reasons for n in names(what)) == sorted([*found, *stands]), "the example gives a reason for each change that is found here")
    refused(binary, survey, without(text, lambda _: True), [*found, *stands], "no reason at all")
    for what in reasons:
        refused(binary, survey, without(text, lambda one: one == what), names(what), f"no reason for {what}")
    more = text.replace("  stands:\n", "    - {what: PW 3, why: Nothing of it differs.}\n  stands:\n")
    survey.write_text(more)
    done = run(binary, "issue", survey)
    expect(done.returncode == 1 and "SB0571" in done.stderr and "PW 3" in done.stderr, f"a reason for nothing is refused: {done.stderr[:300]}")
    survey.write_text(text)


def judge_list(binary, first, second, found):
    """The program's own list against the difference found here, both ways, field by field."""
    done = run(binary, "compare", first, second, "--format", "json")
    expect(done.returncode == 0, f"compare leaves with 0: {done.stderr[:300]}")
    listed = json.loads(done.stdout)
    got = {c["subject"]: {d["field"]: (d["before"], d["after"]) for d in c["differences"]} for c in listed["changes"]}
    expect(len(listed["changes"]) == len(got), "no subject is listed twice")
    expect(got.keys() == found.keys(), f"listed and not found here {got.keys() - found.keys()}; found and not listed {found.keys() - got.keys()}")
    for subject in got.keys() & found.keys():
        expect(got[subject].keys() == found[subject].keys(), f"{subject}: fields {got[subject].keys() ^ found[subject].keys()} are in one list only")
    for mark in (s for s in found if "reading" in found[s]):
        expect(got[mark]["reading"] == found[mark]["reading"], f"{mark}: {got[mark]['reading']}, not {found[mark]['reading']}")
    expect(listed["decision_changed"] is True, "a decision changed")
    expect([s["zone"] for s in listed["stands"]] == ["L"], f"one decision stands though its verdicts moved: {listed['stands']}")
    return listed


def in_fours(digest, figures=12):
    return " ".join(digest[i:i + 4] for i in range(0, figures, 4))


def page_text(pdf, first, last):
    return " ".join(run("pdftotext", "-f", first, "-l", last, pdf, "-").stdout.split())


def said(line):
    """A line's words without the numbers of pages."""
    return re.sub(r"(\bp\.\s?|\bpage )\d+( of \d+)?", "", " ".join(w.text for w in line)).strip()


def pages_of_changes(pdf):
    """(first, last) page of what changed: from its heading to the page before that of the next chapter."""
    texts = [page_text(pdf, n, n) for n in range(1, len(pages(pdf)) + 1)]
    first = next(n for n, text in enumerate(texts, 1) if "What changed" in text and "Every change on later pages" in text)
    return first, next(n for n, text in enumerate(texts, 1) if n > first and "2 This report" in text) - 1


def judge_page_one(second, digest, listed):
    said = page_text(second, 1, 1)
    expect(f"replaces issue 1 of 21 October 2026 ({in_fours(digest)}" in said, f"page one names number, date and digest: {said[:600]}")
    expect("a decision changed" in said, "page one says that a decision changed")
    first, last = pages_of_changes(second)
    text = page_text(second, first, last)
    laid = " ".join(run("pdftotext", "-layout", "-f", first, "-l", last, second, "-").stdout.split())
    for mark, (then, now) in CORRECTED.items():
        expect(f"{mark} {then} {now}" in laid, f"the list has {mark}, {then} then and {now} now")
    for change in listed["changes"]:
        expect(" ".join(change["why"].split()) in text, f"{change['subject']}: its reason is printed")
    return text


def judge_notices(survey, recipients, digest):
    there = sorted(p.name for p in (survey.parent / "issued" / SECOND).glob("recall-*.pdf"))
    slug = lambda who: re.sub("[^a-z]+", "-", who.lower())
    expect(there == sorted(f"recall-of-issue-1-to-{slug(r['who'])}.pdf" for r in recipients), f"a notice for each who had issue 1: {there}")
    for name in there:
        notice = survey.parent / "issued" / SECOND / name
        text = page_text(notice, 1, 1)
        expect(len(pages(notice)) == 1, f"{name} is one page")
        wanted = ["RD 2702", "issue 1 of 21 October 2026", "A decision changed", in_fours(digest, 64), "SL 7", "6.4", "4.6", "PW 11", "4.2", "3.2"]
        expect(all(w in text for w in wanted), f"{name} says {[w for w in wanted if w not in text]}")


def no_longer_lowest(marks, corrected):
    """Of the rows of corrected marks, the lowest before, of equals the first."""
    figures = {m: float(f["reading"]) for m, f in marks.items() if re.fullmatch(r"[\d.]+", f.get("reading", ""))}
    rows = {m.split()[0] for m in corrected}
    return {min((m for m in figures if m.split()[0] == row), key=figures.get) for row in rows} - set(corrected)


def judge_bars(first, second, style, found, before):
    """In the tables of readings a bar stands beside the lines of corrected marks, and of those that were the lowest of their row until
    then and are set strong no longer, and no other; every other bar has something beside it that issue 1 does not say, or is of a figure."""
    expect(not any(bars(first, style)), "issue 1 has no bar")
    drawn, sheets = bars(second, style), pages(second)
    rows = {name.removeprefix("mark/"): (page, sheets[page][1] - y) for name, (page, _, y) in Pdf(second).names.items() if name.startswith("mark/")}
    marks = {mark for mark in found if "reading" in found[mark]}
    corrected = {rows[mark] for mark in marks | no_longer_lowest(before, marks)}
    beside = {m for m, (page, y) in rows.items() if any(p == page and abs(at - y) < LINE for p, at in corrected)}
    got = {m for m, (page, y) in rows.items() if any(top < y + LINE < bottom for top, bottom in drawn[page])}
    expect(got == beside, f"bars stand beside {sorted(got - beside)} too, and not beside {sorted(beside - got)}")
    old = {said(line) for _, _, words in pages(first) for line in lines(words)}
    for page, ((_, _, words), of_page) in enumerate(zip(sheets, drawn), 1):
        for bar in of_page:
            near = [line for line, has in barred([bar], words) if has]
            figure = any(w.text in ("Figure", "station,") for line in near for w in line)
            figure = figure or any(p == page - 1 and bar[0] < at + LINE < bar[1] for p, at in corrected)
            expect(figure or any(said(line) not in old for line in near), f"page {page}: a bar beside what issue 1 says too: {[said(l) for l in near]}")


def judge_after(binary, survey, old, digest, work):
    """The addendum, the stamped copy, and nothing private in what went out."""
    issued = snapshot(survey.parent / "issued")
    done = run(binary, "issue", survey, "--addendum", "1")
    expect(done.returncode == 0, f"the addendum leaves with 0: {done.stderr[:400]}")
    now = snapshot(survey.parent / "issued")
    expect({p for p in issued if now[p] != issued[p]} == {"register.txt"}, "of what went out only the register is longer")
    closing, second = pdf_of(survey, CLOSING), pdf_of(survey, SECOND)
    text = page_text(closing, 1, len(pages(closing)))
    for words in ("closed, done 20 November 2026", "4.8 mm", in_fours(sha(second), 64), "Items of the report that stay open", "Recoat the low sides"):
        expect(words in text, f"the addendum says: {words}")
    copy = survey.parent / "issued" / SECOND / f"{FIRST}-superseded.pdf"
    count = len(pages(pdf_of(survey, FIRST)))
    expect(all("SUPERSEDED by issue 2 of 9 November 2026" in page_text(copy, n, n) for n in range(1, count + 1)), "each page of the stamped copy says so")
    for pdf in (survey.parent / "issued").rglob("*.pdf"):
        expect(all(PRIVATE not in data for data in attached(pdf, work).values()), f"{pdf.name}: private notes are not attached")


def main():
    need("pdfdetach", "pdftotext", "qpdf")
    binary, root = program()
    given = root / "tests/outside/surveys/two-issues"
    example = root / "example-surveys/two-issues"
    style = yaml.safe_load((root / "layouts/base/page.yaml").read_text())["style"]
    with folder() as work:
        work = Path(work)
        survey = Path(shutil.copytree(given, work / "survey")) / "survey.yaml"
        done = run(binary, "issue", survey)
        expect(done.returncode == 0, f"issue 1 leaves with 0: {done.stderr[:600]}")
        first, register = pdf_of(survey, FIRST), survey.parent / "issued/register.txt"
        digest, opening = sha(first), register.read_bytes()
        for path in ("survey.yaml", "readings/hull.csv"):
            shutil.copy(example / path, survey.parent / path)
        text = survey.read_text()
        old = attached(first, work)
        new = {p: (survey.parent / p).read_bytes() for p in ("survey.yaml", "readings/hull.csv")}
        found = differences(things(old), things(new))
        judge_refusals(binary, survey, text, found)
        done = run(binary, "issue", survey)
        expect(done.returncode == 0, f"issue 2 leaves with 0: {done.stderr[:600]}")
        second = pdf_of(survey, SECOND)
        expect(sha(first) == digest and register.read_bytes().startswith(opening), "issue 1 and its line in the register are as they were")
        expect(differences(things(old), things(attached(second, work))) == found, "what is attached to issue 2 says what the survey says")
        listed = judge_list(binary, first, second, found)
        judge_page_one(second, digest, listed)
        judge_notices(survey, yaml.safe_load(old["survey.yaml"])["recipients"], digest)
        judge_bars(first, second, style, found, things(old))
        judge_after(binary, survey, old, digest, work)
    finish("amended")


main()
