"""Two thousand surveys made for the occasion: the program and the second implementation agree in every field that both compute.

Arguments after the first two are seeds: only these surveys are made.
"""
import os
import shutil
import sys
from collections import Counter
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

from judge import expect, finish, folder, program
from second.compare import judge
from second.generate import write
from second.read_layout import read_policy
from second.read_survey import STATUS

SURVEYS, SHOWN, LEAST = 2000, 10, 10
KINDS = {"verdict": ("meets", "too-close", "falls-short", "not-applicable"), "bare": ("inside", "at-limit", "over"),
         "why_not": ("weak-basis", "scope", "not-declared", "thicker"), "state": ("alive", "excluded", "set-aside"), "weak_basis": (True, False),
         "extent": ("none", "not-declared", "isolated", "scattered", "extensive"), "too_few": (True, False), "conflict": (True, False),
         "rung": ("unsafe", "thin", "low", "reduced", "sound"), "suggests_extensive": (True, False), "departs": (True, False),
         "spot_check": (True, False), "substantial": (True, False), "indicative": (True, False), "checked": (True,),
         "reduce": ("least of repeats", "mean of repeats"), "reading": ("floor-times-b", "local-wear", "local-wear-under-floor"),
         "floored": (True, False), "left_out": (*STATUS, "doubler", "rejected"),
         "change": ("lost", "within-doubt", "grown"), "governs": ("short", "long", "as-built", True), "capped": (True, False),
         "refused": ("few-blocks", "blocks-without-pits", "no-area", "all-alike", "all-seen", None), "by": ("bow", "stern", "even"),
         "kind": ("falls-short", "too-close", "insert", "overplate"), "limit": (True, False), "original": (True, False), "unworn": (True, False)}


def kinds(value):
    """How often each answer that can come out came out."""
    if isinstance(value, dict):
        for key, inner in value.items():
            if key in KINDS and not isinstance(inner, (dict, list)):
                yield key, inner
            yield from kinds(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from kinds(inner)


def one(job):
    binary, root, work, policies, seed = job
    path = write(Path(work) / str(seed), seed, policies)
    got = judge(binary, root, path)
    shutil.rmtree(path.parent)
    return seed, got.found[:3], got.ways, Counter(kinds(got.ours))


def main():
    binary, root = program()
    seeds = [int(s) for s in sys.argv[3:]] or range(SURVEYS)
    policies = {house: read_policy(root / "layouts", house) for house in ("base", "river-desk")}
    explained, seen, bad = Counter(), Counter(), 0
    with folder() as work, ProcessPoolExecutor(min(2, os.cpu_count())) as pool:
        for seed, found, ways, came in pool.map(one, [(binary, root, work, policies, s) for s in seeds], chunksize=20):
            explained.update(ways)
            seen.update(came)
            bad += bool(found)
            for at, ours, theirs in found if bad <= SHOWN else ():
                expect(False, f"seed {seed}: {at}: {ours} here, {theirs} there")
    expect(bad == 0, f"{bad} surveys differ")
    for kind in [(k, answer) for k, answers in KINDS.items() for answer in answers] if len(seeds) == SURVEYS else ():
        expect(seen[kind] >= LEAST, f"the surveys are varied: {kind[0]} {kind[1]} came out {seen[kind]} times")
    print(f"{len(seeds)} surveys; open disagreements that showed: {dict(explained)}")
    finish("second_generated")


if __name__ == "__main__":
    main()
