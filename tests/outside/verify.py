"""Whether a PDF is what was issued, asked through the command: a report, its replacement and an addendum are issued, and every kind of
change is made to them and to what they are held against. Each is found, and the layer that found it is the one that it belongs to."""
import hashlib
import json
import random
import re
import shutil
from pathlib import Path

from judge import expect, finish, folder, need, program, run
from two_issues import CLOSING, FIRST, SECOND, document, issued

LAYERS = ["register", "file", "inputs", "rendering", "signature"]


def sha(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


class Desk:
    """The program, and a place to alter things in."""

    def __init__(self, binary, work):
        self.binary, self.alone = binary, work / "alone"
        self.alone.mkdir()

    def verify(self, pdf, *more):
        done = run(self.binary, "verify", pdf, "--format", "json", *more)
        found = json.loads(done.stdout) if done.stdout else {"layers": []}
        found["exit"] = done.returncode
        found["said"] = {layer["name"]: layer["why"] for layer in found["layers"]}
        found["answers"] = {layer["name"]: layer["answer"] for layer in found["layers"]}
        return found

    def altered(self, bytes_, *more):
        """Of other bytes, where no register lies."""
        pdf = self.alone / "received.pdf"
        pdf.write_bytes(bytes_)
        return self.verify(pdf, *more)


def broken(found):
    return [name for name in LAYERS if found["answers"].get(name) == "broken"]


def found_broken(found, layer, what):
    expect(found["exit"] == 4, f"{what}: leaves with 4, not {found['exit']}")
    expect(layer in broken(found), f"{what}: {layer} is broken, not {broken(found)}: {found['said'].get(layer)}")


def judge_whole(desk, where):
    for name, replaced in ((FIRST, True), (SECOND, False), (CLOSING, False)):
        found = desk.verify(document(where, name))
        expect(found["exit"] == 0, f"{name}: leaves with 0, not {found['exit']}: {found['said']}")
        wanted = dict.fromkeys(LAYERS[:4], "holds") | {"signature": "cannot be checked"}
        expect(found["answers"] == wanted, f"{name}: {found['answers']}, {found['said']}")
        expect(found["superseded"]["by"] == ("issue" if replaced else "none"), f"{name}: {found['superseded']}")
        expect(found["report"] == "RD 2702" and found["state"] == "final", f"{name}: says what it is")
        expect(sha(document(where, name)) in found["said"]["file"], f"{name}: its SHA-256 is what sha256sum says")
    first = desk.verify(document(where, FIRST))["superseded"]
    expect((first["issue"], first["date"]) == (2, "2026-11-09"), f"issue 1 is replaced by issue 2: {first}")
    expect(first["digest"] == sha(document(where, SECOND)), "and the digest of issue 2 is said")
    expect(desk.verify(document(where, SECOND))["addenda"] == [{"addendum": 1, "date": "2026-11-26"}], "issue 2 has an addendum")
    expect(desk.verify(document(where, CLOSING))["what"] == "addendum", "an addendum is one")
    said = run(desk.binary, "verify", document(where, FIRST)).stdout
    expect("Replaced by issue 2 of 2026-11-09" in said and said.endswith("Not altered, but REPLACED: it is not to be relied on. Not checked: signature.\n"), f"in words: {said}")


def judge_companions(desk, where):
    stamped = where / SECOND / f"{FIRST}-superseded.pdf"
    found = desk.verify(stamped)
    expect((found["exit"], found["what"], found["issue"]) == (0, "stamped copy", 1), f"a stamped copy of issue 1: {found}")
    expect(found["answers"]["inputs"] == "holds", f"a stamped copy keeps the inputs: {found['said']}")
    notices = sorted((where / SECOND).glob("recall-*.pdf"))
    expect(notices, "there are notices")
    for notice in notices:
        expect(desk.verify(notice)["what"] == "companion", f"{notice.name} went out with an issue")
        turned = desk.altered(notice.read_bytes() + b"\n", "--register", where / "register.txt")
        found_broken(turned, "file", "a notice with a line more")


def judge_alone(desk, where):
    pdf = document(where, SECOND).read_bytes()
    found = desk.altered(pdf)
    expect(found["exit"] == 0 and found["superseded"]["by"] == "not known", f"without a register nothing is denied: {found['superseded']}")
    wanted = dict.fromkeys(LAYERS, "cannot be checked") | {"inputs": "holds", "rendering": "holds"}
    expect(found["answers"] == wanted, f"without a register: {found['answers']}, {found['said']}")
    expect("later issue" in found["said"]["register"], "and it is said what cannot be known")
    expect(desk.altered(pdf, "--register", where / "register.txt")["answers"]["file"] == "holds", "a register may lie elsewhere")


def judge_bytes(desk, where):
    """Bytes turned here and there by the command; flip_every_byte turns each, in one process."""
    whole = document(where, CLOSING).read_bytes()
    draw = random.Random(2702)
    for round_ in range(24):
        at = draw.randrange(len(whole))
        turned = whole[:at] + bytes([whole[at] ^ 1 << draw.randrange(8)]) + whole[at + 1:]
        if round_ % 2:
            found_broken(desk.altered(turned, "--register", where / "register.txt"), "file", f"byte {at} turned")
        else:
            found = desk.altered(turned)
            expect(found["exit"] == 4 and {"inputs", "rendering"} & set(broken(found)), f"byte {at} turned, without a register: {found['said']}")


def update(pdf):
    """The same file with an update behind it that changes the title, as any editor writes one."""
    text = pdf.decode("latin-1")
    root, size = re.findall(r"/Root (\d+) 0 R", text)[-1], int(re.findall(r"/Size (\d+)", text)[-1])
    begin, before = len(pdf), re.findall(r"startxref\s+(\d+)", text)[-1]
    added = f"{size} 0 obj\n<< /Title (Another) >>\nendobj\n"
    table = f"xref\n{size} 1\n{begin:010} 00000 n\r\ntrailer\n<< /Size {size + 1} /Root {root} 0 R /Info {size} 0 R /Prev {before} >>\n"
    return pdf + (added + table + f"startxref\n{begin + len(added)}\n%%EOF\n").encode("latin-1")


def judge_additions(desk, where):
    register = ("--register", where / "register.txt")
    for name in (FIRST, CLOSING):
        whole = document(where, name).read_bytes()
        for what, more in (("a byte", whole + b"\n"), ("a comment", whole + b"% more\n"), ("an update", update(whole))):
            found = desk.altered(more, *register)
            found_broken(found, "file", f"{name} with {what} behind it")
            expect("it begins with the" in found["said"]["file"], f"{name} with {what}: {found['said']['file']}")
            alone = desk.altered(more)
            for layer in ("file", "rendering"):
                found_broken(alone, layer, f"{name} with {what} behind it, without a register")


def judge_pages(desk, where):
    pdf, cut = document(where, CLOSING), desk.alone / "cut.pdf"
    count = int(run("qpdf", "--show-npages", pdf).stdout)
    for page in range(1, count + 1):
        kept = ",".join(str(p) for p in range(1, count + 1) if p != page)
        done = run("qpdf", pdf, "--pages", ".", kept, "--", cut)
        expect(done.returncode == 0, f"qpdf takes a page out: {done.stderr}")
        found_broken(desk.verify(cut, "--register", where / "register.txt"), "file", f"page {page} taken out")
        found = desk.verify(cut)
        found_broken(found, "rendering", f"page {page} taken out, without a register")
        expect(f"it has {count - 1} pages and its inputs make {count}" in found["said"]["rendering"], f"and is counted: {found['said']['rendering']}")


def judge_inputs(desk, where):
    """Each attached input altered in one byte, by qpdf."""
    pdf, changed = document(where, SECOND), desk.alone / "changed.pdf"
    names = re.findall(r"(?m)^\d+: (.*)$", run("pdfdetach", "-list", pdf).stdout)
    expect("survey.yaml" in names and "manifest.txt" in names, f"the inputs are attached: {names}")
    for number, name in enumerate(names, 1):
        one = desk.alone / "one"
        run("pdfdetach", "-save", number, "-o", one, pdf)
        bytes_ = bytearray(one.read_bytes())
        bytes_[len(bytes_) // 2] ^= 1
        one.write_bytes(bytes_)
        done = run("qpdf", pdf, "--remove-attachment=" + name, "--", changed)
        expect(done.returncode == 0, f"qpdf takes {name} out: {done.stderr}")
        found_broken(desk.verify(changed), "inputs", f"{name} taken out")
        again = desk.alone / "again.pdf"
        run("qpdf", changed, "--add-attachment", one, f"--key={name}", f"--filename={name}", "--", again)
        found = desk.verify(again)
        found_broken(found, "inputs", f"{name} altered")
        expect(name in found["said"]["inputs"] or name == "manifest.txt", f"and named: {found['said']['inputs']}")


def judge_register(desk, where):
    """Lines here and there; each line and letter is altered where the layers are tested by themselves."""
    apart = desk.alone.parent / "altered"
    apart.mkdir()
    pdf, register = document(where, CLOSING), apart / "register.txt"
    lines = (where / "register.txt").read_text().splitlines(keepends=True)
    draw = random.Random(64)
    for number in range(0, len(lines), 9):
        line = lines[number]
        at = draw.randrange(len(line))
        altered = line[:at] + chr(ord(line[at]) ^ 1) + line[at + 1:]
        for kept in ([altered], []):
            register.write_text("".join(lines[:number] + kept + lines[number + 1:]))
            found = desk.verify(pdf, "--register", register)
            found_broken(found, "register", f"line {number + 1} of the register {'altered' if kept else 'taken out'}")
            expect(re.search(r"register\.txt:\d+: ", found["said"]["register"]), f"and its place is said: {found['said']['register']}")
    own = where / "register.txt"
    text = own.read_text()
    own.write_text(text[:text.rindex("\n\nreport: ") + 1])
    found = desk.verify(document(where, FIRST))
    found_broken(found, "register", "the last entry cut off, its folder still there")
    expect(CLOSING in found["said"]["register"], f"and the folder is named: {found['said']['register']}")
    own.write_text(text)


def judge_beside(desk, binary, root, work):
    survey = Path(shutil.copytree(root / "tests/outside/surveys/two-issues", work / "beside")) / "survey.yaml"
    layout = re.search(r"(?m)^house: (.*)$", survey.read_text()).group(1)
    (survey.parent / "layouts").mkdir(exist_ok=True)
    (survey.parent / "layouts/kept-beside.yaml").write_text(f"layout: 1\nextends: {layout}\nissue:\n  inputs: beside\n")
    survey.write_text(survey.read_text().replace(f"house: {layout}", "house: kept-beside", 1))
    done = run(binary, "issue", survey)
    expect(done.returncode == 0, f"a house may keep the inputs beside: {done.stderr[:400]}")
    pdf = document(survey.parent / "issued", FIRST)
    found = desk.verify(pdf)
    expect(found["exit"] == 0 and found["answers"]["rendering"] == "holds", f"inputs beside: {found['said']}")
    for kept in sorted(p for p in (pdf.parent / "inputs").rglob("*") if p.is_file()):
        whole = kept.read_bytes()
        kept.write_bytes(whole[:-1] + bytes([whole[-1] ^ 1]))
        found_broken(desk.verify(pdf), "inputs", f"{kept.name} beside altered")
        kept.write_bytes(whole)
    found = desk.altered(pdf.read_bytes())
    expect(found["exit"] == 0 and found["answers"]["inputs"] == "cannot be checked", f"without the folder: {found['said']}")
    expect(desk.altered(pdf.read_bytes(), "--inputs", pdf.parent / "inputs")["answers"]["rendering"] == "holds", "the folder may lie elsewhere")


AUTHORITY = """[ca]
default_ca = own
[own]
database = {work}/database
new_certs_dir = {work}
serial = {work}/serial
default_md = sha256
policy = any
[any]
commonName = supplied
"""


def key(work, name):
    """A throw-away key and its certificate, valid on the survey's days whatever day it is now."""
    private, request, certificate = (work / f"{name}.{end}" for end in ("pem", "csr", "crt"))
    (work / "authority").write_text(AUTHORITY.format(work=work))
    (work / "database").write_text("")
    (work / "serial").write_text("01\n")
    run("openssl", "req", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes", "-keyout", private, "-out", request, "-subj", f"/CN={name}")
    done = run("openssl", "ca", "-config", work / "authority", "-selfsign", "-keyfile", private, "-in", request, "-out", certificate, "-notext", "-batch",
               "-startdate", "20260101000000Z", "-enddate", "20361231000000Z")
    expect(done.returncode == 0, f"openssl makes a certificate: {done.stderr[-300:]}")
    return private, certificate


def judge_signature(desk, binary, root, work):
    survey = Path(shutil.copytree(root / "tests/outside/surveys/two-issues", work / "signed")) / "survey.yaml"
    private, certificate = key(work, "R. Mere")
    other = key(work, "Somebody Else")[1]
    done = run(binary, "issue", survey, "--key", private, "--certificate", certificate)
    expect(done.returncode == 0, f"issued with a key: {done.stderr[:400]}")
    where = survey.parent / "issued"
    pdf = document(where, FIRST)
    found = desk.verify(pdf, "--certificate", certificate)
    expect(set(found["answers"].values()) == {"holds"} and found["exit"] == 0, f"all five layers hold: {found['said']}")
    expect(found["signer"] == "R. Mere", f"and the signer is named: {found['signer']}")
    found_broken(desk.verify(pdf, "--certificate", other), "signature", "another certificate")
    whole = pdf.read_bytes()
    start = whole.index(b"%%EOF") + len(b"%%EOF\n")
    found = desk.altered(whole[:start], "--register", where / "register.txt")
    for layer in ("file", "signature"):
        found_broken(found, layer, "the signature taken off")
    for what, more in (("a line", whole + b"\n"), ("an update", update(whole)), ("its signature again", whole + whole[start:])):
        alone = desk.altered(more)
        for layer in ("file", "signature"):
            found_broken(alone, layer, f"a signed report with {what} behind it")
    draw = random.Random(7)
    for _ in range(12):
        at = draw.randrange(start, len(whole))
        turned = whole[:at] + bytes([whole[at] ^ 1]) + whole[at + 1:]
        expect(desk.altered(turned)["exit"] == 4, f"byte {at}, in the signature's update, turned")


def judge_others(desk, binary, root):
    """What is no issued report is refused, not judged."""
    draft, text = desk.alone / "draft.pdf", desk.alone / "text.pdf"
    run(binary, "typeset", root / "example-surveys/two-issues/survey.yaml", "-o", draft)
    text.write_text("no PDF\n")
    for name in (draft, text):
        if name.exists():
            expect(desk.verify(name)["exit"] == 1, f"{name.name} is refused")
    expect(desk.verify(desk.alone / "nowhere.pdf")["exit"] == 3, "a file that is not there cannot be read")


def main():
    need("qpdf", "pdfdetach", "openssl")
    binary, root = program()
    with folder() as work:
        work = Path(work)
        desk = Desk(binary, work)
        where = issued(binary, root, work)
        for judge in (judge_whole, judge_companions, judge_alone, judge_bytes, judge_additions, judge_pages, judge_inputs, judge_register):
            judge(desk, where)
        judge_beside(desk, binary, root, work)
        judge_signature(desk, binary, root, work)
        judge_others(desk, binary, root)
    finish("verify")


main()
