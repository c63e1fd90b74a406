#include <algorithm>
#include <catch2/catch.hpp>

#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/plan/placement_check.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

Plan withPieces(std::initializer_list<Piece> pieces) {
  Plan plan = Plan::fresh(3);
  for (const Piece& piece : pieces) plan = applied(plan, addPiece(plan, piece));
  return plan;
}
Piece across(double drop_deg, double from_deg = 150, double to_deg = 210, double thickness_mm = 6) {
  Piece piece;
  piece.line = {{from_deg, drop_deg}, {(from_deg + to_deg) / 2, drop_deg}, {to_deg, drop_deg}};
  piece.thickness_mm = thickness_mm;
  return piece;
}

}  // namespace

TEST_CASE("pieces that want the same hair are named with how far", "[plan][placement-check]") {
  CHECK(checkPlacement(withPieces({across(80), across(88)})).empty());
  // Behind the head a degree of drop at level height is about 1.6 mm.
  const head::HeadShape shape;
  const double apart = (shape.pointAt({180, 80}) - shape.pointAt({180, 82})).norm();
  const auto issues = checkPlacement(withPieces({across(80), across(82)}));
  REQUIRE(issues.size() == 1);
  CHECK(issues[0].code == IssueCode::PiecesOverlap);
  CHECK(issues[0].items == std::vector<ItemId>{"piece-1", "piece-2"});
  CHECK(*parseNumber(issues[0].args[0]) == Approx(6 - apart).margin(0.35));
  // Side by side in one row, end to end: no overlap.
  CHECK(checkPlacement(withPieces({across(80, 150, 180), across(80, 180, 210)})).empty());
  // A crossing is one.
  Piece down = across(80);
  down.line = {{180, 60}, {180, 100}};
  CHECK(checkPlacement(withPieces({across(80), down})).size() == 1);
  // A left-out may lie over a piece.
  Piece leftOut = across(81);
  leftOut.action = Action::LeaveOut;
  CHECK(checkPlacement(withPieces({across(80), leftOut})).empty());
}

TEST_CASE("sections whose rule cannot be met are named", "[plan][placement-check]") {
  const auto codes = [](std::vector<ScalpPoint> outline, double thickness_mm) {
    Section section;
    section.outline = std::move(outline);
    section.layout = Layout{};
    section.layout->thickness_mm = {thickness_mm, thickness_mm};
    const Plan plan = Plan::fresh(3);
    std::vector<IssueCode> found;
    for (const Issue& issue : checkPlacement(applied(plan, addSection(plan, section)))) found.push_back(issue.code);
    return found;
  };
  CHECK(codes({{176, 105}, {120, 103}, {120, 70}, {176, 60}}, 5).empty());
  CHECK(codes({{176, 105}, {120, 70}, {120, 103}, {176, 60}}, 5) == std::vector{IssueCode::OutlineCrosses});
  CHECK(codes({{176, 84}, {120, 84}, {120, 82.5}, {176, 82.5}}, 12) == std::vector{IssueCode::SectionWithoutRoom});
}

TEST_CASE("no run of one section overlaps itself", "[plan][placement-check]") {
  for (const LayoutRun run : {LayoutRun::Horizontal, LayoutRun::Vertical, LayoutRun::DiagonalForward,
                              LayoutRun::DiagonalBack, LayoutRun::Pivoting}) {
    Section section;
    section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
    section.layout = Layout{};
    section.layout->run = run;
    section.layout->leftOut_mm = {4, 4};
    section.layout->foil_mm = 45;
    const Plan plan = Plan::fresh(3);
    CAPTURE(static_cast<int>(run));
    CHECK(checkPlacement(applied(plan, addSection(plan, section))).empty());
  }
}

TEST_CASE("a plan crowded beyond any head is said not to be checked whole", "[plan][placement-check]") {
  const auto saysSo = [](const Plan& plan) {
    const std::vector<Issue> issues = checkPlacement(plan);
    return std::any_of(issues.begin(), issues.end(), [](const Issue& issue) { return issue.code == IssueCode::TooCrowdedToCheck; });
  };
  Plan heaped = Plan::fresh(3);
  Piece piece = across(80, 60, 300, 40);
  piece.choice = "choice-1";
  for (std::size_t i = 0; i < limits::kPieces; ++i) heaped.put("piece-" + std::to_string(i), piece);
  CHECK(saysSo(heaped));

  // Two thousand of them side by side are no such thing.
  Plan spread = Plan::fresh(3);
  for (int row = 0; row < 40; ++row)
    for (int column = 0; column < 50; ++column) {
      Piece small = across(40 + row, 100 + 3.2 * column, 102 + 3.2 * column, 0.5);
      small.choice = "choice-1";
      spread.put("piece-" + std::to_string(50 * row + column), small);
    }
  CHECK_FALSE(saysSo(spread));
}
