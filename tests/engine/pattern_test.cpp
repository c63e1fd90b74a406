// Patterns: saved, read, used on other heads and hair; and the starting
// patterns, each on heads of every size. What a pattern is good for is common
// practice, no source.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "engine/head/measures.h"
#include "engine/head/scalp_outline.h"
#include "engine/plan/edits.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/lay_out.h"
#include "engine/plan/pattern.h"
#include "engine/plan/twins.h"
#include "tests/support/places.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

std::string textOf(const std::filesystem::path& path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<std::filesystem::path> startingFiles() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(test::sourceDir() + "/resources/patterns"))
    files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

Parts patternIn(const std::filesystem::path& file) {
  auto pattern = readPattern(textOf(file));
  if (!pattern) FAIL(file.string() + ": " + describe(pattern.error()));
  return std::move(pattern).value();
}

Parts starting(const std::string& name) {
  return patternIn(test::sourceDir() + "/resources/patterns/" + name + ".json");
}

Plan onHead(head::HeadSet set, head::HeadSize size, const head::HairlineMoves& hairline = {}) {
  const Plan plan = Plan::fresh(3);
  return applied(plan, changeHead(plan, [&](Head& head) {
    head.measures.set = set;
    head.measures.size = size;
    head.hairline = hairline;
  }));
}

Plan used(const Plan& plan, const Parts& pattern) {
  const auto use = usePattern(plan, pattern);
  REQUIRE(use);
  return applied(plan, use->edit);
}

head::HeadShape shapeOf(const Plan& plan) {
  return head::HeadShape(head::fitHead(plan.head().measures)->axes);
}

std::vector<head::ScalpOutline> outlinesOf(const Plan& plan) {
  const head::HeadShape shape = shapeOf(plan);
  std::vector<head::ScalpOutline> outlines;
  for (const auto& [id, section] : plan.sections()) {
    std::vector<Vec3> corners;
    for (const ScalpPoint& point : section->outline) corners.push_back(shape.pointAt(point));
    outlines.emplace_back(shape, corners);
  }
  return outlines;
}

}  // namespace

TEST_CASE("starting patterns fit heads of every size without an error", "[plan][pattern]") {
  REQUIRE(startingFiles().size() >= 8);
  std::vector<Plan> heads;
  for (const head::HeadSet set : {head::HeadSet::Women, head::HeadSet::Men})
    for (const head::HeadSize size : {head::HeadSize::Small, head::HeadSize::Medium, head::HeadSize::Large})
      heads.push_back(onHead(set, size));
  heads.push_back(onHead(head::HeadSet::Men, head::HeadSize::Large, {25, 20, 10, 25}));
  heads.push_back(onHead(head::HeadSet::Women, head::HeadSize::Small, {-15, -15, -10, -15}));
  for (const auto& file : startingFiles()) {
    const Parts pattern = patternIn(file);
    CAPTURE(file.filename().string());
    CHECK(writePattern(pattern) == textOf(file));
    CHECK_FALSE(pattern.goodFor.empty());
    CHECK_FALSE(pattern.notFor.empty());
    for (std::size_t i = 0; i < heads.size(); ++i) {
      CAPTURE(i);
      const auto use = usePattern(heads[i], pattern);
      REQUIRE(use);
      CHECK(use->withoutPieces.empty());
      for (const Issue& issue : use->issues) CHECK(describe(issue) == "");
      const Plan plan = applied(heads[i], use->edit);
      // (The usual part may itself lie outside a hairline that was moved far.)
      CHECK(hasErrors(validate(plan)) == hasErrors(validate(heads[i])));
      CHECK(plan.sections().size() == pattern.plan.sections().size());
      const head::HeadShape shape = shapeOf(plan);
      const head::Hairline hairline(shape, plan.head().hairline);
      for (const auto& [id, section] : plan.sections()) {
        CHECK(runOf(shape, *section).trouble == RunTrouble::None);
        for (const ScalpPoint& point : section->outline)
          CHECK(hairline.above_mm(shape.pointAt(point)) > -1);
      }
      for (const head::ScalpOutline& outline : outlinesOf(plan)) CHECK_FALSE(outline.crossing());
      for (const auto& [id, piece] : plan.pieces())
        if (!piece->twinOf.empty()) CHECK(followsSource(plan, *piece));
    }
  }
}

TEST_CASE("sections of a starting pattern meet and do not overlap", "[plan][pattern]") {
  for (const auto& file : startingFiles()) {
    CAPTURE(file.filename().string());
    for (const Plan& empty : {onHead(head::HeadSet::Women, head::HeadSize::Small),
                              onHead(head::HeadSet::Men, head::HeadSize::Large, {20, 15, 0, 20})}) {
      const Plan plan = used(empty, patternIn(file));
      const auto outlines = outlinesOf(plan);
      const head::HeadShape shape = shapeOf(plan);
      int inside = 0, twice = 0;
      for (double drop = 1.7; drop < 140; drop += 1.9)
        for (double bearing = -179.3; bearing < 180; bearing += 3.1) {
          const Vec3 place = shape.pointAt({bearing, drop});
          int holders = 0;
          for (const auto& outline : outlines) holders += outline.contains(place);
          inside += holders > 0;
          twice += holders > 1;
        }
      CHECK(inside > 100);
      CHECK(twice <= inside / 200);
    }
  }
}

TEST_CASE("together the starting patterns show what a rule can do", "[plan][pattern]") {
  std::set<LayoutRun> runs;
  bool staggered = false, ramp = false, zigzag = false, middle = false, last = false, teeth = false;
  for (const auto& file : startingFiles()) {
    const Parts pattern = patternIn(file);
    for (const auto& [id, section] : pattern.plan.sections()) {
      REQUIRE(section->layout);
      const Layout& rule = *section->layout;
      runs.insert(rule.run);
      staggered |= rule.columns == Columns::Staggered;
      ramp |= rule.thickness_mm.from != rule.thickness_mm.to;
      zigzag |= rule.zigzag_mm > 0;
      middle |= rule.dropMiddle_mm > 0;
      last |= rule.lastThickness_mm.has_value();
      teeth |= rule.tooth_mm > 0;
    }
    // Levels are the user's: pieces come with the defaults.
    const Plan plan = used(Plan::fresh(1), pattern);
    for (const auto& [id, piece] : plan.pieces()) {
      CHECK(piece->root == ZoneColour{});
      CHECK(piece->end == ZoneColour{});
    }
  }
  CHECK(runs.size() == 5);
  CHECK((staggered && ramp && zigzag && middle && last && teeth));
}

TEST_CASE("the plain pattern grows toward the apex, thin beside the opening", "[plan][pattern]") {
  const Plan plan = used(Plan::fresh(1), starting("growing-toward-the-apex"));
  CHECK(plan.sections().size() == 6);
  const head::HeadShape shape;
  for (const auto& [id, section] : plan.sections()) {
    if (!section->layout->lastThickness_mm) continue;
    std::vector<const Piece*> run;
    for (const auto& [pieceId, piece] : plan.pieces())
      if (piece->section == id) run.push_back(piece);
    REQUIRE(run.size() > 2);
    CHECK(run.back()->thickness_mm == 2);
    CHECK(run.back()->laidOut->row == 1);
    for (std::size_t i = 1; i < run.size(); ++i) {
      CHECK(run[i]->backcomb.depth_mm >= run[i - 1]->backcomb.depth_mm);
      if (i + 1 < run.size() && run[i]->laidOut->row > 1)
        CHECK(run[i]->thickness_mm >= run[i - 1]->thickness_mm);
    }
  }
}

TEST_CASE("using a pattern keeps what is there and is one edit", "[plan][pattern]") {
  Plan plan = Plan::fresh(2);
  Piece own;
  own.line = {{170, 60}, {150, 60}};
  plan = applied(plan, addPiece(plan, own));
  const auto use = usePattern(plan, starting("fine-all-over"));
  REQUIRE(use);
  const Plan after = applied(plan, use->edit);
  for (const auto& [id, item] : plan.items()) CHECK(*after.item(id) == *item);
  CHECK(applied(after, inverse(use->edit)) == plan);
  CHECK(use->edit.args.size() == after.sections().size());
  CHECK(after.pieces().front().first == "piece-1");  // what came is placed after
  const auto back = readPlan(writePlan(after));
  REQUIRE(back);
  CHECK(*back == after);
}

TEST_CASE("on tight curls backcomb is taken out and said", "[plan][pattern]") {
  const Parts pattern = starting("soft-root-bold-ends");
  for (const CurlClass curl : {CurlClass::Curl, CurlClass::TightCurl, CurlClass::Coil, CurlClass::TightCoil}) {
    Plan plan = Plan::fresh(2);
    plan = applied(plan, changeHair(plan, [&](Hair& hair) { hair.curl = curl; }));
    const auto use = usePattern(plan, pattern);
    REQUIRE(use);
    const Plan after = applied(plan, use->edit);
    double deepest = 0;
    for (const auto& [id, piece] : after.pieces()) deepest = std::max(deepest, piece->backcomb.depth_mm);
    CHECK(use->isBackcombTakenOut == (curl != CurlClass::Curl));
    CHECK((deepest == 0) == (curl != CurlClass::Curl));
    for (const auto& [id, section] : after.sections())
      if (curl != CurlClass::Curl) CHECK(section->layout->backcomb_mm == Ramp{0, 0});
  }
  const auto plain = usePattern(Plan::fresh(2), starting("fine-all-over"));
  CHECK_FALSE(plain->isBackcombTakenOut);
}

TEST_CASE("hair that is too short for a pattern is said", "[plan][pattern]") {
  Plan plan = Plan::fresh(2);
  plan = applied(plan, changeHair(plan, [](Hair& hair) { hair.length_mm.fill(80); }));
  const auto codes = [&](const Parts& pattern) {
    std::set<IssueCode> found;
    const auto use = usePattern(plan, pattern);
    for (const Issue& issue : use->issues) {
      found.insert(issue.code);
      CHECK_FALSE(issue.items.empty());
    }
    return found;
  };
  CHECK(codes(starting("painted-from-the-middle-down")) == std::set<IssueCode>{IssueCode::HairShorterThanStart});
  CHECK(codes(starting("soft-root-bold-ends")) == std::set<IssueCode>{IssueCode::HairShorterThanBackcomb});
  CHECK(codes(starting("fine-all-over")).empty());
}

TEST_CASE("a pattern of one's own keeps rules and hand work, not the client's levels", "[plan][pattern]") {
  Plan plan = Plan::fresh(8);
  Formula formula;
  formula.letter = "A";
  plan = applied(plan, setItem(plan, "formula-1", formula));
  Section section;
  section.label = "back";
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = Layout{};
  const ChangeSet added = addSection(plan, section);
  plan = applied(plan, added);
  const ItemId id = added.args.front();
  plan = applied(plan, addTwins(plan, {id}));
  const ItemId second = plan.pieces()[1].first;
  plan = applied(plan, changePieces(plan, {second}, [](Piece& piece) {
    piece.thickness_mm = 2.5;
    piece.keptIn = KeptIn::OpenAir;
    piece.root = {{8, 7, 9}, FinishesAt{8, Tone::Ash}, "formula-1"};
  }));
  std::vector<ItemId> sections;
  for (const auto& entry : plan.sections()) sections.push_back(entry.first);
  const Parts pattern = patternOf(plan, sections, "Back, fine second row", "practice", "none known");
  const auto back = readPattern(writePattern(pattern));
  REQUIRE(back);
  CHECK(back->name == "Back, fine second row");
  CHECK(back->goodFor == "practice");
  CHECK(back->notFor == "none known");
  CHECK(back->plan == pattern.plan);
  CHECK_FALSE(back->plan.find<Formula>("formula-1"));

  const Plan other = used(onHead(head::HeadSet::Men, head::HeadSize::Large), *back);
  CHECK(other.sections().size() == 2);
  const int row = plan.find<Piece>(second)->laidOut->row;
  int found = 0;
  for (const auto& [pieceId, piece] : other.pieces()) {
    CHECK(piece->root == ZoneColour{});
    if (!piece->twinOf.empty()) CHECK(followsSource(other, *piece));
    if (piece->laidOut->row != row) continue;
    ++found;
    CHECK(piece->thickness_mm == 2.5);
    CHECK(piece->keptIn == KeptIn::OpenAir);
  }
  CHECK(found == 2);
}

TEST_CASE("a bad pattern says what would be right and where", "[plan][pattern]") {
  const auto refused = [](std::string_view text) {
    const auto pattern = readPattern(text);
    REQUIRE_FALSE(pattern);
    return describe(pattern.error());
  };
  CHECK(refused("{}") == "this JSON is not a pattern: it needs \"format\": \"combdraft pattern\"");
  CHECK(refused(R"({"format": "combdraft pattern", "version": 2})") == "\"name\" is missing");
  CHECK(refused(R"({"format": "combdraft pattern", "version": 2, "name": "x"})") ==
        "\"sections\" is missing");
  CHECK(refused(R"({"format": "combdraft pattern", "version": 2, "name": "x", "sections": [{"id": "s",
        "outline": [[0, 20], [40, 20], [40, 50]], "layout": {"run": "sideways"}}]})")
            .find("/sections/0/layout/run: found \"sideways\", allowed: horizontal") == 0);
  CHECK(refused(R"({"format": "combdraft pattern", "version": 2, "name": "x", "sections": [{"id": "s",
        "outline": [[0, 20], [40, 20]]}]})") ==
        "/sections/0/outline: found 2 entries, allowed is 3 to 128 entries");
}

TEST_CASE("the pattern on the page of the file format opens", "[plan][pattern]") {
  const std::string page = textOf(test::sourceDir() + "/docs/file-format.md");
  const std::size_t chapter = page.find("# Patterns and clips");
  REQUIRE(chapter != std::string::npos);
  const std::size_t begin = page.find("```json", chapter) + 7;
  const Parts pattern = [&] {
    auto read = readPattern(page.substr(begin, page.find("```", begin) - begin));
    if (!read) FAIL(describe(read.error()));
    return std::move(read).value();
  }();
  CHECK(used(Plan::fresh(1), pattern).sections().size() == 2);
}
