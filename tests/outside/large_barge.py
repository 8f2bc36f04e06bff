"""The big barge: 2,400 marks and 300 pits, all of them read back; what it took is printed as information."""
from pathlib import Path

import make_barge
from judge import expect, finish, folder, load, need, pages, program, typeset
from readback import printed_marks, printed_pits


def main():
    need("pdftotext")
    binary, _ = program()
    with folder() as work:
        survey, again = make_barge.make(Path(work) / "barge"), make_barge.make(Path(work) / "again")
        expect(survey.read_bytes() == again.read_bytes(), "the barge is the same each time")
        pdf = Path(work) / "barge.pdf"
        if typeset(binary, survey, pdf):
            given = load(survey)
            marks, pits = printed_marks(pdf, given["rows"]), list(printed_pits(pdf, given["pits"]))
            print(f"{len(pages(pdf))} pages, {len(marks)} marks, {len(pits)} pits, {pdf.stat().st_size} bytes")
            expect(40 <= len(pages(pdf)) <= 60, f"the barge takes 40 to 60 pages, not {len(pages(pdf))}")
            expect(len(marks) == 2400 and len(set(marks)) == 2400, f"2,400 different marks are printed, not {len(marks)}")
            expect(len(pits) == 300 and len(set(pits)) == 300, f"300 different pits are printed, not {len(pits)}")
    finish("large_barge")


main()
