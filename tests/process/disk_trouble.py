#!/usr/bin/env python3
"""Full disks, lost permissions, vanished folders and clocks that run backward.

Usage: disk_trouble.py EDIT_PLAN

While the trouble lasts autosave says so and goes on trying; when it is over the work
is on the disk again. What stood before stays readable all the time.
"""
import glob
import json
import os
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
import time

PROGRAM = os.path.realpath(sys.argv[1])
PATIENCE_S = 60  # never reached unless something is wrong
NOBODY = 65534
EDITS_A_SECOND = 250  # of edit_plan, at most
failures = 0


def can_become_nobody():
    """Whether the tests run as a root that may give files and itself to somebody else;
    some containers have a root that may not."""
    if os.geteuid() != 0:
        return False
    with tempfile.NamedTemporaryFile() as file:
        try:
            os.chown(file.name, NOBODY, NOBODY)
        except OSError:
            return False
    child = os.fork()
    if child == 0:
        try:
            os.setgid(NOBODY)
            os.setuid(NOBODY)
        except OSError:
            os._exit(1)
        os._exit(0)
    return os.waitpid(child, 0)[1] == 0


AS_NOBODY = can_become_nobody()
# A root that stays root is stopped by no permission.
PERMISSIONS_HOLD = AS_NOBODY or os.geteuid() != 0


def check(holds, what):
    global failures
    if not holds:
        failures += 1
        print(f"FAIL: {what}")


class Hand:
    """A running edit_plan; as nobody where the tests run as root, whom no permission stops."""

    def __init__(self, folder, first, file_bytes=None):
        self.folder, self.lines = folder, []

        def before():
            if file_bytes is not None:
                signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
                resource.setrlimit(resource.RLIMIT_FSIZE, (file_bytes, file_bytes))
            if AS_NOBODY:
                os.setgid(NOBODY)
                os.setuid(NOBODY)

        self.process = subprocess.Popen([PROGRAM, "edit", folder, str(first), str(first)], stdout=subprocess.PIPE,
                                        text=True, preexec_fn=before, env={**os.environ, "HOME": folder})
        self.reader = threading.Thread(target=lambda: self.lines.extend(self.process.stdout))
        self.reader.start()

    def wait_for(self, kind, after=0):
        """The index behind the first line of that kind from `after` on; None when none came."""
        end = time.monotonic() + PATIENCE_S
        while time.monotonic() < end:
            for i in range(after, len(self.lines)):
                if self.lines[i].startswith(kind):
                    return i + 1
            if self.process.poll() is not None:
                return None
            time.sleep(0.02)
        return None

    def last_edit(self, before):
        return max(int(line.split()[1]) for line in self.lines[:before] if line.startswith("E "))

    def kill(self):
        self.process.kill()
        self.process.wait()
        self.reader.join()


def newest(folder):
    said = subprocess.run([PROGRAM, "newest", folder], stdout=subprocess.PIPE, text=True, check=True).stdout.splitlines()
    return int([line for line in said if line.startswith("N ")][0][2:]), [line for line in said if line.startswith("U ")]


def on_disk(folder):
    """The newest edit in any snapshot or plan, read here and not by the program: 0 = none;
    -1 when one of them is no whole JSON text."""
    number = 0
    for path in glob.glob(os.path.join(folder, "plan.json")) + glob.glob(os.path.join(folder, "recovery", "*", "plan.json")):
        try:
            with open(path, encoding="utf-8") as file:
                number = max(number, int(json.load(file)["notes"].split()[1]))
        except FileNotFoundError:
            pass  # saved meanwhile
        except ValueError:
            return -1
    return number


def owned(folder):
    if AS_NOBODY:
        for where, _, names in os.walk(folder):
            for path in [where] + [os.path.join(where, name) for name in names]:
                os.chown(path, NOBODY, NOBODY)
    return folder


def comes_back(name, folder, cause, cure, first):
    """Autosave works, fails while the cause lasts, and works again."""
    hand = Hand(folder, first)
    stood = hand.wait_for("W")
    check(stood, f"{name}: nothing was autosaved before: {hand.lines[-3:]}")
    if stood:
        cause()
        failed = hand.wait_for("F", len(hand.lines))
        check(failed, f"{name}: autosave does not say that it failed")
        # The edits of one autosave's second may have come after its snapshot.
        before = hand.last_edit(stood) - EDITS_A_SECOND
        check(on_disk(folder) >= before, f"{name}: {on_disk(folder)} of {before} stands")
        cure()
        again = hand.wait_for("W", len(hand.lines))
        check(again, f"{name}: autosave did not come back: {hand.lines[-3:]}")
        if again:
            done = hand.last_edit(again)
            hand.kill()
            found, unreadable = newest(folder)
            check(not unreadable and found >= done - EDITS_A_SECOND, f"{name}: {found} of {done} stands, {unreadable}")
    hand.kill()


def full_disk(top):
    folder = os.path.join(top, "full")
    os.mkdir(folder)
    mounted = AS_NOBODY and subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", folder], stderr=subprocess.DEVNULL, check=False).returncode == 0
    if not mounted:
        print("full disk: no small disk may be mounted here; see the limit on files instead")
        return
    try:
        owned(folder)
        os.chmod(folder, 0o777)
        filler = os.path.join(folder, "filler")

        def fill():
            with open(filler, "wb", buffering=0) as file:
                try:
                    while True:
                        file.write(b"x" * 4096)
                except OSError:
                    pass

        def empty():
            # The hand's saves may have taken what is left in between.
            os.remove(filler)

        comes_back("full disk", folder, fill, empty, 1)
    finally:
        subprocess.run(["umount", "-l", folder], check=False)


def file_limit(top):
    folder = owned(tempfile.mkdtemp(dir=top))
    hand = Hand(folder, 1, file_bytes=1500)  # less than any plan of some pieces
    check(hand.wait_for("F"), f"limit on files: autosave does not say that it failed: {hand.lines[-3:]}")
    hand.kill()
    _, unreadable = newest(folder)
    check(not unreadable, f"limit on files: {unreadable}")


def vanished_folder(top):
    folder = owned(tempfile.mkdtemp(dir=top))
    hand = Hand(folder, 1)
    check(hand.wait_for("W"), "vanished folder: nothing was autosaved")
    shutil.rmtree(os.path.join(folder, "recovery"), ignore_errors=True)
    again = hand.wait_for("W", len(hand.lines) + 1)
    check(again, "vanished folder: autosave did not make another")
    hand.kill()
    found, unreadable = newest(folder)
    check(found > 0 and not unreadable, f"vanished folder: {found}, {unreadable}")


def lost_permission(top):
    if not AS_NOBODY:
        print("lost permission: a program may change its own folders back; needs root to take them away")
        return
    folder = owned(tempfile.mkdtemp(dir=top))
    recovery = os.path.join(folder, "recovery")

    def give(user):
        for where, _, names in os.walk(recovery):
            for path in [where] + [os.path.join(where, name) for name in names]:
                os.chown(path, user, user)
        os.chmod(recovery, 0o755 if user == 0 else 0o700)

    comes_back("lost permission", folder, lambda: give(0), lambda: give(NOBODY), 1)


def read_only_place(top):
    if not PERMISSIONS_HOLD:
        print("read-only place: nothing is read-only for who the tests run as")
        return
    folder = tempfile.mkdtemp(dir=top)
    os.mkdir(os.path.join(folder, "recovery"))
    owned(folder)
    os.chmod(folder, 0o555)
    hand = Hand(folder, 1)
    said = hand.wait_for("X")
    check(said and "plan.json" in hand.lines[said - 1], f"read-only place: a save that failed is not said: {hand.lines[-3:]}")
    check(hand.wait_for("W", len(hand.lines)), "read-only place: autosave goes on")
    hand.kill()
    os.chmod(folder, 0o755)
    found, unreadable = newest(folder)
    check(found > 0 and not unreadable, f"read-only place: {found}, {unreadable}")


def clock_runs_back(top):
    folder = owned(tempfile.mkdtemp(dir=top))
    hand = Hand(folder, 1)
    wrote = hand.wait_for("W")
    check(wrote, "clock: nothing was autosaved")
    hand.kill()
    before, _ = newest(folder)
    for year in (946684800, 4102444800):  # 2000, 2100
        for where, _, names in os.walk(folder):
            for name in names + ["."]:
                os.utime(os.path.join(where, name), (year, year))
        found, unreadable = newest(folder)
        check(found == before and not unreadable, f"clock: {found} of {before} is found, {unreadable}")
    hand = Hand(folder, before + 1)
    first = hand.wait_for("R")
    check(first, "clock: what was left behind is recovered")
    hand.kill()


def two_at_once(top):
    folder = owned(tempfile.mkdtemp(dir=top))
    one, other = Hand(folder, 1), Hand(folder, 100_000)
    for hand in (one, other):
        check(hand.wait_for("W"), "two at once: nothing was autosaved")
    time.sleep(1)
    for hand in (one, other):
        check(hand.process.poll() is None, "two at once: one ended")
        hand.kill()
    found, unreadable = newest(folder)
    check(found >= 100_000 and not unreadable, f"two at once: {found}, {unreadable}")


with tempfile.TemporaryDirectory() as place:
    os.chmod(place, 0o755)
    PROGRAM = shutil.copy(PROGRAM, place)  # where nobody may reach it
    os.chmod(PROGRAM, 0o755)
    for trouble in (full_disk, file_limit, vanished_folder, lost_permission, read_only_place, clock_runs_back, two_at_once):
        trouble(place)
print("failures:", failures)
sys.exit(1 if failures else 0)
