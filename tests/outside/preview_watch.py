"""preview --watch: a saved change is drawn, only what changed is written, a fault keeps the last good pages and is told, and
Ctrl-C or SIGTERM ends it with 0."""
import os
import signal
import subprocess
import time
from pathlib import Path

from judge import copy_of, expect, finish, folder, program

BOUND = 120 # seconds: far more than any step takes, so that a machine under load fails nothing


class Watch:
    def __init__(self, binary, survey, drawn, log):
        self.log, self.drawn = log, drawn
        self.out = open(log, "wb")
        self.process = subprocess.Popen([binary, "preview", survey, "-o", drawn, "--watch", "--dpi", "30"], stdout=self.out, stderr=self.out)

    def said(self):
        return self.log.read_text(errors="replace")

    def wait_for(self, holds, what):
        end = time.monotonic() + BOUND
        while time.monotonic() < end and self.process.poll() is None:
            if holds():
                return True
            time.sleep(0.05)
        expect(False, f"waited in vain: {what}; it said: {self.said()[-600:]}")
        return False

    def wait_said(self, text, count=1):
        return self.wait_for(lambda: self.said().count(text) >= count, f"{count} times '{text}'")

    def end(self, how):
        self.process.send_signal(how)
        try:
            code = self.process.wait(BOUND)
        except subprocess.TimeoutExpired:
            self.process.kill()
            code = self.process.wait()
        self.out.close()
        expect(code == 0, f"{how.name} ends it with 0, not {code}")


def replace(path, text):
    """As editors save: a new file, moved over the old one."""
    other = path.with_name("." + path.name + ".new")
    other.write_text(text)
    os.replace(other, path)


def state(drawn):
    return {p.name: (p.stat().st_ino, p.read_bytes()) for p in drawn.iterdir()}


def whole(drawn):
    """Every file there is a whole picture: PNG's signature in front, its end at the end."""
    return all(data[:8] == b"\x89PNG\r\n\x1a\n" and data[-8:] == b"IEND\xaeB`\x82" for _, data in state(drawn).values())


def judge_changes(watch, survey, drawn):
    if not watch.wait_said(" drawn, "):
        return
    before = state(drawn)
    expect(len(before) > 5 and whole(drawn), f"all pages are drawn at the start: {sorted(before)}")
    # One cell of the readings: pages change, but not all.
    readings = next((survey.parent / "readings").glob("*.csv"))
    cells = readings.read_text()
    replace(readings, cells.replace("5.7", "5.6", 1))
    if not watch.wait_said(" drawn, ", 2):
        return
    after = state(drawn)
    changed = {n for n in after if after[n][1] != before[n][1]}
    touched = {n for n in after if after[n][0] != before[n][0]}
    expect(changed, "the new reading shows on some page")
    expect(len(changed) < len(before), "and not on all")
    expect(touched == changed, f"only what changed is written again: {sorted(touched)} for {sorted(changed)}")
    replace(readings, cells)
    watch.wait_said(" drawn, ", 3)
    expect({n: d for n, (_, d) in state(drawn).items()} == {n: d for n, (_, d) in before.items()}, "put back, the pages are as before, byte for byte")


def judge_fault(watch, survey, drawn):
    text, before = survey.read_text(), state(drawn)
    with open(survey, "a") as to: # rewritten in place, as other editors do
        to.write("stowaway: yes\n")
    if not watch.wait_said("the last good pictures stay"):
        return
    line = text.count("\n") + 1
    expect("SB0201" in watch.said() and f"survey.yaml:{line}:" in watch.said(), f"what is wrong is told, with its place: {watch.said()[-500:]}")
    expect(state(drawn) == before, "while it is wrong nothing is written")
    drawings = watch.said().count(" drawn, ")
    replace(survey, text)
    watch.wait_said(" drawn, ", drawings + 1)
    expect(state(drawn) == before, "put right, the pages are as before and were not written again")


def judge_quiet(watch, survey):
    said = watch.said()
    os.utime(survey)
    time.sleep(1.5)
    expect(watch.said() == said, "a file that is saved as it was brings no new drawing")


def main():
    binary, root = program()
    with folder() as work:
        work = Path(work)
        survey = copy_of(root / "example-surveys/clean-boat/survey.yaml", work / "boat")
        drawn = work / "boat" / "pictures" # inside the survey's folder: its own pictures must not wake it
        watch = Watch(binary, survey, drawn, work / "log")
        try:
            judge_changes(watch, survey, drawn)
            judge_fault(watch, survey, drawn)
            judge_quiet(watch, survey)
        finally:
            watch.end(signal.SIGINT)
        expect(whole(drawn), "nothing is left half written")
        other = Watch(binary, survey, work / "other", work / "other-log")
        other.wait_said(" drawn, ")
        other.end(signal.SIGTERM)
    finish("preview_watch")


main()
