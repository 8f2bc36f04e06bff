"""Each mark and pit with a photograph or a recommendation, and these, lead to each other, to the map and back; a client can name
the place of each in a link to the file; tables and figures are listed and bookmarked with the pages they stand on."""
import csv
import re
from pathlib import Path

from judge import expect, finish, folder, load, need, pages, program, run, surveys, typeset
from pdf_links import Pdf, ways
from readback import sets_of

POINTERS = (r"\bphotos? (\d+)", r"\b([A-Z]\d+)\b", r"\b([A-Z]{1,3}\d{0,2} \d+(?:\.\d+)?)\b")


def words_of(item):
    keys = ("title", "deadline", "reason", "alternative", "feasible", "hazards", "binds", "proof", "status")
    return " ".join([str(item.get(k, "")) for k in keys] + item.get("evidence", []))


def cited(item, given, marks):
    """Marks, pits and photographs that the words and the evidence of a recommendation name."""
    photo, name, mark = (set(re.findall(p, words_of(item))) for p in POINTERS)
    found = {f"photo/{p}" for p in photo & set(given.get("photos", {}))}
    found |= {f"pit/{p}" for p in name & set(given.get("pits", {}))}
    return found | {f"mark/{m}" for m in mark & marks}


def photos_of(subject, given):
    """Photographs of a mark (taken at it) or of a pit (named at it)."""
    kind, name = subject.split("/", 1)
    if kind == "mark":
        return {f"photo/{p}" for p, photo in given.get("photos", {}).items() if photo["at"] == name}
    listed = given["pits"][name].get("photo", []) if kind == "pit" else []
    return {f"photo/{p}" for p in (listed if isinstance(listed, list) else [listed])}


def wanted(given, marks):
    """Pairs that must lead to each other."""
    subjects = {f"mark/{m}" for m in marks} | {f"pit/{p}" for p in given.get("pits", {})}
    pairs = {(subject, photo) for subject in subjects for photo in photos_of(subject, given)}
    for number, item in given.get("recommendations", {}).items():
        named = cited(item, given, marks)
        named |= {photo for subject in named for photo in photos_of(subject, given)}
        pairs |= {(subject, f"item/{number}") for subject in named}
    pairs |= {(f"steelwork/{s}", f"item/{one['recommendation']}") for s, one in given.get("steelwork", {}).items() if "recommendation" in one}
    crossed = {one for pair in pairs for one in pair if one.startswith(("mark/", "pit/", "photo/"))}
    return pairs | {(one, f"map/{one}") for one in crossed}


def judge_ways(name, pdf, given, marks):
    there = ways(pdf)
    pairs = wanted(given, marks)
    for a, b in sorted(pairs):
        expect((a, b) in there, f"{name}: {a} leads to {b}")
        expect((b, a) in there, f"{name}: {b} leads back to {a}")
    return len(pairs)


def judge_names(name, pdf, path, given, marks):
    expect({f"mark/{m}" for m in marks} <= set(pdf.names), f"{name}: every mark has a name that a link can use")
    expect({f"photo/{p}" for p in given.get("photos", {})} <= set(pdf.names), f"{name}: every photograph has a name")
    listed = run("pdfinfo", "-dests", path).stdout
    for mark in sorted(marks)[:3]:
        expect(f'"mark/{mark}"' in listed, f"{name}: another program finds the destination of {mark}")


def judge_lists(name, pdf, path):
    """Every table and figure is among the bookmarks under its section, stands where its bookmark leads, and is listed with that
    page."""
    sheets = [re.sub(r"\s+", " ", " ".join(w.text for w in words)) for _, _, words in pages(path)]
    text = run("pdftotext", "-layout", path, "-").stdout.replace("\u00a0", " ")
    marked = {" ".join(b[-1].split()[:2]): (b, place) for b, place in pdf.bookmarks if b[-1].split()[0] in ("Table", "Figure")}
    expect(len(marked) >= 10, f"{name}: tables and figures are bookmarked, not only {len(marked)}")
    for label, (above, (page, _, _)) in marked.items():
        expect(len(above) >= 2 and above[0].startswith(label.split()[1].split(".")[0] + " "), f"{name}: the bookmark {label} stands under its section: {above}")
        expect(f"{label} " in sheets[page], f"{name}: the bookmark of {label} leads to the page where it stands")
        listed = re.search(rf"{re.escape(label)} +\S.*? +(\d+)(?: {{2,}}|\n)", text)
        expect(listed and int(listed.group(1)) == page + 1, f"{name}: {label} is listed on page {page + 1}: {listed and listed.group(0)}")
    return len(marked)


def judge_the_judge(pdf, given, marks):
    """A link taken away is missed."""
    pairs = sorted(wanted(given, marks))
    there = ways(pdf)
    expect(pairs and set(pairs) <= there, "the pairs are there to begin with")
    expect(not set(pairs) <= there - {pairs[0]}, "a link taken away is missed")


def main():
    need("qpdf", "pdftotext", "pdfinfo")
    binary, root = program()
    with folder() as work:
        for survey in surveys(root, work):
            name, path, given = survey.parent.name, Path(work) / f"{survey.parent.name}.pdf", load(survey)
            if not typeset(binary, survey, path):
                continue
            marks = {f"{row} {at}" for row, at in raw_marks(survey)}
            pdf = Pdf(path)
            pairs = 0 if name == "barge" else judge_ways(name, pdf, given, marks)
            judge_names(name, pdf, path, given, marks)
            print(f"{name}: {pairs} pairs lead to each other, {judge_lists(name, pdf, path)} tables and figures listed")
            if name == "thick-bottom":
                judge_the_judge(pdf, given, marks)
    finish("links")


def raw_marks(survey):
    """Marks by row and station as written."""
    for source in sets_of(survey):
        if "inline" in source:
            for row, cells in source["inline"].items():
                yield from ((row, at) for at in cells)
            continue
        text = [l for l in (survey.parent / source["file"]).read_text().splitlines() if not l.startswith("#")]
        head, *body = [[cell.strip() for cell in line] for line in csv.reader(text)]
        for line in body:
            yield from ((row, line[0]) for row, cell in zip(head[1:], line[1:]) if cell != "none-planned")


if __name__ == "__main__":
    main()
