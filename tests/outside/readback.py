"""Every figure of the input stands once in the results tables of the PDF, and no other figure does.

The input is read here by other code than the program's: a YAML reader and a comma-separated grid. The PDF is read by
pdftotext's word boxes: the readings table is found by its column heads, a row's group by its name in the first column.
"""
import csv
import re
from collections import Counter
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from pathlib import Path

from judge import copy_of, expect, finish, folder, lines, load, need, pages, plain, program, run, surveys, typeset

NUMBER = re.compile(r"^\d+(\.\d+)?$")


def input_marks(survey):
    """{(row, station): figures as written, or the status word}"""
    marks = {}
    for source in load(survey)["readings"]:
        text = [l for l in (survey.parent / source["file"]).read_text().splitlines() if not l.startswith("#")]
        head, *body = [[cell.strip() for cell in line] for line in csv.reader(text)]
        for line in body:
            for row, cell in zip(head[1:], line[1:]):
                key = (row, station(line[0]))
                assert key not in marks
                marks[key] = cell
    return marks


def station(text):
    return Decimal(text).normalize()


def column(line, *heads):
    """Middle of each named head in a line of words, or nothing."""
    at = {w.text: w for w in line}
    return {h: at[h] for h in heads} if all(h in at for h in heads) else None


def reading_lines(pdf, rows):
    """(row, station word, displayed words, line) for each line of the readings tables."""
    for _, _, words in pages(pdf):
        heads, row = None, None
        for line in lines(words):
            found = column(line, "stn", "displayed", "remaining")
            if found:
                heads, row = found, None
                continue
            if line[0].text in ("Table", "Figure"):
                heads = None
            if not heads:
                continue
            if line[0].text in rows and line[0].x0 < heads["stn"].x1:
                row = line[0].text
            elif row and NUMBER.match(line[0].text) and line[0].x1 <= heads["stn"].x1 + 1:
                right = heads["displayed"].x1 + 2
                yield row, line[0].text, [w.text for w in line[1:] if w.x1 <= right], line, heads


def printed_marks(pdf, rows):
    """[(row, station, figures)], a dash for none; a mark printed twice is there twice."""
    return [(row, station(at), " ".join(shown)) for row, at, shown, _, _ in reading_lines(pdf, rows)]


def figures(cell):
    return cell if cell and NUMBER.match(cell.split()[0]) else "–"


def differences(survey, printed):
    """What the PDF lacks, and what it has too much."""
    wanted = Counter((row, at, figures(cell)) for (row, at), cell in input_marks(survey).items())
    got = Counter(printed)
    return wanted - got, got - wanted


def printed_pits(pdf, ids):
    for _, _, words in pages(pdf):
        heads = None
        for line in lines(words):
            found = column(line, "pit", "row", "stn", "adjacent", "depth")
            heads = found or (None if line[0].text == "Table" else heads)
            if heads and not found and line[0].text in ids and line[0].x0 < heads["pit"].x1:
                cell = {h: [w.text for w in line[1:] if w.x1 > heads[h].x0 - 6 and w.x1 <= heads[h].x1 + 2] for h in ("stn", "adjacent", "depth")}
                yield line[0].text, " ".join(cell["stn"]), " ".join(cell["adjacent"]), " ".join(cell["depth"]), line[1].text


def printed_summary(pdf, rows):
    """{row: (planned, read, used, min, mean, worst)}"""
    out = {}
    for _, _, words in pages(pdf):
        open_table = False
        for line in lines(words):
            if column(line, "row", "where", "planned", "read", "used"):
                open_table = True
            elif line[0].text in ("Table", "Used:"):  # the note under it names marks too
                open_table = False
            elif open_table and line[0].text in rows:
                tail = [w.text for w in line]
                out[tail[0]] = (*tail[-8:-3], " ".join(tail[-2:]))
    return out


def judge_summary(name, pdf, rows):
    printed = {}
    for row, at, shown in printed_marks(pdf, rows):
        printed.setdefault(row, []).append((at, shown))
    table = printed_summary(pdf, rows)
    expect(set(table) == set(rows), f"{name}: the summary names every row: {set(rows) ^ set(table)}")
    for row in set(table) & set(printed):
        read = [(min(map(Decimal, shown.split())), at) for at, shown in printed[row] if NUMBER.match(shown.split()[0])]
        values = [v for v, _ in read]
        mean = sum(values) / len(values)
        # Exact halves aside, the two ways of rounding agree.
        means = {str(mean.quantize(Decimal("0.01"), how)) for how in (ROUND_HALF_EVEN, ROUND_HALF_UP)}
        planned, n_read, used, least, mean_said, worst = table[row]
        expect((int(planned), int(n_read), int(used)) == (len(printed[row]), len(read), len(read)), f"{name} {row}: counts {table[row]} against {len(printed[row])} and {len(read)}")
        expect(Decimal(least) == min(values), f"{name} {row}: least {least}, not {min(values)}")
        expect(mean_said in means, f"{name} {row}: mean {mean_said}, not {means}")
        where = worst.split()
        expect(where[0] == row and (min(values), station(where[1])) in read, f"{name} {row}: worst at {worst}")


def judge_coverage(name, text):
    said = re.search(r"(\d+) marks were planned: (\d+) read, (\d+) rejected, (\d+) not read\. Of those read, (\d+) are used as hull plate and (\d+) lie on doublers\.(?: Not read: ([^.]*)\.)?", text)
    expect(said, f"{name}: the coverage is stated")
    if said:
        planned, read, rejected, unread, used, doublers = map(int, said.groups()[:6])
        parts = sum(map(int, re.findall(r"\d+", said.group(7) or "")))
        expect(planned == read + rejected + unread and read == used + doublers and parts == unread, f"{name}: coverage adds up: {said.group(0)}")


def judge_photos(name, survey, text):
    heads = list(re.finditer(r"\d+ Photographs (?!photos/)", text))
    body = text[heads[-1].start():] if heads else ""
    for key, photo in load(survey).get("photos", {}).items():
        caption = " ".join(photo["caption"].split())
        found = " ".join(caption.split()[:4])
        expect(body.count(found) == sum(1 for p in load(survey)["photos"].values() if p["caption"].startswith(found)), f"{name}: photo {key} stands once")
    missing = sum("file" not in p for p in load(survey).get("photos", {}).values())
    expect(body.count("no photograph in this issue") == missing, f"{name}: {missing} photographs are said to be missing")


def judge(survey, pdf):
    name, given = survey.parent.name, load(survey)
    rows, pits = given["rows"], given.get("pits", {})
    printed = printed_marks(pdf, rows)
    lacking, extra = differences(survey, printed)
    expect(not lacking and not extra, f"{name}: readings lacking {list(lacking)[:4]}, too much {list(extra)[:4]}")
    wanted = Counter((key, p["at"].split()[1], p["adjacent"], p["depth"], p["at"].split()[0]) for key, p in pits.items())
    got = Counter(printed_pits(pdf, pits))
    expect(wanted == got, f"{name}: pits lacking {list(wanted - got)[:4]}, too much {list(got - wanted)[:4]}")
    print(f"{name}: {len(printed)} marks and {sum(got.values())} pits read back")
    judge_summary(name, pdf, rows)
    text = plain(pdf)
    judge_coverage(name, text)
    judge_photos(name, survey, text)
    return printed


def glyph_maps(text):
    """{glyph hex: character} of each face's ToUnicode table in an unpacked PDF."""
    for table in re.findall(r"beginbfchar(.*?)endcmap", text, re.S):
        yield {g: chr(int(u, 16)) for g, u in re.findall(r"<([0-9A-Fa-f]{4})> <([0-9A-Fa-f]{4})>", table)}


def change_one_digit(text):
    """The text of an unpacked PDF with the last digit of one cell of three readings drawn as another; nothing if none is found."""
    maps = list(glyph_maps(text))
    for shown in re.finditer(r"\[<((?:[0-9A-Fa-f]{4})+)>\]TJ", text):
        glyphs = re.findall("....", shown.group(1))
        for known in maps:
            if re.fullmatch(r"(\d+\.\d+ ){2}\d+\.\d+", "".join(known.get(g, "?") for g in glyphs)):
                other = next(g for g, c in known.items() if c.isdigit() and c != known[glyphs[-1]])
                return text[:shown.end(1) - 4] + other + text[shown.end(1):]
    return None


def judge_changed_pdf(survey, pdf, work):
    unpacked, changed = work / "unpacked.pdf", work / "changed.pdf"
    run("qpdf", "--qdf", "--object-streams=disable", pdf, unpacked)
    text = change_one_digit(unpacked.read_bytes().decode("latin-1"))
    expect(text, "a cell of readings is found in the unpacked PDF")
    if text:
        changed.write_bytes(text.encode("latin-1"))
        rows = load(survey)["rows"]
        expect(not any(differences(survey, printed_marks(unpacked, rows))), "the unpacked PDF still reads as the input")
        lacking, extra = differences(survey, printed_marks(changed, rows))
        expect(sum(lacking.values()) == 1 and sum(extra.values()) == 1, f"one digit changed in the PDF is noticed: {lacking} {extra}")


def judge_the_judge(survey, printed, work):
    """One digit changed, in the words read or in the input, must be noticed."""
    row, at, shown = next(p for p in printed if NUMBER.match(p[2].split()[0]))
    digit = shown[-1]
    changed = shown[:-1] + str((int(digit) + 1) % 10)
    altered = [(row, at, changed) if p == (row, at, shown) else p for p in printed]
    expect(any(differences(survey, altered)), "a digit changed in the PDF is noticed")
    other = copy_of(survey, work / "altered")
    table = other.parent / "readings/hull.csv"
    text = table.read_text()
    spot = re.search(r"(?m)^\d[^,]*, *\d+\.(\d)", text).start(1)
    table.write_text(text[:spot] + str((int(text[spot]) + 1) % 10) + text[spot + 1:])
    expect(any(differences(other, printed)), "a digit changed in the readings file is noticed")


def main():
    need("pdftotext", "qpdf")
    binary, root = program()
    with folder() as work:
        work = Path(work)
        for survey in surveys(root, work):
            pdf = work / f"{survey.parent.name}.pdf"
            if typeset(binary, survey, pdf):
                printed = judge(survey, pdf)
                if survey.parent.name == "thick-bottom":
                    judge_the_judge(survey, printed, work)
                    judge_changed_pdf(survey, pdf, work)
    finish("readback")


if __name__ == "__main__":
    main()
