"""Reads what strace wrote down of a run (-f -y -s 0, signals left out).

Usage: trace.py calls TRACE FOLDER CALL,CALL... TURN
                                                  each of these calls that changed something in FOLDER: its
                                                  name, its path there or *, its number, by tabs; with a
                                                  turn, a number, the first, the last and another of those alike
       trace.py order TRACE SITE                  what of a publish was not done in the order promised
       trace.py steps TRACE SITE OLD SCRATCH      dead links after any step on the way from OLD to SITE
       trace.py writes TRACE FROM JOURNAL [OWN]   calls that could change the journal, its OWN folders apart
The last three exit 1 if they have something to print. FROM is the folder the run was started in.
"""

import os
import re
import shutil
import sys
from collections import Counter, namedtuple

import links

WRITES = {"write", "pwrite64", "writev", "pwritev", "pwritev2", "sendfile", "copy_file_range", "ftruncate", "fallocate"}
FLUSHES = {"fsync", "fdatasync"}
MOVES = {"rename", "renameat", "renameat2"}
REMOVALS = {"unlink", "unlinkat", "rmdir"}
OPENS = {"open", "openat", "openat2", "creat"}
OTHERS = {
    "mkdir", "mkdirat", "mknod", "mknodat", "link", "linkat", "symlink", "symlinkat", "truncate", "chmod", "fchmod",
    "fchmodat", "chown", "fchown", "lchown", "fchownat", "utime", "utimes", "futimesat", "utimensat", "setxattr",
    "lsetxattr", "fsetxattr", "removexattr", "lremovexattr", "fremovexattr",
}
FOR_WRITING = re.compile(r"O_(WRONLY|RDWR|CREAT|TRUNC|APPEND|TMPFILE)|^creat\(")

Call = namedtuple("Call", "thread name text paths done began ended")


def paths(text, folder):
    """The paths in a call: those of its open files, then those written out, made absolute."""
    found = re.findall(r"\b(?:AT_FDCWD|\d+)<([^>]*)>(?:, \"((?:[^\"\\]|\\.)*)\")?|\"((?:[^\"\\]|\\.)*)\"", text)
    for base, under, alone in found:
        if base and not base.startswith("/"):  # a pipe, a socket
            continue
        yield os.path.normpath(os.path.join(folder, base, under or alone))


def calls(trace, folder="/"):
    waiting, read = {}, []
    for number, line in enumerate(open(trace, encoding="utf-8", errors="replace")):
        thread, _, text = line.rstrip("\n").partition(" ")
        text, began = text.strip(), number
        if text.endswith("<unfinished ...>"):
            waiting[thread] = (text[: -len("<unfinished ...>")], number)
            continue
        resumed = re.match(r"<\.\.\. \w+ resumed>", text)
        if resumed:
            before, began = waiting.pop(thread, ("", number))
            text = before + text[resumed.end() :]
        name = re.match(r"(\w+)\(", text)
        if name:
            arguments, _, answer = text.rpartition(" = ")
            done = bool(re.match(r"\d", answer))
            read.append(Call(thread, name[1], text, list(paths(arguments, folder)), done, began, number))
    return sorted(read, key=lambda call: call.began)


def inside(path, folder):
    return path == folder or path.startswith(folder + "/")


def plan(trace, folder, names):
    """The number counts as strace does: within a thread, a name and a path.

    A path that holds the process's number is another one in each run: * stands for any path.
    """
    seen, planned, kinds = Counter(), [], {}
    for call in calls(trace):
        if call.name not in names:
            continue
        path = call.paths[0] if call.paths else ""
        seen[call.thread, call.name] += 1
        seen[call.thread, call.name, path] += 1
        if not call.done or not any(inside(place, folder) for place in call.paths):
            continue
        if re.search(r"\.\d+\.\d+$", path):
            planned.append(f"{call.name}\t*\t{seen[call.thread, call.name]}")
        else:
            number = seen[call.thread, call.name, path]
            planned.append(f"{call.name}\t{os.path.relpath(path, folder)}\t{number}")
        # What waits in one folder is alike where it goes to one folder; a folder that is flushed is like no other.
        kind = os.path.dirname(path) if "/staging/" in path else path
        kinds[planned[-1]] = (call.name, kind, os.path.dirname(call.paths[-1]))
    return list(dict.fromkeys(planned)), kinds


def by_turns(planned, kinds, turn):
    """The first and the last of the calls that are of a kind, and one of those between: as turns go on, each."""
    taken = set()
    for kind in set(kinds.values()):
        alike = [call for call in planned if kinds[call] == kind]
        between = alike[1:-1]
        taken.update(alike[:1] + alike[-1:])
        if between:
            taken.add(between[turn % len(between)])
    return [call for call in planned if call in taken]


def steps(trace, site, old, scratch):
    """Each state that a follower could have met on the way, as the links in it are."""
    wrong, done = [], 0
    if os.path.isdir(old):
        shutil.copytree(old, scratch)
    for call in calls(trace):
        if not call.done or call.name not in MOVES | REMOVALS or not inside(call.paths[-1], site):
            continue
        path = os.path.relpath(call.paths[-1], site)
        place = os.path.join(scratch, path)
        if call.name in MOVES:
            os.makedirs(os.path.dirname(place), exist_ok=True)
            shutil.copy(call.paths[-1], place)
        elif os.path.isdir(place):
            os.rmdir(place)
        else:
            os.remove(place)
        done += 1
        wrong += [f"after {call.name} of {path}: {dead}" for dead in links.dead_links(scratch)]
    return wrong if done > 20 else wrong + ["hardly a step was seen"]


def order(trace, site):
    """What the package ribband.press promises, looked at from outside."""
    wrong, written, flushed, changed = [], {}, {}, {}
    steps, listed = [], 0
    site_list = os.path.join(site, "site-files.txt")
    for call in calls(trace):
        if not call.done or not call.paths:
            continue
        first, last = call.paths[0], call.paths[-1]
        if call.name in OPENS and inside(first, site) and FOR_WRITING.search(call.text):
            wrong.append(f"a file of the site is opened for writing: {call.text}")
        elif call.name in WRITES:
            written[first] = call.ended
        elif call.name in FLUSHES:
            flushed[first] = call.began
            if first in changed and changed[first] < call.began:
                del changed[first]
        elif call.name in MOVES:
            for state in (written, flushed):
                if first in state:
                    state[last] = state.pop(first)
            if inside(last, site):
                if flushed.get(last, -1) < written.get(last, 0):
                    wrong.append(f"{last} is put in place before it is on the disk")
                if steps == ["list"] and flushed.get(site, -1) < listed:
                    wrong.append(f"{last} is put in place before the list is on the disk")
                if not steps and last != site_list:
                    wrong.append(f"{last} is put in place before any list")
                if "removal" in steps and last != site_list:
                    wrong.append(f"{last} is put in place after something was removed")
                if steps and last == site_list:
                    wrong += [f"the last list comes before {folder} is on the disk" for folder in changed]
                if last == site_list:
                    listed = call.ended
                steps.append("list" if last == site_list else "move")
                changed[os.path.dirname(last)] = call.ended
        elif call.name in REMOVALS and inside(first, site):
            if "removal" not in steps:
                wrong += [f"{first} is removed before {folder} is on the disk" for folder in changed]
            steps.append("removal")
            changed.pop(first, None)
            changed[os.path.dirname(first)] = call.ended
        elif call.name in ("mkdir", "mkdirat") and inside(first, site) and first != site:
            changed[os.path.dirname(first)] = call.ended
    if steps[:1] != ["list"] or steps[-1:] != ["list"] or "move" not in steps:
        wrong.append(f"the lists do not stand first and last: {steps}")
    wrong += [f"at the end {folder} is not on the disk" for folder in changed]
    return wrong


def writes(trace, folder, journal, own):
    wrong, opened = [], 0
    for call in calls(trace, folder):
        # The second file of this one is the one that is read.
        changed = call.paths[:1] if call.name == "sendfile" else call.paths
        touched = [p for p in changed if inside(p, journal) and not any(inside(p, place) for place in own)]
        if not touched:
            continue
        if call.name in OPENS and not FOR_WRITING.search(call.text):
            opened += 1
        elif call.name in OPENS | WRITES | MOVES | REMOVALS | OTHERS:
            wrong.append(call.text)
    if not opened:
        wrong.append("no file of the journal was opened at all")
    return wrong


if __name__ == "__main__":
    what, trace, *rest = sys.argv[1:]
    if what == "calls":
        planned, kinds = plan(trace, rest[0], rest[1].split(","))
        print("\n".join(by_turns(planned, kinds, int(rest[2])) if rest[2] else planned))
        sys.exit(0)
    found = {
        "order": lambda: order(trace, *rest),
        "steps": lambda: steps(trace, *rest),
        "writes": lambda: writes(trace, rest[0], rest[1], rest[2:]),
    }[what]()
    for line in found:
        print(line)
    sys.exit(1 if found else 0)
