"""Bytes of an issued PDF of two pages turned, one after another: the register does not know it then, and its own inputs do not make it
either. Shared out among processes. One byte in seven through the whole file; with EVERY=1 in the environment every byte, which takes long."""
import os
import re
import subprocess
from pathlib import Path

from judge import expect, finish, folder, need, program, run
from two_issues import CLOSING, document, issued

EVERY = int(os.environ.get("EVERY", "7"))


def main():
    need("qpdf")
    binary, root = program()
    with folder() as work:
        where = issued(binary, root, Path(work))
        pdf = document(where, CLOSING)
        expect(run("qpdf", "--show-npages", pdf).stdout.strip() == "2", "the addendum has two pages")
        size, shares = pdf.stat().st_size, max(2, os.cpu_count() or 2)
        started = [subprocess.Popen([binary.parent / "flip_every_byte", pdf, where / "register.txt", str(first * EVERY), str(shares * EVERY)],
                                    stdout=subprocess.PIPE, text=True) for first in range(shares)]
        turned = 0
        for one in started:
            said = one.communicate()[0]
            expect(one.returncode == 0, f"a byte was let pass, or the whole was not: {one.returncode}, {said[:300]}")
            turned += sum(int(n) for n in re.findall(r"(\d+) bytes turned", said))
        expect(turned == len(range(0, size, EVERY)), f"{turned} bytes turned of {size}, one in {EVERY}")
        print(f"{turned} of {size} bytes turned")
    finish("every_byte")


main()
