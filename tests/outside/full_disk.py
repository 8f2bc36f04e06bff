"""A report that does not fit on the disk: exit code 3, the file named with a remedy, and the earlier report untouched."""
import os
import subprocess
import sys
from pathlib import Path

from judge import SKIP, expect, finish, folder, need, program, run

KEPT = b"earlier output"


def judge(binary, survey, disk):
    pdf = disk / "report.pdf"
    pdf.write_bytes(KEPT)
    done = run(binary, "typeset", survey, "-o", pdf)
    expect(done.returncode == 3, f"leaves with 3, not {done.returncode}: {done.stderr[:300]}")
    expect("report.pdf" in done.stderr, f"names the file: {done.stderr[:300]}")
    expect("\n  write: " in done.stderr, f"says what to do: {done.stderr[:300]}")
    expect(pdf.read_bytes() == KEPT and len(list(disk.iterdir())) == 1, "earlier output is untouched and alone")


def main():
    need("mount", "umount")
    binary, root = program()
    with folder() as work:
        disk = Path(work) / "disk"
        disk.mkdir()
        mounted = os.geteuid() == 0 and not subprocess.run(["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk]).returncode
        if not mounted:
            print("SKIPPED: full disk: a small disk cannot be mounted here (it needs root)", flush=True)
            sys.exit(SKIP)
        try:
            judge(binary, root / "example-surveys/thick-bottom/survey.yaml", disk)
        finally:
            subprocess.run(["umount", disk], check=True)
    finish("full_disk")


main()
