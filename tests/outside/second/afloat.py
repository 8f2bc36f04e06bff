"""How she floats with the steel that is added. Tonnes per centimetre: Aw rho / 100. Not a stability assessment.

Trim as of a box of her length and beam: its longitudinal metacentric height is about L2 / 12 T, so 12 W x / (rho B L2) between the ends.
"""
from fractions import Fraction

from .lengths import length
from .read_survey import plain


class Afloat:
    def __init__(self, survey, policy, works):
        self.survey, self.policy, self.works = survey, policy, works
        self.given, self.vessel = survey.given.get("afloat", {}), survey.given["vessel"]
        waters = policy.given["afloat"]["waters"]
        self.density = Fraction(waters[self.given["water"]]) if "water" in self.given else None
        self.long = float(survey.waterline or survey.length) / 1000
        self.broad = float(length(plain(self.vessel["beam"]))) / 1000
        coefficient = self.given.get("waterplane-coefficient")
        self.waterplane = self.long * self.broad * float(Fraction(coefficient)) if coefficient else None
        self.before = {k: length(plain(self.given[k])) if k in self.given else None for k in ("freeboard", "downflooding")}

    def sinkage(self, kg):
        """In mm."""
        return kg / (float(self.density) * self.waterplane)

    def trim(self, moments):
        """moments: [(kg, centre in m or nothing)]. (mm between the ends, which end goes down)."""
        if any(at is None for _, at in moments):
            return None, None
        forward = "forward" in self.survey.given["datum"]["towards"]
        middle = float(self.survey.length) / 2000
        turning = sum(kg / 1000 * (float(at) - middle) for kg, at in moments)   # tonne metres, the way stations count
        by = 12 * turning / (float(self.density) * self.broad * self.long**2) * 1000
        end = "even" if abs(by) < 1e-9 else "bow" if (by > 0) == forward else "stern"
        return abs(by), end

    def step(self, name, moments, before=0.0):
        kg = sum(w for w, _ in moments)
        sunk, (trim, by) = self.sinkage(kg), self.trim(moments)
        heights = {k: None if v is None else float(v) - sunk - before for k, v in self.before.items()}
        return {"item": name, "net_kg": kg, "sinkage_mm": sunk, **heights, "trim_mm": trim, "by": by}

    def steps(self):
        adding = [i for i in self.works.items if i["net_kg"] is not None]
        sunk = 0.0
        for i in adding:
            yield self.step(i["id"], [(i["net_kg"], i["centre"])], sunk)
            sunk += self.sinkage(i["net_kg"])
        if adding:
            yield self.step("all", [(i["net_kg"], i["centre"]) for i in adding])
        for o in self.works.options():
            yield self.step(f"{o['area']} {o['kind']}", [(o["net_kg"], o["centre"])])
        for kind in ("insert", "overplate"):
            chosen = [o for o in self.works.options() if o["kind"] == kind]
            if len(chosen) > 1:
                yield self.step(f"all {kind}", [(o["net_kg"], o["centre"]) for o in chosen])

    def answer(self):
        known = self.waterplane is not None and self.density is not None
        return {"waterplane_m2": self.waterplane, "density": self.density and float(self.density),
                "tpc_t_cm": self.waterplane * float(self.density) / 100 if known else None, "before": self.before,
                "steps": list(self.steps()) if known else []}
