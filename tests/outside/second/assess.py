"""Everything computed, in the shape of the program's own answer, lengths and shares as exact fractions."""
from fractions import Fraction

from . import gauges as gauge_room
from . import protection, robustness, unseen
from .afloat import Afloat
from .criteria import RULES, applied, in_use, judged, verdict
from .ladder import extent, spacing, suggestion, too_few
from .original import alive_range, read_original, share
from .places import counted, least, of_mark, of_pit
from .works import Works
from .years import History


def mean(figures):
    return sum(figures, Fraction(0)) / len(figures) if figures else None


def displayed(places):
    """Statistics are of what was displayed; the worst place is the one judged lowest."""
    shown = [p.shown for p in places]
    lowest = least(places)
    return {"min": min(shown, default=None), "max": max(shown, default=None), "mean": mean(shown), "worst": lowest and lowest.name}


class ZoneAssessed:
    def __init__(self, zone, survey, gauges, policy, criteria, ways):
        self.zone, self.survey, self.policy, self.criteria = zone, survey, policy, criteria
        self.marks = [m for m in survey.marks if m.row in zone.rows]
        self.plate = [of_mark(m, gauges, policy) for m in self.marks if m.used]
        pits = [p for p in survey.pits if p.row in zone.rows]
        # A pit on the inside face under a doubler is in the hull's own plate.
        sound = [p for p in pits if not p.doubler or p.inside]
        self.pits = [of_pit(p, survey, gauges) for p in sound]
        self.counted = sound
        self.thickest = max([p.shown for p in self.plate] + [p.adjacent for p in sound], default=None)
        self.original = read_original(zone, self.thickest, policy)
        self.asked = [applied(c, zone, survey, self.original) for c in criteria]
        self.subjects = [p for p in (least(self.plate), least(self.pits)) if p]
        self.worst = min(self.subjects, key=lambda p: p.judged, default=None)
        self.by, self.stood = self.measured_by(), {}

    def judge(self, criterion, place):
        return judged(criterion, self.zone, self.survey, self.original, place.judged, place.doubt)

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
        key = place.kind, place.name
        if key not in self.stood:
            found = [c for c in self.criteria if c.id == self.by]
            self.stood[key] = {**self.judge(found[0], place), "band": place.doubt.band} if found else None
        return self.stood[key]

    def share(self, place):
        return share(self.original, place.judged)

    def conflict(self):
        """At the lower of the two places first: some criterion met, another fallen short of."""
        for place in sorted(self.subjects, key=lambda p: p.judged):
            verdicts = {r["criterion"]: r["verdict"] for r in self.results(place)}
            short, met = ([c for c, v in verdicts.items() if v == wanted] for wanted in ("falls-short", "meets"))
            if short and met:
                return {"conflict": True, "conflict_at": place.name, "short_of": short, "met": met}
        return {"conflict": False, "conflict_at": None, "short_of": [], "met": []}

    def wastage(self, figures, at, remaining):
        """General: the mean of the marks; local: the lowest of them; under the pit: the least left of those measured."""
        if remaining is None:
            return None
        return {"n": len(figures), "at": at, "remaining": remaining, "share": share(self.original, remaining),
                **alive_range(self.original, remaining)}

    def wastages(self):
        plate, pit, average = least(self.plate), least(self.pits), mean([p.judged for p in self.plate])
        return {"general": self.wastage(self.plate, None, average),
                "local": self.wastage(self.plate, plate and plate.name, plate and plate.judged),
                "under_pit": self.wastage(self.counted, pit and pit.name, pit and pit.judged)}

    def subject(self, p):
        return {"kind": p.kind, "id": p.name, "remaining": p.shown, "low_side": p.low_side, "indicative": p.indicative, "u": p.doubt.u,
                "factor": p.doubt.factor, "band": p.doubt.band, "results": self.results(p)}

    def nominals(self):
        return [{"nominal": n.size, "state": n.state, "lower": n.span and n.span[0], "upper": n.span and n.span[1],
                 "fits": [{"tolerance": t, "state": state, "lower": low, "upper": high} for t, (low, high), state in n.fits]}
                for n in self.original.sizes]

    def pitting_factor(self):
        """ASTM G46: the deepest penetration over the mean one, both from the original surface."""
        if not self.pits:
            return None, "no-pits"
        if self.original.weak:
            return None, "weak-basis"
        general = mean([p.judged for p in self.plate])
        lost = None if general is None else self.zone.original - general
        if lost is None or lost <= 0:
            return None, "no-mean-loss"
        return (self.zone.original - min(p.judged for p in self.pits)) / lost, None

    def intensity(self):
        """The most of the area that is said to be covered: by the zone, or about a pit."""
        said = [p.share_percent for p in self.counted if p.share_percent is not None]
        return max(said + ([self.zone.pitting.share_percent] if self.zone.pitting else []), default=None)

    def pitting(self):
        declared, (factor, no_factor) = self.zone.pitting, self.pitting_factor()
        intense = declared is not None and declared.share_percent / 100 > self.policy.intense_over
        return {"measured": len(self.counted), "per_m2": declared and declared.per_m2, "spacing": spacing(self.zone, self.counted),
                "intensity_percent": self.intensity(),
                "few_measured": intense and len(self.counted) < self.policy.least_measured, "factor": factor, "no_factor": no_factor}

    def read_otherwise(self):
        """Where the text of a rule is silent: the places whose verdict another reading of it would change."""
        out = []
        for c, asked in zip(self.criteria, self.asked):
            if c.kind not in RULES or not asked["applies"]:
                continue
            rule = RULES[c.kind](c.rule, self.survey, self.zone.plating)
            for other in rule["read_otherwise"]:
                changed = [{"place": p.name, "remaining": p.judged, "now": now, "then": then} for p in sorted(self.plate + self.pits, key=lambda p: (p.judged, p.name))
                           for now, then in [[verdict(p.judged - at, p.doubt) for at in (rule["limit"], other["limit"])]] if now != then]
                out += [{"criterion": c.id, **other, "places": changed}] if changed else []
        return out

    def answer(self):
        count, how_far = counted(self.marks), extent(self.zone, self.counted, self.policy)
        few, worst, pit = too_few(count, self.policy), self.worst, least(self.pits)
        shown = lowest_displayed(self.plate)
        places = ([p.judged for p in self.plate], worst and worst.judged, worst and worst.kind == "pit")
        on_worst = alive_range(self.original, worst.judged) if worst else {"alive_low": None, "alive_high": None}
        return {
            "zone": self.zone.name, "count": count, **displayed(self.plate), "least": shown and shown.name, "worst_pit": pit and pit.name,
            "measured_by": self.by, "criteria": self.asked,
            "read_otherwise": self.read_otherwise(), "weak_basis": self.original.weak, "told": self.zone.told, "tolerances": list(self.original.tolerances),
            "nominals": self.nominals(), **on_worst, "thickest": self.thickest, "highest_original": self.original.highest, **self.wastages(),
            "subjects": [self.subject(p) for p in self.subjects], **self.conflict(), "extent": how_far,
            "indicative": any(p.indicative for p in self.plate + self.pits), "pitting": self.pitting(), "too_few": few,
            **suggestion(self.zone, places, self.original.highest, how_far, few, self.policy)}

    def place_answer(self, place):
        return {"remaining": place.shown, "low_side": place.low_side, "indicative": place.indicative,
                "loss": self.zone.original - place.judged, "share": self.share(place), "standing": self.standing(place)}


def lowest_displayed(places):
    return least(places, lambda p: p.shown)


def row_answer(row, survey, zone):
    places = [p for p in zone.plate if p.row == row]
    lowest, gone = lowest_displayed(places), least(places)
    return {"row": row, "count": counted([m for m in survey.marks if m.row == row]), **displayed(places),
            "worst": lowest and lowest.name, "worst_loss": gone and zone.zone.original - gone.judged}


def mark_answer(mark, zone):
    said = {"mark": mark.name, "used": mark.used, "displayed_mm": list(mark.figures)}
    if not mark.used:
        return {**said, "left_out": "doubler" if mark.status == "read" else mark.status}
    place = next(p for p in zone.plate if p.name == mark.name)
    over = {"over_read": place.over_read} if place.over_read else {}
    return {**said, **over, "reduce": mark.reduce, "lowest_of_row": lowest_displayed([p for p in zone.plate if p.row == mark.row]) is place,
            **zone.place_answer(place)}


def pit_answer(pit, zone):
    said = {"pit": pit.name, "adjacent": pit.adjacent, "depth": pit.depth, "doubler": None}
    place = next((p for p in zone.pits if p.name == pit.name), None)
    if place:
        return {**said, **zone.place_answer(place)}
    # In a doubler a depth says nothing of the hull's plate: it is listed and judged by nothing.
    return {**said, "doubler": pit.doubler, "remaining": pit.remaining, "low_side": None, "indicative": False, "loss": None, "share": None,
            "standing": None}


def criterion_answer(c):
    asked = {"limit": c.limit, "most_loss": c.most_loss, "substantial_from": c.substantial_from, "original_at_most": c.original_at_most,
             "declared": c.declared}
    return {"id": c.id, "kind": c.kind, **{k: v for k, v in asked.items() if v is not None}}


def workings(survey, criteria, zones):
    """Of the formulas that apply somewhere, by plating."""
    return {f"{c.id}/{z.zone.plating}": RULES[c.kind](c.rule, survey, z.zone.plating)
            for z in zones for c, asked in zip(criteria, z.asked) if c.kind in RULES and asked["applies"]}


def density(survey, policy, zones):
    areas = [z.area for z in survey.zones]
    if not areas or None in areas:
        return {"marks_per_m2": None, "spot_check": False, "read_m2": None, "shell_m2": None}
    per_m2 = Fraction(sum(m.status == "read" for m in survey.marks)) / sum(areas)
    read = sum((z.zone.area for z in zones if z.plate), Fraction(0))
    return {"marks_per_m2": per_m2, "spot_check": per_m2 < policy.spot_per_m2, "read_m2": read, "shell_m2": sum(areas)}


def worst_of_all(zones):
    """Of equals by zone, then plate before pits, then the more doubtful, then by row and station."""
    def key(z, p):
        return p.judged, z.zone.name, p.kind == "pit", -p.doubt.square, p.order
    places = [(z, p) for z in zones for p in z.plate + z.pits]
    z, lowest = min(places, key=lambda zp: key(*zp), default=(None, None))
    known = [(z, p) for z, p in places if not z.original.weak]
    _, gone = min(known, key=lambda zp: (-zp[0].share(zp[1])["nominal"], *key(*zp)[1:]), default=(None, None))
    return {"worst": lowest and lowest.name, "worst_remaining": lowest and lowest.judged, "worst_loss": gone and gone.name}


def retake(zone, place, policy):
    """An indicative figure so near a limit that it is to be taken again; the nearest limit, the first of equals."""
    if not place.indicative:
        return []
    off = [{"place": place.name, "criterion": a["criterion"], "limit": a["limit"], "off": outside(a["limit"], place)}
           for a in zone.asked if a["applies"]]
    near = min(off, key=lambda o: abs(o["off"]), default=None)
    # What an echo counts for a film of unknown thickness has no bound, so no distance is far enough.
    return [near] if near and (place.open_film or abs(near["off"]) <= policy.retake_within) else []


def outside(limit, place):
    """How far a place lies above (or below, negative) a limit, all that it may be counted: nought where the limit is among that."""
    return max(place.judged - limit, Fraction(0)) or min(place.shown - limit, Fraction(0))


def retakes(survey, zone_of, policy):
    places = [(zone_of[m.row], p) for m in survey.marks for p in zone_of[m.row].plate if p.name == m.name]
    places += [(zone_of[pit.row], p) for pit in survey.pits for p in zone_of[pit.row].pits if p.name == pit.name]
    return [one for z, p in places for one in retake(z, p, policy)]


def outlook(survey, policy, zones):
    """What the marks imply beyond themselves."""
    works = Works(survey, policy, zones)
    return {"unseen": unseen.answer(survey, policy, zones), "years": History(survey, policy, zones).answer(),
            "robustness": robustness.answer(policy, zones), "works": works.answer(), "afloat": Afloat(survey, policy, works).answer(),
            "protection": protection.answer(survey, policy)}


def assess(survey, policy, ways=frozenset()):
    """ways: names of open disagreements in which the program's way is computed instead of ours."""
    criteria, gauges = in_use(survey, policy), gauge_room.read_gauges(survey, policy)
    zones = [ZoneAssessed(z, survey, gauges, policy, criteria, ways) for z in survey.zones]
    zone_of = {row: z for z in zones for row in z.zone.rows}
    plate = [p for z in zones for p in z.plate]
    return {
        "coverage": counted(survey.marks), **density(survey, policy, zones), **worst_of_all(zones),
        "repeats_apart": sum(m.status == "read" and max(m.figures) - min(m.figures) > policy.repeat_spread for m in survey.marks),
        "retakes": retakes(survey, zone_of, policy), "criteria": [criterion_answer(c) for c in criteria],
        "workings": workings(survey, criteria, zones),
        "gauges": [gauge_room.answer(g, lowest_displayed([p for p in plate if p.gauge == name])) for name, g in gauges.items()],
        "zones": [z.answer() for z in zones], "rows": [row_answer(r, survey, zone_of[r]) for r in survey.rows],
        "marks": [mark_answer(m, zone_of[m.row]) for m in survey.marks], "pits": [pit_answer(p, zone_of[p.row]) for p in survey.pits],
        **outlook(survey, policy, zones)}
