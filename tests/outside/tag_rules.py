"""What must hold of a tagged PDF, by rules of our own after ISO 32000-1, 14.7 and 14.8, and the checks that ISO 14289-1 asks
of a machine. It certifies nothing."""
from pdf_model import Pdf, pieces, string

HIDDEN = 2  # ISO 32000-1, table 165
GROUPING = {"/Document", "/Sect", "/Div", "/TOC", "/TOCI", "/L", "/LI", "/Table", "/THead", "/TBody", "/TR", "/Reference"}
STANDARD = GROUPING | {"/P", "/Lbl", "/LBody", "/TH", "/TD", "/Caption", "/Figure", "/Note", "/Link", "/Span"} | {f"/H{n}" for n in range(1, 7)}
PARENTS = {"/LI": {"/L"}, "/Lbl": {"/LI"}, "/LBody": {"/LI"}, "/THead": {"/Table"}, "/TBody": {"/Table"}, "/TR": {"/THead", "/TBody"},
           "/TH": {"/TR"}, "/TD": {"/TR"}, "/TOCI": {"/TOC"}}


class Element:
    def __init__(self, node, parent):
        self.node, self.type, self.parent, self.kids = node, node.get("/S"), parent, []

    def attribute(self, key):
        found = self.node.get("/A", {})
        return next((a[key] for a in (found if isinstance(found, list) else [found]) if key in a), None)

    def all(self, *types):
        for kid in self.kids:
            if isinstance(kid, Element):
                if kid.type in types:
                    yield kid
                yield from kid.all(*types)

    def text(self):
        return "".join(k.text() if isinstance(k, Element) else k for k in self.kids)


class Tagged:
    """The tree of a PDF with the text of its marked content in it, and every fault found on the way."""
    def __init__(self, path):
        self.pdf, self.faults, self.elements = Pdf(path), [], []
        self.pieces = {}
        for reference, page in self.pdf.pages:
            found, faults = pieces(self.pdf, page)
            self.faults += faults
            for piece in found:
                if (reference, piece.number) in self.pieces:
                    self.faults.append(f"the number {piece.number} is on a page twice")
                self.pieces[reference, piece.number] = piece
        self.used, self.linked = {}, {}
        root = self.pdf.get(self.pdf.root.get("/StructTreeRoot"))
        if root is None:
            self.faults.append("there is no structure tree")
            self.document = Element({}, None)
            return
        kids = root["/K"] if isinstance(root["/K"], list) else [root["/K"]]
        self.document = self.element(kids[0], None, None)
        self.root = root
        for check in (self.check_marked, self.check_parents, self.check_parent_tree, self.check_headings, self.check_figures, self.check_tables,
                      self.check_links, self.check_notes, self.check_catalog):
            check()

    def element(self, reference, parent, page):
        node = self.pdf.get(reference)
        out = Element(node, parent)
        out.reference = reference
        self.elements.append(out)
        page = node.get("/Pg", page)
        kids = node.get("/K", [])
        for kid in kids if isinstance(kids, list) else [kids]:
            if isinstance(kid, int):
                self.take(out, page, kid)
            elif isinstance(kid, dict) and kid.get("/Type") == "/MCR":
                self.take(out, kid.get("/Pg", page), kid["/MCID"])
            elif isinstance(kid, dict) and kid.get("/Type") == "/OBJR":
                self.linked.setdefault(kid["/Obj"], []).append(out)
            else:
                out.kids.append(self.element(kid, out, page))
        return out

    def take(self, element, page, number):
        self.used.setdefault((page, number), []).append(element)
        piece = self.pieces.get((page, number))
        if piece:
            element.kids.append(piece.text)
            if piece.tag != element.type:
                self.faults.append(f"content marked {piece.tag} belongs to {element.type}")

    def check_marked(self):
        for place, piece in self.pieces.items():
            if len(self.used.get(place, [])) != 1:
                self.faults.append(f"marked content {piece.number} ({piece.text[:30]!r}) is in the tree {len(self.used.get(place, []))} times")
        for place in self.used.keys() - self.pieces.keys():
            self.faults.append(f"the tree has marked content {place[1]} that no page has")
        for element in self.elements:
            if element.type in GROUPING and any(isinstance(k, str) for k in element.kids):
                self.faults.append(f"{element.type} holds content of its own")

    def check_parents(self):
        for element in self.elements:
            if element.type not in STANDARD:
                self.faults.append(f"{element.type} is no standard type")
            allowed = PARENTS.get(element.type)
            if allowed and element.parent.type not in allowed:
                self.faults.append(f"{element.type} stands in {element.parent.type}")
            if element.parent and element.node.get("/P") != element.parent.reference:
                self.faults.append(f"{element.type} names another parent than the one that holds it")

    def check_parent_tree(self):
        found = {}

        def walk(node):
            node = self.pdf.get(node)
            found.update(zip(node.get("/Nums", [])[::2], node.get("/Nums", [])[1::2]))
            for kid in node.get("/Kids", []):
                walk(kid)
        walk(self.root["/ParentTree"])
        for reference, page in self.pdf.pages:
            entry = self.pdf.get(found.get(page.get("/StructParents"), []))
            mine = {n: e for (p, n), (e, *_) in self.used.items() if p == reference}
            if [mine[n].reference for n in sorted(mine)] != entry:
                self.faults.append("the way back from a page's content does not lead to its elements")
        self.by_number = found

    def check_headings(self):
        level = 0
        for heading in self.document.all(*(f"/H{n}" for n in range(1, 7))):
            own = int(heading.type[2:])
            if own > level + 1:
                self.faults.append(f"the heading {heading.text()!r} skips from level {level} to {own}")
            level = own

    def check_figures(self):
        for figure in self.document.all("/Figure"):
            if not string(figure.node.get("/Alt")).strip():
                self.faults.append("a figure without words")
            box = figure.attribute("/BBox")
            if not box or not (0 <= box[0] <= box[2] and 0 <= box[1] <= box[3]):
                self.faults.append(f"a figure without its box: {box}")
        for sign in self.document.all("/Span"):
            if not string(sign.node.get("/Alt")).strip():
                self.faults.append("a sign without words")

    def check_tables(self):
        for table in self.document.all("/Table"):
            widths = set()
            for row in table.all("/TR"):
                widths.add(sum(cell.attribute("/ColSpan") or 1 for cell in row.kids))
            if len(widths) != 1:
                self.faults.append(f"the rows of a table have {sorted(widths)} cells: {table.text()[:60]!r}")
            for head in table.all("/TH"):
                if head.attribute("/Scope") not in ("/Row", "/Column", "/Both"):
                    self.faults.append(f"the head cell {head.text()!r} has no scope")

    def check_links(self):
        seen = set()
        for _, page in self.pdf.pages:
            for reference in self.pdf.get(page.get("/Annots", [])):
                annotation = self.pdf.get(reference)
                if annotation.get("/Subtype") == "/Widget" and annotation.get("/F", 0) & HIDDEN:
                    continue  # of a signature: nothing is drawn, and ISO 14289-1, 7.18.1 leaves hidden ones out
                seen.add(reference)
                owners = self.linked.get(reference, [])
                if len(owners) != 1 or owners[0].type != "/Link":
                    self.faults.append("a link that is not in one Link element")
                elif self.by_number.get(annotation.get("/StructParent")) != owners[0].reference:
                    self.faults.append("the way back from a link does not lead to its element")
                if not string(annotation.get("/Contents")).strip():
                    self.faults.append("a link without words")
            if page.get("/Annots") and page.get("/Tabs") != "/S":
                self.faults.append("a page whose links are not reached in the order of the tree")
        objects = [e for owners in self.linked.values() for e in owners]
        for link in self.document.all("/Link"):
            if link not in objects or not (link.text().strip() or string(link.node.get("/Alt")).strip()):
                self.faults.append(f"a Link element without a link or without text: {link.text()!r}")
        if self.linked.keys() - seen:
            self.faults.append("the tree has a link that no page has")

    def check_notes(self):
        ids = [note.node.get("/ID") for note in self.document.all("/Note")]
        if None in ids or len(set(ids)) != len(ids):
            self.faults.append("notes without an identifier of their own")

    def check_catalog(self):
        root = self.pdf.root
        if not string(root.get("/Lang")):
            self.faults.append("there is no language")
        if self.pdf.get(root.get("/MarkInfo", {})).get("/Marked") is not True:
            self.faults.append("the file does not say that it is tagged")
        if self.pdf.get(root.get("/ViewerPreferences", {})).get("/DisplayDocTitle") is not True:
            self.faults.append("the window does not show the title")
        info = self.pdf.get(self.pdf.objects["trailer"]["value"]["/Info"])
        if not string(info.get("/Title")).strip():
            self.faults.append("there is no title")
