"""Words as boxes of ink: whether they lie on each other, and where on a sheet they may be."""

# Boxes from pdftotext run from the face's ascent to its descent, far more than the ink. The ink of one line is taken as the
# middle 55 % of that box, about 0.7 of the type size: the height of its capitals and figures.
INK = 0.55
MOST_OVERLAP = SLACK = 0.2


def ink(word):
    """Upright words lose ascent and descent in height; words set upwards are taller than wide, and lose them in width."""
    if word.y1 - word.y0 > 1.25 * (word.x1 - word.x0) and len(word.text) > 3:
        spare = (word.x1 - word.x0) * (1 - INK) / 2
        return word.x0 + spare, word.y0, word.x1 - spare, word.y1
    spare = (word.y1 - word.y0) * (1 - INK) / 2
    return word.x0, word.y0 + spare, word.x1, word.y1 - spare


def overlaps(words):
    boxes = sorted(((ink(w), w.text) for w in words), key=lambda b: b[0][1])
    for i, (a, said) in enumerate(boxes):
        for b, other in boxes[i + 1:]:
            if b[1] > a[3]:
                break
            wide, high = min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1])
            if wide > MOST_OVERLAP and high > MOST_OVERLAP:
                yield said, other, a


def points(value):
    return float(value.removesuffix("mm")) * 72 / 25.4


def frame(masters, width, height):
    """What may be printed on: between the side margins, from the running head's capitals to the foot's descenders. Where several
    masters have this sheet, what any of them allows."""
    fitting = [m for m in masters.values() if all(abs(points(a) - b) < 1 for a, b in zip(m["sheet"], (width, height)))]
    return (min(points(m["left"]) for m in fitting) - SLACK, min(points(m["head-baseline"]) for m in fitting) - 9,
            width - min(points(m["right"]) for m in fitting) + SLACK, height - min(points(m["foot-baseline"]) for m in fitting) + 3)
