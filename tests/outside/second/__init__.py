"""The verdicts of a survey computed a second time, by other code: exact fractions, no float, nothing of the program's.

Written from what the trade and the published rules say of remaining thickness, loss, doubt and limits, and from the layouts'
data; the shape of the answer is that of `strakebook assess --format json`. DISAGREEMENTS.md keeps what the two ever differed on.
"""
