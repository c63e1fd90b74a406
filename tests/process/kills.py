#!/usr/bin/env python3
"""Programs killed at random moments while they edit, autosave, save, recover and migrate.

Usage: kills.py EDIT_PLAN [KILLS [SEED]]     50 kills; the long form takes 1000

After each kill the plan opens, the recovered one too, at most two seconds of edits are
missing, and no tap of the appointment log that was said to be on the disk. Now and then what was left is first turned into the oldest format, so
that it is migrated when it is opened; what its formula says must come through. EDIT_PLAN is tests/process/edit_plan.cpp.
"""
import json
import os
import random
import signal
import subprocess
import sys
import tempfile
import threading
import time

PROGRAM = os.path.realpath(sys.argv[1])
KILLS = int(sys.argv[2]) if len(sys.argv) > 2 else 50
SEED = int(sys.argv[3]) if len(sys.argv) > 3 else random.randrange(1 << 30)
LOST_MS = 2000


def now_ms():
    return time.clock_gettime_ns(time.CLOCK_MONOTONIC) // 1_000_000


class Hand:
    """A running edit_plan, and what it said."""

    def __init__(self, folder, seed, first):
        self.lines = []
        self.process = subprocess.Popen([PROGRAM, "edit", folder, str(seed), str(first)], stdout=subprocess.PIPE, text=True)
        self.reader = threading.Thread(target=lambda: self.lines.extend(line.split(maxsplit=2) for line in self.process.stdout))
        self.reader.start()

    def kill(self):
        died = self.process.poll()
        at = now_ms()  # before: what comes later cannot count as lost by then
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()
        self.reader.join()
        return at, died

    def times(self, kind):
        return [(int(line[1]), int(line[2])) for line in self.lines if line[0] == kind and len(line) == 3]


def newest(folder):
    said = subprocess.run([PROGRAM, "newest", folder], stdout=subprocess.PIPE, text=True, check=True).stdout.splitlines()
    number, tap = (int([line for line in said if line.startswith(kind)][0][2:]) for kind in ("N ", "T "))
    return number, tap, [line for line in said if line.startswith("U ")]


OLD_FORMULA = {"id": "formula-1", "letter": "A", "origin": "a leaflet", "date": "2025-01-31", "scalpContact": "yes"}
NEW_LEAFLET = {"origin": "a leaflet", "read": "2025-01-31", "scalpContact": "yes"}


def make_old(folder):
    """The plan and what was kept of it, as the first format wrote them. How many there were."""
    made = 0
    for where, _, names in os.walk(folder):
        for name in names:
            path = os.path.join(where, name)
            if not name.endswith(".json") or name.startswith("."):
                continue
            with open(path) as file:
                plan = json.load(file)
            if plan.get("format") != "combdraft plan":
                continue
            plan["version"] = 1
            plan["formulas"] = [OLD_FORMULA]
            with open(path, "w") as file:
                json.dump(plan, file)
            made += 1
    return made


def formula_stands(path):
    """In the plan at a path: the old formula, or what became of it."""
    with open(path) as file:
        formulas = json.load(file).get("formulas", [])
    return formulas == [OLD_FORMULA] or [f.get("leaflet") for f in formulas] == [NEW_LEAFLET]


def main():
    dice = random.Random(SEED)
    print(f"{KILLS} kills, seed {SEED}")
    failures = recovered = saves = edits = taps = old = 0
    worst_ms, number, stood, stood_tap = 0, 0, 0, 0
    with tempfile.TemporaryDirectory() as folder:
        plan = os.path.join(folder, "plan.json")
        for kill in range(KILLS):
            if os.path.exists(plan) and (old == 0 or dice.random() < 0.3):
                old += make_old(folder)
            hand = Hand(folder, dice.randrange(1 << 30), number + 1)
            while not hand.lines and hand.process.poll() is None:
                time.sleep(0.002)
            # Many soon after the start, where recovering happens; the rest all over.
            time.sleep(dice.uniform(0, 0.2) if dice.random() < 0.3 else dice.uniform(0.2, 3.5))
            at, died = hand.kill()
            made = hand.times("E")
            edits += len(made)
            saves += len(hand.times("S"))
            recovered += sum(line[0] == "R" for line in hand.lines)
            found, found_tap, unreadable = newest(folder)
            tapped = [which for which, _ in hand.times("T")]
            taps += len(tapped)
            # The machine may have stood still: then no edit came either.
            missing = [when for which, when in made if which > found]
            lost_ms = at - min(missing) if missing else 0
            worst_ms = max(worst_ms, lost_ms)
            wrong = []
            if died is not None:
                wrong.append(f"it ended by itself with {died}")
            if unreadable:
                wrong.append(f"unreadable: {unreadable}")
            if old and not formula_stands(plan):
                wrong.append("a migrated formula is gone")
            if lost_ms > LOST_MS:
                wrong.append(f"edits of {lost_ms} ms are missing: {found} of {made[-1][0]}")
            if found_tap < max([stood_tap] + tapped):
                wrong.append(f"taps that were on the disk are missing: {found_tap} of {max([stood_tap] + tapped)}")
            stood_tap = found_tap
            if found < stood:
                wrong.append(f"an edit that stood before is gone: {found} of {stood}")
            stood = found
            wrong += [" ".join(line) for line in hand.lines if line[0] in "XF"]
            if wrong:
                failures += 1
                print(f"FAIL: kill {kill}: {'; '.join(wrong)}")
            number = max(number, made[-1][0] if made else 0)
        left = [name for name in os.listdir(folder) if ".saving-" in name]
    print(f"{edits} edits, {taps} taps, {saves} saves, {recovered} recoveries, {old} files of the oldest format; most that was missing: {worst_ms} ms of edits; "
          f"{len(left)} unfinished files of saves left beside the plan")
    if not (edits and taps and saves and recovered and old):
        print("FAIL: not all of it happened")
        failures += 1
    sys.exit(1 if failures else 0)


main()
