"""Every figure of the input stands once in the results tables of the PDF, and no other figure does.

The input is read here by other code than the program's: a YAML reader and a comma-separated grid. The PDF is read by
pdftotext's word boxes: the readings table is found by its column heads, a row's group by its name in the first column.
"""
import csv
import re
import statistics
from collections import Counter
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from fractions import Fraction
from pathlib import Path

from judge import copy_of, expect, finish, folder, lines, load, need, pages, plain, program, run, surveys, typeset

NUMBER = re.compile(r"^\d+(\.\d+)?$")
FIGURE = re.compile(r"^(?=[.\d])(\d*\.?\d+|\d+/\d+)\??$")
# An inch is 25.4 mm exactly (NIST SP 811).
MM = {"mm": Fraction(1), "in": Fraction("25.4"), "thou": Fraction("0.0254")}


def sets_of(survey):
    sets = load(survey)["readings"]
    return sets if isinstance(sets, list) else [sets]


def all_mm(survey):
    """Whether every figure is in mm, so that none is printed with its unit."""
    return all(cell_units(cell, s["unit"]) <= {"mm"} for s in sets_of(survey) for cell in cells_of(survey, s).values())


def cell_units(cell, unit):
    words = cell.split()
    bare = any(FIGURE.match(w) and not (words[i + 1:] and words[i + 1] in MM) for i, w in enumerate(words))
    return {w for w in words if w in MM} | ({unit} if bare else set())


def with_units(cell, unit):
    """"0.187 0.188 mm" of a set in inches -> "0.187 in 0.188 mm"."""
    out = []
    for word, after in zip(cell.split(), cell.split()[1:] + [""]):
        out.append(word)
        if FIGURE.match(word) and after not in MM:
            out.append(unit)
    return " ".join(out)


def in_mm(shown):
    """[exact mm] of "0.187 in 4.6 mm" or, without units, of mm."""
    words = shown.split()
    return [Fraction(w) * MM.get(after, 1) for w, after in zip(words, words[1:] + [""]) if FIGURE.match(w)]


def input_marks(survey):
    """{(row, station): figures as they are to be printed, or the status word}"""
    marks, plain_mm = {}, all_mm(survey)
    for source in sets_of(survey):
        for key, cell in cells_of(survey, source).items():
            assert key not in marks
            marks[key] = cell if plain_mm else with_units(cell, source["unit"])
    return marks


def cells_of(survey, source):
    """{(row, station): cell as written} of one set."""
    if "inline" in source:
        return {(row, station(at)): cell for row, cells in source["inline"].items() for at, cell in cells.items()}
    marks = {}
    text = [l for l in (survey.parent / source["file"]).read_text().splitlines() if not l.startswith("#")]
    head, *body = [[cell.strip() for cell in line] for line in csv.reader(text)]
    for line in body:
        for row, cell in zip(head[1:], line[1:]):
            key = (row, station(line[0]))
            assert key not in marks
            if cell != "none-planned":
                marks[key] = cell
    return marks


def station(text):
    """A number however it is written; feet and inches as they stand."""
    return Decimal(text).normalize() if NUMBER.match(text) else text


def column(line, *heads):
    """Middle of each named head in a line of words, or nothing."""
    at = {w.text: w for w in line}
    return {h: at[h] for h in heads} if all(h in at for h in heads) else None


def reading_heads(line):
    """The column heads of the readings table, once for each time that it stands beside itself: [(heads, right edge)]."""
    starts = [i for i, w in enumerate(line) if w.text == "stn"]
    parts = [line[a:b] for a, b in zip(starts, starts[1:] + [None])]
    found = [(column(part, "stn", "displayed"), part[-1].x1) for part in parts if column(part, "stn", "displayed", "limit", "section")]
    return found if len(found) == len(starts) else []


def beside(line, heads):
    """The words of a line under each set of heads; a gutter is wider than twice the slack."""
    left = 0.0
    for _, right in heads:
        yield [w for w in line if left <= w.x0 < right + 8]
        left = right + 8


def reading_lines(pdf, rows):
    """(row, station word, displayed words) for each line of the readings tables."""
    for _, _, words in pages(pdf):
        sets, row = [], []
        for line in lines(words):
            found = reading_heads(line)
            if found:
                sets, row = found, [None] * len(found)
                continue
            if line[0].text in ("Table", "Figure"):
                sets = []
            for i, part in enumerate(beside(line, sets)):
                heads = sets[i][0]
                if not part:
                    continue
                first = part[0].x0 < heads["stn"].x1
                if first and part[0].text in rows:
                    row[i] = part[0].text
                elif first and part[0].text[0].isupper():
                    row[i] = None  # a note under the table
                elif row[i] and NUMBER.match(part[0].text) and part[0].x1 <= heads["stn"].x1 + 1:
                    at = [w for w in part if w.x1 <= heads["stn"].x1 + 1]
                    right = heads["displayed"].x1 + 2
                    yield row[i], " ".join(w.text for w in at), [w.text for w in part[len(at):] if w.x1 <= right], part, heads


def printed_marks(pdf, rows):
    """[(row, station, figures)], a dash for none; a mark printed twice is there twice."""
    return [(row, station(at), " ".join(shown)) for row, at, shown, _, _ in reading_lines(pdf, rows)]


def figures(cell):
    return cell.removesuffix(" rejected") if cell and FIGURE.match(cell.split()[0]) else "–"


def differences(survey, printed):
    """What the PDF lacks, and what it has too much."""
    wanted = Counter((row, at, figures(cell)) for (row, at), cell in input_marks(survey).items())
    got = Counter(printed)
    return wanted - got, got - wanted


def printed_pits(pdf, ids):
    for _, _, words in pages(pdf):
        heads = None
        for line in lines(words):
            found = column(line, "pit", "row", "stn", "adjacent", "depth", "remaining")
            heads = found or (None if line[0].text == "Table" else heads)
            if heads and not found and line[0].text in ids and line[0].x0 < heads["pit"].x1:
                near = lambda w: min(heads, key=lambda h: abs(w.x0 + w.x1 - heads[h].x0 - heads[h].x1))
                cell = {h: [w.text for w in line[1:] if near(w) == h] for h in ("stn", "adjacent", "depth")}
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


def decimal(value):
    """A terminating fraction as a decimal."""
    return Decimal(value.numerator) / Decimal(value.denominator)


def as_mm(text):
    """A length of the survey file as the pits table prints it: its own digits in mm, else every digit of the conversion."""
    figure, *unit = text.split()
    return figure if unit in ([], ["mm"]) else str(decimal(Fraction(figure) * MM[unit[0]]).normalize())


def marks_by_row(pdf, rows):
    """{row: [(station, figures, "used", "doubler" or "unread")]} as the readings tables print them."""
    printed = {}
    for row, at, shown, line, _ in reading_lines(pdf, rows):
        words = {w.text for w in line}
        state = "unread" if not FIGURE.match(shown[0]) or {"query", "rejected"} & words else "doubler" if "doubler" in words else "used"
        printed.setdefault(row, []).append((station(at), " ".join(shown), state))
    return printed


def as_printed(value, figure):
    """The value to the decimals of a printed figure, unless it has no more than two of its own."""
    return value if value.as_tuple().exponent >= -2 else value.quantize(Decimal(figure), ROUND_HALF_UP)


def judge_summary(name, pdf, rows):
    printed = marks_by_row(pdf, rows)
    table = printed_summary(pdf, rows)
    expect(set(table) == set(rows), f"{name}: the summary names every row: {set(rows) ^ set(table)}")
    for row in set(table) & set(printed):
        read = [(decimal(min(in_mm(shown))), at) for at, shown, state in printed[row] if state == "used"]
        n_doubler = sum(state == "doubler" for _, _, state in printed[row])
        values = [v for v, _ in read]
        mean = sum(values) / len(values)
        # Exact halves aside, the two ways of rounding agree.
        means = {str(mean.quantize(Decimal("0.01"), how)) for how in (ROUND_HALF_EVEN, ROUND_HALF_UP)}
        planned, n_read, used, least, mean_said, worst = table[row]
        expect((int(planned), int(n_read), int(used)) == (len(printed[row]), len(read) + n_doubler, len(read)), f"{name} {row}: counts {table[row]} against {len(printed[row])} and {len(read)}")
        expect(Decimal(least) == as_printed(min(values), least), f"{name} {row}: least {least}, not {min(values)}")
        expect(mean_said in means, f"{name} {row}: mean {mean_said}, not {means}")
        where = worst.split()
        expect(where[0] == row and (min(values), station(where[1])) in read, f"{name} {row}: worst at {worst}")


def printed_zones(pdf, names):
    """{zone name: (used, read, min, mean, max, deviation, interval, percentile, limit)}"""
    out = {}
    for _, _, words in pages(pdf):
        open_table = False
        for line in lines(words):
            said = [w.text for w in line]
            if column(line, "zone", "used", "min", "max"):
                open_table = True
            elif said[0] == "Table":
                open_table = False
            elif open_table and "of" in said and " ".join(said[:said.index("of") - 1]) in names:
                at = said.index("of")
                out[" ".join(said[:at - 1])] = (said[at - 1], *said[at + 1:])
    return out


def judge_zones(name, given, pdf, rows):
    """Least, mean, greatest, deviation and tenth percentile (type 6 is Python's "exclusive") from the figures read back."""
    figures_of = {}
    for row, marks in marks_by_row(pdf, rows).items():
        values = [decimal(min(in_mm(shown))) for _, shown, state in marks if state == "used"]
        figures_of.setdefault(given["zones"][given["rows"][row]["zone"]]["name"], []).extend(values)
    table = printed_zones(pdf, {z["name"] for z in given["zones"].values()})
    expect(set(table) == {z["name"] for z in given["zones"].values()}, f"{name}: every zone stands in figures, not only {sorted(table)}")
    for zone in set(table) & set(figures_of):
        values = figures_of[zone]
        used, read, least, mean, greatest, *rest = table[zone]
        expect(int(used) == len(values) and int(read) >= int(used), f"{name} {zone}: {used} of {read} used, not {len(values)}")
        expect((Decimal(least), Decimal(greatest)) == (as_printed(min(values), least), as_printed(max(values), greatest)), f"{name} {zone}: {least} to {greatest}")
        expect(abs(Decimal(mean) - statistics.mean(values)) <= Decimal("0.0051"), f"{name} {zone}: mean {mean}")
        if len(values) < 10:
            expect(rest == ["–"] * 4, f"{name} {zone}: too few for statistics, and yet {rest}")
            continue
        deviation, interval, low, limit = rest
        expect(abs(Decimal(deviation) - statistics.stdev(values)) <= Decimal("0.00051"), f"{name} {zone}: deviation {deviation}")
        tenth = statistics.quantiles(values, n=10, method="exclusive")[0]
        expect(abs(Decimal(low) - tenth) <= Decimal("0.0051"), f"{name} {zone}: tenth percentile {low}, not {tenth}")
        ends = [Decimal(e) for e in interval.split("–")]
        expect(ends[0] <= Decimal(mean) <= ends[1], f"{name} {zone}: the mean {mean} is outside {interval}")
        expect(Decimal(limit) <= Decimal(mean), f"{name} {zone}: tolerance limit {limit} over the mean {mean}")


def judge_coverage(name, text):
    said = re.search(r"(\d+) marks were planned: (\d+) read, (\d+) rejected, (\d+) not read\. Of those read, (\d+) are used as hull plate and (\d+) lie on doublers\.(?: Not read: ([^.]*)\.)?", text)
    expect(said, f"{name}: the coverage is stated")
    if said:
        planned, read, rejected, unread, used, doublers = map(int, said.groups()[:6])
        parts = sum(map(int, re.findall(r"\d+", said.group(7) or "")))
        expect(planned == read + rejected + unread and read == used + doublers and parts == unread, f"{name}: coverage adds up: {said.group(0)}")


def judge_photos(name, survey, text):
    heads = list(re.finditer(r"\d+ Photographs (?!photos/)", text))
    body = text[heads[-1].start():].split("the file as it was given")[0] if heads else ""
    for key, photo in load(survey).get("photos", {}).items():
        caption = " ".join(photo["caption"].split())
        found = " ".join(caption.split()[:4])
        expect(body.count(found) == sum(1 for p in load(survey)["photos"].values() if p["caption"].startswith(found)), f"{name}: photo {key} stands once")
    for key, photo in load(survey).get("photos", {}).items():
        if "file" not in photo:
            said = next((f"{why}: {photo[why]}" for why in ("not-taken", "withheld") if why in photo), "no file given").replace("not-taken", "not taken")
            expect(said in body, f"{name}: photo {key} has no picture, and the page says: {said}")


def judge(survey, pdf):
    name, given = survey.parent.name, load(survey)
    rows, pits = given["rows"], given.get("pits", {})
    printed = printed_marks(pdf, rows)
    lacking, extra = differences(survey, printed)
    expect(not lacking and not extra, f"{name}: readings lacking {list(lacking)[:4]}, too much {list(extra)[:4]}")
    wanted = Counter((key, p["at"].split()[1], as_mm(p["adjacent"]), as_mm(p["depth"]), p["at"].split()[0]) for key, p in pits.items())
    got = Counter(printed_pits(pdf, pits))
    expect(wanted == got, f"{name}: pits lacking {list(wanted - got)[:4]}, too much {list(got - wanted)[:4]}")
    print(f"{name}: {len(printed)} marks and {sum(got.values())} pits read back")
    judge_summary(name, pdf, rows)
    judge_zones(name, given, pdf, given["rows"])
    text = plain(pdf)
    judge_coverage(name, text)
    judge_photos(name, survey, text)
    return printed


def glyph_maps(text):
    """{glyph hex: character} of each face's ToUnicode table in an unpacked PDF."""
    for table in re.findall(r"beginbfchar(.*?)endcmap", text, re.S):
        yield {g: chr(int(u, 16)) for g, u in re.findall(r"<([0-9A-Fa-f]{4})> <([0-9A-Fa-f]{4})>", table)}


def change_one_digit(text):
    """The text of an unpacked PDF with the last digit of one cell of readings drawn as another (two of its three figures are of
    one weight); nothing if none is found."""
    maps = list(glyph_maps(text))
    for shown in re.finditer(r"\[<((?:[0-9A-Fa-f]{4})+)>\]TJ", text):
        glyphs = re.findall("....", shown.group(1))
        for known in maps:
            if re.fullmatch(r" ?\d+\.\d+ \d+\.\d+", "".join(known.get(g, "?") for g in glyphs)):
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
