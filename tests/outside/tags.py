"""Every example and the big barge as a reader hears them: the structure tree by our own rules, the readings out of it in the
order of the survey, and what poppler makes of it. Then the rules are judged: each kind of fault, made on purpose, is found."""
import re
import subprocess
from pathlib import Path
from xml.etree import ElementTree

from judge import expect, finish, folder, need, program, run, surveys, typeset
from pdf_model import string
from readback import FIGURE, differences, figures, input_marks, station
from tag_rules import Element, Tagged

# What is broken, in the order of one file; the words of the fault that must be found.
FAULTS = [
    ("an operator outside marked content", rb"EMC\nendstream", b"EMC\n0 0 m 9 9 l S\nendstream", "paints outside marked content"),
    ("marked content that never ends", rb"EMC\nendstream", b"endstream", "does not end"),
    ("marked content that is not in the tree", rb"/MCID 0>> BDC", b"/MCID 9000>> BDC", "in the tree 0 times"),
    ("a number that no page has", rb"/MCID 0>> BDC", b"/MCID 9000>> BDC", "that no page has"),
    ("a number twice on a page", rb"/MCID 1>> BDC", b"/MCID 0>> BDC", "is on a page twice"),
    ("a heading that skips a level", rb"/S /H2\n", b"/S /H4\n", "skips from level"),
    ("a figure that says nothing", rb"/Alt (<[0-9a-f]*>|\((?:\\.|[^\\)])*\))", b"/Alt ()", "without words"),
    ("a figure without a box", rb"/BBox \[", b"/Bbox [", "without its box"),
    ("a head cell for nothing", rb"/Scope /Row", b"/Scope /No", "no scope"),
    ("a row with another count of cells", rb"/ColSpan \d+", b"/ColSpan 77", "rows of a table have"),
    ("a link that does not know its element", rb"/StructParent \d+", b"/StructParent 0", "the way back from a link"),
    ("a link without words", rb"/Contents \(", b"/Nothing (", "a link without words"),
    ("no language", rb"/Lang ", b"/Long ", "no language"),
    ("no title", rb"/Subject [^\n]*\n  /Title ", b"/Titel ", "no title"),
    ("a file that does not say it is tagged", rb"/Marked true", b"/Marked false", "is tagged"),
    ("an element of no standard type", rb"/S /TBody", b"/S /TBory", "no standard type"),
    ("a note without a name", rb"/ID \(note-00000001\)", b"/Id (note-00000001)", "identifier"),
]


def reading_rows(tree):
    """(row, station, figures displayed) as the cells of the readings tables say them, in the order of the tree."""
    for table in tree.document.all("/Table"):
        head = [cell.text() for cell in table.all("/TH") if cell.attribute("/Scope") == "/Column" and cell.parent.parent.type == "/THead"]
        if not head or not head[0].startswith("stn") or len(head) < 2 or not head[1].startswith("displayed"):
            continue
        row = None
        for line in table.all("/TR"):
            cells = [cell.text().replace("\N{NO-BREAK SPACE}", " ").split() for cell in line.kids if isinstance(cell, Element)]
            if len(cells) == 1:
                row = cells[0][0]
            elif row and FIGURE.match(cells[0][0]):
                yield row, station(" ".join(cells[0])), " ".join(cells[1])


def judge_readings(name, survey, tree):
    said = list(reading_rows(tree))
    lacking, extra = differences(survey, said)
    expect(said and not lacking and not extra, f"{name}: the tree says every reading once: lacks {list(lacking)[:3]}, has {list(extra)[:3]}")
    wanted = [(row, at, figures(cell)) for (row, at), cell in input_marks(survey).items()]
    for row in {row for row, _, _ in wanted}:
        in_order = [line for line in wanted if line[0] == row and line in said]
        expect(in_order == [line for line in said if line[0] == row], f"{name}: the tree says row {row} in the order of its marks")


def judge_metadata(name, tree):
    """What the two records of the file say of it is the same."""
    packet = ElementTree.fromstring(tree.pdf.bytes_of(tree.pdf.root["/Metadata"]).decode().split("?>", 1)[1].rsplit("<?", 1)[0])
    info = tree.pdf.get(tree.pdf.objects["trailer"]["value"]["/Info"])
    text = {re.sub(r"\{.*\}", "", e.tag): "".join(e.itertext()).strip() for e in packet.iter()}
    for theirs, ours in (("title", "/Title"), ("creator", "/Author"), ("description", "/Subject"), ("CreatorTool", "/Creator"), ("Producer", "/Producer")):
        expect(text.get(theirs, "") == string(info.get(ours, "u:")), f"{name}: {ours} is {text.get(theirs)!r} in the packet, {info.get(ours)!r} in the dictionary")
    expect(tree.pdf.get(tree.pdf.root["/Names"]).get("/Dests"), f"{name}: there are named destinations")
    labels = tree.pdf.get(tree.pdf.root["/PageLabels"])["/Nums"]
    expect(labels == [0, {"/S": "/D"}], f"{name}: pages are numbered 1, 2, 3, not {labels}")


def judge_poppler(name, pdf, tree):
    """Poppler draws a page again for every piece that it reads out, so only the first page is listened to."""
    most = 250
    with subprocess.Popen(["pdfinfo", "-struct-text", str(pdf)], stdout=subprocess.PIPE, text=True) as reader:
        said = [line for _, line in zip(range(most), reader.stdout)]
        reader.kill()
    heard = "".join("".join(re.findall(r'"(.*)"', line)) for line in said)
    squeezed = ["".join(text.replace("\u00ad", "").split()) for text in (heard, tree.document.text())]
    expect(len(squeezed[0]) > 200 and squeezed[1].startswith(squeezed[0]), f"{name}: poppler reads the same words in the same order: {heard[:300]!r}")


def broken(plain, pattern, by, work):
    changed, count = re.subn(pattern, lambda _: by, plain, count=1)
    if count != 1:
        return None
    source, out = work / "broken.qdf", work / "broken.pdf"
    source.write_bytes(changed)
    with out.open("wb") as to:
        subprocess.run(["fix-qdf", str(source)], stdout=to, check=False)
    return out


def judge_the_rules(pdf, work):
    run("qpdf", "--qdf", "--object-streams=disable", pdf, work / "plain.qdf")
    plain = (work / "plain.qdf").read_bytes()
    for what, pattern, by, fault in FAULTS:
        bad = broken(plain, pattern, by, work)
        expect(bad is not None, f"{what}: the file has a place to break")
        if bad:
            found = Tagged(bad).faults
            expect(any(fault in f for f in found), f"{what} is noticed: {found[:2]}")


def main():
    need("qpdf", "fix-qdf", "pdfinfo")
    binary, root = program()
    with folder() as work:
        work = Path(work)
        for survey in surveys(root, work):
            name, pdf = survey.parent.name, work / f"{survey.parent.name}.pdf"
            if not typeset(binary, survey, pdf):
                continue
            tree = Tagged(pdf)
            print(f"{name}: {len(tree.elements)} elements, {len(tree.pieces)} pieces of marked content, {len(tree.linked)} links")
            for fault in sorted(set(tree.faults))[:12]:
                expect(False, f"{name}: {fault}")
            if name != "barge":
                judge_poppler(name, pdf, tree)
            judge_readings(name, survey, tree)
            judge_metadata(name, tree)
        judge_the_rules(work / "clean-boat.pdf", work)
    finish("tags")


main()
