"""The quantities of every example as a spreadsheet and a program are given them.

The form is RFC 4180, read back by Python's csv; that no text is a formula follows OWASP's list of first characters.
"""
import csv
import io
import json
import subprocess
from pathlib import Path

from judge import expect, finish, folder, program, run, surveys

HEAD = ["of", "quantity", "value", "unit", "formula", "inputs"]


def bytes_of(binary, survey, form):
    done = subprocess.run([str(binary), "quantities", str(survey), "--format", form], capture_output=True)
    expect(done.returncode == 0, f"{survey.parent.name}: quantities --format {form} leaves with 0: {done.stderr[:300]!r}")
    return done.stdout


def judge(binary, survey):
    name, given = survey.parent.name, bytes_of(binary, survey, "csv")
    expect(given.endswith(b"\r\n") and given.count(b"\n") == given.count(b"\r\n"), f"{name}: every line ends with CRLF")
    rows = list(csv.reader(io.StringIO(given.decode(), newline="")))
    listed = json.loads(bytes_of(binary, survey, "json"))["quantities"]
    expect(rows[:1] == [HEAD], f"{name}: the head is {rows[:1]}")
    expect(len(rows) == len(listed) + 1, f"{name}: as many lines as quantities")
    for row, one in zip(rows[1:], listed):
        expect(row[0].lstrip("'") == one["of"] and row[1] == one["name"] and row[3] == one["unit"] and row[4] == one["text"], f"{name}: {row} is {one}")
        places = len(row[2].partition(".")[2])
        expect(abs(float(row[2]) - one["value"]) <= 0.5001 * 10 ** -places, f"{name}: {row[2]} is {one['value']}")
        expect(all(not cell or cell[0] not in "=+-@\t\r\n" for cell in row[:2] + row[3:]), f"{name}: no text is a formula: {row}")
    said = bytes_of(binary, survey, "text").decode()
    expect(all(one["text"] in said for one in listed), f"{name}: the text has every formula")
    return len(listed)


def main():
    binary, root = program()
    with folder() as work:
        count = sum(judge(binary, survey) for survey in surveys(root, work))
        print(f"{count} quantities")
        gone = run(binary, "quantities", Path(work) / "nowhere.yaml")
        expect(gone.returncode == 3, f"a survey that is not there leaves with 3, not {gone.returncode}")
        expect(run(binary, "quantities", "--format", "xml", "survey.yaml").returncode == 2, "an unknown form is wrong usage")
    finish("quantities")


main()
