"""Open disagreements: the program's way, by name, where DISAGREEMENTS.md says that it is not the right one.

Each has a small survey under open/ that shows it. When the program changes, that survey agrees, the judge says so, and the
entry is taken from here, from where it is looked at, and closed in the record.
"""
OPEN = {
    "doublers-count": "readings on doublers count as readings of the zone's plate when the ladder asks whether there are enough",
    "adjacent-does-not-bound": "the reading beside a pit is left out when the thickest reading bounds the original from below",
    "doubler-pits-count": "a pit in a doubler is judged as a pit in the hull's plate",
}
