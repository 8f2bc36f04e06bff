"""Open disagreements: the program's way, by name, where DISAGREEMENTS.md says that it is not the right one.

Each has a small survey under open/ that shows it. When the program changes, that survey agrees, the judge says so, and the
entry is taken from here, from where it is looked at, and closed in the record.
"""
OPEN = {}
