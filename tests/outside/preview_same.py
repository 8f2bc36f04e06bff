"""The preview is the PDF: every glyph and every path of every page stands where poppler finds it in the file, to 0.1 pt."""
from pathlib import Path

from judge import expect, finish, folder, need, pages, program, run, typeset
from svg_marks import read

MOST = 0.1
EXAMPLES = ("thick-bottom", "original-unknown")


def apart(a, b):
    """How far two tuples of coordinates lie apart at most; a glyph without ink has no outline in either."""
    if a is None or b is None:
        return 0 if a == b else float("inf")
    return max(abs(x - y) for x, y in zip(a, b))


def worst(ours, theirs, part):
    return max((apart(part(a), part(b)) for a, b in zip(ours, theirs)), default=0)


def judge_page(where, ours, theirs):
    expect(apart(ours["size"], theirs["size"]) < MOST, f"{where}: the sheets are of one size")
    for kind in ("glyphs", "paths"):
        expect(len(ours[kind]) == len(theirs[kind]), f"{where}: {len(ours[kind])} {kind} here, {len(theirs[kind])} in the PDF")
    found = {"place of a glyph": worst(ours["glyphs"], theirs["glyphs"], lambda g: g[:2]),
             "outline of a glyph": worst(ours["glyphs"], theirs["glyphs"], lambda g: g[2]),
             "box of a path": worst(ours["paths"], theirs["paths"], lambda p: p)}
    for what, by in found.items():
        expect(by < MOST, f"{where}: the {what} differs by {by:.4f} pt")
    return found


def judge_the_judge(ours):
    """One glyph moved by 0.11 pt is noticed."""
    x, y, outline = ours["glyphs"][5]
    moved = ours["glyphs"][:5] + [(x + 0.11, y, outline)] + ours["glyphs"][6:]
    expect(worst(moved, ours["glyphs"], lambda g: g[:2]) > MOST, "a moved glyph is noticed")


def judge(binary, root, name, work):
    survey, pdf = root / "example-surveys" / name / "survey.yaml", work / f"{name}.pdf"
    if not typeset(binary, survey, pdf):
        return
    drawn = work / name
    done = run(binary, "preview", survey, "-o", drawn, "--picture", "svg")
    expect(done.returncode == 0, f"{name}: preview leaves with 0, not {done.returncode}: {done.stderr[:300]}")
    count, most, glyphs = len(pages(pdf)), {}, 0
    expect(len(list(drawn.iterdir())) == count, f"{name}: one picture a page")
    for number in range(1, count + 1):
        theirs = work / "theirs.svg"
        run("pdftocairo", "-svg", "-noshrink", "-nocenter", "-origpagesizes", "-f", number, "-l", number, pdf, theirs)
        ours = read(drawn / f"page-{number:03}.svg")
        for what, by in judge_page(f"{name} page {number}", ours, read(theirs)).items():
            most[what] = max(by, most.get(what, 0))
        glyphs += len(ours["glyphs"])
        expect(f"page {number} of {count}" in ours["title"], f"{name} page {number}: the title says which page: {ours['title']}")
        expect(len(ours["desc"]) > 100, f"{name} page {number}: its words are told")
    judge_the_judge(ours)
    expect(glyphs > 10000, f"{name}: there were glyphs to compare, {glyphs}")
    print(f"{name}: {count} pages, {glyphs} glyphs; " + ", ".join(f"{what} at most {by:.5f} pt" for what, by in most.items()))


def main():
    need("pdftocairo", "pdftotext")
    binary, root = program()
    with folder() as work:
        for name in EXAMPLES:
            judge(binary, root, name, Path(work))
    finish("preview_same")


main()
