"""One reading or twenty thousand, no photograph or four hundred, the longest names, A4 and US Letter, upright and lying sheets:
nothing is clipped, covered or lost, and what cannot be set is refused with the place in the survey."""
import re
from pathlib import Path

import yaml

import long_surveys
from boxes import frame, ink, overlaps
from judge import expect, finish, folder, load, need, pages, program, run, typeset
from readback import differences, printed_marks, printed_pits

LETTER = "layout: 1\nextends: river-desk\nstyle: {masters: {page: {sheet: [215.9mm, 279.4mm]}, map: {sheet: [279.4mm, 215.9mm]}}}\n"
LYING = "layout: 1\nextends: river-desk\nstyle: {masters: {page: {sheet: [297mm, 210mm]}}}\n"
UPRIGHT = "layout: 1\nextends: river-desk\nstyle: {masters: {map: {sheet: [210mm, 297mm]}}}\n"


def masters_of(root, house):
    masters = yaml.safe_load((root / "layouts/base/page.yaml").read_text())["style"]["masters"]
    for name, change in (yaml.safe_load(house)["style"]["masters"] if house else {}).items():
        masters[name] = {**masters[name], **change}
    return masters


def printable(masters, width, height):
    """The frame, with a second line of the running head above the first: the longest names need it."""
    left, top, right, bottom = frame(masters, width, height)
    return left, top - 10, right, bottom


HANG = 3  # points: marks at the end of a justified line stand a part of themselves outside


def judge_words(name, pdf, masters):
    for number, (width, height, words) in enumerate(pages(pdf), 1):
        left, top, right, bottom = printable(masters, width, height)
        for word in words:
            x0, y0, x1, y1 = ink(word)
            if x0 < left or y0 < top or x1 > right + HANG or y1 > bottom:
                expect(False, f"{name} page {number}: '{word.text}' is outside its frame")
        for said, other, at in overlaps(words):
            expect(False, f"{name} page {number}: '{said}' lies on '{other}' at {at[0]:.0f} {at[1]:.0f}")


def rows_of(picture):
    """(width, height, grey bytes) of each page of a stream of PGM pictures."""
    at = 0
    while at < len(picture):
        head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", picture[at:at + 40])
        width, height = int(head.group(1)), int(head.group(2))
        begin = at + head.end()
        yield width, height, picture[begin:begin + width * height]
        at = begin + width * height


def judge_ink(name, pdf, masters, work):
    """Rendered: no ink in the margins (a pixel of slack)."""
    import subprocess
    dots = 40
    done = subprocess.run(["pdftoppm", "-r", str(dots), "-gray", str(pdf)], capture_output=True)
    count = 0
    for count, (width, height, grey) in enumerate(rows_of(done.stdout), 1):
        left, top, right, bottom = (v * dots / 72 for v in printable(masters, width * 72 / dots, height * 72 / dots))
        a, b = max(0, int(left) - 1), int(right) + 2
        clear = lambda part: part.count(255) == len(part)
        sides = all(clear(grey[y * width:y * width + a]) and clear(grey[y * width + b:(y + 1) * width]) for y in range(height))
        ends = clear(grey[:max(0, int(top) - 1) * width]) and clear(grey[(int(bottom) + 2) * width:])
        expect(sides and ends, f"{name} page {count}: ink in a margin")
    expect(count == len(pages(pdf)), f"{name}: every page is rendered")


def judge_readings(name, survey, pdf):
    given = load(survey)
    lacking, extra = differences(survey, printed_marks(pdf, given["rows"]))
    expect(not lacking and not extra, f"{name}: readings lacking {list(lacking)[:3]}, too much {list(extra)[:3]}")
    pits = [p[0] for p in printed_pits(pdf, given.get("pits", {}))]
    expect(sorted(pits) == sorted(given.get("pits", {})), f"{name}: {len(pits)} of {len(given.get('pits', {}))} pits are read back")


def judge_photos(name, survey, pdf):
    given = load(survey).get("photos", {})
    text = re.sub(r"\s+", " ", run("pdftotext", pdf, "-").stdout)
    drawn = len(run("pdfimages", "-list", pdf).stdout.splitlines()[2:])
    expect(drawn == len(given), f"{name}: {drawn} pictures are shown, not {len(given)}")
    for number, photo in given.items():
        last = photo["caption"].split()[-2:]
        expect(" ".join(last) in text, f"{name}: the caption of photograph {number} ends as it was written")


def judge_overflow(binary, work):
    """A note that no page can hold is refused, and the message names its line."""
    survey = long_surveys.make(work / "overflow", stations=4)
    text = survey.read_text().replace("text: Rings clear wherever it was struck.", "text: " + "clear " * 6000)
    survey.write_text(text)
    line = next(i for i, l in enumerate(text.splitlines(), 1) if "clear clear" in l)
    done = run(binary, "typeset", survey, "-o", work / "overflow.pdf")
    expect(done.returncode == 1 and not (work / "overflow.pdf").exists(), "a note longer than a page is refused and nothing is written")
    expect(re.search(rf"survey\.yaml:{line}:\d+: .*SB0802", done.stderr.replace("\n", " ")), f"the message names line {line}: {done.stderr[:400]}")


def main():
    need("pdftotext", "pdftoppm", "pdfimages")
    binary, root = program()
    with folder() as work:
        work = Path(work)
        cases = {
            "single": (lambda to: long_surveys.make_single(to), None),
            "names": (lambda to: long_surveys.make(to, stations=6, pictures=12, long_names=True), None),
            "letter": (lambda to: long_surveys.make(to, stations=834, house=LETTER), LETTER),
            "photos": (lambda to: long_surveys.make(to, stations=10, pictures=400, house=LETTER), LETTER),
            "lying": (lambda to: long_surveys.make(to, stations=10, pictures=5, house=LYING), LYING),
            "upright": (lambda to: long_surveys.make(to, stations=10, house=UPRIGHT), UPRIGHT),
        }
        for name, (make, house) in cases.items():
            survey, pdf, masters = make(work / name), work / f"{name}.pdf", masters_of(root, house)
            if not typeset(binary, survey, pdf):
                continue
            print(f"{name}: {len(pages(pdf))} pages", flush=True)
            judge_words(name, pdf, masters)
            judge_ink(name, pdf, masters, work)
            judge_readings(name, survey, pdf)
            judge_photos(name, survey, pdf)
        judge_overflow(binary, work)
    finish("any_length")


main()
