"""preview by page and by figure: what is asked for and nothing else, the same bytes each time, and a plain refusal."""
import shutil
from pathlib import Path

from judge import expect, finish, folder, program, run
from svg_marks import read


def names(drawn):
    return sorted(p.name for p in drawn.iterdir()) if drawn.is_dir() else []


def preview(binary, survey, drawn, *asked):
    return run(binary, "preview", survey, "-o", drawn, *asked)


def judge_choice(binary, survey, work):
    done = preview(binary, survey, work / "some", "--pages", "3,1-2,2", "--dpi", "40")
    expect(done.returncode == 0 and names(work / "some") == ["page-001.png", "page-002.png", "page-003.png"],
           f"three pages are drawn, each once: {names(work / 'some')} {done.stderr[:300]}")
    for asked in ("0", "3-2", "x", "1,", ",", "2-", "1 2", "99999999999"):
        done = preview(binary, survey, work / "none", "--pages", asked)
        expect(done.returncode == 2 and "as in 3,5-7" in done.stderr, f"--pages '{asked}' is refused: {done.stderr[:200]}")
    done = preview(binary, survey, work / "none", "--pages", "500")
    expect(done.returncode == 2 and "SB0209" in done.stderr and "pages from 1 to" in done.stderr, f"no page 500: {done.stderr[:200]}")
    done = preview(binary, survey, work / "none", "--figure", "figure/mup")
    expect(done.returncode == 2 and "SB0205" in done.stderr, f"no such figure: {done.stderr[:200]}")
    for said in ("figure/map (Figure ", "figure/profiles", "photo/1", "write: --figure figure/map"):
        expect(said in done.stderr, f"the figures that are there are listed, with {said}: {done.stderr[:600]}")
    expect(names(work / "none") == [], "nothing is written where anything is refused")


def label_of(figure, said):
    """'Figure 10.1' out of 'figure/map (Figure 10.1);' in the list of figures."""
    return said.split(f"{figure} (")[1].split(")")[0]


def judge_figure(binary, survey, work):
    said = preview(binary, survey, work / "none", "--figure", "?").stderr
    for asked, drawn in (("figure/map", "by-id"), (label_of("figure/map", said), "by-label")):
        done = preview(binary, survey, work / drawn, "--figure", asked, "--picture", "svg", "--margin", "6")
        expect(done.returncode == 0 and names(work / drawn) == ["figure-map.svg"], f"{asked}: {names(work / drawn)} {done.stderr[:200]}")
    one, other = work / "by-id/figure-map.svg", work / "by-label/figure-map.svg"
    expect(one.read_bytes() == other.read_bytes(), "by id and by label it is the same picture")
    figure = read(one)
    preview(binary, survey, work / "sheets", "--picture", "svg")
    width, height = figure["size"]
    sheets = [read(work / "sheets" / name) for name in names(work / "sheets")]
    sheet = next(s for s in sheets if figure["desc"][-60:] in s["desc"])
    expect(width < sheet["size"][0] and height < sheet["size"][1] * 0.8, f"the figure is cut out of its sheet: {figure['size']}")
    for x, y, _ in figure["glyphs"]:
        expect(0 <= x <= width and 0 <= y <= height, f"no glyph of the figure is cut off: {x} {y}")
    boxes = figure["paths"][1:] # the first is the white ground
    left, top = min(b[0] for b in boxes), min(b[1] for b in boxes)
    expect(left >= 5 and top >= 5, f"a margin is kept: {left} {top}")
    expect(not any("page " in s["title"] for s in [figure]) and label_of("figure/map", said) in figure["title"].replace("\u00a0", " "),
           f"the title says which figure it is: {figure['title']}")
    shown = {(round(b[2] - b[0], 2), round(b[3] - b[1], 2)) for b in boxes}
    on_sheet = {(round(b[2] - b[0], 2), round(b[3] - b[1], 2)) for b in sheet["paths"]}
    expect(len(shown - on_sheet) <= len(shown) // 20, "what the cut shows is on the sheet, at the same size")


def judge_bytes(binary, survey, work):
    for kind in ("png", "svg"):
        # In another order of drawing, so that no number of the process can get into the bytes.
        preview(binary, survey, work / f"all-{kind}", "--picture", kind, "--dpi", "30")
        last = names(work / f"all-{kind}")[-3:]
        for name in last:
            preview(binary, survey, work / f"one-{kind}", "--picture", kind, "--dpi", "30", "--pages", str(int(name[5:8])))
            expect((work / f"all-{kind}" / name).read_bytes() == (work / f"one-{kind}" / name).read_bytes(),
                   f"{name} is the same drawn alone and after others")


def judge_words(binary, survey, work):
    """Signs that XML has another use for stand in title and description as they were written."""
    text = survey.read_text()
    title = "Fen & <Drove>"
    folder_of = work / "escaped"
    shutil.copytree(survey.parent, folder_of)
    name = text.split("vessel:")[1].split("name: ")[1].split("\n")[0]
    (folder_of / "survey.yaml").write_text(text.replace(f"name: {name}\n", f'name: "{title}"\n', 1))
    done = preview(binary, folder_of / "survey.yaml", work / "words", "--pages", "1", "--picture", "svg")
    expect(done.returncode == 0, f"the renamed vessel is drawn: {done.stderr[:300]}")
    if done.returncode == 0:
        page = read(work / "words/page-001.svg")
        expect(title in page["title"] and title in page["desc"], f"the words are told: {page['title']}")


def judge_inputs(binary, survey, work):
    """A picture that would replace a photograph of the survey is refused, and the photograph stays."""
    folder_of = work / "inputs"
    shutil.copytree(survey.parent, folder_of)
    old = next(p for p in sorted((folder_of / "photos").iterdir()))
    shutil.move(old, folder_of / "photos/page-001.png")
    text = (folder_of / "survey.yaml").read_text().replace(f"photos/{old.name}", "photos/page-001.png")
    (folder_of / "survey.yaml").write_text(text)
    before = (folder_of / "photos/page-001.png").read_bytes()
    done = preview(binary, folder_of / "survey.yaml", folder_of / "photos", "--pages", "1")
    expect(done.returncode == 3, f"an input is not drawn over: {done.returncode} {done.stderr[:300]}")
    expect((folder_of / "photos/page-001.png").read_bytes() == before, "the photograph is as it was")


def main():
    binary, root = program()
    survey = root / "example-surveys/thick-bottom/survey.yaml"
    with folder() as work:
        for judge in (judge_choice, judge_figure, judge_bytes, judge_words, judge_inputs):
            judge(binary, survey, Path(work))
    finish("preview_figures")


main()
