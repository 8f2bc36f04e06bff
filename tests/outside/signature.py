"""A report signed with throw-away keys: poppler's pdfsig and `openssl cms` find the signature valid over the whole file, one changed
byte breaks it, what is put behind it is noticed, and the file is as good a tagged PDF as before. Then a stamped copy of it."""
import re
from datetime import date, timedelta
from pathlib import Path

from judge import expect, finish, folder, need, program, run
from tag_rules import Tagged

DAY = (date.today() + timedelta(days=1)).isoformat()  # the certificates that are made here are valid from now on
SURVEYOR = "A. Surveyor"


def openssl(*command):
    done = run("openssl", *command)
    expect(done.returncode == 0, f"openssl {command[0]} makes a throw-away key: {done.stderr[:300]}")


def certificate(work, name, key):
    openssl("req", "-x509", "-new", "-key", key, "-out", work / f"{name}.crt", "-subj", f"/CN={SURVEYOR}", "-days", "3650", "-sha256")
    return work / f"{name}.crt"


def keys(work):
    """{name: (key file, certificate file or "", passphrase)}, made as a surveyor would make them."""
    openssl("genpkey", "-algorithm", "RSA", "-pkeyopt", "rsa_keygen_bits:2048", "-out", work / "rsa.pem")
    openssl("genpkey", "-algorithm", "EC", "-pkeyopt", "ec_paramgen_curve:P-256", "-out", work / "ec.pem")
    (work / "words").write_text("two words")
    rsa, ec = certificate(work, "rsa", work / "rsa.pem"), certificate(work, "ec", work / "ec.pem")
    openssl("pkey", "-in", work / "ec.pem", "-aes256", "-passout", f"file:{work / 'words'}", "-out", work / "locked.pem")
    for name, passphrase in (("locked", f"file:{work / 'words'}"), ("open", "pass:")):
        openssl("pkcs12", "-export", "-inkey", work / "rsa.pem", "-in", rsa, "-passout", passphrase, "-out", work / f"{name}.p12")
    return {"RSA in PEM": (work / "rsa.pem", rsa, ""), "ECDSA in PEM": (work / "ec.pem", ec, ""), "locked PEM": (work / "locked.pem", ec, "two words"),
            "locked PKCS#12": (work / "locked.p12", "", "two words"), "open PKCS#12": (work / "open.p12", "", "")}


class Tool:
    """The library's own part, called by itself."""
    def __init__(self, binary, work):
        self.binary, self.work = binary.parent / "sign_pdf", work

    def sign(self, pdf, out, key, own, passphrase, day):
        (self.work / "passphrase").write_text(passphrase)
        return run(self.binary, "sign", pdf, out, key, own, self.work / "passphrase", day)

    def revisions(self, pdf, known=""):
        return run(self.binary, "revisions", pdf, known).stdout.splitlines()


def pdfsig(pdf):
    return run("pdfsig", "-nocert", pdf).stdout


def parts(pdf):
    """(what is covered, the signature) by the file's own range."""
    data = pdf.read_bytes()
    a, b, c, d = (int(n) for n in re.findall(rb"/ByteRange \[(\d+) (\d+) (\d+) (\d+)\]", data)[-1])
    expect(c + d == len(data), f"{pdf.name}: the range ends at the last byte")
    raw = bytes.fromhex(data[b + 1:c - 1].decode())
    return data[a:b] + data[c:], raw[:4 + int.from_bytes(raw[2:4], "big")]


def judge_openssl(name, pdf, own, work):
    covered, signature = parts(pdf)
    (work / "covered").write_bytes(covered)
    (work / "signature.der").write_bytes(signature)
    verify = ["openssl", "cms", "-verify", "-binary", "-inform", "DER", "-in", work / "signature.der", "-content", work / "covered",
              "-CAfile", own, "-purpose", "any", "-cades", "-out", work / "out"]
    done = run(*verify)
    expect(done.returncode == 0, f"{name}: openssl finds the signature valid: {done.stderr[:300]}")
    shown = run("openssl", "cms", "-cmsout", "-print", "-inform", "DER", "-in", work / "signature.der").stdout
    expect("id-smime-aa-signingCertificateV2" in shown, f"{name}: the signature names its certificate")
    expect("signingTime" not in shown, f"{name}: the signature has no time of a clock")


def judge_signed(name, plain, pdf, tool, work):
    said = pdfsig(pdf)
    for words in ("Signature is Valid", "Total document signed", "ETSI.CAdES.detached", "SHA-256", SURVEYOR):
        expect(words in said, f"{name}: pdfsig says {words!r}: {said[:900]}")
    expect(pdf.read_bytes().startswith(plain.read_bytes()), f"{name}: the file that is signed is there as it was")
    for judge in (["qpdf", "--check", pdf], ["mutool", "info", pdf], ["pdfinfo", pdf]):
        done = run(*judge)
        expect(done.returncode == 0 and "warning" not in (done.stdout + done.stderr).lower(), f"{name}: {judge[0]} is content: {(done.stdout + done.stderr)[:400]}")
    expect(tool.revisions(pdf)[1:] == ["more", f"signature holds {SURVEYOR}"], f"{name}: the program reads its own: {tool.revisions(pdf)}")
    expect(run("pdftotext", pdf, "-").stdout == run("pdftotext", plain, "-").stdout, f"{name}: the words are the same")
    tree = Tagged(pdf)
    expect(not tree.faults, f"{name}: the tags are sound: {tree.faults[:3]}")


def judge_changed(plain, pdf, tool, work):
    """Each change is noticed by pdfsig, or by the program, or by both."""
    data, changed = pdf.read_bytes(), work / "changed.pdf"
    length = len(plain.read_bytes())
    for at in (200, length // 2, length - 30, data.rindex(b"/Reason <") + 12):
        changed.write_bytes(data[:at] + bytes([data[at] ^ 1]) + data[at + 1:])
        expect("Signature is Valid" not in pdfsig(changed), f"pdfsig notices a change of byte {at}")
        lines = tool.revisions(changed)
        expect(not any("holds" in line for line in lines), f"the program notices a change of byte {at}: {lines}")
    changed.write_bytes(data + b"\n% more\n")
    expect(tool.revisions(changed)[1:] == ["more"], "bytes behind the signature are noticed")
    run("qpdf", "--pages", pdf, "1", "--", pdf, changed)
    expect(not any("holds" in line for line in tool.revisions(changed)), "a file with fewer pages is not the signed one")
    changed.write_bytes(data + b"6 0 obj\nnull\nendobj\n" + data[data.rindex(b"xref\n", 0, data.rindex(b"startxref")):])
    expect(tool.revisions(changed)[1:] == ["more"], "an update behind the signature is noticed")


def judge_known(pdf, made, tool):
    _, own, _ = made["RSA in PEM"]
    _, other, _ = made["ECDSA in PEM"]
    expect(tool.revisions(pdf, own)[-1] == f"signature holds {SURVEYOR}", "it holds against the certificate itself")
    expect("another certificate" in tool.revisions(pdf, other)[-1], "it does not hold against another one of the same name")


def judge_refusals(plain, made, tool, work):
    key, own, _ = made["RSA in PEM"]
    other = made["ECDSA in PEM"][1]
    locked, _, _ = made["locked PKCS#12"]
    for what, says, arguments in (
            ("a wrong passphrase", "not that of", (locked, "", "three words", DAY)), ("no passphrase", "locked", (locked, "", "", DAY)),
            ("the certificate of another key", "none of the certificates", (key, other, "", DAY)),
            ("a day before the certificate", "not valid on 1999-12-31", (key, own, "", "1999-12-31"))):
        out = work / "refused.pdf"
        done = tool.sign(plain, out, *arguments)
        expect(done.returncode == 1 and "SB0860" in done.stderr and says in done.stderr, f"{what} is refused: {done.stderr[:300]}")
        expect(not out.exists(), f"{what}: nothing is written")


STAMP = b"""%PDF-1.7
1 0 obj <</Type /Catalog /Pages 2 0 R>> endobj
2 0 obj <</Type /Pages /Kids [3 0 R] /Count 1>> endobj
3 0 obj <</Type /Page /Parent 2 0 R /MediaBox [0 0 595.27557 841.88977] /Contents 4 0 R /Resources <</Font <</F1 5 0 R>> >> >> endobj
4 0 obj <</Length 62>> stream
/P <</MCID 0>> BDC BT /F1 9 Tf 60 826 Td (OVERTAKEN) Tj ET EMC
endstream endobj
5 0 obj <</Type /Font /Subtype /Type1 /BaseFont /Helvetica>> endobj
trailer <</Root 1 0 R /Size 6>>
"""


def judge_stamped(plain, signed, tool, work):
    loose, stamp, copy, again = (work / name for name in ("loose.pdf", "stamp.pdf", "stamped.pdf", "again.pdf"))
    loose.write_bytes(STAMP)
    run("qpdf", loose, stamp)  # gives it its table
    for out, pdf in ((copy, signed), (again, plain)):
        done = run(tool.binary, "stamp", pdf, out, stamp)
        expect(done.returncode == 0, f"the copy is stamped: {done.stderr[:300]}")
    expect(copy.read_bytes() == again.read_bytes(), "the stamped copy of the signed and of the unsigned file are the same bytes")
    expect("does not contain any signatures" in pdfsig(copy), f"a stamped copy claims no signature: {pdfsig(copy)[:200]}")
    done = run("qpdf", "--check", copy)
    expect(done.returncode == 0, f"qpdf is content with the stamped copy: {done.stdout[:300]}{done.stderr[:300]}")
    tree, before = Tagged(copy), Tagged(plain)
    expect(not tree.faults, f"the tags of the stamped copy are sound: {tree.faults[:3]}")
    expect(tree.document.text() == before.document.text(), "what is read out of the stamped copy is what it was")
    expect(len(tree.linked) == len(before.linked), "the links of the stamped copy are kept")
    old, new = (run("pdftotext", "-layout", pdf, "-").stdout.split("\f") for pdf in (plain, copy))
    expect(len(old) == len(new), "the stamped copy has the same pages")
    for page, (was, now) in enumerate(zip(old[:-1], new[:-1]), 1):
        expect(now.split()[0] == "OVERTAKEN" and now.split()[1:] == was.split(), f"page {page} has the stamp and its own words")


def main():
    need("pdfsig", "openssl", "qpdf", "mutool", "pdftotext", "pdfinfo")
    binary, root = program()
    with folder() as work:
        work = Path(work)
        tool, plain = Tool(binary, work), work / "plain.pdf"
        done = run(binary, "typeset", root / "example-surveys" / "clean-boat" / "survey.yaml", "-o", plain)
        expect(done.returncode == 0, f"the report is typeset: {done.stderr[:300]}")
        expect(tool.revisions(plain) == [f"first {plain.stat().st_size}"], "a report as written has one revision")
        made = keys(work)
        for name, (key, own, passphrase) in made.items():
            pdf = work / "signed.pdf"
            done = tool.sign(plain, pdf, key, own, passphrase, DAY)
            expect(done.returncode == 0, f"{name}: the report is signed: {done.stderr[:300]}")
            judge_signed(name, plain, pdf, tool, work)
            judge_openssl(name, pdf, own or made["RSA in PEM"][1], work)
        tool.sign(plain, pdf, *made["RSA in PEM"], DAY)
        judge_changed(plain, pdf, tool, work)
        judge_known(pdf, made, tool)
        judge_refusals(plain, made, tool, work)
        judge_stamped(plain, pdf, tool, work)
    finish("signature")


main()
