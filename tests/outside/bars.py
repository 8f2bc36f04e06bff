"""Change bars of a finished PDF, and the lines of print beside them."""
from judge import lines
from pdf_model import Pdf, operators

NEAR = 0.1  # points
FILLS, SETTINGS = {b"f", b"F", b"f*"}, {b"h", b"w", b"d", b"rg", b"RG", b"g", b"G", b"J", b"j"}


def points(length):
    return float(length.removesuffix("mm")) * 72 / 25.4


def filled_boxes(pdf, page):
    """(x0, y0, x1, y1) of every path that is filled and not stroked; the program draws without transformations."""
    xs, ys = [], []
    for operator, operands in operators(pdf.content(page)):
        if operator in (b"m", b"l", b"c"):
            values = [float(v) for v in operands]
            xs += values[::2]
            ys += values[1::2]
        elif operator not in SETTINGS:
            if operator in FILLS and xs:
                yield min(xs), min(ys), max(xs), max(ys)
            xs, ys = [], []


def bars(path, style):
    """[[(top, bottom)] of each page] from the top of the sheet: what is filled left of the text, as wide as the style's bar."""
    pdf, out, wide = Pdf(path), [], points(style["measures"]["change-bar"])
    lefts = {round(points(m["sheet"][0])): points(m["left"]) for m in style["masters"].values()}
    for _, page in pdf.pages:
        width, height = (float(v) for v in pdf.get(page["/MediaBox"])[2:])
        at = lefts[round(width)] - points(style["measures"]["change-bar-offset"])
        found = [b for b in filled_boxes(pdf, page) if abs(b[0] - at) < NEAR and abs(b[2] - b[0] - wide) < NEAR]
        out.append(sorted((height - y1, height - y0) for _, y0, _, y1 in found))
    return out


def barred(page_bars, words):
    """[(line of words, has it a bar?)] of a page."""
    return [(line, any(top - 1 < line[0].middle < bottom + 1 for top, bottom in page_bars)) for line in lines(words)]
