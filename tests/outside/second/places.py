"""Where steel was measured: what was displayed there, what is judged, and with what doubt."""
import re
from collections import Counter
from dataclasses import dataclass
from fractions import Fraction

from .doubt import Doubt
from .gauges import beside


def counted(marks):
    status = Counter(m.status for m in marks)
    rejected, read = status.pop("rejected", 0), status.pop("read", 0)
    return {"planned": len(marks), "read": read, "used": sum(m.used for m in marks), "rejected": rejected,
            "doubler": sum(m.status == "read" and m.on_doubler for m in marks), "not_read": dict(status)}


@dataclass(frozen=True)
class Place:
    kind: str
    name: str
    row: str
    order: tuple            # of equals
    shown: Fraction
    judged: Fraction        # the low side where a gauge or an echo reads too much
    doubt: Doubt
    indicative: bool
    gauge: str | None = None
    over_read: dict | None = None   # least, most: what an echo counts for a film
    open_film: bool = False         # an echo counts a film of unknown thickness

    @property
    def low_side(self):
        return self.judged if self.judged < self.shown else None


def least(places, of=lambda p: p.judged):
    """The lowest; of equals the more doubtful, then by row and station, pits by number."""
    return min(places, key=lambda p: (of(p), -p.doubt.square, p.order), default=None)


def of_mark(mark, gauges, policy):
    gauge, film = gauges[mark.gauge], mark.film if mark.single_echo else None
    over = {k: films * film for k, films in policy.single_echo.items()} if film is not None else None
    unknown_film = mark.single_echo and film is None
    low = gauge.least(mark.remaining) - (over["most"] if over else 0)
    return Place("plate", mark.name, mark.row, (mark.row, mark.at), mark.remaining, low, gauge.doubt, gauge.indicative or unknown_film,
                 mark.gauge, over, unknown_film)


def coarsest(names, gauges):
    return max((gauges[n].doubt for n in sorted(names)), key=lambda d: d.square)


def of_pit(pit, survey, gauges):
    """Both gauges' variances add. Where it is not said which gauge read, the coarsest that may have is taken, and the least figure."""
    near = sorted(beside(pit, survey))
    depth = gauges[pit.gauge] if pit.gauge else None
    doubt = coarsest(near, gauges) + (depth.doubt if depth else coarsest(gauges, gauges))
    left = min(gauges[n].least(pit.adjacent) for n in near) - (depth.most(pit.depth) if depth else pit.depth)
    indicative = any(gauges[n].indicative for n in near) or (depth is not None and depth.indicative)
    return Place("pit", pit.name, pit.row, (int(re.sub(r"\D", "", pit.name)),), pit.remaining, left, doubt, indicative)
