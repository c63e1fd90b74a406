#!/usr/bin/env python3
"""Handouts, record cards and client's pages read back by programs that are not ours.

Usage: handout_pages.py COMBDRAFT SOURCE_TREE [--accept]

poppler reads the PDFs (text, number and size of pages, embedded fonts, the printed
scale measured in pixels); librsvg draws the SVGs, which must look as our PNGs do;
tests/golden holds pages that somebody looked at and accepted. --accept replaces those
with what is drawn now: look at them before you commit them.
"""
import json
import os
import re
import resource
import shutil
import signal
import struct
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
import zlib

PROGRAM, TREE = os.path.realpath(sys.argv[1]), os.path.realpath(sys.argv[2])
ACCEPT = "--accept" in sys.argv
GOLDEN = os.path.join(TREE, "tests", "golden")
NOBODY = 65534
failures = 0


def check(holds, what):
    global failures
    if not holds:
        failures += 1
        print(f"FAIL: {what}")


def example(name):
    return os.path.join(TREE, "examples", name + ".json")


def run(*words, before=None):
    return subprocess.run([PROGRAM, "handout", *words], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
                          timeout=500, preexec_fn=before, check=False)


def tool(*words):
    return subprocess.run(words, stdout=subprocess.PIPE, check=True).stdout


def text_of(pdf):
    return tool("pdftotext", "-layout", pdf, "-").decode()


def info_of(pdf):
    return dict(re.split(r":\s+", line, maxsplit=1) for line in tool("pdfinfo", pdf).decode().splitlines() if re.search(r":\s+\S", line))


def grey(png):
    """Width, height and rows of grey values of an 8-bit PNG, alpha over white."""
    data = open(png, "rb").read()
    at, packed, palette = 8, b"", None
    while at < len(data):
        length, kind = struct.unpack(">I4s", data[at:at + 8])
        body = data[at + 8:at + 8 + length]
        if kind == b"IHDR":
            width, height, depth, colour, _, _, interlaced = struct.unpack(">IIBBBBB", body)
            assert depth == 8 and not interlaced, png
        elif kind == b"PLTE":
            palette = [body[i:i + 3] for i in range(0, length, 3)]
        elif kind == b"IDAT":
            packed += body
        at += 12 + length
    step = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}[colour]
    raw, rows, last = zlib.decompress(packed), [], bytearray(width * step)
    for y in range(height):
        start = y * (width * step + 1)
        kind, line = raw[start], bytearray(raw[start + 1:start + 1 + width * step])
        for i in range(len(line)):
            a = line[i - step] if i >= step else 0
            b, c = last[i], last[i - step] if i >= step else 0
            if kind == 1:
                add = a
            elif kind == 2:
                add = b
            elif kind == 3:
                add = (a + b) // 2
            elif kind == 4:
                p = a + b - c
                add = min((a, b, c), key=lambda v: (abs(p - v), (a, b, c).index(v)))
            else:
                add = 0
            line[i] = (line[i] + add) & 255
        last = line
        row = []
        for x in range(0, len(line), step):
            if palette:
                r, g, b = palette[line[x]]
            elif step < 3:
                r = g = b = line[x]
            else:
                r, g, b = line[x:x + 3]
            alpha = line[x + step - 1] if step in (2, 4) else 255
            value = (11 * r + 16 * g + 5 * b) // 32
            row.append((value * alpha + 255 * (255 - alpha)) // 255)
        rows.append(row)
    return width, height, rows


def blurred(rows, cell):
    """Means over cells, so that a hair's breadth of antialiasing does not count."""
    small = []
    for y in range(0, len(rows) - cell + 1, cell):
        small.append([sum(rows[y + j][x + i] for j in range(cell) for i in range(cell)) / cell ** 2
                      for x in range(0, len(rows[0]) - cell + 1, cell)])
    return small


def difference(a, b, cell=4):
    """Mean and largest difference of two pictures in cells, of 255."""
    if a[:2] != b[:2]:
        return 255, 255
    one, other = blurred(a[2], cell), blurred(b[2], cell)
    apart = [abs(p - q) for row, line in zip(one, other) for p, q in zip(row, line)]
    return sum(apart) / len(apart), max(apart)


def pdf_checks(top):
    quick = "title,kit,views,steps,close-ups,checks,timing,faults,self-check,blank-sheets"
    for name in ("fine-all-over", "face-bright-crown-quiet", "painted-curls"):
        plan = json.load(open(example(name), encoding="utf-8"))
        for paper, turn, size in (("a4", "portrait", (595, 842)), ("letter", "landscape", (792, 612))):
            pdf = os.path.join(top, f"{name}-{paper}.pdf")
            done = run(example(name), "--out", pdf, "--paper", paper, "--turn", turn, "--parts", quick)
            check(done.returncode == 0, f"{name}, {paper}: {done.returncode} {done.stderr}")
            if done.returncode != 0:
                continue
            info, text = info_of(pdf), text_of(pdf)
            check(info.get("Title") == plan["title"], f"{name}: title is {info.get('Title')}")
            check(info.get("Creator") == "Combdraft", f"{name}: creator is {info.get('Creator')}")
            width, height = [float(one) for one in re.findall(r"[\d.]+", info["Page size"])[:2]]
            check(abs(width - size[0]) < 1.5 and abs(height - size[1]) < 1.5, f"{name}, {paper}: page of {width} x {height} points")
            pages = text.split("\f")[:-1]
            check(len(pages) == int(info["Pages"]), f"{name}: {len(pages)} pages of text, {info['Pages']} pages")
            for i, page in enumerate(pages):
                check("not a promise" in page and f"Page {i + 1} of {len(pages)}" in page, f"{name}: foot of page {i + 1}")
            for words in (plan["title"], "Step by step", "Check points", "Faults and what to do", "Model's left", "get medical help"):
                check(words in text, f"{name}: {words!r} is not in the text")
            check("Client's left" not in text, f"{name}: a handout speaks of a model")
            # Signs beside figures and capitals have text behind them.
            check(re.search(r"\(\d[\d.]* to\s+\d[\d.]*\)", text), f"{name}: no brackets about a span in the text")
            for one in plan["formulas"][:1]:
                check(f"Formula {one['letter']}: {one['kind']}" in text, f"{name}: no colon behind a formula's letter in the text")
            fonts = tool("pdffonts", pdf).decode().splitlines()[2:]
            check(fonts and all(re.search(r"\s(yes)\s+(yes|no)\s+(yes|no)\s+\d+\s+\d+\s*$", line) for line in fonts),
                  f"{name}: fonts that are not embedded: {fonts}")


def signs_check(top):
    """Dashes between figures are text: the bundled fonts have no contextual alternates."""
    fonts = os.path.join(TREE, "resources", "fonts")
    done = subprocess.run([sys.executable, os.path.join(fonts, "plain_forms.py"), "--check", *(os.path.join(fonts, name) for name in os.listdir(fonts) if name.endswith(".otf"))],
                          stdout=subprocess.PIPE, text=True, check=False)
    check(done.returncode == 0, f"fonts: {done.stdout}")
    pdf = os.path.join(top, "signs.pdf")
    done = run(example("painted-curls"), "--out", pdf, "--document", "record-card")
    check(done.returncode == 0, f"record card: {done.stderr}")
    check(done.returncode != 0 or re.search(r"\b\d+–\d+\b", text_of(pdf)), "record card: no dash between the numbers of pieces in the text")


def scale_check(top):
    """A hundred millimetres are a hundred millimetres: 1,000 pixels at 254 dots an inch."""
    pdf = os.path.join(top, "close.pdf")
    done = run(example("fine-all-over"), "--out", pdf, "--parts", "close-ups")
    check(done.returncode == 0, f"close-ups: {done.stderr}")
    tool("pdftoppm", "-r", "254", "-gray", "-f", "1", "-l", "1", "-png", pdf, os.path.join(top, "close"))
    picture = [name for name in os.listdir(top) if name.startswith("close-") and name.endswith(".png")][0]
    width, _, rows = grey(os.path.join(top, picture))
    runs = []  # dark runs of a row with their length
    for row in rows:
        start = None
        for x in range(width + 1):
            dark = x < width and row[x] < 128
            if dark and start is None:
                start = x
            elif not dark and start is not None:
                runs.append(x - start)
                start = None
    found = [length for length in runs if 985 <= length <= 1015]
    check(found and all(abs(length - 1000) <= 3 for length in found), f"scale: runs of {sorted(set(found))} pixels instead of 1000")


def svg_checks(top):
    fonts = os.path.join(top, "fonts.conf")
    with open(fonts, "w", encoding="utf-8") as file:
        file.write(f'<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>{TREE}/resources/fonts</dir>'
                   f"<cachedir>{top}/cache</cachedir></fontconfig>")
    for ending in ("svg", "png"):
        done = run(example("face-bright-crown-quiet"), "--out", os.path.join(top, "page." + ending), "--parts", "title,views,close-ups,timing",
                   "--dpi", "100")
        check(done.returncode == 0, f"{ending}: {done.stderr}")
    again = os.path.join(top, "again")
    os.mkdir(again)
    run(example("face-bright-crown-quiet"), "--out", os.path.join(again, "page.svg"), "--parts", "title,views,close-ups,timing")
    names = sorted(name for name in os.listdir(top) if re.fullmatch(r"page-\d+\.svg", name))
    check(len(names) >= 3, f"SVG: {names}")
    groups, layers = {}, set()
    for name in names:
        path = os.path.join(top, name)
        with open(path, "rb") as one, open(os.path.join(again, name), "rb") as other:
            check(one.read() == other.read(), f"{name}: not the same bytes twice")
        root = xml.parse(path).getroot()
        ids = [one.get("id") for one in root.iter() if one.get("id")]
        check(len(ids) == len(set(ids)), f"{name}: an id stands twice")
        groups |= {re.sub(r"-\d+$", "", one.get("id")): one.get("aria-label") for one in root.iter("{http://www.w3.org/2000/svg}g")
                   if re.search(r"-\d+$", one.get("id", ""))}
        layers |= {one.get("aria-label") for one in root.iter("{http://www.w3.org/2000/svg}g") if re.search(r"-\d+-[a-z]+$", one.get("id", ""))}
        words = " ".join("".join(one.itertext()) for one in root.iter("{http://www.w3.org/2000/svg}text"))
        check("not a promise" in words, f"{name}: words are not text")
        ours = grey(path[:-3] + "png")
        drawn = os.path.join(top, "drawn.png")
        subprocess.run(["rsvg-convert", "--width", str(ours[0]), "--height", str(ours[1]), "--background-color", "white", "-o", drawn, path],
                       check=True, env={**os.environ, "FONTCONFIG_FILE": fonts})
        mean, most = difference(ours, grey(drawn), 8)
        check(mean < 1.0 and most < 60, f"{name}: librsvg draws it otherwise: mean {mean:.2f}, most {most:.0f} of 255")
    expected = {"front-diagram": "Front", "back-diagram": "Back", "left-diagram": "Model's left", "right-diagram": "Model's right", "top-diagram": "Top",
                "crown-diagram": "Crown, close", "key": "Key", "scale-100": "100 mm on paper", "timing": "Minutes for placing, by step"}
    for group, label in expected.items():
        check(groups.get(group) == label, f"SVG: group {group} is called {groups.get(group)!r} instead of {label!r}")
    check({"art", "diagram", "labels", "key"} <= layers, f"SVG: layers are {sorted(layers)}")


def hair_check(top):
    """Pages with pictures of hair: the client's, and predict and open; few locks, to be quick."""
    words = {"--aftercare": "Wash with cool water\\nSleep on a smooth pillow", "--next-visit": "In nine weeks", "--call": "The desk, mornings"}
    for document, extra, expected in (
            ("client-page", [one for pair in words.items() for one in pair],
             ["What we planned", "What the plan shows", "How light", "How much difference", "What stays dark", "Until new growth shows", "Wash with cool water",
              "Sleep on a smooth pillow", "In nine weeks", "The desk, mornings", "get medical help", "not a promise"]),
            ("handout", ["--parts", "predict-then-open"], ["Predict", "Now open it", "How light will it look", "Above: worn down, in daylight", "not a promise"])):
        pdf = os.path.join(top, document + "-hair.pdf")
        done = run(example("painted-curls"), "--out", pdf, "--document", document, "--locks", "2000", *extra)
        check(done.returncode == 0, f"{document}, hair: {done.returncode} {done.stderr}")
        if done.returncode != 0:
            continue
        text = " ".join(text_of(pdf).split())
        for one in expected:
            check(one in text, f"{document}, hair: {one!r} is not in the text")
        check("not been worked out" not in text, f"{document}, hair: no picture")
        rows = [line.split() for line in tool("pdfimages", "-list", pdf).decode().splitlines()[2:]]
        pictures = [row for row in rows if row[2] == "image" and int(row[3]) >= 200 and int(row[4]) >= 200]
        check(len(pictures) >= (3 if document == "client-page" else 4), f"{document}, hair: pictures are {rows}")
        check(all(row[8] != "jpeg" for row in pictures), f"{document}, hair: a picture has lost fine lines: {rows}")


def older_set(top):
    """A set replaces what has its names; pages of a longer one stay and are named."""
    folder = os.path.join(top, "set")
    os.mkdir(folder)
    words = ("--out", os.path.join(folder, "class.svg"), "--parts", "title,views,close-ups,timing")
    done = run(example("painted-curls"), *words)
    names = sorted(os.listdir(folder))
    check(done.returncode == 0 and len(names) >= 2 and "older" not in done.stderr, f"a new set: {done.returncode} {names} {done.stderr}")
    more = [f"class-{len(names) + i:02}.svg" for i in (1, 2)]
    for name in more + ["class-90.svg"]:
        with open(os.path.join(folder, name), "wb") as file:
            file.write(b"older")
    done = run(example("painted-curls"), *words)
    check(done.returncode == 0 and f"{more[0]} to {more[1]}, pages of an older set, stay" in done.stderr, f"an older set: {done.returncode} {done.stderr}")
    check(sorted(os.listdir(folder)) == sorted(names + more + ["class-90.svg"]), f"an older set: {os.listdir(folder)}")
    done = run(example("painted-curls"), "--out", os.path.join(folder, "class.pdf"), "--parts", "faults")
    check(done.returncode == 0 and "older" not in done.stderr, f"a PDF beside a set: {done.stderr}")


def golden_check(top):
    for name, extra in (("steps", ["--parts", "steps"]), ("faults", ["--parts", "faults,self-check"]), ("views", ["--parts", "views", "--turn", "landscape"])):
        done = run(example("painted-curls"), "--out", os.path.join(top, f"golden-{name}.png"), "--dpi", "50", *extra)
        check(done.returncode == 0, f"golden {name}: {done.stderr}")
        drawn = [os.path.join(top, one) for one in sorted(os.listdir(top)) if re.fullmatch(rf"golden-{name}(-01)?\.png", one)][0]
        accepted = os.path.join(GOLDEN, f"handout-{name}.png")
        if ACCEPT:
            os.makedirs(GOLDEN, exist_ok=True)
            shutil.copyfile(drawn, accepted)
            print("accepted:", accepted)
            continue
        check(os.path.exists(accepted), f"golden: {accepted} is missing; look at the page and accept it with --accept")
        if os.path.exists(accepted):
            mean, most = difference(grey(drawn), grey(accepted))
            check(mean < 0.5 and most < 50, f"{name}: not as accepted: mean {mean:.2f}, most {most:.0f} of 255; look, then --accept")


def many_pages(top):
    plan = json.load(open(example("painted-curls"), encoding="utf-8"))
    pieces = []
    for i in range(600):
        piece = json.loads(json.dumps(plan["pieces"][0]))
        for gone in ("twinOf", "label"):
            piece.pop(gone, None)
        piece.update(id=f"piece-{i + 1}", order=i + 1, thickness_mm=3 + (i % 2))
        pieces.append(piece)
    plan["pieces"] = pieces
    path = os.path.join(top, "many.json")
    json.dump(plan, open(path, "w", encoding="utf-8"))
    pdf = os.path.join(top, "many.pdf")
    done = run(path, "--out", pdf, "--parts", "steps")
    check(done.returncode == 0, f"many pages: {done.stderr}")
    if done.returncode == 0:
        check(int(info_of(pdf)["Pages"]) >= 200, f"many pages: {info_of(pdf)['Pages']}")
        check("600" in text_of(pdf), "many pages: the last step is missing")


def troubles(top):
    older = os.path.join(top, "older.pdf")

    def stands():
        with open(older, "rb") as file:
            return file.read() == b"older"

    def begin():
        with open(older, "wb") as file:
            file.write(b"older")

    def limit():
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (20000, 20000))

    begin()
    done = run(example("painted-curls"), "--out", older, "--parts", "views,faults", before=limit)
    check(done.returncode == 3 and "older.pdf" in done.stderr and stands(), f"limit on files: {done.returncode} {done.stderr}")
    check(sorted(name for name in os.listdir(top) if name.startswith("older")) == ["older.pdf"], "limit on files: something half-written is left")

    # The same for a set of pages: none is put in place.
    part = os.path.join(top, "part")
    os.mkdir(part)
    with open(os.path.join(part, "class-01.png"), "wb") as file:
        file.write(b"older")
    done = run(example("painted-curls"), "--out", os.path.join(part, "class.png"), "--parts", "views,faults", before=limit)
    with open(os.path.join(part, "class-01.png"), "rb") as file:
        check(done.returncode == 3 and "class" in done.stderr and file.read() == b"older", f"limit on files, PNG: {done.returncode} {done.stderr}")
    check(os.listdir(part) == ["class-01.png"], f"limit on files, PNG: {os.listdir(part)} is left")

    disk = os.path.join(top, "disk")
    os.mkdir(disk)
    if os.geteuid() == 0 and subprocess.run(["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk], stderr=subprocess.DEVNULL, check=False).returncode == 0:
        try:
            with open(os.path.join(disk, "class.pdf"), "wb") as file:
                file.write(b"older")
            done = run(example("painted-curls"), "--out", os.path.join(disk, "class.pdf"), "--parts", "views,faults")
            with open(os.path.join(disk, "class.pdf"), "rb") as file:
                check(done.returncode == 3 and file.read() == b"older", f"full disk: {done.returncode} {done.stderr}")
            check(os.listdir(disk) == ["class.pdf"], f"full disk: {os.listdir(disk)}")
            done = run(example("painted-curls"), "--out", os.path.join(disk, "class.png"), "--parts", "views,faults")
            check(done.returncode == 3 and os.listdir(disk) == ["class.pdf"], f"full disk, PNG: {done.returncode} {os.listdir(disk)}")
        finally:
            subprocess.run(["umount", "-l", disk], check=False)
    else:
        print("full disk: not checked here: no small disk may be mounted; the limit on files above stands in for it")

    # Where no folder can be: nobody may write there, whoever the tests run as.
    done = run(example("painted-curls"), "--out", os.path.join(older, "class.pdf"), "--parts", "faults")
    check(done.returncode == 3 and "class.pdf" in done.stderr and "may write to" in done.stderr and stands(), f"no folder: {done.returncode} {done.stderr}")

    closed = os.path.join(top, "closed")
    os.mkdir(closed)
    os.chmod(closed, 0o555)

    def nobody():
        if os.geteuid() == 0:
            os.setgid(NOBODY)
            os.setuid(NOBODY)

    try:
        done = run(example("painted-curls"), "--out", os.path.join(closed, "class.pdf"), "--parts", "faults", before=nobody)
        check(done.returncode == 3 and "class.pdf" in done.stderr and "may write to" in done.stderr and not os.listdir(closed),
              f"closed folder: {done.returncode} {done.stderr}")
    except (PermissionError, subprocess.SubprocessError) as why:
        print("closed folder: not checked here: the program cannot run as nobody:", why)

    for words, code, needs in ((["--out", os.path.join(top, "x.doc")], 2, ".pdf"), (["--out", top + "/"], 2, ".pdf"),
                               (["--out", os.path.join(top, "x.pdf"), "--parts", "stepz"], 2, "close-ups"),
                               (["--out", os.path.join(top, "x.pdf"), "--paper", "a3"], 2, "letter"),
                               (["--out", os.path.join(top, "x.pdf"), "--choice", "Q"], 2, "Q"), ([], 2, "--out")):
        done = run(example("painted-curls"), *words)
        check(done.returncode == code and needs in done.stderr, f"{words}: {done.returncode} {done.stderr}")
    done = run(os.path.join(top, "no plan.json"), "--out", os.path.join(top, "x.pdf"))
    check(done.returncode == 3 and "no plan.json" in done.stderr, f"no plan: {done.returncode} {done.stderr}")

    plan = json.load(open(example("painted-curls"), encoding="utf-8"))
    plan["pieces"] = []
    bare = os.path.join(top, "bare.json")
    json.dump(plan, open(bare, "w", encoding="utf-8"))
    for document in ("handout", "record-card"):
        done = run(bare, "--out", os.path.join(top, "bare.pdf"), "--document", document)
        check(done.returncode == 0 and "no pieces" in text_of(os.path.join(top, "bare.pdf")), f"bare {document}: {done.returncode} {done.stderr}")


with tempfile.TemporaryDirectory() as place:
    os.chmod(place, 0o755)
    os.environ["HOME"] = place
    if ACCEPT:
        golden_check(place)
    else:
        for trial in (pdf_checks, signs_check, scale_check, svg_checks, hair_check, older_set, golden_check, many_pages, troubles):
            trial(place)
print("failures:", failures)
sys.exit(1 if failures else 0)
