#!/usr/bin/env python3
"""The program asks nothing of a network.

Usage: no_network.py COMBDRAFT SOURCE_DIR WATCH_LIBRARY

WATCH_LIBRARY (watch_network.cpp) stands before the system's own socket and name
functions and writes down whoever asks for an internet address. The command line and
a window that opens a plan and draws it until it is stopped leave that list empty; a program
that does ask fills it, so the list can be believed. Nor is Qt's network library linked.
"""
import os
import shutil
import subprocess
import sys
import tempfile

program, source, watch = (os.path.realpath(a) for a in sys.argv[1:4])
original = os.path.join(source, "examples", "fine-all-over.json")
failures = []


def asked(arguments, folder, seconds=None):
    """What a program asked of the network, and how it ended (None: it was stopped)."""
    log = os.path.join(folder, "asked")
    open(log, "w").close()
    home = os.path.join(folder, "home")
    os.makedirs(home, exist_ok=True)
    environment = {**os.environ, "LD_PRELOAD": watch, "COMBDRAFT_NETWORK_LOG": log, "QT_QPA_PLATFORM": "offscreen", "HOME": home,
                   "XDG_DATA_HOME": home, "XDG_CONFIG_HOME": home, "XDG_CACHE_HOME": home, "ASAN_OPTIONS": "verify_asan_link_order=0"}
    process = subprocess.Popen(arguments, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        ended = process.wait(timeout=seconds)
    except subprocess.TimeoutExpired:
        process.terminate()
        process.wait()
        ended = None
    with open(log) as file:
        return file.read().splitlines(), ended


with tempfile.TemporaryDirectory() as folder:
    asking = "import socket; s = socket.socket(); s.settimeout(1)\ntry: s.connect(('127.0.0.1', 9))\nexcept OSError: pass"
    lines, _ = asked([sys.executable, "-c", asking], folder)
    if not any(line.startswith("socket") for line in lines):
        failures.append("the watch does not see a program that opens a socket")
    picture, example = os.path.join(folder, "sheet.svg"), os.path.join(folder, "plan.json")
    shutil.copy(original, example)
    for arguments, wanted, seconds in (
            (["look", example, "--locks", "2000", "--no-advice", "--no-range"], 0, None),
            (["check", example], 0, None),
            (["draw", example, "--layer", "diagram", "--out", picture], 0, None),
            ([example], None, 15)):
        lines, ended = asked([program, *arguments], folder, seconds)
        if lines:
            failures.append(f"{arguments[0]}: {lines[:3]}")
        if ended != wanted:
            failures.append(f"{' '.join(arguments)} ended with {ended} and not {wanted}")

linked = subprocess.run(["ldd", program], stdout=subprocess.PIPE, text=True, check=True).stdout
failures += [f"linked: {line.strip()}" for line in linked.splitlines() if "Network" in line]
for failure in failures:
    print(f"FAIL: {failure}")
print("no network was asked for" if not failures else "see above")
sys.exit(1 if failures else 0)
