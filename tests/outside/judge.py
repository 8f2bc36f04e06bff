"""What the judges share: running the program and the outside tools, and reading words with their boxes."""
import os
import re
import resource
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from xml.etree import ElementTree

import yaml

SKIP = 77
failures = []


def expect(holds, what):
    """Notes a failure and goes on, so that one run lists everything."""
    if not holds:
        failures.append(what)
        print("FAIL:", what)


def need(*tools):
    missing = [t for t in tools if shutil.which(t) is None]
    for tool in missing:
        print(f"SKIPPED: {tool} is not installed; nothing was judged", flush=True)
    if missing:
        sys.exit(SKIP)


def finish(what):
    print(f"{what}: {len(failures)} failures" if failures else f"{what}: all well")
    sys.exit(1 if failures else 0)


def run(*command, cwd=None):
    return subprocess.run([str(c) for c in command], capture_output=True, text=True, cwd=cwd, errors="replace")


def program():
    return Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()


def folder():
    return tempfile.TemporaryDirectory(prefix="strakebook-judge-")


def surveys(root, temporary):
    """Every example, and the big barge made for the occasion."""
    import make_barge
    found = sorted((root / "example-surveys").glob("*/survey.yaml"))
    expect(len(found) >= 3, "there are at least three example surveys")
    return found + [make_barge.make(Path(temporary) / "barge")]


def typeset(binary, survey, pdf):
    before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
    done = run(binary, "typeset", survey, "-o", pdf)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    print(f"{survey.parent.name}: {after.ru_utime - before:.2f} s of user time; largest child so far {after.ru_maxrss // 1024} MB")
    expect(done.returncode == 0, f"{survey.parent.name}: typeset leaves with 0, not {done.returncode}: {done.stderr[:600]}")
    return done.returncode == 0


class Word:
    def __init__(self, element):
        self.x0, self.y0, self.x1, self.y1 = (float(element.get(k)) for k in ("xMin", "yMin", "xMax", "yMax"))
        self.text = element.text or ""

    @property
    def middle(self):
        return (self.y0 + self.y1) / 2


def pages(pdf):
    """[(width, height, [Word])] as pdftotext finds them."""
    # The head of the XML repeats the metadata; only the pages matter here.
    text = run("pdftotext", "-bbox", pdf, "-").stdout
    body = text[text.index("<doc>"):text.index("</doc>") + 6]
    body = "".join(c for c in body if c in "\n\t" or ord(c) >= 32)
    return [(float(p.get("width")), float(p.get("height")), [Word(w) for w in p.findall("word")])
            for p in ElementTree.fromstring(body).findall("page")]


def lines(words):
    """Words of one baseline, from left to right, top to bottom."""
    out = []
    for word in sorted(words, key=lambda w: w.middle):
        if out and abs(out[-1][0].middle - word.middle) < 2.5:
            out[-1].append(word)
        else:
            out.append([word])
    return [sorted(line, key=lambda w: w.x0) for line in out]


def plain(pdf):
    return re.sub(r"\s+", " ", run("pdftotext", "-layout", pdf, "-").stdout)


def load(survey):
    return yaml.load(survey.read_text(), Loader=yaml.BaseLoader)


def copy_of(survey, to):
    shutil.copytree(survey.parent, to)
    return to / "survey.yaml"
