"""Every example, and the big barge: the file is sound to four other programs, and no word leaves its sheet or lies on another."""
import hashlib
import re
from pathlib import Path

import yaml

from judge import expect, finish, folder, need, pages, plain, program, run, surveys, typeset

# Boxes from pdftotext run from the face's ascent to its descent, far more than the ink. The ink of one line is taken as the
# middle 55 % of that box, about 0.7 of the type size: the height of its capitals and figures.
INK = 0.55
MOST_OVERLAP = SLACK = 0.2


def sha(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


def ink(word):
    """Upright words lose ascent and descent in height; words set upwards are taller than wide, and lose them in width."""
    if word.y1 - word.y0 > 1.25 * (word.x1 - word.x0) and len(word.text) > 3:
        spare = (word.x1 - word.x0) * (1 - INK) / 2
        return word.x0 + spare, word.y0, word.x1 - spare, word.y1
    spare = (word.y1 - word.y0) * (1 - INK) / 2
    return word.x0, word.y0 + spare, word.x1, word.y1 - spare


def overlaps(words):
    boxes = sorted(((ink(w), w.text) for w in words), key=lambda b: b[0][1])
    for i, (a, said) in enumerate(boxes):
        for b, other in boxes[i + 1:]:
            if b[1] > a[3]:
                break
            wide, high = min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1])
            if wide > MOST_OVERLAP and high > MOST_OVERLAP:
                yield said, other, a


def judge_the_judge():
    """Two words on one place, and one clear of the other, are told apart."""
    class Box:
        def __init__(self, x0, y0, x1, y1):
            self.x0, self.y0, self.x1, self.y1, self.text = x0, y0, x1, y1, "word"
    expect(list(overlaps([Box(0, 0, 30, 10), Box(29, 2, 60, 12)])), "an overlap of 1 pt is noticed")
    expect(not list(overlaps([Box(0, 0, 30, 10), Box(30.1, 0, 60, 10)])), "neighbours on a line are not an overlap")


def frame(masters, width, height):
    """What may be printed on: between the side margins, from the running head's capitals to the foot's descenders."""
    master = masters["page" if width < height else "map"]
    points = {k: float(v[:-2]) * 72 / 25.4 for k, v in master.items() if isinstance(v, str) and v.endswith("mm")}
    head, foot = points["head-baseline"] - 9, height - points["foot-baseline"] + 3
    return points["left"] - SLACK, head, width - points["right"] + SLACK, foot


def judge_pages(name, pdf, masters):
    sheets = pages(pdf)
    for number, (width, height, words) in enumerate(sheets, 1):
        where = f"{name} page {number}"
        text = " ".join(w.text for w in words)
        expect(re.search(rf"page {number} of {len(sheets)}\b", text), f"{where} says which page of {len(sheets)} it is")
        expect("not issued" in text.lower(), f"{where} says not issued")
        left, top, right, bottom = frame(masters, width, height)
        for w in words:
            x0, y0, x1, y1 = ink(w)
            expect(x0 >= left and y0 >= top and x1 <= right and y1 <= bottom, f"{where}: '{w.text}' is outside the frame at {x0:.1f} {y0:.1f}")
        for said, other, box in overlaps(words):
            expect(False, f"{where}: '{said}' lies on '{other}' at {box[0]:.1f} {box[1]:.1f}")
    last = " ".join(w.text for w in sheets[-1][2])
    expect("End of the report" in last, f"{name}: the last page bears the end mark")
    expect(plain(pdf).count("End of the report") == 1, f"{name}: there is one end mark")


def judge_fonts(name, pdf):
    rows = run("pdffonts", pdf).stdout.splitlines()[2:]
    expect(rows, f"{name}: pdffonts lists faces")
    for row in rows:
        emb, sub, uni = row.split()[-5:-2]
        expect((emb, sub, uni) == ("yes", "yes", "yes"), f"{name}: face embedded, subset and with unicode: {row}")


def judge_tools(name, pdf, work):
    for tool in (["qpdf", "--check", pdf], ["mutool", "info", pdf], ["mutool", "clean", pdf, work / "clean.pdf"],
                 ["gs", "-q", "-dBATCH", "-dNOPAUSE", "-dSAFER", "-sDEVICE=nullpage", pdf]):
        done = run(*tool)
        said = (done.stdout + done.stderr).lower()
        expect(done.returncode == 0 and "warning" not in said and "error:" not in said, f"{name}: {tool[0]} is content: {said[:300]}")


def main():
    need("qpdf", "pdffonts", "pdftotext", "mutool", "gs")
    binary, root = program()
    judge_the_judge()
    masters = yaml.safe_load((root / "layouts/base/page.yaml").read_text())["style"]["masters"]
    with folder() as work:
        work = Path(work)
        for survey in surveys(root, work):
            name, pdf, again = survey.parent.name, work / "a.pdf", work / "b.pdf"
            if not typeset(binary, survey, pdf) or not typeset(binary, survey, again):
                continue
            expect(sha(pdf) == sha(again), f"{name}: two runs give the same bytes")
            judge_tools(name, pdf, work)
            judge_fonts(name, pdf)
            judge_pages(name, pdf, masters)
            if name == "clean-boat":
                expect(len(pages(pdf)) <= 14, f"a boat with nothing wrong takes 14 pages at the most, not {len(pages(pdf))}")
    finish("judge_examples")


main()
