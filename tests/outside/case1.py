"""The thick bottom that percent limits condemn: the report says what is left, what falls short, what is met, and why nothing is renewed."""
import re
from pathlib import Path

from judge import expect, finish, folder, load, need, plain, program, typeset

NEVER = ("insert", "overplate")


def main():
    need("pdftotext")
    binary, root = program()
    survey = root / "example-surveys/thick-bottom/survey.yaml"
    with folder() as work:
        pdf = Path(work) / "report.pdf"
        if typeset(binary, survey, pdf):
            text = plain(pdf)
            for said in ("7.9 mm", "34.2 %", "falls short", "20 %", "25 %", "30 %"):
                expect(said in text, f"the report says {said}")
            given = load(survey)
            under_pit = text[text.index("bottom under pit P1"):]
            for name in ("20 %", "25 %", "30 %"):
                expect(re.search(rf"{name} of original lost [^a-z]*falls short", under_pit), f"{name} falls short under P1")
            for name in ("4.0 mm", "3.0 mm"):
                expect(re.search(rf"{name} remaining (\(governs\) )?[^a-z]*meets", under_pit), f"{name} is met under P1")
            because = " ".join(given["decisions"]["B"]["conflict"]["because"].split())
            expect("conflict" in text.lower(), "the report names the conflict")
            # Lines of prose stand beside margin notes: the words are looked for without them, a few at a time.
            expect(" ".join(because.split()[:5]) in text, "the report gives the answer to the conflict")
            for part in ("recommendations", "steelwork"):
                for key, item in given[part].items():
                    expect(item["action"] not in NEVER, f"{part} {key} does not renew plate")
            items = re.split(r"\d+ Limitations ", re.split(r"\d+ Recommendations ", text)[-1])[0].lower()
            expect("weld" in items, "the items are found in the report")
            for action in NEVER:
                expect(not re.search(rf"action:? {action}", items), f"no printed item has the action {action}")
    finish("case1")


main()
