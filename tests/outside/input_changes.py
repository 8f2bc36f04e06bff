"""What differs between the inputs of two issues, found without the program: from the two survey files and grids of readings alone.

A thing that differs is named as a surveyor names it when the reason is given: "SW 7", "P3", "decision W", "item 1", "vessel".
"""
import csv
import io
import re
from decimal import Decimal

import yaml

NUMBER = re.compile(r"^\d+(\.\d+)?$")
NAMED = {"pits": "{}", "doublers": "{}", "notes": "{}", "steelwork": "schedule {}", "photos": "photo {}", "decisions": "decision {}", "recommendations": "item {}",
         "zones": "zone {}", "rows": "row {}", "criteria": "criterion {}", "gauges": "gauge {}", "limitations": "limitation {}",
         "earlier-surveys": "earlier {}", "carried": "carried {}"}
# An issue has these of its own: they say which issue it is, to whom it goes, and why it differs.
OWN = {"strakebook", "amendment", "addenda", "issue-record", "recipients", "private"}
OWN_FIELDS = {"report": {"issue", "issued", "state", "supersedes"}, "surveyor": {"signed-on"}}


def leaves(value, at=""):
    """{keys, a blank between them: text} of a value; a list is one text."""
    if isinstance(value, dict):
        return {path: text for key, v in value.items() for path, text in leaves(v, f"{at} {key}".strip()).items()}
    if isinstance(value, list):
        return {at: "; ".join(", ".join(leaves(one).values()) for one in value)}
    return {at: " ".join(str(value).split())}


def mark_name(row, station):
    return f"{row} {Decimal(station).normalize():f}" if NUMBER.match(station) else f"{row} {station}"


def cells(source, files, folder):
    """(row, station, cell as written) of one set of readings."""
    if "inline" in source:
        return [(row, at, cell) for row, some in source["inline"].items() for at, cell in some.items()]
    text = [line for line in files[folder + source["file"]].decode().splitlines() if not line.startswith("#")]
    head, *body = [[cell.strip() for cell in line] for line in csv.reader(io.StringIO("\n".join(text)))]
    return [(row, line[0], cell) for line in body for row, cell in zip(head[1:], line[1:]) if cell != "none-planned"]


def things(files, folder=""):
    """{subject: {field: text}} of kept inputs ({path: bytes})."""
    survey = yaml.load(files[folder + "survey.yaml"].decode(), Loader=yaml.BaseLoader)
    out = {}
    for key, value in survey.items():
        if key == "readings":
            for source in value if isinstance(value, list) else [value]:
                said = {k: v for k, v in source.items() if k in ("unit", "surface", "gauge", "reduce")}
                for row, at, cell in cells(source, files, folder):
                    out[mark_name(row, at)] = {"reading": " ".join(cell.split())} | said
        elif key in NAMED:
            for name, one in value.items():
                out[NAMED[key].format(name)] = leaves(one)
        elif key not in OWN:
            found = leaves(value, "" if isinstance(value, dict) else key)
            out[key] = {field: text for field, text in found.items() if field not in OWN_FIELDS.get(key, ())}
    return out


def differences(before, after):
    """{subject: {field: (before, after)}}, with None for what is not there."""
    out = {}
    for subject in before.keys() | after.keys():
        old, new = before.get(subject, {}), after.get(subject, {})
        found = {f: (old.get(f), new.get(f)) for f in old.keys() | new.keys() if old.get(f) != new.get(f)}
        if found:
            out[subject] = found
    return out
