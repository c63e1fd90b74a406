#!/usr/bin/env python3
"""Makes the bundled fonts write every sign with the glyph of its own code point.

Usage: plain_forms.py FONT.otf...          rewrites the files in place
       plain_forms.py --check FONT.otf...  says which still have contextual alternates

Inter's `calt` feature is on by default: beside figures and capitals it puts other glyphs
for dashes, colons, brackets and the like. Those glyphs have no code point, so that a PDF
holds no text for them: "(8.5 to 9.5)" is copied, searched and read aloud as "8.5 to 9.5".
Qt 6.4 cannot turn a feature off. So the feature stays in its place with no lookups, which
is what a font without contextual alternates would do; nothing else changes, and a second
run changes nothing. The licence (OFL.txt) allows it: no reserved font name, same licence.
"""
import struct
import sys

OFF = (b"calt", b"clig")  # contextual features that are on unless asked otherwise


def tables(font):
    """Tag to (place of its directory entry, offset, length)."""
    found = {}
    for i in range(struct.unpack_from(">H", font, 4)[0]):
        entry = 12 + 16 * i
        tag, _, offset, length = struct.unpack_from(">4sIII", font, entry)
        found[tag] = (entry, offset, length)
    return found


def sums(data):
    """The sum of big-endian 32-bit words that the format asks for."""
    data = bytes(data) + b"\0" * (-len(data) % 4)
    return sum(struct.unpack(f">{len(data) // 4}I", data)) & 0xFFFFFFFF


def features(font):
    """(tag, place of its feature table) of each feature in GSUB."""
    gsub = tables(font)[b"GSUB"][1]
    listed = gsub + struct.unpack_from(">H", font, gsub + 6)[0]
    for i in range(struct.unpack_from(">H", font, listed)[0]):
        tag, offset = struct.unpack_from(">4sH", font, listed + 2 + 6 * i)
        yield tag, listed + offset


def alternates_on(font):
    """Places of the feature tables to be emptied: those with lookups left."""
    kept = {place for tag, place in features(font) if tag not in OFF}
    places = {place for tag, place in features(font) if tag in OFF and struct.unpack_from(">H", font, place + 2)[0]}
    if places & kept:
        raise SystemExit("a contextual feature shares its table with another one: this script cannot take it apart")
    return places


def mend(font):
    for place in alternates_on(font):
        struct.pack_into(">H", font, place + 2, 0)  # LookupCount; the indices behind it are unread
    found = tables(font)
    entry, offset, length = found[b"GSUB"]
    struct.pack_into(">I", font, entry + 4, sums(font[offset:offset + length]))
    whole = found[b"head"][1] + 8  # checkSumAdjustment, counted as nought
    struct.pack_into(">I", font, whole, 0)
    struct.pack_into(">I", font, whole, (0xB1B0AFBA - sums(font)) & 0xFFFFFFFF)


def main(words):
    checking = "--check" in words
    paths = [word for word in words if word != "--check"]
    if not paths:
        raise SystemExit(__doc__)
    left = 0
    for path in paths:
        with open(path, "rb") as file:
            before = file.read()
        if before[:4] not in (b"OTTO", b"\0\1\0\0") or b"GSUB" not in tables(before):
            raise SystemExit(f"{path}: not a single OpenType font with a GSUB table")
        if checking:
            if alternates_on(before):
                left += 1
                print(f"{path}: has contextual alternates; run plain_forms.py on it")
            continue
        font = bytearray(before)
        mend(font)
        with open(path, "wb") as file:
            file.write(font)
        print(f"{path}: {'changed' if font != before else 'was as it should be'}")
    return 1 if left else 0


sys.exit(main(sys.argv[1:]))
