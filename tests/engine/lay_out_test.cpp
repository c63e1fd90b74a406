// Lay out: what the rule gives, and that the run keeps its identity.
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "engine/head/strip_frame.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/lay_out.h"
#include "engine/plan/twins.h"
#include "engine/plan/validate.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

const head::HeadShape kHead;

// The back of the head, wearer's right, from beside the centre to behind the ear.
Section backRight() {
  Section section;
  section.choice = "choice-1";
  section.label = "back";
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = Layout{};
  return section;
}

struct Made {
  Plan plan;
  ItemId section;
};
Made laidOut(const Section& section = backRight()) {
  const Plan empty = Plan::fresh(7);
  const ChangeSet edit = addSection(empty, section);
  return {applied(empty, edit), edit.args.front()};
}

std::vector<std::pair<ItemId, const Piece*>> runPieces(const Plan& plan, const ItemId& section) {
  std::vector<std::pair<ItemId, const Piece*>> found;
  for (const auto& entry : plan.pieces())
    if (entry.second->section == section && entry.second->laidOut) found.push_back(entry);
  return found;
}

Plan withRule(const Plan& plan, const ItemId& id, const std::function<void(Layout&)>& change) {
  return applied(plan, changeSections(plan, {id}, [&](Section& s) { change(*s.layout); }));
}

double between_mm(const Piece& a, const Piece& b) {
  double best = 1e9;
  const Vec3 from = kHead.pointAt(a.line[a.line.size() / 2]);
  std::vector<Vec3> line;
  for (const ScalpPoint& p : b.line) line.push_back(kHead.pointAt(p));
  for (const Vec3& q : head::resampledOnSurface(kHead, line, 1))
    if ((q - from).norm() < best + 3) best = std::min(best, head::surfaceDistance_mm(kHead, from, q));
  return best;
}

}  // namespace

TEST_CASE("a section is filled with as many equal pieces as fit", "[plan][layout]") {
  const Made made = laidOut();
  const Run run = runOf(kHead, *made.plan.find<Section>(made.section));
  REQUIRE(run.trouble == RunTrouble::None);
  CHECK(run.rows == static_cast<int>(run.room_mm / 15));  // 5 mm pieces, 10 mm left out
  const auto pieces = runPieces(made.plan, made.section);
  REQUIRE(pieces.size() == static_cast<std::size_t>(run.rows));
  // Typed thickness exactly; what remains widens the left-outs evenly.
  const double pitch = run.room_mm / run.rows;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    CHECK(pieces[i].second->thickness_mm == 5);
    CHECK(pieces[i].second->laidOut->row == static_cast<int>(pieces.size() - i));
    CHECK(pieces[i].second->order == static_cast<int>(i) + 1);
    if (i > 0) CHECK(between_mm(*pieces[i - 1].second, *pieces[i].second) == Approx(pitch).margin(0.4));
  }
  // The first is the lowest, farthest from the crown.
  CHECK(kHead.pointAt(pieces.front().second->line[0]).z() <
        kHead.pointAt(pieces.back().second->line[0]).z());
  CHECK(validate(made.plan).size() == 0);
}

TEST_CASE("ramps run from the first piece to the last", "[plan][layout]") {
  Section section = backRight();
  section.layout->thickness_mm = {4, 8};
  section.layout->leftOut_mm = {6, 3};
  section.layout->backcomb_mm = {0, 90};
  section.layout->pushed_frac = {0, 0.6};
  section.layout->start_mm = {5, 35};
  const Made made = laidOut(section);
  const auto pieces = runPieces(made.plan, made.section);
  REQUIRE(pieces.size() > 3);
  CHECK(pieces.front().second->thickness_mm == 4);
  CHECK(pieces.back().second->thickness_mm == 8);
  CHECK(pieces.front().second->backcomb.depth_mm == 0);
  CHECK(pieces.back().second->backcomb.depth_mm == 90);
  CHECK(pieces.back().second->backcomb.pushed_frac == Approx(0.6));
  CHECK(pieces.back().second->start_mm == 35);
  for (std::size_t i = 1; i < pieces.size(); ++i)
    CHECK(pieces[i].second->thickness_mm - pieces[i - 1].second->thickness_mm ==
          Approx(4.0 / static_cast<double>(pieces.size() - 1)).margin(0.11));
  Section thin = section;
  thin.layout->lastThickness_mm = 1.5;
  const Made other = laidOut(thin);
  CHECK(runPieces(other.plan, other.section).back().second->thickness_mm == 1.5);
}

TEST_CASE("a wide row becomes columns, staggered if wished", "[plan][layout]") {
  Section section = backRight();
  section.layout->foil_mm = 40;
  const Made made = laidOut(section);
  std::map<int, std::vector<const Piece*>> rows;
  for (const auto& [id, piece] : runPieces(made.plan, made.section))
    rows[piece->laidOut->row].push_back(piece);
  for (const auto& [row, pieces] : rows) {
    REQUIRE(pieces.size() >= 2);
    for (const Piece* piece : pieces) {
      std::vector<Vec3> line;
      for (const ScalpPoint& p : piece->line) line.push_back(kHead.pointAt(p));
      CHECK(head::lineLength_mm(kHead, head::resampledOnSurface(kHead, line, 2)) < 40.5);
    }
  }
  const Plan staggered =
      withRule(made.plan, made.section, [](Layout& l) { l.columns = Columns::Staggered; });
  std::map<int, std::size_t> counts;
  for (const auto& [id, piece] : runPieces(staggered, made.section)) ++counts[piece->laidOut->row];
  CHECK(counts[1] == rows[1].size());
  CHECK(counts[2] == rows[2].size() + 1);
}

TEST_CASE("zigzag partings swing, the middle can be dropped", "[plan][layout]") {
  Section across;
  across.choice = "choice-1";
  across.outline = {{-150, 92}, {180, 95}, {150, 92}, {150, 65}, {180, 62}, {-150, 65}};
  across.layout = Layout{};
  across.layout->dropMiddle_mm = 24;
  const Made made = laidOut(across);
  for (const auto& [id, piece] : runPieces(made.plan, made.section)) {
    REQUIRE(piece->dropOuts.size() == 1);
    CHECK(piece->dropOuts[0].to_mm - piece->dropOuts[0].from_mm == Approx(24).margin(0.2));
  }
  const Plan zigzag = withRule(made.plan, made.section, [](Layout& l) { l.zigzag_mm = 4; });
  const auto pieces = runPieces(zigzag, made.section);
  REQUIRE(!pieces.empty());
  // The middle is dropped at the centre line, however long the zigzag is.
  for (const auto& [id, piece] : pieces) {
    REQUIRE(piece->dropOuts.size() == 1);
    std::vector<Vec3> drawn;
    for (const ScalpPoint& p : piece->line) drawn.push_back(kHead.pointAt(p));
    const head::StripFrame frame(kHead, drawn);
    CHECK(std::abs(frame.pointAt((piece->dropOuts[0].from_mm + piece->dropOuts[0].to_mm) / 2).x()) < 2.5);
  }
  const auto& line = pieces.front().second->line;
  int turns = 0;
  for (std::size_t i = 1; i + 1 < line.size(); ++i) {
    const Vec3 a = kHead.pointAt(line[i - 1]), b = kHead.pointAt(line[i]), c = kHead.pointAt(line[i + 1]);
    turns += ((b - a).z() > 0) != ((c - b).z() > 0);
  }
  CHECK(turns + 2 >= static_cast<int>(line.size()) - 1);
}

TEST_CASE("pieces keep their identity when the run flows anew", "[plan][layout]") {
  const Made made = laidOut();
  const auto pieces = runPieces(made.plan, made.section);
  // A name, a note and a colour of one's own; the start is edited by hand.
  const ItemId noted = pieces[1].first;
  const int row = pieces[1].second->laidOut->row;
  Plan plan = applied(made.plan, changePieces(made.plan, {noted}, [](Piece& p) {
                        p.note = "mind the ear";
                        p.root.lifts.level = 8;
                        p.start_mm = 55;
                      }));
  CHECK(plan.find<Piece>(noted)->laidOut->own == std::vector<RunField>{RunField::Start});
  plan = withRule(plan, made.section, [](Layout& l) { l.leftOut_mm = {12, 12}, l.start_mm = {30, 30}; });
  const Piece& kept = *plan.find<Piece>(noted);
  CHECK(kept.note == "mind the ear");
  CHECK(kept.root.lifts.level == 8);
  CHECK(kept.start_mm == 55);
  CHECK(kept.laidOut->row == row);
  for (const auto& [id, piece] : runPieces(plan, made.section))
    if (id != noted) CHECK(piece->start_mm == 30);

  // Fewer pieces: the surplus retires, and comes back whole with its id.
  const ItemId lowest = runPieces(plan, made.section).front().first;
  plan = applied(plan, changePieces(plan, {lowest}, [](Piece& p) { p.note = "lowest"; }));
  const Plan few = withRule(plan, made.section, [](Layout& l) { l.leftOut_mm = {30, 30}; });
  CHECK(few.find<Piece>(lowest) == nullptr);
  CHECK(few.find<Section>(made.section)->retired.size() > 0);
  CHECK(few.freeId("piece") != lowest);
  // ... also from a file.
  const auto reread = readPlan(writePlan(few));
  REQUIRE(reread);
  CHECK(*reread == few);
  const Plan again = withRule(*reread, made.section, [](Layout& l) { l.leftOut_mm = {12, 12}; });
  CHECK(again == plan);

  // Taken back, it follows the rule again.
  const Plan back = applied(again, takeBack(again, {noted}));
  CHECK(back.find<Piece>(noted)->start_mm == 30);
  CHECK(back.find<Piece>(noted)->laidOut->own.empty());
  const Plan alone = applied(back, letGo(back, {noted}));
  const Plan thick = withRule(alone, made.section, [](Layout& l) { l.thickness_mm = {3, 3}; });
  CHECK(thick.find<Piece>(noted)->thickness_mm == 5);
}

TEST_CASE("nobody is the twin of nothing", "[plan][layout][twins]") {
  const Made made = laidOut();
  CHECK(twinsOf(made.plan, "").empty());
}

TEST_CASE("a piece that is taken away leaves its place empty", "[plan][layout]") {
  const Made made = laidOut();
  const auto pieces = runPieces(made.plan, made.section);
  const Plan without = applied(made.plan, removeItems(made.plan, {pieces[2].first}));
  CHECK(runPieces(without, made.section).size() == pieces.size() - 1);
  const Plan flowed = withRule(without, made.section, [](Layout& l) { l.start_mm = {9, 9}; });
  CHECK(runPieces(flowed, made.section).size() == pieces.size() - 1);
  const Plan filled = applied(flowed, takeBack(flowed, {made.section}));
  CHECK(runPieces(filled, made.section).size() == pieces.size());
  // With its section go the pieces that the rule made.
  const Plan gone = applied(filled, removeItems(filled, {made.section}));
  CHECK(gone.pieces().empty());
}

TEST_CASE("a reshaped section, another head: the run follows", "[plan][layout]") {
  const Made made = laidOut();
  const std::size_t before = runPieces(made.plan, made.section).size();
  const Plan lower = applied(made.plan, changeSections(made.plan, {made.section}, [](Section& s) {
                               for (ScalpPoint& p : s.outline) p.drop_deg = std::max(p.drop_deg, 78.0);
                             }));
  CHECK(runPieces(lower, made.section).size() < before);
  const Plan large = applied(made.plan, changeHead(made.plan, [](Head& h) {
                               h.measures.size = head::HeadSize::Large;
                             }));
  const auto a = runPieces(made.plan, made.section), b = runPieces(large, made.section);
  REQUIRE(!b.empty());
  CHECK_FALSE(a.front().second->line == b.front().second->line);
  const Plan moved = applied(made.plan, movePieces(made.plan, {made.section}, {150, 85}, {150, 80}));
  CHECK(kHead.pointAt(runPieces(moved, made.section).front().second->line[0]).z() >
        kHead.pointAt(a.front().second->line[0]).z() + 4);
}

TEST_CASE("a section moves with its pivot and with pieces moved by hand", "[plan][layout]") {
  Section fan = backRight();
  fan.layout->run = LayoutRun::Pivoting;
  fan.layout->pivot = ScalpPoint{150, 62};
  const Made made = laidOut(fan);
  const ItemId own = runPieces(made.plan, made.section).front().first;
  Plan plan = applied(made.plan, changePieces(made.plan, {own}, [](Piece& p) { p.line.front().drop_deg -= 1; }));
  const Piece before = *plan.find<Piece>(own);
  plan = applied(plan, movePieces(plan, {made.section}, {150, 85}, {145, 80}));
  CHECK_FALSE(*plan.find<Section>(made.section)->layout->pivot == ScalpPoint{150, 62});
  CHECK(kHead.pointAt(plan.find<Piece>(own)->line.front()).z() > kHead.pointAt(before.line.front()).z() + 1);
}

TEST_CASE("a left-out in the section is no model for its run", "[plan][layout]") {
  Section empty = backRight();
  empty.layout.reset();
  const Made made = laidOut(empty);
  Piece leftOut;
  leftOut.section = made.section;
  leftOut.action = Action::LeaveOut;
  leftOut.line = {{170, 80}, {130, 80}};
  Plan plan = applied(made.plan, addPiece(made.plan, leftOut));
  plan = applied(plan, changeSections(plan, {made.section}, [](Section& s) { s.layout = Layout{}; }));
  for (const auto& [id, piece] : runPieces(plan, made.section)) CHECK(piece->action == Action::Lighten);
}

TEST_CASE("the other side flows with its source", "[plan][layout][twins]") {
  const Made made = laidOut();
  Plan plan = applied(made.plan, addTwins(made.plan, {made.section}));
  const std::size_t count = runPieces(made.plan, made.section).size();
  REQUIRE(plan.pieces().size() == 2 * count);
  ItemId other;
  for (const auto& [id, section] : plan.sections()) if (!section->twinOf.empty()) other = id;
  REQUIRE(!other.empty());
  // One side first, then the other, each in placing order.
  std::set<int> orders;
  for (const auto& [id, piece] : plan.pieces()) CHECK(orders.insert(piece->order).second);
  CHECK(plan.pieces()[count].second->twinOf == plan.pieces()[0].first);
  plan = withRule(plan, made.section, [](Layout& l) { l.leftOut_mm = {5, 5}; });
  std::size_t right = 0, left = 0;
  for (const auto& [id, piece] : plan.pieces()) {
    (piece->section == other ? left : right)++;
    if (piece->section == other) CHECK(followsSource(plan, *piece));
  }
  CHECK(right > count);
  CHECK(left == right);
  // The rule changed on the twin's side changes both.
  const Plan viaTwin = withRule(plan, other, [](Layout& l) { l.thickness_mm = {3, 3}; });
  CHECK(viaTwin.find<Section>(made.section)->layout->thickness_mm.from == 3);
  // On its own, its run stays as it is and then goes its own way.
  Plan alone = applied(plan, standAlone(plan, {other}));
  CHECK(alone.pieces().size() == plan.pieces().size());
  const std::size_t all = alone.pieces().size();
  alone = withRule(alone, other, [](Layout& l) { l.leftOut_mm = {25, 25}; });
  CHECK(alone.pieces().size() < all);
  CHECK(runPieces(alone, made.section).size() == right);
  const auto reread = readPlan(writePlan(alone));
  REQUIRE(reread);
  CHECK(*reread == alone);
}

TEST_CASE("a parting splits a section and its run", "[plan][layout]") {
  const Made made = laidOut();
  const std::vector<ScalpPoint> parting{{174, 82}, {150, 83}, {123, 82}};
  const ChangeSet edit = splitSection(made.plan, made.section, parting);
  REQUIRE(edit.args.size() == 2);
  const Plan plan = applied(made.plan, edit);
  REQUIRE(plan.sections().size() == 2);
  CHECK(plan.sections()[1].first == edit.args[1]);
  CHECK(!runPieces(plan, made.section).empty());
  CHECK(!runPieces(plan, edit.args[1]).empty());
  CHECK(applied(plan, inverse(edit)) == made.plan);
  CHECK(splitSection(made.plan, made.section, {{150, 90}, {150, 80}}).empty());
  CHECK(splitSection(made.plan, made.section, {{20, 60}, {40, 60}}).empty());
}

TEST_CASE("a rule that cannot be met says so and takes nothing away", "[plan][layout]") {
  Section crossed = backRight();
  crossed.outline = {{176, 105}, {120, 70}, {120, 103}, {176, 60}};
  CHECK(runOf(kHead, crossed).trouble == RunTrouble::OutlineCrosses);
  Section sliver = backRight();
  sliver.outline = {{176, 84}, {120, 84}, {120, 82.5}, {176, 82.5}};
  sliver.layout->thickness_mm = {12, 12};
  CHECK(runOf(kHead, sliver).trouble == RunTrouble::NoRoom);
  Section crowded = backRight();
  crowded.layout->thickness_mm = {0.2, 0.2};
  crowded.layout->leftOut_mm = {0, 0};
  crowded.layout->foil_mm = 20;
  CHECK(runOf(kHead, crowded).trouble == RunTrouble::TooMany);
  const Made made = laidOut();
  const Plan wide = withRule(made.plan, made.section, [](Layout& l) { l.thickness_mm = {40, 40}; });
  const Plan none = applied(wide, changeSections(wide, {made.section}, [](Section& s) {
                              s.outline = {{176, 84}, {120, 84}, {120, 82.5}, {176, 82.5}};
                            }));
  CHECK(runPieces(none, made.section).size() == runPieces(wide, made.section).size());
}

TEST_CASE("all runs lay out on all sorts of sections", "[plan][layout]") {
  const std::vector<std::vector<ScalpPoint>> outlines{
      {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}},
      {{25, 45}, {60, 50}, {80, 68}, {60, 70}, {40, 62}},                        // beside the face
      {{2, 42}, {30, 40}, {90, 25}, {170, 28}, {178, 20}},                        // top right
      {{-20, 40}, {20, 40}, {90, 14}, {160, 25}, {-160, 25}, {-90, 14}},          // strip on top
      {{-160, 98}, {180, 104}, {160, 98}, {160, 88}, {180, 88}, {-160, 88}},       // nape
      {{150, 30}, {180, 28}, {-150, 30}, {180, 45}},                              // crown diamond
  };
  for (std::size_t o = 0; o < outlines.size(); ++o)
    for (const LayoutRun run : {LayoutRun::Horizontal, LayoutRun::Vertical,
                                LayoutRun::DiagonalForward, LayoutRun::DiagonalBack,
                                LayoutRun::Pivoting}) {
      Section section = backRight();
      section.outline = outlines[o];
      section.layout->run = run;
      section.layout->leftOut_mm = {5, 5};
      CAPTURE(o, static_cast<int>(run));
      const Made made = laidOut(section);
      const auto pieces = runPieces(made.plan, made.section);
      CHECK(pieces.size() >= (run == LayoutRun::Pivoting ? 1u : 2u));
      std::vector<Vec3> corners;
      for (const ScalpPoint& p : outlines[o]) corners.push_back(kHead.pointAt(p));
      const head::ScalpOutline outline(kHead, corners);
      for (const auto& [id, piece] : pieces)
        CHECK(outline.contains(kHead.pointAlong(kHead.pointAt(piece->line[(piece->line.size() - 1) / 2]) +
                                                kHead.pointAt(piece->line[piece->line.size() / 2]))));
      for (const Issue& issue : validate(made.plan)) CHECK(issue.severity != Severity::Error);
      CHECK(readPlan(writePlan(made.plan)).ok());
    }
}
