#!/bin/sh
# Black-box test of the command line: exit codes, messages, outputs.
# Usage: cli_test.sh PROGRAM SOURCE_FOLDER
set -u
program=$(realpath "$1")
source=$(realpath "$2")
plan="$source/examples/soft-root-bold-ends.json"
work=$(mktemp -d)
trap 'chmod -R u+w "$work"; rm -rf "$work"' EXIT
cd "$work" || exit 1
unset DISPLAY WAYLAND_DISPLAY QT_QPA_PLATFORM
failures=0

# expect CODE "words in standard error" ARGUMENTS...
expect() {
  code=$1 words=$2
  shift 2
  "$program" "$@" >out 2>err
  got=$?
  if [ "$got" -ne "$code" ]; then
    echo "FAIL: combdraft $*: exit code $got, expected $code"; cat err
    failures=$((failures + 1))
  fi
  if [ -n "$words" ] && ! grep -qF -- "$words" err; then
    echo "FAIL: combdraft $*: standard error lacks \"$words\":"; cat err
    failures=$((failures + 1))
  fi
  if [ "$(grep -c '^combdraft: ' err)" -ne "$(grep -vc 'COMMAND --help' err)" ]; then
    echo "FAIL: combdraft $*: a message is not one line of ours:"; cat err
    failures=$((failures + 1))
  fi
}
check() {  # check "what" COMMAND...
  what=$1
  shift
  if ! "$@" >/dev/null 2>&1; then
    echo "FAIL: $what"
    failures=$((failures + 1))
  fi
}

# usage: 2
expect 2 "required" look
expect 2 "" look "$plan" --worn sideways
grep -q 'known: down, half-up, tied-back' err || { echo "FAIL: worn names not listed"; failures=$((failures + 1)); }
expect 2 "allowed is 0 to 26 weeks" look "$plan" --weeks 99
expect 2 "allowed is 2000 to 200000" look "$plan" --locks nan
expect 2 "unknown name \"under\"; known: front, back, left, right, top, crown, all" draw "$plan" --view under --out a.svg
expect 2 ".svg, .png or .pdf" draw "$plan" --layer diagram --out a.gif
expect 2 "{plan}" draw "$plan" "$plan" --layer diagram --out a.svg
expect 2 "--choice" look "$plan" --choice Z --locks 2000
expect 2 "" draw "$plan" --layer diagram
expect 2 "--nonsense" check "$plan" --nonsense

# reading and writing: 3
expect 3 "nothing.json: there is no such file" check nothing.json
expect 3 "nothing.json: there is no such file" look nothing.json
mkdir folder
expect 3 "this is a folder" check folder
expect 3 "no/such/place/a.svg: the file could not be written" draw "$plan" --layer diagram --out no/such/place/a.svg
mkdir b.svg
expect 3 "this is a folder" draw "$plan" --layer diagram --out b.svg
if [ "$(id -u)" -ne 0 ]; then
  cp "$plan" secret.json; chmod 000 secret.json
  expect 3 "could not be read" check secret.json
  mkdir closed; chmod 500 closed
  expect 3 "could not be written" draw "$plan" --layer diagram --out closed/a.svg
fi

# documents: 1
: > empty.json
expect 1 "empty.json: the file is empty" check empty.json
head -c 400 "$plan" > cut.json
expect 1 "cut.json: " check cut.json
expect 1 "cut.json: " look cut.json
expect 1 "cut.json: " draw cut.json --layer diagram --out a.svg
check "no picture of a wrong plan" test ! -e a.svg
sed 's/"version": *[0-9]*/"version": 99/' "$plan" > newer.json
expect 1 "newer program is needed" check newer.json

# older formats: read, told, upgraded; the file before stays beside the new one
old="$source/tests/format/1/every-field.json"
cp "$old" old.json
expect 0 "" upgrade old.json --out new.json
check "upgrade says what it did" grep -q "format 1 to 2" out
check "upgrade leaves the old file alone" cmp -s old.json "$old"
check "what upgrade wrote is the newest format" grep -q '"version": 2' new.json
cp "$old" same.json
expect 0 "" upgrade same.json --out same.json
check "upgrade keeps the file before" cmp -s same.json.previous "$old"
expect 0 "" upgrade same.json --out same.json
check "what is written once more leaves the version before" cmp -s same.json.previous "$old"
expect 2 "--out" upgrade old.json
expect 3 "nothing.json: there is no such file" upgrade nothing.json --out x.json
expect 3 "no/such/x.json: the file could not be written" upgrade old.json --out no/such/x.json

# a copy to hand on: nothing of client, notes and log, and never over another file
sed 's/"notes": "[^"]*"/"notes": "Markernotes"/; s/"activeChoice":/"log": ["Markerlog"], "activeChoice":/' "$plan" > noted.json
check "there is something to leave out" grep -q "Markerlog" noted.json
expect 0 "" check noted.json
grep -q 'noted.json: /log: the appointment log cannot be read' out || { echo "FAIL: a log that is no log is not named"; failures=$((failures + 1)); }
expect 0 "" share noted.json --out shared.json
check "share says that the title goes along" grep -q "title goes along" out
check "a shared copy has no note and no log" sh -c '! grep -q Marker shared.json'
check "a shared copy has a number of its own" sh -c '[ "$(grep -m1 number shared.json)" != "$(grep -m1 number noted.json)" ]'
expect 0 "" check shared.json
expect 3 "a new name" share noted.json --out shared.json
expect 2 "--out" share noted.json
expect 3 "nothing.json: there is no such file" share nothing.json --out y.json
# a damaged appointment log is a finding with its place; the plan can be used
with_log() {  # with_log JSON FILE
  sed "s/\"activeChoice\":/\"log\": $1, \"activeChoice\":/" "$plan" > "$2"
}
tap='"tap": "placed", "utc_ms": 1800000000000'
with_log "{\"events\": [{\"number\": 1, $tap, \"at_s\": 0}, {\"number\": 2, $tap, \"at_s\": \"soon\"}]}" broken-log.json
expect 0 "" check broken-log.json
check "check names file, place and what would be right of a damaged log" \
  grep -q 'caution: broken-log.json: /log/events/1/at_s: .*found no number, needs a number' out
with_log "{\"events\": [{\"number\": 1, $tap, \"at_s\": 60, \"pieces\": [\"nobody\"]}, {\"number\": 2, $tap, \"at_s\": 20}]}" odd-log.json
expect 0 "" check odd-log.json
check "check names a tap whose time falls" grep -q 'odd-log.json: /log/events/1/at_s: tap 2 .* right would be' out
check "check names a piece that is not in the plan" grep -q 'odd-log.json: /log/events/0/pieces: tap 1 names "nobody"' out
expect 0 "" check odd-log.json --json
check "check --json has the log's findings with their places" python3 - <<'P'
import json
d = json.load(open("out"))
found = {f["kind"]: f for f in d["findings"] if f["where"].startswith("/log")}
assert d["fine"] is True and d["errors"] == []
assert found["log-time-out-of-order"]["where"] == "/log/events/1/at_s", found
assert found["log-piece-unknown"]["items"] == ["nobody"] and found["log-piece-unknown"]["severity"] == "caution", found
P
"$program" check old.json >out 2>err
check "check says that a format is older" grep -q "format 1 to 2" out
printf '{"a": 1}' > other.json
expect 1 "not a plan" check other.json
printf 'hello' > text.json
expect 1 "text.json: line 1" check text.json
truncate -s 2G huge.json
expect 1 "bytes; a plan has at most" check huge.json
name=$(printf 'two\nlines.json')
expect 3 "two lines.json: there is no such file" check "$name"

sed 's/"choice": *"choice-1"/"choice": "choice-9"/' "$plan" > lost.json
expect 1 "choice-9" check lost.json

# several plans: each is tried, the worst code wins
expect 3 "nothing.json" check "$plan" empty.json nothing.json
check "the fine one is reported" grep -q 'the file is fine' out
check "the empty one is reported" grep -q 'empty.json: the file is empty' err

# fine: 0
expect 0 "" --help
check "help names the exit codes" grep -q 'Exit codes: 0 fine' out
expect 0 "" --version
expect 0 "" check "$plan"
expect 0 "" check "$plan" --json
check "check --json parses" python3 -c 'import json; d=json.load(open("out")); assert d["fine"] is True and d["errors"]==[] and isinstance(d["findings"], list)'
expect 0 "" check "$plan" "$plan" --json
check "several plans give a list" python3 -c 'import json; assert len(json.load(open("out")))==2'
for ending in svg png pdf; do
  expect 0 "" draw "$plan" --layer diagram --view back --out "back.$ending"
  check "back.$ending is written" test -s "back.$ending"
done
check "SVG is XML" python3 -c 'import xml.dom.minidom as m; m.parse("back.svg")'
check "PDF text can be searched" sh -c 'pdftotext back.pdf - | grep -q Back'
expect 0 "" draw "$plan" --layer diagram --out wide.png --width 900
check "PNG has the width asked for" sh -c 'file wide.png | grep -q "900 x"'
expect 0 "" draw "$plan" --layer diagram --view all --out '{plan}-{view}.svg'
check "one file per view" test -s soft-root-bold-ends-crown.svg
expect 0 "" draw "$plan" --layer diagram --view back --out again.svg
check "the same drawing has the same bytes" cmp back.svg again.svg

LC_ALL=C "$program" look "$plan" --no-range --locks 2000 --json >one 2>/dev/null
LC_ALL=de_DE.UTF-8 LANG=de_DE.UTF-8 "$program" look "$plan" --no-range --locks 2000 --json >two 2>/dev/null
check "readings were written" test -s one
check "the locale changes no number" cmp one two
check "look --json has its documented fields" python3 - <<'P'
import json
d = json.load(open("one"))
for k in "plan choice worn shift_mm light weeks locks whole regions openings findings".split():
    assert k in d, k
assert d["moisture"] == "dry" and d["assumptions_changed"] == []
assert len(d["regions"]) == 11 and d["locks"] == 2000
for r in d["regions"]:
    for k in ("name seen_mm2 skin_share lightness a b level light_share low high "
              "sampling_error contrast").split():
        assert k in r, k
    if r["lightness"] is not None:
        assert 0 < r["lightness"] < 100
        assert set(r["contrast"]) >= {"verdict", "delta", "distance_m"}
P
expect 0 "" look "$(dirname "$plan")/bold-beside-the-part.json" --no-range --locks 4000 --json
check "look --json says where a block opens and what might be done" python3 - <<'P'
import json
d = json.load(open("out"))
worst = max(d["openings"], key=lambda o: o["light_cm2"])
assert worst["way"] == "part" and 15 <= abs(worst["shift_mm"]) <= 40, worst
assert worst["light_cm2"] > 15 and worst["light"]["lightness"] > worst["light"]["surround"] + 5
assert [o for o in d["openings"] if o["way"] == "part" and o["shift_mm"] == 0][0]["light_cm2"] < 4
assert {o["way"] for o in d["openings"]} == {"part", "crown-opened", "blown", "tied-back"}
block = [f for f in d["findings"] if f["kind"] == "light-block"][0]
assert block["size"] > block["limit"] == 4 and block["unit"] == "cm2" and block["pieces"]
assert any(r["after"] < r["before"] / 2 for r in block["remedies"])
assert {r["worn"] for r in d["regrowth"]} == {"down", "tied-back"} and d["stripes"]
P
python3 - "$plan" <<'P'
import json, sys
d = json.load(open(sys.argv[1]))
d["choices"][0]["targets"] = {"nape": {"darkest": 1}, "whole": {"level": 12, "contrast": "one-tone"}, "brow": {"level": 9}}
json.dump(d, open("aims.json", "w"))
P
expect 0 "" look aims.json --no-range --no-advice --locks 2000
check "the table says what is wanted and missed" grep -Eq '^  whole: level 12, one-tone; missed: [0-9.]+ too dark' out
expect 0 "" look aims.json --no-range --no-advice --locks 2000 --json
check "look --json says what is wanted and missed" python3 - <<'P'
import json
d = json.load(open("out"))
whole, nape = d["targets"]
assert whole["region"] == "whole" and nape["region"] == "nape"
assert whole["met"] is False and abs(whole["level_off"] - (d["whole"]["level"] - 12)) < 0.002
assert whole["contrast"] == "one-tone" and whole["brightest"] is None
assert nape["darkest"] == 1 and nape["darkest_off"] is None and nape["met"] in (True, None)
P
expect 0 "" check aims.json
check "a target of a later version is noted" grep -q 'unknown region "brow"' out
expect 0 "" look "$plan" --no-range --no-advice --locks 2000
check "the table names the regions" grep -q 'upper back' out
check "the table carries the caution" grep -q 'not a promise' out
# Wet hair is darker; what the plan assumes otherwise is named.
python3 - "$plan" <<'P'
import json, sys
plan = json.load(open(sys.argv[1]))
def item(o):
    if isinstance(o, dict):
        if "activeChoice" in o: return o
        return next((found for found in map(item, o.values()) if found), None)
    if isinstance(o, list):
        return next((found for found in map(item, o) if found), None)
item(plan)["assumptions"] = {"fall.whorlReach_mm": 30, "fall.lean": 0.13}
json.dump(plan, open("assumed.json", "w"))
P
expect 0 "" look assumed.json --no-range --no-advice --locks 2000 --wet --json
cp out wet
check "wet hair is darker and a changed assumption is named" python3 - <<'P'
import json
dry, wet = json.load(open("one")), json.load(open("wet"))
assert wet["moisture"] == "wet" and wet["whole"]["lightness"] < dry["whole"]["lightness"] - 2
changed = wet["assumptions_changed"]
assert [(c["name"], c["value"], c["default"]) for c in changed] == [("fall.whorlReach_mm", 30, 36)]
assert changed[0]["words"] and "." not in changed[0]["words"]
P
expect 0 "" draw assumed.json --layer diagram --view back --out assumed.svg
check "a drawing names what the plan assumes otherwise" grep -q 'Assumptions changed' assumed.svg

# the work list: tables of docs/work-by-hand.md, worked by hand, are what the program says
hand="$source/docs/work-by-hand.json"
expect 0 "" work "$hand" --locks 200000 --json
cp out hand
check "work --json is the work list that was worked by hand" python3 - "$source/docs/work-by-hand.md" <<'P'
import json, sys
d = json.load(open("hand"))
tables, rows = [], None
for line in open(sys.argv[1], encoding="utf-8"):
    if line.startswith("|"):
        cells = [c.strip() for c in line.strip().strip("|").split("|")]
        if rows is None:
            rows = []
            tables.append((cells, rows))
        elif not set(cells[0]) <= set("-"):
            rows.append(cells)
    else:
        rows = None
by_head = {tuple(head)[0]: rows for head, rows in tables if head[0] in ("step", "bowl")}
steps = by_head["step"]
assert len(steps) == len(d["steps"]) == 15
for want, got in zip(steps, d["steps"]):
    assert want[0] == got["kind"] and want[1] == got["piece"], (want, got)
    assert abs(float(want[2]) - got["from_min"]) < 1e-9 and abs(float(want[3]) - got["to_min"]) < 1e-9, (want, got)
    assert (want[4] == "") == (got["product_age_min"] is None)
    if want[4]: assert abs(float(want[4]) - got["product_age_min"]) < 1e-9, (want, got)
assert (d["last_in_min"], d["total_min"], d["comb_out_min"]) == (15.5, 20.1, 3.6) and abs(d["reserve_min"] - 3.015) < 0.006
grams = [rows for head, rows in tables if head[:2] == ["piece", "hairs"]][0]
pieces = {p["piece"]: p for p in d["pieces"]}
assert len(grams) == len(pieces) == 5
for want in grams:
    got = pieces[want[0]]
    assert abs(got["line_mm"] - 60) < 0.3, got
    for value, name in ((want[1], "hairs"), (want[3], "covered_g"), (want[4], "product_g")):
        assert abs(got[name] / float(value) - 1) < 0.015, (want, got)
for want, got in zip(by_head["bowl"], d["bowls"]):
    letter, number = want[0].split()
    assert got["number"] == int(number) and got["formula"] == {"A": "formula-1", "B": "formula-2"}[letter]
    assert abs(got["product_g"] / float(want[1]) - 1) < 0.015 and abs(got["mixed_g"] / float(want[2]) - 1) < 0.02, (want, got)
parts = {p["name"]: p["grams"] for p in d["bowls"][0]["parts"]}
assert abs(parts["developer"] / parts["powder"] - 2) < 0.02 and d["bowls"][3]["parts"] is None
b = [f for f in d["formulas"] if f["id"] == "formula-2"][0]["developer"]
assert abs(b["volumes"] - 20) < 1e-9 and abs(b["percent"] - 6.07) < 0.001 and (b["label_percent"], b["label_volumes"]) == (6, 20)
assert len(d["foils"]) == 4 and d["foils"][0]["pieces"] == ["piece-1", "piece-2"]
assert [n["kind"] for n in d["notes"]] == ["parts-not-typed"], d["notes"]
at = [s for s in d["steps"] if s["to_min"] == 9.1][0]
assert at["oldest_piece"] == "piece-1" and abs(at["oldest_piece_min"] - 6.4) < 1e-9
P
expect 0 "" work "$hand"
check "the table says what each bowl takes" grep -q 'A lightener, bowl 1: about 5 g (powder' out
check "the table says from where to where the grams may be" grep -Eq 'about 12 g mixed in all, somewhere from [34][.][0-9] to 4[6-9] g' out
check "the table has a piece's side and place" grep -Eq 'place +piece-1, ' out
check "the table carries the caution" grep -q 'Pain, burning, swelling' out
check "no word of the work list promises" sh -c '! grep -Eiw "ready|done|safe|promise" out'
expect 0 "" work "$plan" --order rule --hands 2 --foils 90,120 --look-every 10 --json
check "two pairs of hands and an order by rule" python3 -c 'import json; d=json.load(open("out")); assert d["order"]=="rule" and d["hands"]==2 and {s["hands"] for s in d["steps"]}=={1,2} and d["savings"]'
expect 2 "allowed is 10 to 1000 mm" work "$plan" --foils 90,wide
expect 2 "1 or 2 pairs of hands" work "$plan" --hands 1.5
expect 2 "above 0 to 240 min" work "$plan" --look-every 0
expect 2 "allowed is 1 to 1000 g" work "$plan" --smallest-bowl 0
expect 0 "" work "$hand" --smallest-bowl 4 --json
check "a bowl under the least that is mixed is told" python3 -c 'import json; d=json.load(open("out")); n=[n for n in d["notes"] if n["kind"]=="bowl-tiny"]; assert [(x["formula"], x["text"].split(":")[0], x["limit"]) for x in n] == [("formula-1", "bowls 2, 3", 4), ("formula-2", "bowl 1", 4)], n'
expect 2 "known: planned, rule" work "$plan" --order quick
expect 2 "--choice" work "$plan" --choice Z
expect 3 "nothing.json: there is no such file" work nothing.json
expect 1 "cut.json: " work cut.json

if [ "$failures" -ne 0 ]; then
  echo "$failures failures"
  exit 1
fi
echo "command line: all as expected"
