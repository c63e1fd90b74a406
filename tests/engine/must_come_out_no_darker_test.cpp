// Must come out (b): without overlap, with one lightening formula: thicker,
// more, an earlier start or a larger share never darkens any lock or arc bin,
// exactly (formula: each lock's own numbers are fixed, so it can only gain).
#include <catch2/catch.hpp>

#include "tests/engine/plan_samples.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

// Thicker is not asked of a bare-under painted piece: its brush reaches a share
// of the thickness from the upper edge, and that edge moves.
bool isPaint(const plan::Piece& p) { return p.taking == plan::Taking::Paint; }

struct Change {
  const char* what;
  void (*make)(plan::Piece&, plan::samples::Draws&);
};

const Change kChanges[] = {
    {"thicker", [](plan::Piece& p, plan::samples::Draws& d) { if (!isPaint(p)) p.thickness_mm += d.uniform(0.1, 3); }},
    {"larger share", [](plan::Piece& p, plan::samples::Draws& d) { p.taken_frac = std::min(1.0, p.taken_frac + d.uniform(0.01, 0.4)); }},
    {"earlier start", [](plan::Piece& p, plan::samples::Draws& d) { p.start_mm = std::max(0.0, p.start_mm - d.uniform(0.1, 30)); }},
    {"start from the scalp", [](plan::Piece& p, plan::samples::Draws&) { p.start_mm = 0; }},
    {"fewer hairs pushed", [](plan::Piece& p, plan::samples::Draws& d) { p.backcomb.pushed_frac *= d.uniform(0, 1); }},
    {"shallower backcomb", [](plan::Piece& p, plan::samples::Draws& d) { p.backcomb.depth_mm -= d.uniform(0, 0.3) * p.backcomb.depth_mm; }},
    {"no drop-out", [](plan::Piece& p, plan::samples::Draws&) { p.dropOuts.clear(); }},
};

/// Number of bins that got darker, and of those that got lighter.
std::pair<int, int> compare(const std::vector<look::BinColour>& before, const ColouredHair& after) {
  int darker = 0, lighter = 0;
  const auto bins = static_cast<std::size_t>(after.colours().bins());
  for (std::size_t k = 0; k < before.size(); ++k) {
    const look::BinColour& now = after.colours().of(static_cast<std::uint32_t>(k / bins))[k % bins];
    if (now.y < before[k].y || now.light < before[k].light) ++darker;
    if (now.y > before[k].y) ++lighter;
  }
  return {darker, lighter};
}

std::vector<look::BinColour> snapshot(const ColouredHair& head) {
  const auto bins = static_cast<std::size_t>(head.colours().bins());
  return {head.colours().of(0), head.colours().of(0) + bins * head.hair().locks().size()};
}

}  // namespace

TEST_CASE("thicker, more, earlier or a larger share never darkens any lock or bin, exactly",
          "[look][must-come-out]") {
  plan::samples::Draws draw(5);
  plan::Plan plan = plan::Plan::fresh(12);
  plan::Hair hair;
  hair.scattered = {{std::nullopt, 0.1, 60, 300, 8, {}}};
  hair.white_frac = 0.05;
  plan.put(plan::kHairId, hair);
  plan::Treatment shadow;
  shadow.choice = "choice-1";
  shadow.kind = plan::Treatment::Kind::RootShadow;
  plan.put("treatment-1", shadow);
  const head::HeadShape shape;
  std::vector<plan::Piece> later;
  for (double height = 66; height > -30; height -= 16)  // far enough apart never to meet
    for (const double side : {-1.0, 1.0}) {
      std::vector<plan::ScalpPoint> line;
      for (int i = 0; i <= 5; ++i) line.push_back(placeAtHeight(shape, side * (100 + 14 * i), height));
      plan::Piece piece = slice(line, draw.uniform(2, 5));
      piece.taken_frac = draw.uniform(0.3, 0.8);
      piece.start_mm = draw.uniform(5, 40);
      piece.blend_mm = draw.uniform(0, 30);
      // Pushed hair ends clear of where the other hair starts, as backcombing does.
      piece.backcomb = {draw.uniform(140, 200), draw.uniform(0, 1), draw.uniform(5, 30)};
      piece.dropOuts = {{draw.uniform(5, 20), draw.uniform(21, 40)}};
      if (draw.whole(0, 2) == 0) {
        piece.taking = plan::Taking::Weave;
        piece.tooth_mm = draw.uniform(0.5, 5);
        piece.gap_mm = draw.uniform(0.5, 5);
      }
      if (draw.whole(0, 3) == 0) piece.taking = plan::Taking::Paint;
      if (draw.whole(0, 1)) piece.stop_mm = draw.uniform(100, 300);
      if (later.size() < 4 && draw.whole(0, 1))
        later.push_back(piece);
      else
        addPiece(plan, piece);
    }
  REQUIRE(later.size() >= 2);
  ColouredHair head(plan, 6000, {}, 2);

  std::size_t gained[std::size(kChanges) + 1] = {};
  for (int round = 0; round < 80; ++round) {
    const std::vector<look::BinColour> before = snapshot(head);
    std::size_t which = std::size(kChanges);
    plan::Plan now = plan;
    if (round % 8 == 7 && !later.empty()) {  // more
      addPiece(now, later.back());
      later.pop_back();
      plan = now;
    } else {
      which = static_cast<std::size_t>(round) % std::size(kChanges);
      const auto pieces = plan.pieces();
      const auto& [id, piece] = pieces[static_cast<std::size_t>(draw.whole(0, static_cast<int>(pieces.size()) - 1))];
      plan::Piece changed = *piece;
      kChanges[which].make(changed, draw);
      now.put(id, changed);
      if (which < 3) plan = now;  // walk on; the others are undone to keep them possible
    }
    head.update(now);
    const auto [darker, lighter] = compare(before, head);
    INFO("round " << round << ", " << (which < std::size(kChanges) ? kChanges[which].what : "one more piece"));
    CHECK(darker == 0);
    gained[which] += static_cast<std::size_t>(lighter);
    head.update(plan);
  }
  // Every kind of change did lighten something: the comparison had work to do.
  for (const std::size_t g : gained) CHECK(g > 0);
}
