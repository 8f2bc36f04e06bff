"""Every example, and the big barge: the file is sound to four other programs, and no word leaves its sheet or lies on another."""
import hashlib
import re
from pathlib import Path

import yaml

from boxes import frame, ink, overlaps
from judge import expect, finish, folder, need, pages, plain, program, run, surveys, typeset

def sha(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


def judge_the_judge():
    """Two words on one place, and one clear of the other, are told apart."""
    class Box:
        def __init__(self, x0, y0, x1, y1):
            self.x0, self.y0, self.x1, self.y1, self.text = x0, y0, x1, y1, "word"
    expect(list(overlaps([Box(0, 0, 30, 10), Box(29, 2, 60, 12)])), "an overlap of 1 pt is noticed")
    expect(not list(overlaps([Box(0, 0, 30, 10), Box(30.1, 0, 60, 10)])), "neighbours on a line are not an overlap")


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
                expect(len(pages(pdf)) <= 15, f"a boat with nothing wrong takes 15 pages at the most, not {len(pages(pdf))}")
    finish("judge_examples")


main()
