"""The pages of every example in the archival kind: PDFBox Preflight, the one judge of PDF/A-1b at hand, finds nothing. The
command does not offer that kind; it shows that fonts, colours and metadata are as an archive wants them."""
import subprocess
from pathlib import Path

from judge import SKIP, expect, finish, folder, need, program, run

JARS = ["preflight", "pdfbox2", "fontbox2", "xmpbox", "commons-logging", "commons-io", "jaxb-api", "bcprov", "bcmail"]


def class_path():
    found = [Path("/usr/share/java") / f"{name}.jar" for name in JARS]
    missing = [jar for jar in found if not jar.exists()]
    if missing:
        print(f"SKIPPED: {missing[0]} is not installed; nothing was judged", flush=True)
        raise SystemExit(SKIP)
    return ":".join(map(str, found))


def preflight(jars, pdf):
    return subprocess.run(["java", "-Xmx512m", "-cp", jars, "org.apache.pdfbox.preflight.Validator_A1b", str(pdf)],
                          capture_output=True, text=True, errors="replace", check=False)


def main():
    need("java")
    jars = class_path()
    binary, root = program()
    with folder() as work:
        pdf = Path(work) / "archival.pdf"
        for survey in sorted((root / "example-surveys").glob("*/survey.yaml")):
            name = survey.parent.name
            made = run(binary.parent / "archival_report", survey, pdf)
            expect(made.returncode == 0, f"{name}: the archival kind is written")
            judged = preflight(jars, pdf)
            expect(judged.returncode == 0 and "is a valid PDF/A-1b file" in judged.stdout,
                   f"{name}: Preflight is content: {(judged.stdout + judged.stderr)[:800]}")
        # The judge is judged: without its claim the file is refused.
        pdf.write_bytes(pdf.read_bytes().replace(b"<pdfaid:part>1</pdfaid:part>", b"<pdfaid:part>7</pdfaid:part>"))
        expect(preflight(jars, pdf).returncode != 0, "Preflight refuses a file that claims another part")
    finish("archival")


main()
