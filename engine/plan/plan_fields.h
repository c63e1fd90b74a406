#pragma once
// One list of fields per object of a plan file. The reader and the writer walk
// the same list, so a field that is read is also written. Keys are the names
// of the members; numbers are checked against field_info.h under
// "<kind>.<key>". For the walkers see json_reader.cpp and json_writer.cpp:
//
//   number  a double, or one that need not be typed     whole  a whole number
//   line    one line of text      text  several lines   date   "2024-05-31"
//   id      an item's id or ""    flag  true or false   word   an enum
//   point   one scalp point       points several        stretches [from, to] pairs
//   words   several enums         byName one nested object per name of a list; others kept
//   object  a nested object       list  several         perZone one value per hair zone
//   foundPerZone  a word per hair zone, left out where nothing was found
//   kept    JSON of others, kept as found               extra  every other key, kept
#include "engine/plan/field_info.h"
#include "engine/plan/parts.h"
#include "engine/plan/plan_words.h"

namespace combdraft::plan {

template <class V>
void walk(V& v, PlanInfo& p) {
  v.line("title", p.title);
  v.planNumber("number", p.number);
  v.id("activeChoice", p.activeChoice);
  v.text("notes", p.notes);
  v.numbersByName("assumptions", p.assumptions);
}

template <class V>
void walk(V& v, Parts& p) {
  v.line("name", p.name);
  v.text("goodFor", p.goodFor);
  v.text("notFor", p.notFor);
}

template <class V>
void walk(V& v, Whorl& w) {
  v.point("at", w.at);
  v.word("turn", w.turn);
  v.extra(w.extra);
}

template <class V>
void walk(V& v, Head& h) {
  v.word("set", h.measures.set);
  v.word("size", h.measures.size);
  v.number("circumference_mm", h.measures.circumference_mm);
  v.number("length_mm", h.measures.length_mm);
  v.number("breadth_mm", h.measures.breadth_mm);
  v.number("earToEar_mm", h.measures.earToEar_mm);
  v.number("hairlineFront_mm", h.hairline.front_mm);
  v.number("hairlineTemples_mm", h.hairline.temples_mm);
  v.number("hairlineSides_mm", h.hairline.sides_mm);
  v.number("hairlineNape_mm", h.hairline.nape_mm);
  v.points("part", h.part, 0, limits::kLinePoints);
  v.list("whorls", "whorl", h.whorls, 1, 2);
  v.word("skin", h.skin);
  v.extra(h.extra);
}

template <class V>
void walk(V& v, Band& b) {
  v.word("zone", b.zone);
  v.number("from_mm", b.from_mm);
  v.number("to_mm", b.to_mm);
  v.number("level", b.level);
  v.extra(b.extra);
}

template <class V>
void walk(V& v, ScatteredLight& s) {
  v.word("zone", s.zone);
  v.number("share_frac", s.share_frac);
  v.number("from_mm", s.from_mm);
  v.number("to_mm", s.to_mm);
  v.number("level", s.level);
  v.extra(s.extra);
}

template <class V>
void walk(V& v, Hair& h) {
  v.number("density_per_cm2", h.density_per_cm2);
  v.number("fibre_um", h.fibre_um);
  v.word("curl", h.curl);
  v.perZone("length_mm", h.length_mm);
  v.number("layering_frac", h.layering_frac);
  v.number("cutLine_mm", h.cutLine_mm);
  v.perZone("level", h.level);
  v.number("toneWarmth", h.toneWarmth);
  v.number("white_frac", h.white_frac);
  v.list("bands", "band", h.bands, 0, limits::kSmallList);
  v.list("scattered", "scattered", h.scattered, 0, limits::kSmallList);
  v.perZone("condition", h.condition);
  v.foundPerZone("porosity", h.porosity);
  v.date("conditionDate", h.conditionDate);
  v.extra(h.extra);
}

template <class V>
void walk(V& v, LiftsTo& l) {
  v.number("level", l.level);
  v.number("low", l.low);
  v.number("high", l.high);
  v.extra(l.extra);
}

template <class V>
void walk(V& v, FinishesAt& f) {
  v.number("level", f.level);
  v.word("tone", f.tone);
  v.extra(f.extra);
}

template <class V>
void walk(V& v, ZoneColour& z) {
  v.object("lifts", "lifts", z.lifts);
  v.object("finish", "finish", z.finish);
  v.id("formula", z.formula);
  v.extra(z.extra);
}

template <class V>
void walk(V& v, Leaflet& l) {
  v.line("origin", l.origin);
  v.date("read", l.read);
  v.word("scalpContact", l.scalpContact);
  v.number("workingLife_min", l.workingLife_min);
  v.number("longestTime_min", l.longestTime_min);
  v.text("directions", l.directions);
  v.extra(l.extra);
}

template <class V>
void walk(V& v, MixPart& p) {
  v.line("name", p.name);
  v.number("parts", p.parts);
  v.extra(p.extra);
}

template <class V>
void walk(V& v, Developer& d) {
  v.line("name", d.name);
  v.number("strength", d.strength);
  v.word("unit", d.unit);
  v.number("parts", d.parts);
  v.extra(d.extra);
}

template <class V>
void walk(V& v, Formula& f) {
  v.line("letter", f.letter);
  v.line("kind", f.kind);
  v.text("text", f.text);
  v.list("products", "mixPart", f.products, 0, limits::kMixParts);
  v.list("developers", "developer", f.developers, 0, limits::kMixParts);
  v.list("additives", "mixPart", f.additives, 0, limits::kMixParts);
  v.object("leaflet", "leaflet", f.leaflet);
  v.extra(f.extra);
}

template <class V>
void walk(V& v, Target& t) {
  v.number("level", t.level);
  v.word("contrast", t.contrast);
  v.number("brightest", t.brightest);
  v.number("darkest", t.darkest);
  v.extra(t.extra);
}

template <class V>
void walk(V& v, Choice& c) {
  v.line("name", c.name);
  if (c.name.empty()) c.name = Choice{}.name;  // one written empty is as one that is not written
  v.byName("targets", "target", targetRegions(), c.targets, c.otherTargets);
  v.extra(c.extra);
}

template <class V>
void walk(V& v, RunSlot& s) {
  v.whole("row", s.row);
  v.whole("column", s.column);
  v.extra(s.extra);
}

template <class V>
void walk(V& v, Layout& l) {
  v.word("run", l.run);
  v.point("pivot", l.pivot);
  v.number("thicknessFrom_mm", l.thickness_mm.from);
  v.number("thicknessTo_mm", l.thickness_mm.to);
  v.number("leftOutFrom_mm", l.leftOut_mm.from);
  v.number("leftOutTo_mm", l.leftOut_mm.to);
  v.number("startFrom_mm", l.start_mm.from);
  v.number("startTo_mm", l.start_mm.to);
  v.number("backcombFrom_mm", l.backcomb_mm.from);
  v.number("backcombTo_mm", l.backcomb_mm.to);
  v.number("pushedFrom_frac", l.pushed_frac.from);
  v.number("pushedTo_frac", l.pushed_frac.to);
  v.word("taking", l.taking);
  v.number("takenFrom_frac", l.taken_frac.from);
  v.number("takenTo_frac", l.taken_frac.to);
  v.number("tooth_mm", l.tooth_mm);
  v.number("gap_mm", l.gap_mm);
  v.number("foil_mm", l.foil_mm);
  v.word("columns", l.columns);
  v.number("zigzag_mm", l.zigzag_mm);
  v.number("lastThickness_mm", l.lastThickness_mm);
  v.number("dropMiddle_mm", l.dropMiddle_mm);
  v.list("empty", "laidOut", l.empty, 0, limits::kRunPieces);
  v.extra(l.extra);
}

template <class V>
void walk(V& v, Backcomb& b) {
  v.number("depth_mm", b.depth_mm);
  v.number("pushed_frac", b.pushed_frac);
  v.number("blend_mm", b.blend_mm);
  v.extra(b.extra);
}

template <class V>
void walk(V& v, LaidOut& l) {
  v.whole("row", l.row);
  v.whole("column", l.column);
  v.words("own", l.own);
  v.extra(l.extra);
}

template <class V>
void walk(V& v, Piece& p) {
  v.id("choice", p.choice);
  v.id("section", p.section);
  v.line("label", p.label);
  v.text("note", p.note);
  v.whole("order", p.order);
  v.id("twinOf", p.twinOf);
  v.word("action", p.action);
  v.word("taking", p.taking);
  v.points("line", p.line, 2, limits::kLinePoints);
  v.number("thickness_mm", p.thickness_mm);
  v.number("taken_frac", p.taken_frac);
  v.number("tooth_mm", p.tooth_mm);
  v.number("gap_mm", p.gap_mm);
  v.stretches("dropOuts", p.dropOuts);
  v.number("start_mm", p.start_mm);
  v.number("blend_mm", p.blend_mm);
  v.object("backcomb", "backcomb", p.backcomb);
  v.number("outer_frac", p.outer_frac);
  v.word("under", p.under);
  v.number("handover_mm", p.handover_mm);
  v.number("stop_mm", p.stop_mm);
  v.object("root", "zone", p.root);
  v.object("end", "zone", p.end);
  v.word("keptIn", p.keptIn);
  v.line("foil", p.foil);
  v.flag("held", p.held);
  v.object("laidOut", "laidOut", p.laidOut);
  v.extra(p.extra);
}

template <class V>
void walk(V& v, RetiredPiece& r) {
  v.ownId("id", r.id);
  walk(v, static_cast<Piece&>(r));
}

template <class V>
void walk(V& v, Section& s) {
  v.id("choice", s.choice);
  v.line("label", s.label);
  v.whole("order", s.order);
  v.id("twinOf", s.twinOf);
  v.points("outline", s.outline, 3, limits::kOutlinePoints);
  v.object("layout", "layout", s.layout);
  v.list("retired", "piece", s.retired, 0, limits::kRunPieces);
  v.extra(s.extra);
}

template <class V>
void walk(V& v, Treatment& t) {
  v.id("choice", t.choice);
  v.word("kind", t.kind);
  v.word("zone", t.zone);
  v.number("to_mm", t.to_mm);
  v.number("blend_mm", t.blend_mm);
  v.object("colour", "finish", t.colour);
  v.number("strength_frac", t.strength_frac);
  v.id("formula", t.formula);
  v.extra(t.extra);
}

template <class V>
void walk(V& v, HandoutUse& u) {
  v.word("part", u.part);
  v.flag("hidden", u.hidden);
  v.extra(u.extra);
}

template <class V>
void walk(V& v, HandoutStep& s) {
  v.id("about", s.about);
  v.text("what", s.what);
  v.text("how", s.how);
  v.text("why", s.why);
  v.extra(s.extra);
}

template <class V>
void walk(V& v, Handout& h) {
  v.text("aim", h.aim);
  v.text("kit", h.kit);
  v.text("checks", h.checks);
  v.text("faults", h.faults);
  v.text("selfCheck", h.selfCheck);
  v.word("paper", h.paper);
  v.word("turn", h.turn);
  v.list("parts", "handoutUse", h.parts, 0, limits::kSmallList);
  v.list("steps", "handoutStep", h.steps, 0, limits::kPieces);
  v.extra(h.extra);
}

template <class V>
void walk(V& v, Note& n) {
  v.id("choice", n.choice);
  v.point("at", n.at);
  v.text("text", n.text);
  v.extra(n.extra);
}

}  // namespace combdraft::plan
