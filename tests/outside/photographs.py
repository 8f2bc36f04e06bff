"""Photographs: nothing private in the PDF, each picture once, a register that holds, and memory that does not grow with them.

The pictures are made here: Ghostscript draws a field of grey and writes it as JPEG. What is private in them is put in by hand.
"""
import hashlib
import os
import re
import resource
import subprocess
from pathlib import Path

from judge import copy_of, expect, finish, folder, load, need, plain, program, run

PRIVATE = [b"GPS-51.4-N", b"SERIAL-00417", b"THUMBNAIL-OF-IT", b"REMARK-OF-THE-OWNER", b"MAKER-NOTE"]
MOST = 300 * 2 ** 20   # bytes for the whole command, its children with it
FIELD = """<< /PageSize [1000 750] >> setpagedevice /row 200 string def
1000 750 scale 200 150 8 [200 0 0 -150 0 150]
{ 0 1 199 { row exch rand 200 mod 30 add put } for row } image showpage"""


def jpeg(to, width=4000, height=3000):
    """Cells of chance, coded in colour."""
    subprocess.run(["gs", "-q", "-dBATCH", "-dNOPAUSE", "-dSAFER", "-sDEVICE=jpeg", "-dJPEGQ=92", f"-g{width}x{height}",
                    f"-r{72 * width / 1000}", f"-sOutputFile={to}", "-c", FIELD], check=True)
    return to.read_bytes()


def segment(marker, body):
    return b"\xff" + bytes([marker]) + (len(body) + 2).to_bytes(2, "big") + body


def with_private(plain_jpeg, number, turned=1):
    """The same picture with what a telephone writes into it; the number makes each file another one."""
    entry = b"\x01\x12\x00\x03\x00\x00\x00\x01\x00" + bytes([turned]) + b"\x00\x00"
    exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01" + entry + b"\0\0\0\0" + b" ".join(PRIVATE[:3]) + b" " + PRIVATE[4]
    return plain_jpeg[:2] + segment(0xE1, exif) + segment(0xFE, PRIVATE[3] + b" %d" % number) + plain_jpeg[2:]


def survey_with(root, to, files):
    """The clean boat with these photographs in place of its own; each file's text is its name in the folder."""
    survey = copy_of(root / "example-surveys/clean-boat/survey.yaml", to)
    photos = "".join(f"  {i}: {{file: {name}, at: PC {1 + i % 9}, looking: square on, caption: \"Plate number {i}.\"}}\n"
                     for i, name in enumerate(files, 1))
    text = re.sub(r"(?m)^photos:\n(  .*\n)+", "photos:\n" + photos, survey.read_text())
    numbers = ", ".join(str(i) for i in range(1, len(files) + 1))
    survey.write_text(text.replace("text: Rings clear", f"photo: [{numbers}], text: Rings clear"))
    return survey


def measured(binary, survey, pdf):
    """Exit status, what was said, and the most memory that any one process of the command had."""
    command = subprocess.Popen([str(binary), "typeset", str(survey), "-o", str(pdf)], stderr=subprocess.PIPE, text=True)
    said = command.stderr.read()
    _, status, usage = os.wait4(command.pid, 0)
    return os.waitstatus_to_exitcode(status), said, usage.ru_maxrss * 1024


def judge_privacy(pdf, work):
    run("qpdf", "--qdf", "--stream-data=uncompress", pdf, work / "open.pdf")
    opened = (work / "open.pdf").read_bytes()
    for mark in PRIVATE + [b"Exif"]:
        expect(mark not in opened, f"{mark.decode()} is not in the PDF")


def pictures(pdf):
    """Objects that pdfimages finds, in the order of the pages: (object, width, height)."""
    rows = [line.split() for line in run("pdfimages", "-list", pdf).stdout.splitlines()[2:]]
    return [(row[10], int(row[3]), int(row[4])) for row in rows]


def judge_register(survey, pdf):
    text = re.sub(r"\s+", "", plain(pdf).split("the file as it was given")[-1])
    for key, photo in load(survey)["photos"].items():
        data = (survey.parent / photo["file"]).read_bytes()
        expect(f"{photo['file']},{len(data)}" in text, f"photo {key}: file and bytes are registered")
        digest = hashlib.sha256(data).hexdigest()
        expect(digest[:32] in text and digest[32:] in text, f"photo {key}: the digest is that of the file as given")
    expect("4000×3000" in text, "the pixels given are registered")


def judge_once(binary, root, work, picture):
    """Three photographs of two files, one of them under two names, one turned: two pictures in the PDF."""
    survey = survey_with(root, work / "once", ["photos/a.jpg", "photos/b.jpg", "photos/c.jpg"])
    for name, data in (("a", with_private(picture, 1)), ("b", with_private(picture, 1)), ("c", with_private(picture, 2, 6))):
        (survey.parent / f"photos/{name}.jpg").write_bytes(data)
    status, said, _ = measured(binary, survey, work / "once.pdf")
    expect(status == 0, f"three photographs are typeset: {said[:600]}")
    found = pictures(work / "once.pdf")
    expect(len(found) == 3 and len(set(found)) == 2, f"two pictures, one shown twice: {found}")
    expect(sorted({(w, h) for _, w, h in found}) == [(254, 338), (451, 338)], f"reduced to 220 an inch, the turned one upright: {found}")
    judge_privacy(work / "once.pdf", work)
    judge_register(survey, work / "once.pdf")


def judge_memory(binary, root, work, picture, count=16):
    names = [f"photos/m{i}.jpg" for i in range(count)]
    survey = survey_with(root, work / "many", names)
    for i, name in enumerate(names):
        (survey.parent / name).write_bytes(with_private(picture, i))
    status, said, most = measured(binary, survey, work / "many.pdf")
    expect(status == 0, f"{count} photographs are typeset: {said[:600]}")
    # At any time there is the program and one child: twice the largest of all is more than both together.
    expect(2 * most < MOST, f"{count} photographs of 12 million pixels take under 300 MB, not {2 * most >> 20}")
    print(f"{count} photographs of 4000 x 3000: the largest process had {most >> 20} MB")


def main():
    need("gs", "qpdf", "pdfimages", "pdftotext")
    binary, root = program()
    with folder() as work:
        work = Path(work)
        picture = jpeg(work / "field.jpg")
        judge_once(binary, root, work, picture)
        judge_memory(binary, root, work, picture)
    finish("photographs")


main()
