"""Links, named destinations and bookmarks of a PDF, as qpdf finds its objects."""
import json
from collections import defaultdict
from types import SimpleNamespace

from judge import run

ROW = 14  # points: anchors no further apart than this may be of one line of a table


class Pdf:
    def __init__(self, path):
        whole = json.loads(run("qpdf", "--json=2", "--json-stream-data=none", path).stdout)
        self.objects = {key.removeprefix("obj:"): o.get("value", o.get("stream", {}).get("dict")) for key, o in whole["qpdf"][1].items()}
        self.pages = [p["object"] for p in whole["pages"]]
        root = self.of(self.objects["trailer"]["/Root"])
        self.names = {}
        self.read_names(self.of(self.of(root["/Names"])["/Dests"]))
        self.bookmarks = list(self.read_bookmarks(self.of(root["/Outlines"]), []))
        self.at = defaultdict(set)  # (page, x, y) -> names
        for name, place in self.names.items():
            self.at[place].add(name)

    def of(self, value):
        return self.objects[value] if isinstance(value, str) and value.endswith(" R") else value

    def place(self, dest):
        page, how, x, y = self.of(dest)[:4]
        assert how == "/XYZ"
        return self.pages.index(page), round(x, 2), round(y, 2)

    def read_names(self, node):
        for kid in self.of(node.get("/Kids", [])):
            self.read_names(self.of(kid))
        pairs = self.of(node.get("/Names", []))
        for name, dest in zip(pairs[::2], pairs[1::2]):
            self.names[text(name)] = self.place(dest)

    def read_bookmarks(self, node, above):
        next_one = node.get("/First")
        while next_one:
            one = self.of(next_one)
            title = text(one["/Title"])
            yield above + [title], self.place(one["/Dest"])
            yield from self.read_bookmarks(one, above + [title])
            next_one = one.get("/Next")

    def links(self):
        """Each link: its page, its box, the names of where it leads."""
        for number, page in enumerate(self.pages):
            for ref in self.of(self.of(page).get("/Annots", [])):
                one = self.of(ref)
                x0, y0, x1, y1 = self.of(one["/Rect"])
                yield SimpleNamespace(page=number, x0=x0, y0=y0, x1=x1, y1=y1, names=self.at[self.place(one["/Dest"])])


def text(value):
    """A string of qpdf's JSON: u: is text, b: bytes in hexadecimal."""
    return value[2:] if value.startswith("u:") else bytes.fromhex(value[2:]).decode()


def on_map(anchors, link):
    """The place on the map whose sign the link covers."""
    inside = [(name, x, y) for name, (_, x, y) in anchors if link.x0 <= x <= link.x1 and link.y0 <= y <= link.y1]
    return {name for name, _, _ in inside}


def beside(anchors, link):
    """The row or block that a link stands in: the nearest that begins above it and not right of it; of those in one line the
    one furthest right."""
    middle = (link.y0 + link.y1) / 2
    found = [(y - middle, x, name) for name, (_, x, y) in anchors if x <= link.x0 + 1 and y > middle - 1]
    if not found:
        return set()
    nearest = min(found)[0]
    best = max(x for d, x, _ in found if d <= nearest + ROW)
    least = min(d for d, x, _ in found if x == best)
    return {name for d, x, name in found if x == best and d <= least + 0.1}


def ways(pdf, kinds=("mark/", "pit/", "photo/", "item/", "steelwork/", "doubler/", "note/")):
    """{(from, to)} between named places: from the row, block or sign that a link stands in."""
    rows, signs = defaultdict(list), defaultdict(list)
    for name, place in pdf.names.items():
        if name.startswith(kinds):
            rows[place[0]].append((name, place))
        elif name.startswith("map/"):
            signs[place[0]].append((name, place))
    out = set()
    for link in pdf.links():
        origins = on_map(signs[link.page], link) if signs[link.page] else beside(rows[link.page], link)
        out |= {(origin, target) for origin in origins for target in link.names}
    return out
