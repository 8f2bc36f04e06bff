"""Everything computed, in the shape of the program's own answer, lengths and shares as exact fractions."""
from collections import Counter
from fractions import Fraction

from .criteria import Doubt, in_use, judged, rule_minimum
from .ladder import extent, suggestion, too_few
from .original import loss_share, read_original, share


class Place:
    """A used reading or a pit, with what is left there and its doubt."""

    def __init__(self, kind, thing, doubt):
        self.kind, self.name, self.row, self.remaining, self.doubt = kind, thing.name, thing.row, thing.remaining, doubt


def least(places):
    """The first of the lowest."""
    return min(places, key=lambda p: p.remaining, default=None)


def counted(marks):
    status = Counter(m.status for m in marks)
    rejected, read = status.pop("rejected", 0), status.pop("read", 0)
    return {"planned": len(marks), "read": read, "used": sum(m.used for m in marks), "rejected": rejected,
            "doubler": sum(m.status == "read" and m.on_doubler for m in marks), "not_read": dict(status)}


def statistics(places):
    left = [p.remaining for p in places]
    lowest = least(places)
    return {"min": min(left, default=None), "max": max(left, default=None), "mean": sum(left, Fraction(0)) / len(left) if left else None,
            "worst": lowest.name if lowest else None}


def pit_doubt(pit, survey, factor):
    """Both gauges' variances add. Where it is not said which gauge read, the coarsest that may have is taken."""
    coarsest = max(survey.u.values())
    beside = [survey.u[m.gauge] for m in survey.marks if m.row == pit.row and m.status == "read"]
    return Doubt(max(beside, default=coarsest)**2 + (survey.u[pit.gauge] if pit.gauge else coarsest)**2, factor)


class ZoneAssessed:
    def __init__(self, zone, survey, policy, criteria, ways):
        self.zone, self.survey, self.policy, self.criteria, self.ways = zone, survey, policy, criteria, ways
        self.marks = [m for m in survey.marks if m.row in zone.rows]
        self.pits_all = [p for p in survey.pits if p.row in zone.rows]
        self.plate = [Place("plate", m, Doubt(survey.u[m.gauge]**2, policy.factor)) for m in self.marks if m.used]
        sound = [p for p in self.pits_all if not p.on_doubler or "doubler-pits-count" in ways]
        self.pits = [Place("pit", p, pit_doubt(p, survey, policy.factor)) for p in sound]
        beside = [] if "adjacent-does-not-bound" in ways else [p.adjacent for p in sound]
        self.original = read_original(zone, max([p.remaining for p in self.plate] + beside, default=None), policy)
        self.subjects = [p for p in (least(self.plate), least(self.pits)) if p]
        self.worst = least(self.subjects)
        self.by = self.measured_by()

    def judge(self, criterion, place):
        return judged(criterion, self.zone, self.survey, self.original, place.remaining, place.doubt)

    def results(self, place):
        return [self.judge(c, place) for c in self.criteria]

    def measured_by(self):
        """The criterion that governs, where it applies; else the one nearest to the worst place."""
        if not self.worst:
            return None
        live = [r for r in self.results(self.worst) if r["verdict"] != "not-applicable"]
        governing = [r for r in live if r["governs"]]
        return min(governing or live, key=lambda r: r["margin"], default={"criterion": None})["criterion"]

    def standing(self, place):
        found = [c for c in self.criteria if c.id == self.by]
        return {**self.judge(found[0], place), "band": place.doubt.band} if found else None

    def share(self, place):
        return share(self.original, place.remaining)

    def conflict(self):
        """At the lower of the two places first: some criterion met, another fallen short of."""
        for place in sorted(self.subjects, key=lambda p: p.remaining):
            verdicts = {r["criterion"]: r["verdict"] for r in self.results(place)}
            short, met = ([c for c, v in verdicts.items() if v == wanted] for wanted in ("falls-short", "meets"))
            if short and met:
                return {"conflict": True, "conflict_at": place.name, "short_of": short, "met": met}
        return {"conflict": False, "conflict_at": None, "short_of": [], "met": []}

    def alive(self):
        sizes = self.original.alive
        if not sizes or not self.worst:
            return {"alive_low": None, "alive_high": None}
        gone = [loss_share(s, self.worst.remaining) for s in sizes]
        return {"alive_low": min(gone), "alive_high": max(gone)}

    def answer(self):
        count, how_far = counted(self.marks), extent(self.zone, self.pits, self.policy)
        few = too_few(count, self.policy, self.ways)
        plate, pit = least(self.plate), least(self.pits)
        places = ([p.remaining for p in self.plate], self.worst and self.worst.remaining, self.worst and self.worst.kind == "pit")
        return {
            "zone": self.zone.name, "count": count, **statistics(self.plate), "worst_pit": pit.name if pit else None,
            "measured_by": self.by, "weak_basis": self.original.weak,
            "nominals": [{"nominal": n.size, "state": n.state, "lower": n.span and n.span[0], "upper": n.span and n.span[1]}
                         for n in self.original.sizes],
            **self.alive(), "highest_original": self.original.highest,
            "general_loss": self.share(plate) if plate else None, "pit_loss": self.share(pit) if pit else None,
            "subjects": [{"kind": p.kind, "id": p.name, "remaining": p.remaining, "band": p.doubt.band, "results": self.results(p)}
                         for p in self.subjects],
            **self.conflict(), "extent": how_far, "too_few": few,
            **suggestion(self.zone, places, self.original.highest, how_far, few, self.policy)}

    def place_answer(self, place):
        return {"remaining": place.remaining, "loss": self.zone.original - place.remaining, "share": self.share(place),
                "standing": self.standing(place)}


def row_answer(row, survey, zone):
    marks = [m for m in survey.marks if m.row == row]
    used = statistics([p for p in zone.plate if p.row == row])
    return {"row": row, "count": counted(marks), **used,
            "worst_loss": None if used["min"] is None else zone.zone.original - used["min"]}


def mark_answer(mark, zone):
    if not mark.used:
        return {"mark": mark.name, "used": False, "left_out": "doubler" if mark.status == "read" else mark.status}
    lowest = least([p for p in zone.plate if p.row == mark.row])
    place = next(p for p in zone.plate if p.name == mark.name)
    return {"mark": mark.name, "used": True, "lowest_of_row": lowest is place, **zone.place_answer(place)}


def pit_answer(pit, zone):
    place = next((p for p in zone.pits if p.name == pit.name), None)
    # In a doubler a depth says nothing of the hull's plate: it is listed and judged by nothing.
    return {"pit": pit.name, **(zone.place_answer(place) if place else {"remaining": pit.remaining, "standing": None})}


def criterion_answer(c):
    asked = {"limit": c.limit, "most_loss": c.most_loss}
    return {"id": c.id, "kind": c.kind, **{k: v for k, v in asked.items() if v is not None}}


def workings(survey, criteria):
    return {f"{c.id}/{plating}": rule_minimum(c.rule, survey, plating)
            for c in criteria if c.kind == "rule-minimum" for plating in {z.plating for z in survey.zones}}


def density(survey, policy):
    areas = [z.area for z in survey.zones]
    if not areas or None in areas:
        return {"marks_per_m2": None, "spot_check": False}
    per_m2 = Fraction(sum(m.status == "read" for m in survey.marks)) / sum(areas)
    return {"marks_per_m2": per_m2, "spot_check": per_m2 < policy.spot_per_m2}


def worst_of_all(survey, zone_of):
    """Marks along the rows first, then pits; the first of equals."""
    places = [p for row in survey.rows for p in zone_of[row].plate if p.row == row]
    places += [p for pit in survey.pits for p in zone_of[pit.row].pits if p.name == pit.name]
    lowest = least(places)
    known = [(zone_of[p.row].share(p)["nominal"], p.name) for p in places if not zone_of[p.row].original.weak]
    return {"worst": lowest and lowest.name, "worst_remaining": lowest and lowest.remaining,
            "worst_loss": max(known, key=lambda k: k[0])[1] if known else None}


def assess(survey, policy, ways=frozenset()):
    """ways: names of open disagreements in which the program's way is computed instead of ours."""
    criteria = in_use(survey, policy)
    zones = [ZoneAssessed(z, survey, policy, criteria, ways) for z in survey.zones]
    zone_of = {row: z for z in zones for row in z.zone.rows}
    return {
        "coverage": counted(survey.marks), **density(survey, policy), **worst_of_all(survey, zone_of),
        "criteria": [criterion_answer(c) for c in criteria], "workings": workings(survey, criteria),
        "zones": [z.answer() for z in zones], "rows": [row_answer(r, survey, zone_of[r]) for r in survey.rows],
        "marks": [mark_answer(m, zone_of[m.row]) for m in survey.marks], "pits": [pit_answer(p, zone_of[p.row]) for p in survey.pits]}
