"""Surveys at the ends of what a report may be asked to hold: one reading or twenty thousand, no photograph or four hundred, the
longest names. Made from the barge: the same bytes each time."""
import re
import struct
import zlib

import make_barge

# German compounds, no blanks, eighty letters and more.
LONG = {
    "vessel": "Donaudampfschifffahrtsgesellschaftskapitänswitwenversicherungsgesellschaftshauptgebäude",
    "yard": "Binnenschifffahrtsausbesserungswerkstättengenossenschaftsverwaltungsgebäude am Unterwasserschleusenvorhafen",
    "zone": "Rumpfaußenhautplattenwanddickenmessbereichsbezeichnung",
    "row": "Backbordseitenwasserlinienwechselbereichsplattengangbezeichnung",
    "caption": "Korrosionsschutzbeschichtungsuntergrundvorbereitungsnachweisaufnahme at the chalk tick, with scale and date",
}


def picture(path):
    """A small grey PNG, by hand: 48 x 32."""
    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
    lines = b"".join(b"\0" + bytes((x * 5 + y * 3) % 256 for x in range(48)) for y in range(32))
    path.write_bytes(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", 48, 32, 8, 0, 0, 0, 0)) +
                     chunk(b"IDAT", zlib.compress(lines)) + chunk(b"IEND", b""))


def photos(count, rows, stations, long_names):
    caption = LONG["caption"] if long_names else "a chalk tick"
    return "photos:\n" + "".join(
        f"  {i + 1}: {{file: photos/p.png, at: {rows[i % len(rows)]} {stations[i // len(rows) % len(stations)]}, "
        f"looking: {('square on', 'forward', 'aft', 'up')[i % 4]}, caption: \"{caption} {i + 1}\"}}\n" for i in range(count))


def lengthened(text):
    text = text.replace("name: Long Measure", f"name: {LONG['vessel']}")
    text = re.sub(r"(?m)^  place: .*", f"  place: {LONG['yard']}", text, count=1)
    for zone, (name, _, _) in make_barge.ZONES.items():
        text = text.replace(f"    name: {name}\n", f"    name: {LONG['zone']}{zone}\n")
    return re.sub(r"name: strake (\d+),", rf"name: {LONG['row']} \1,", text)


def make(folder, stations=100, pictures=0, long_names=False, house=None):
    """24 rows of so many stations; `house` is the text of a layout that the survey uses."""
    kept = make_barge.STATIONS
    at = make_barge.STATIONS = [f"{38.4 * i / stations + 0.02:.3f}" for i in range(stations)] if stations != 100 else kept
    try:
        survey = make_barge.make(folder)
    finally:
        make_barge.STATIONS = kept
    text = survey.read_text()
    text = text.replace("stations: 100", f"stations: {stations}").replace("marks: 2400", f"marks: {24 * stations}")
    text = re.sub(r"(?m)^  state: final", "  state: draft", text)
    if long_names:
        text = lengthened(text)
    if pictures:
        (folder / "photos").mkdir()
        picture(folder / "photos/p.png")
        text += photos(pictures, make_barge.names(), at, long_names)
    return finished(survey, text, house)


def make_single(folder, long_names=True):
    """One row, one reading, nothing else measured."""
    survey = make_barge.make(folder)
    blocks = dict((m.group(1), m.group(0)) for m in re.finditer(r"(?ms)^([a-z-]+):.*?(?=^[a-z-]+:|\Z)", survey.read_text()))
    for gone in ("pits", "decisions", "recommendations"):
        blocks.pop(gone, None)
    blocks["rows"] = "rows:\n  PT1: {zone: B, side: port, name: strake 1, height: 0.2 m}\n"
    blocks["zones"] = re.search(r"(?ms)^  B:.*", blocks["zones"]).group(0)
    blocks["zones"] = "zones:\n" + re.sub(r"(?m)^    pitting:.*\n", "", blocks["zones"])
    blocks["readings"] = blocks["readings"].replace("stations: 100", "stations: 1").replace("marks: 2400", "marks: 1")
    (folder / "readings/hull.csv").write_text("station m, PT1\n0.200, 9.6\n")
    text = re.sub(r"(?m)^  state: final", "  state: draft", "\n".join(blocks.values()))
    return finished(survey, lengthened(text) if long_names else text, None)


def finished(survey, text, house):
    if house:
        (survey.parent / "layouts").mkdir()
        (survey.parent / "layouts/sheet.yaml").write_text(house)
        text = re.sub(r"(?m)^house: .*", "house: sheet", text)
    survey.write_text(text)
    return survey
