"""Runs a command again and again, each time ended or refused at another of its system calls.

Knows nothing of what the command does: a case says how a folder is made ready, which command runs on it, and what holds of the folder
whenever the command was ended, and after it went well."""
import os
import re
import subprocess
import sys
import tempfile
from collections import Counter
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import Callable

from judge import SKIP

CHANGING = {"openat", "open", "creat", "write", "pwrite64", "writev", "rename", "renameat", "renameat2", "mkdir", "mkdirat", "unlink", "unlinkat",
            "rmdir", "fsync", "fdatasync", "ftruncate", "fallocate", "fchmod", "chmod", "flock", "link", "linkat", "symlink", "symlinkat", "close"}
# What a disk may answer; ENOSPC where something is added, EIO anywhere, EINTR where a call may wait.
ERRORS = {"ENOSPC": {"openat", "write", "pwrite64", "writev", "mkdir", "mkdirat", "rename", "renameat", "renameat2", "fsync", "link", "linkat"},
          "EIO": CHANGING, "EINTR": {"openat", "write", "fsync", "flock", "close"}}


@dataclass(frozen=True)
class Call:
    """The nth call of its name in a run."""
    name: str
    nth: int
    text: str


@dataclass(frozen=True)
class Case:
    name: str
    prepare: Callable  # makes the folder ready, which does not exist yet
    command: Callable  # folder -> the command as a list
    check: Callable    # (folder, whether the run ended well); raises AssertionError where something does not hold


def traced(folder, command, *options, log="/dev/null"):
    # Only the process itself: what it starts is ended with it, or answers for itself.
    return subprocess.run(["strace", "-qq", "-o", log, *options, *map(str, command)], capture_output=True, text=True, errors="replace", cwd=folder.parent)


def need_tracing():
    try:
        done = subprocess.run(["strace", "-qq", "-o", "/dev/null", "-e", "inject=close:error=EIO:when=1", "true"], capture_output=True, text=True)
    except OSError as reason:
        done = None
        print(f"SKIPPED: strace cannot be run: {reason}", flush=True)
    if done is None or "ptrace" in done.stderr or "not permitted" in done.stderr:
        print(f"SKIPPED: no process can be traced here: {done.stderr.strip() if done else ''}", flush=True)
        sys.exit(SKIP)


def calls_of(case):
    """Every system call of an undisturbed run, and whether it changes a file in the folder."""
    with tempfile.TemporaryDirectory(prefix="strakebook-calls-") as work:
        folder, log = Path(work) / "case", Path(work) / "log"
        case.prepare(folder)
        done = traced(folder, case.command(folder), "-y", log=log)
        assert done.returncode == 0, f"{case.name}: an undisturbed run goes well: {done.stderr[:600]}"
        case.check(folder, True)
        counts, changing, others = Counter(), [], []
        for line in log.read_text(errors="replace").splitlines():
            found = re.match(r"(\w+)\(", line)
            if not found:
                continue
            name = found[1]
            counts[name] += 1
            call = Call(name, counts[name], line.replace(str(folder), "")[:100])
            (changing if name in CHANGING and str(folder) in line and not reads_only(line) else others).append(call)
        return changing, [call for call in others if call.name not in ("execve", "exit_group")]


def reads_only(line):
    return line.startswith("open") and not re.search(r"O_(WRONLY|RDWR|CREAT|DIRECTORY)", line)


def disturbances(changing, others, errors, samples):
    """(call, what happens at it): an end at each call that changes a file, each of `errors` where it can come; ends at a sample of the rest."""
    step = max(1, len(others) // samples)
    out = [(call, "signal=KILL") for call in changing + others[step // 2::step]]
    out += [(call, f"error={error}") for error in errors for call in changing if call.name in ERRORS[error]]
    return out


def judge_one(case, call, happens):
    """None, or what did not hold."""
    with tempfile.TemporaryDirectory(prefix="strakebook-ended-") as work:
        folder = Path(work) / "case"
        case.prepare(folder)
        done = traced(folder, case.command(folder), "-e", f"trace={call.name}", "-e", f"inject={call.name}:{happens}:when={call.nth}")
        killed = done.returncode in (-9, 137)
        where = f"{case.name}, {happens} at {call.name} {call.nth} ({call.text})"
        if "KILL" in happens and not killed:
            return f"{where}: was not ended, but left with {done.returncode}"
        if "error" in happens and (killed or done.returncode not in (0, 1, 3)):
            return f"{where}: left with {done.returncode}: {done.stderr[:400]}"
        if "error" in happens and done.returncode and "error" not in done.stderr:
            return f"{where}: says nothing"
        try:
            case.check(folder, done.returncode == 0)
            if done.returncode == 0:
                return None
            again = subprocess.run([str(part) for part in case.command(folder)], capture_output=True, text=True, errors="replace", cwd=folder.parent)
            assert again.returncode == 0, f"the next run leaves with {again.returncode}: {again.stderr[:400]}"
            case.check(folder, True)
        except AssertionError as broken:
            return f"{where}: {broken}; left with {done.returncode}: {done.stderr[:300]}"
    return None


def sweep(case, errors, samples):
    """What did not hold, a line each; prints how much was tried."""
    try:
        changing, others = calls_of(case)
        assert changing, "changes no file"
    except AssertionError as broken:
        return [f"{case.name}, undisturbed: {broken}"]
    plan = disturbances(changing, others, errors, samples)
    with ThreadPoolExecutor(max_workers=os.cpu_count()) as pool:
        found = list(pool.map(lambda one: judge_one(case, *one), plan))
    print(f"{case.name}: {len(changing)} calls that change a file, {len(others)} others; {len(plan)} runs disturbed", flush=True)
    return [fault for fault in found if fault]
