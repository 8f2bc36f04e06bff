"""pdf.js, which reads PDFs aloud in browsers, is given the same tree and the same words in it as our own reader finds."""
import json
import unicodedata
from pathlib import Path

from judge import SKIP, expect, finish, folder, need, program, run, typeset
from pdf_model import string
from tag_rules import Tagged

LIBRARY = Path("/usr/share/javascript/pdf/build/pdf.js")
HEADINGS = {f"H{n}" for n in range(1, 7)}


def squeezed(text):
    return "".join(unicodedata.normalize("NFKC", text).split())   # a micro sign may be handed on as the Greek letter


def walk(node):
    if node and "role" in node:
        yield node
        for kid in node["kids"]:
            yield from walk(kid)


def words(node):
    return node["text"] if "text" in node else "".join(map(words, node["kids"]))


def said_by_browser(pdf):
    """[(role, words, alternative words)] of each page's elements."""
    told = run("node", Path(__file__).with_name("read_structure.js"), LIBRARY, pdf)
    expect(told.returncode == 0, f"pdf.js reads the file: {told.stderr[:300]}")
    return [[(n["role"], squeezed(words(n)), n["alt"]) for n in walk(json.loads(line))] for line in told.stdout.splitlines()]


def said_by_us(tree, roles):
    """pdf.js leaves out cells that hold nothing."""
    return [w for e in tree.document.all(*("/" + r for r in roles)) if (w := squeezed(e.text()))]


def main():
    need("node", "qpdf")
    if not LIBRARY.exists():
        print(f"SKIPPED: {LIBRARY} is not installed; nothing was judged", flush=True)
        raise SystemExit(SKIP)
    binary, root = program()
    with folder() as work:
        pdf = Path(work) / "report.pdf"
        for survey in sorted((root / "example-surveys").glob("*/survey.yaml")):
            name = survey.parent.name
            if not typeset(binary, survey, pdf):
                continue
            tree, pages = Tagged(pdf), said_by_browser(pdf)
            expect(len(pages) == len(tree.pdf.pages) and all(pages), f"{name}: pdf.js finds a tree on every page")
            heard = [element for page in pages for element in page]
            for roles in (HEADINGS, {"TD"}, {"TH"}, {"Lbl"}, {"Caption"}):
                ours, theirs = said_by_us(tree, roles), [w for role, w, _ in heard if role in roles and w]
                expect(ours == theirs, f"{name}: {sorted(roles)[0]}: {len(ours)} are {len(theirs)} in pdf.js: "
                                       f"{[pair for pair in zip(ours, theirs) if pair[0] != pair[1]][:2]}")
            alts = [string(f.node.get("/Alt")) for f in tree.document.all("/Figure")]
            expect(alts == [alt for role, _, alt in heard if role == "Figure"], f"{name}: pdf.js has the words of every figure")
    finish("browser")


main()
