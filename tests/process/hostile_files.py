#!/usr/bin/env python3
"""Files made to hurt: each is refused with a clear message, or opened, within two
seconds of processor time and 300 MB, and never crashes the program. What is opened is
then drawn, worked out and printed too: no command crashes on it, runs without end or
writes anything but the file it was told to.

Usage: hostile_files.py PROGRAM SOURCE_FOLDER

COMBDRAFT_HOSTILE_SLACK multiplies the limits, for a program with a sanitizer in it.
"""
import json
import os
import resource
import subprocess
import sys
import tempfile
import threading

PROGRAM, SOURCE = os.path.realpath(sys.argv[1]), os.path.realpath(sys.argv[2])
SLACK = int(os.environ.get("COMBDRAFT_HOSTILE_SLACK", "1"))
CPU_S = 2 * SLACK    # killed by the kernel beyond this, however loaded the machine is
MEMORY_KB = 300_000 * SLACK  # peak resident
MB = 1 << 20
# What is done with a file that opens. A legal plan may be far beyond any head.
USES = [["draw", "--layer", "diagram", "--out", "out.svg"], ["work"], ["share", "--out", "out.json"],
        ["handout", "--parts", "title,kit,views,steps,timing", "--out", "out.pdf"]]
USE_CPU_S, USE_MEMORY_KB = 120 * SLACK, 1_500_000 * SLACK

with open(os.path.join(SOURCE, "examples", "soft-root-bold-ends.json"), encoding="utf-8") as file:
    EXAMPLE = file.read()


def plan(**changes):
    """The example as an object, with other values on top; None takes a key away."""
    whole = json.loads(EXAMPLE)
    for key, value in changes.items():
        if value is None:
            whole.pop(key, None)
        else:
            whole[key] = value
    return whole


def text(whole):
    return json.dumps(whole).encode()


def piece(name, **more):
    return {"id": name, "choice": "choice-1", "line": [[170, 60], [160, 60]], **more}


def ring(points, bearing, width, top, bottom):
    """An outline of that many points that goes to and fro."""
    half = points // 2
    upper = [[bearing + width * i / (half - 1), top + (i % 2) * 0.5] for i in range(half)]
    lower = [[bearing + width * i / (half - 1), bottom - (i % 2) * 0.5] for i in reversed(range(half))]
    return upper + lower


def section(name, outline, **layout):
    return {"id": name, "choice": "choice-1", "label": name, "outline": outline,
            "layout": {"run": "horizontal", **layout}}


def cases():
    """name, bytes, exit codes allowed, words of the message ("" = any)"""
    yield "100 MB of blanks", b" " * (100 * MB) + b"{}", {1}, "at most 16777216"
    yield "100 MB of brackets", b"[" * (100 * MB), {1}, "at most 16777216"
    yield "a million pieces", text(plan(pieces=[piece(f"p{i}") for i in range(1_000_000)])), {1}, "at most 16777216"
    yield "150,000 pieces in 16 MB", text(plan(pieces=[piece(f"p{i}") for i in range(150_000)])), {1}, "at most 500000"
    yield "2,001 pieces", text(plan(pieces=[piece(f"p{i}") for i in range(2_001)])), {1}, "at most 2000"
    for bracket in ("[", '{"a":'):
        yield f"depth 100,000 of {bracket}", bracket.encode() * 100_000, {1}, "64"
    yield "depth 70 in what is kept", text(plan(agreed=json.loads("[" * 70 + "]" * 70))), {1}, "64"
    yield "name of 10 MB", text(plan(title="x" * (10 * MB))), {1}, "/title"
    yield "notes of 10 MB", text(plan(notes="x" * (10 * MB))), {1}, "/notes"
    yield "key of 10 MB", text(plan(**{"x" * (10 * MB): 1})), {0, 1}, ""
    yield "id of 10 MB", text(plan(pieces=[piece("x" * (10 * MB))])), {1}, "/pieces/0/id"
    yield "number of 10 MB", EXAMPLE.replace('"version": ', '"version": ' + "1" * (10 * MB)).encode(), {1}, ""
    yield "a hundred thousand unknown keys", text(plan(**{f"k{i}": i for i in range(100_000)})), {0, 1}, ""
    yield "half a million unknown values", text(plan(agreed=[0] * 490_000)), {0, 1}, ""
    yield "twins in a circle", text(plan(pieces=[
        {"id": "a", "twinOf": "b", "order": 1}, {"id": "b", "twinOf": "a", "order": 2}])), {1}, "/pieces/0/twinOf"
    yield "its own twin", text(plan(pieces=[{"id": "a", "twinOf": "a", "order": 1}])), {1}, "/pieces/0/twinOf"
    yield "ids that clash", text(plan(pieces=[piece("a"), piece("a")])), {1}, "/pieces/1/id"
    yield "ids of different kinds that clash", text(plan(pieces=[piece("choice-1")])), {1}, "/pieces/0/id"
    yield "id that is a path", text(plan(pieces=[piece("../../etc/passwd")])), {1}, "/pieces/0/id"
    yield "a key of 5 MB twice", ('{"' + "k" * (5 * MB) + '": 1, "' + "k" * (5 * MB) + '": 1}').encode(), {1}, "twice"
    yield "a key that moves the terminal's cursor, twice", b'{"\\u001b[2J": 1, "\\u001b[2J": 1}', {1}, "twice"
    yield "a word that colours the terminal", EXAMPLE.replace('"action": "lighten"', '"action": "\\u001b[31m"', 1).encode(), {1}, "/action"
    yield "a piece laid aside without a name", text(plan(sections=[
        {**section("s", ring(8, 100, 40, 60, 70)), "retired": [{"line": [[150, 50], [160, 50]]}]}])), {1}, "/sections/0/retired/0"
    yield "a key twice", EXAMPLE.replace('"notes":', '"title":', 1).encode(), {1}, "/title"
    whole_head = ring(16, -170, 340, 5, 75)
    yield "a run of pieces beyond all bounds", text(plan(pieces=None, sections=[
        section("s", whole_head, thicknessFrom_mm=0.2, thicknessTo_mm=0.2, leftOutFrom_mm=0, leftOutTo_mm=0, foil_mm=20)])), {0, 1}, ""
    yield "a run of a billion pieces in rows", text(plan(pieces=None, sections=[
        section("s", whole_head, thicknessFrom_mm=1e-7, thicknessTo_mm=1e-7)])), {1}, "/sections/0/layout/thicknessFrom_mm"
    yield "150 crowded sections", text(plan(pieces=None, sections=[
        section(f"s{i}", ring(128, 100, 40, 60, 70), thicknessFrom_mm=0.2, thicknessTo_mm=0.2, leftOutFrom_mm=0,
                leftOutTo_mm=0, foil_mm=20) for i in range(150)])), {0, 1}, ""
    yield "500 sections round the head", text(plan(pieces=None, sections=[
        section(f"s{i}", ring(38, -175, 350, 10, 80), run="pivoting" if i % 2 else "horizontal", pivot=[0, 2] if i % 2 else [0, 30],
                thicknessFrom_mm=0.2, thicknessTo_mm=0.2, leftOutFrom_mm=0, leftOutTo_mm=0, foil_mm=20, zigzag_mm=20)
        for i in range(500)])), {0, 1}, "not checked whole"
    yield "500 sections without room", text(plan(pieces=None, sections=[
        section(f"s{i}", ring(38, 100, 40, 60, 62), thicknessFrom_mm=40, thicknessTo_mm=40, leftOutFrom_mm=100, leftOutTo_mm=100)
        for i in range(500)])), {0, 1}, "not checked whole"
    yield "2,000 pieces on one spot", text(plan(pieces=[
        piece(f"p{i}", line=[[90, 40], [170, 60], [-100, 60]], thickness_mm=40) for i in range(2000)])), {0}, "not checked whole"
    yield "100,000 pieces laid aside", text(plan(sections=[
        {**section(f"s{i}", ring(8, 100, 40, 60, 70)), "retired": [piece(f"r{i}-{k}") for k in range(200)]}
        for i in range(500)])), {1}, ""
    yield "a million points", text(plan(pieces=[piece("a", line=[[170, 60 + i * 1e-5] for i in range(200_000)])])), {1}, "/pieces/0/line"
    yield "20,001 points in all", text(plan(pieces=[piece(f"p{i}", line=[[170, 60 + k / 10] for k in range(64)]) for i in range(313)])), {1}, "20000"
    yield "100,000 assumptions", text(plan(assumptions={f"a{i}": 1 for i in range(100_000)})), {1}, "/assumptions"
    for number in ("1e400", "-1e999", "NaN", "Infinity", "0x10", "01", "1.", "--1"):
        yield f"number {number}", EXAMPLE.replace('"version": ', f'"white_frac": {number}, "version": ', 1).encode(), {1}, ""
    for name, code in (("half a surrogate", '"\\ud800"'), ("a null character", '"\\u0000"'), ("a bell", '"\\u0007"')):
        yield name, EXAMPLE.replace('"title": "', f'"notes2": 1, "title": {code}, "x": "', 1).encode(), {1}, ""
    yield "not UTF-8", EXAMPLE.replace('"title": "', '"title": "\xff\xfe', 1).encode("latin-1", "replace"), {1}, ""
    yield "UTF-16", EXAMPLE.encode("utf-16"), {1}, ""
    yield "a byte order mark", b"\xef\xbb\xbf" + EXAMPLE.encode(), {0, 1}, ""
    yield "nothing", b"", {1, 3}, "empty"
    yield "one byte", b"{", {1}, "line 1"
    yield "a picture", b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 64, {1}, ""
    yield "a list", b"[]", {1}, ""
    yield "another program's file", b'{"format": "drawing", "version": 1}', {1}, "combdraft plan"
    yield "a newer format", text(plan(version=99)), {1}, "newer program"
    yield "format 0", text(plan(version=0)), {1}, "/version"
    yield "format 1.5", text(plan(version=1.5)), {1}, "/version"


def run(arguments, cpu_s=CPU_S, folder=None):
    def limit():
        resource.setrlimit(resource.RLIMIT_CPU, (cpu_s, cpu_s))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))

    child = subprocess.Popen([PROGRAM, *arguments], stdout=subprocess.PIPE, stderr=subprocess.STDOUT, cwd=folder, preexec_fn=limit)
    stuck = threading.Timer(60 + 4 * cpu_s, child.kill)  # waits for something, without working
    stuck.start()
    out = child.stdout.read()
    _, status, used = os.wait4(child.pid, 0)
    stuck.cancel()
    child.returncode = os.waitstatus_to_exitcode(status)
    return child.returncode, out.decode("utf-8", "replace"), used


def use(path, done):
    """What goes wrong when the file is drawn, worked out, shared and printed; commands that
    did it are added to `done`."""
    wrong = []
    for command, *options in USES:
        with tempfile.TemporaryDirectory() as folder:
            code, said, used = run([command, path, *options], USE_CPU_S, folder)
            told = {option for option in options if option.startswith("out.")}
            if code not in (0, 1):
                wrong.append(f"{command}: exit code {code}: {said[-300:]!r}")
            if used.ru_maxrss > USE_MEMORY_KB:
                wrong.append(f"{command}: {used.ru_maxrss // 1000} MB")
            wrote = set(os.listdir(folder))
            if wrote != told if code == 0 else not wrote <= told:
                wrong.append(f"{command}, exit code {code}, wrote {sorted(wrote)}")
            if code == 0:
                done.add(command)
            if os.environ.get("COMBDRAFT_HOSTILE_TIMES"):
                print(f"  {command} {code} {used.ru_utime + used.ru_stime:.1f} s {used.ru_maxrss // 1000} MB", flush=True)
    return wrong


def main():
    failures, worst_s, worst_kb, done = 0, 0.0, 0, set()
    environment = {key: os.environ.pop(key) for key in ("DISPLAY", "WAYLAND_DISPLAY") if key in os.environ}
    del environment
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "hostile.json")

        def judge(name, arguments, codes, words):
            nonlocal failures, worst_s, worst_kb
            code, said, used = run(arguments)
            seconds = used.ru_utime + used.ru_stime
            worst_s, worst_kb = max(worst_s, seconds), max(worst_kb, used.ru_maxrss)
            wrong = []
            if code not in codes:
                wrong.append(f"exit code {code}, allowed {sorted(codes)}")
            if used.ru_maxrss > MEMORY_KB:
                wrong.append(f"{used.ru_maxrss // 1000} MB")
            if words not in said:
                wrong.append(f"the message lacks {words!r}")
            if len(said) > 100_000:
                wrong.append(f"a message of {len(said)} characters")
            if any(ord(c) < 32 and c not in "\n\t" for c in said):
                wrong.append("control characters in the message")
            if wrong:
                failures += 1
                print(f"FAIL: {name}: {'; '.join(wrong)}\n  {said[:400]!r}")
            return code

        for name, content, codes, words in cases():
            with open(path, "wb") as file:
                file.write(content)
            del content
            code = judge(name, ["check", path], codes, words)
            if os.environ.get("COMBDRAFT_HOSTILE_TIMES"):
                print(name, code, flush=True)
            wrong = use(path, done) if code == 0 else []
            if wrong:
                failures += 1
                print(f"FAIL: {name}: {'; '.join(wrong)}")
        os.remove(path)
        os.mkfifo(path)
        judge("a pipe that nobody writes to", ["check", path], {3}, "not a regular file")
        os.remove(path)
        os.symlink(path, path)
        judge("a link to itself", ["check", path], {3}, "")
        judge("a device without end", ["check", "/dev/zero"], {3}, "not a regular file")
        judge("a folder", ["check", folder], {3}, "folder")
        judge("a name of 5,000 letters", ["check", "x" * 5000], {3}, "")
    for command, *_ in USES:
        if command not in done:
            failures += 1
            print(f"FAIL: {command} refused every file that opens")
    print(f"worst: {worst_s:.2f} s of processor time, {worst_kb // 1000} MB")
    sys.exit(1 if failures else 0)


main()
