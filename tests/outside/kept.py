"""What goes with an issued report: every file that it was made from, whole, as its list says, and nothing that is the surveyor's own."""
import hashlib
import re
import shutil
import struct
from pathlib import Path

from judge import copy_of, expect, finish, folder, need, plain, program, run

PLANTED = "planted-7f3a"  # in remarks, private notes and metadata: it may stand nowhere
LAYOUT = "# planted-7f3a\nlayout: 1\nextends: river-desk\nfirm: Another desk # planted-7f3a\n"
PRIVATE = "private:\n  planted-7f3a: the owner said planted-7f3a\n"
RECIPIENTS = "recipients:\n  - {who: the owner, how: by letter}\n"


def digest(data):
    return hashlib.sha256(data).hexdigest()


def in_fours(text):
    return " ".join(text[i:i + 4] for i in range(0, len(text), 4))


def plant_in_picture(jpeg):
    """A comment, an EXIF block and bytes after the end: none of them is the picture."""
    data = jpeg.read_bytes()
    words = PLANTED.encode()
    more = b"".join(b"\xff" + bytes([marker]) + struct.pack(">H", len(body) + 2) + body
                    for marker, body in ((0xFE, words), (0xE1, b"Exif\0\0II*\0\x08\0\0\0\0\0" + words)))
    jpeg.write_bytes(data[:2] + more + data[2:] + words)


def planted(root, to, beside=False):
    survey = copy_of(root / "example-surveys" / "clean-boat" / "survey.yaml", to)
    text = survey.read_text().replace("house: river-desk", f"house: ours # {PLANTED}")
    if "\nrecipients:" not in text:
        text += RECIPIENTS
    survey.write_text(text + PRIVATE)
    (to / "layouts").mkdir()
    (to / "layouts" / "ours.yaml").write_text(LAYOUT + ("issue: {inputs: beside}\n" if beside else ""))
    for readings in (to / "readings").iterdir():
        readings.write_text(f"# {PLANTED}\n" + readings.read_text() + f"# {PLANTED}\n")
    plant_in_picture(next((to / "photos").glob("*.jpg")))
    return survey


def issued(binary, survey):
    done = run(binary, "issue", survey)
    expect(done.returncode == 0, f"issue leaves with 0, not {done.returncode}: {done.stderr[:800]}")
    found = list((survey.parent / "issued").glob("*/*.pdf"))
    expect(len(found) == 1, f"one PDF is issued: {found}")
    return found[0]


def saved(pdf, to):
    to.mkdir()
    names = re.findall(r"^\d+: (.*)$", run("pdfdetach", "-list", pdf).stdout, re.M)
    for number, name in enumerate(names, 1):
        (to / name).parent.mkdir(parents=True, exist_ok=True)
        done = run("pdfdetach", "-save", number, "-o", to / name, pdf)
        expect(done.returncode == 0, f"pdfdetach saves {name}: {done.stderr[:200]}")
    return {name: (to / name).read_bytes() for name in names}


def listed(manifest):
    """{path: (digest, bytes)}"""
    lines = re.findall(r"^file: ([0-9a-f]{64}) (\d+) (.*)$", manifest.decode(), re.M)
    return {path: (sha, int(size)) for sha, size, path in lines}


def judge_files(where, files, manifest):
    for path, (sha, size) in listed(manifest).items():
        expect(path in files, f"{where}: {path} of the list is there")
        data = files.get(path, b"")
        expect(digest(data) == sha and len(data) == size, f"{where}: {path} is as the list says")
    expect(set(files) - {"manifest.txt"} == set(listed(manifest)), f"{where}: nothing is there that is not listed")


def private_words(data):
    """What is found of the planted words, as they stand or as a PDF may spell them."""
    spelled = [PLANTED.encode(), PLANTED.encode("utf-16-be")]
    spelled += [code(form.hex()).encode() for form in spelled for code in (str.lower, str.upper)]
    return [form for form in [*spelled, b"Exif"] if form in data]


def judge_nothing_private(where, blobs):
    for name, data in blobs.items():
        expect(not private_words(data), f"{where}: {private_words(data)} does not stand in {name}")


def inflated(pdf, to):
    done = run("qpdf", "--qdf", "--stream-data=uncompress", "--decode-level=generalized", "--object-streams=disable", pdf, to)
    expect(done.returncode == 0, f"qpdf inflates the PDF: {done.stderr[:300]}")
    return to.read_bytes()


def judge_digests(pdf, files):
    text = plain(pdf)
    short = in_fours(digest(files["manifest.txt"])[:12])
    pages = run("pdftotext", "-layout", pdf, "-").stdout.rstrip("\f").split("\f")
    for number, page in enumerate(pages, 1):
        expect(short in re.sub(r"\s+", " ", page), f"page {number} carries {short}, the digest of the list of inputs")
    for path, data in files.items():
        if path.endswith((".jpg", ".png", "photographs.yaml", "past.yaml", "manifest.txt")):
            continue
        expect(all(four in text for four in in_fours(digest(data)).split()), f"the table of what was read has the digest of {path}")


def judge_attached(binary, root, work):
    survey = planted(root, work / "attached")
    given = [p for p in survey.parent.rglob("*") if p.is_file()]
    for file in given:  # the judge is judged
        expect(private_words(file.read_bytes()), f"what was planted is found in {file.name} itself")
    originals = {p.name: p.read_bytes() for p in given}
    pdf = issued(binary, survey)
    checked = run("qpdf", "--check", pdf)
    expect(checked.returncode == 0, f"qpdf --check: {checked.stdout[-300:]}{checked.stderr[-300:]}")
    files = saved(pdf, work / "saved")
    judge_files("attached", files, files.get("manifest.txt", b""))
    for name in ("survey.yaml", "layouts/ours.yaml", "installed/base.yaml", "photographs.yaml", "manifest.txt"):
        expect(name in files, f"{name} is attached")
    judge_nothing_private("the PDF", {"the file": pdf.read_bytes(), "its streams": inflated(pdf, work / "flat.pdf"), **files})
    judge_digests(pdf, files)
    for name, data in files.items():
        if name.startswith("photos/"):
            before = digest(originals[Path(name).name])
            expect(before in files["photographs.yaml"].decode(), f"the list of photographs has what {name} was before")
            expect(digest(data) != before, f"{name} is not attached as it came")
    return pdf


def judge_beside(binary, root, work):
    pdf = issued(binary, planted(root, work / "beside", beside=True))
    files = saved(pdf, work / "saved-beside")
    expect(set(files) == {"manifest.txt"}, f"only the list is attached where the house wants the inputs beside: {sorted(files)}")
    inputs = pdf.parent / "inputs"
    lying = {str(p.relative_to(inputs)): p.read_bytes() for p in inputs.rglob("*") if p.is_file()}
    judge_files("beside", lying, files.get("manifest.txt", b""))
    judge_nothing_private("beside", lying)
    expect(lying.get("manifest.txt", files["manifest.txt"]) == files["manifest.txt"], "the list beside is the list attached")


def judge_read_again(binary, pdf, work):
    """What is attached is a survey in its folder, which this program reads."""
    saved(pdf, work / "again")
    shutil.rmtree(work / "again" / "installed")
    done = run(binary, "check", work / "again" / "survey.yaml")
    expect(done.returncode == 0, f"what is attached is a survey again: {done.stderr[:600]}")


def main():
    need("qpdf", "pdfdetach", "pdftotext")
    binary, root = program()
    with folder() as temporary:
        work = Path(temporary)
        pdf = judge_attached(binary, root, work)
        judge_beside(binary, root, work)
        judge_read_again(binary, pdf, work)
    finish("kept")


main()
