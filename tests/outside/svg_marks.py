"""Reads what an SVG file of cairo's shows: every glyph with its place and the box of its outline, every path with its box."""
import re
from xml.etree import ElementTree

SVG, XLINK = "{http://www.w3.org/2000/svg}", "{http://www.w3.org/1999/xlink}"
NUMBER = re.compile(r"-?\d+(?:\.\d+)?(?:e-?\d+)?")


def box(d, matrix=(1, 0, 0, 1, 0, 0)):
    """The box of the points of a path, in points of the page; None for a path without any."""
    found = [float(n) for n in NUMBER.findall(d)]
    a, b, c, e, x0, y0 = matrix
    points = [(a * x + c * y + x0, b * x + e * y + y0) for x, y in zip(found[::2], found[1::2])]
    if not points:
        return None
    xs, ys = zip(*points)
    return min(xs), min(ys), max(xs), max(ys)


def matrix_of(element):
    told = element.get("transform")
    return tuple(float(n) for n in NUMBER.findall(told)) if told else (1, 0, 0, 1, 0, 0)


def read(path):
    """{"size": (w, h), "glyphs": [(x, y, box of the outline)], "paths": [box], "title": .., "desc": ..}"""
    root = ElementTree.parse(path).getroot()
    outlines = {s.get("id"): box(s.find(f"{SVG}path").get("d")) for s in root.iter(f"{SVG}symbol")}
    inside = {p for s in root.iter(f"{SVG}symbol") for p in s.iter(f"{SVG}path")}
    inside |= {p for c in root.iter(f"{SVG}clipPath") for p in c.iter(f"{SVG}path")}
    glyphs = [(float(u.get("x")), float(u.get("y")), outlines[u.get(f"{XLINK}href")[1:]])
              for u in root.iter(f"{SVG}use") if u.get(f"{XLINK}href", "")[1:] in outlines]
    glyphs = [glyph for glyph in glyphs if glyph[2]]  # blanks have no outline
    paths = [box(p.get("d"), matrix_of(p)) for p in root.iter(f"{SVG}path") if p not in inside]
    text = {tag: (root.findtext(f"{SVG}{tag}") or "") for tag in ("title", "desc")}
    size = tuple(float(root.get(k).removesuffix("pt")) for k in ("width", "height"))
    return {"size": size, "glyphs": glyphs, "paths": [p for p in paths if p], "title": text["title"], "desc": text["desc"]}
