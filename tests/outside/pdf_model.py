"""A PDF as objects, page operators and text, read by qpdf's JSON and nothing of the program's."""
import base64
import json
import re
import subprocess
from functools import cached_property

REFERENCE = re.compile(r"^(\d+) \d+ R$")
TOKEN = re.compile(rb"<<|>>|\[|\]|<[0-9A-Fa-f\s]*>|\((?:\\.|[^\\()])*\)|/[^\s<>\[\]()/%]*|[^\s<>\[\]()/%]+", re.S)
PAINTS = {b"S", b"s", b"f", b"F", b"f*", b"B", b"B*", b"b", b"b*", b"sh", b"Do", b"Tj", b"TJ", b"'", b'"', b"EI"}


class Pdf:
    def __init__(self, path):
        read = subprocess.run(["qpdf", "--json=2", "--json-stream-data=inline", "--decode-level=generalized", str(path), "-"],
                              capture_output=True, check=False)
        self.objects = json.loads(read.stdout)["qpdf"][1]

    def get(self, value):
        """The object that a reference leads to; a stream is its dictionary with its data under "data"."""
        while isinstance(value, str) and REFERENCE.match(value):
            found = self.objects.get(f"obj:{value}", {})
            value = found["value"] if "value" in found else found.get("stream")
            if isinstance(value, dict) and "dict" in value and "data" in value:
                value = value["dict"] | {"data": value["data"]}
        return value

    @cached_property
    def root(self):
        return self.get(self.objects["trailer"]["value"]["/Root"])

    @cached_property
    def pages(self):
        """[(reference, page dictionary)] in order."""
        out = []

        def walk(reference):
            node = self.get(reference)
            if node["/Type"] == "/Page":
                out.append((reference, node))
            for kid in self.get(node.get("/Kids", [])):
                walk(kid)
        walk(self.root["/Pages"])
        return out

    def bytes_of(self, reference):
        return base64.b64decode(self.get(reference)["data"])

    def content(self, page):
        parts = self.get(page["/Contents"])
        return b"\n".join(map(self.bytes_of, parts)) if isinstance(parts, list) else self.bytes_of(page["/Contents"])

    @cached_property
    def _maps(self):
        return {}

    def to_unicode(self, font):
        if font not in self._maps:
            text = self.bytes_of(self.get(font)["/ToUnicode"])
            self._maps[font] = {int(code, 16): bytes.fromhex(to.decode()).decode("utf-16-be")
                                for code, to in re.findall(rb"<([0-9a-fA-F]{4})> <([0-9a-fA-F]+)>\n", text.replace(b"\r", b""))}
        return self._maps[font]


def string(value):
    """A text string as qpdf writes it in JSON."""
    if not isinstance(value, str):
        return ""
    return value[2:] if value.startswith("u:") else ""


def operators(data):
    """(operator, operands): operands as bytes, dictionaries as {name: operand}, arrays as lists."""
    stack, operands = [], []
    for token in TOKEN.findall(data):
        if token in (b"<<", b"["):
            stack.append(operands)
            operands = []
        elif token == b"]":
            stack[-1].append(operands)
            operands = stack.pop()
        elif token == b">>":
            stack[-1].append(dict(zip(operands[::2], operands[1::2])))
            operands = stack.pop()
        elif stack or re.match(rb"[-+.\d/<(]", token):
            operands.append(token)
        else:
            yield token, operands
            operands = []


class Piece:
    """A stretch of marked content."""
    def __init__(self, tag, number, artifact):
        self.tag, self.number, self.artifact, self.text = tag, number, artifact, ""


def pieces(pdf, page):
    """(pieces with a number, faults) of a page."""
    fonts = pdf.get(pdf.get(page["/Resources"]).get("/Font", {}))
    found, faults, open_, codes, hidden = [], [], [], {}, 0
    for operator, operands in operators(pdf.content(page)):
        if operator in (b"BDC", b"BMC"):
            properties = operands[1] if operator == b"BDC" else {}
            number = properties.get(b"/MCID")
            piece = Piece(operands[0].decode(), None if number is None else int(number), operands[0] == b"/Artifact")
            owner = next((p for p in open_ if p.number is not None), None)
            if piece.number is not None:
                found.append(piece)
            if b"/ActualText" in properties and owner:
                owner.text += bytes.fromhex(properties[b"/ActualText"].strip(b"<>").decode())[2:].decode("utf-16-be")
            piece.hides = b"/ActualText" in properties
            hidden += piece.hides
            open_.append(piece)
        elif operator == b"EMC":
            if not open_:
                faults.append("an end of marked content without a beginning")
            else:
                hidden -= open_.pop().hides
        elif operator == b"Tf":
            codes = pdf.to_unicode(fonts[operands[0].decode()])
        if operator not in PAINTS:
            continue
        owner = next((p for p in open_ if p.number is not None or p.artifact), None)
        if owner is None:
            faults.append(f"the operator {operator.decode()} paints outside marked content")
        elif operator == b"TJ" and not hidden:
            for part in operands[0]:
                if part.startswith(b"<"):
                    digits = part.strip(b"<>").decode()
                    owner.text += "".join(codes.get(int(digits[i:i + 4], 16), "") for i in range(0, len(digits), 4))
    if open_:
        faults.append("marked content that does not end")
    return found, faults
