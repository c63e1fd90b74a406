// Must come out, statements 3, 6 and 7: pieces that grow toward the apex, the
// face frame, and what lies underneath. Common practice, no source. One traced
// head a seed serves them all.
#include <catch2/catch.hpp>

#include <array>

#include "engine/advise/findings.h"
#include "engine/look/contrast.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using look::Region;

namespace {

constexpr int kFrontView = 0;

/// Slices up the back, `growth` 0 (all alike) or 1 (thin, early and plain below,
/// thick, late and backcombed toward the apex); the same hair taken in all.
plan::Plan towardApex(std::uint64_t number, double growth) {
  plan::Plan plan = plan::Plan::fresh(number);
  const head::HeadShape shape;
  constexpr int kPieces = 6;
  for (int i = 0; i < kPieces; ++i) {
    const double up = static_cast<double>(i) / (kPieces - 1) - 0.5;  // -0.5 lowest .. 0.5
    plan::Piece piece = backSlice(shape, -20 + 20.0 * i, 100, 10 * (1 + growth * up));
    piece.start_mm = 20 + growth * 30 * (up + 0.5);
    if (growth > 0) piece.backcomb = {40 + 50 * (up + 0.5), 0.2 + 0.3 * (up + 0.5), 28};
    addPiece(plan, piece);
  }
  return plan;
}

/// Light along the hairline on both sides: from the part's front end, or at the temple alone.
plan::Plan withFrame(std::uint64_t number, bool holdsPart) {
  plan::Plan plan = plan::Plan::fresh(number);
  const head::HeadShape shape;
  const head::Hairline hairline(shape);
  for (const double side : {1.0, -1.0}) {
    std::vector<plan::ScalpPoint> line;
    for (int i = 0; i <= 4; ++i) {
      const double turn = side * (holdsPart ? 1 + 10 * i : 44 + 4.5 * i);
      line.push_back(placeAtHeight(shape, turn, hairline.height_mm(turn) + (holdsPart ? 5 : 12)));
    }
    plan::Piece piece = slice(line, 10);
    piece.start_mm = 2, piece.blend_mm = 4;
    addPiece(plan, piece);
  }
  return plan;
}

/// All hair rooted above a height is lightened; what lies below it, or not.
plan::Plan overUnderneath(std::uint64_t number, bool underneathToo) {
  plan::Plan plan = plan::Plan::fresh(number);
  const head::HeadShape shape;
  plan::Piece kind = slice({}, 5);
  kind.taken_frac = 0.6;
  for (plan::Piece& ring : ringsOverAll(shape, kind)) {
    const double height = shape.pointAt(ring.line.front()).z();
    if (!underneathToo && height < 10 && ring.line.size() > 10) continue;
    addPiece(plan, ring);
  }
  return plan;
}

look::LookSettings wornAs(hair::WornWay way) {
  look::LookSettings settings;
  settings.worn.way = way;
  return settings;
}

struct Seen {
  double y[look::kRegions] = {}, light[look::kRegions] = {}, area[look::kRegions] = {};
  double lightness(Region r) const {
    const auto k = static_cast<std::size_t>(r);
    return colour::lightnessFromY(y[k] / area[k]);
  }
};
Seen seenFrom(const ColouredHair& head, int view) {
  Seen seen;
  for (std::uint32_t lock = 0; lock < head.hair().seen().locks(); ++lock)
    for (const visibility::SeenEntry& e : head.hair().seen().entriesOf(lock)) {
      if (e.view != view) continue;
      const look::BinColour& c = head.colours().at(lock, e.bin);
      const auto area = static_cast<double>(e.area_mm2);
      seen.area[e.region] += area;
      seen.y[e.region] += area * static_cast<double>(c.y);
      seen.light[e.region] += area * static_cast<double>(c.light);
    }
  return seen;
}

/// Share of light at a distance along hair from the pieces, seen from behind, by bins of 10 mm.
std::vector<double> lightAlong(const ColouredHair& head) {
  std::vector<double> light(40), area(40);
  for (std::uint32_t lock = 0; lock < head.hair().seen().locks(); ++lock)
    for (const visibility::SeenEntry& e : head.hair().seen().entriesOf(lock)) {
      if (e.view != kBackView || e.bin >= 40) continue;
      area[e.bin] += static_cast<double>(e.area_mm2);
      light[e.bin] += static_cast<double>(e.area_mm2 * head.colours().at(lock, e.bin).light);
    }
  for (std::size_t k = 0; k < 40; ++k) light[k] = area[k] > 0 ? light[k] / area[k] : 0;
  return light;
}
/// Millimetres over which light rises from a fifth to four fifths of its share at 150 to 200 mm.
double riseOf(const std::vector<double>& light) {
  double full = 0;
  for (std::size_t k = 15; k < 20; ++k) full += light[k] / 5;
  const auto at = [&](double share) {
    for (std::size_t k = 1; k < light.size(); ++k)
      if (light[k] >= share * full)
        return 10 * (static_cast<double>(k) - 1 + (share * full - light[k - 1]) / (light[k] - light[k - 1]));
    return 400.0;
  };
  return at(0.8) - at(0.2);
}
double rootLight(const std::vector<double>& light) {
  double sum = 0;
  for (std::size_t k = 0; k < 7; ++k) sum += light[k] / 7;
  return sum;
}

std::array<look::Contrast, look::kRegions + 1> contrastOf(const ColouredHair& head) {
  look::LocalPicture local(head.hair().seen());
  local.update(head.hair().seen(), head.colours(), {});
  return look::contrastOf(local, 1.0, {});
}

void growingPieces(ColouredHair& head, std::uint64_t seed) {
  head.update(towardApex(seed, 0));
  const auto plain = lightAlong(head);
  const auto plainAt = contrastOf(head);
  const double plainTaken = head.taken();
  head.update(towardApex(seed, 1));
  const auto grown = lightAlong(head);
  const auto grownAt = contrastOf(head);
  CAPTURE(rootLight(plain), rootLight(grown), riseOf(plain), riseOf(grown), plainTaken, head.taken());
  CHECK(head.taken() == Approx(plainTaken).epsilon(0.06));
  CHECK(rootLight(grown) < 0.7 * rootLight(plain));  // darker ...
  CHECK(riseOf(grown) > 1.5 * riseOf(plain));        // ... and softer
  // Below the roots light and dark stand as far apart as before.
  for (const Region region : {Region::BackMiddle, Region::BackEnds}) {
    const look::Contrast &before = plainAt[static_cast<std::size_t>(region)], &after = grownAt[static_cast<std::size_t>(region)];
    CAPTURE(look::regionWord(region), before.spread, after.spread, before.delta, after.delta);
    CHECK(after.spread > 0.85 * before.spread);
    if (region == Region::BackEnds) {
      CHECK((after.verdict == look::ContrastVerdict::TwoClearLevels || after.verdict == look::ContrastVerdict::Soft));
      CHECK(after.delta > 0.85 * before.delta);
    }
  }
}

void faceFrame(ColouredHair& head, std::uint64_t seed) {
  head.update(withFrame(seed, true));
  const Seen front = seenFrom(head, kFrontView);
  CHECK(head.taken() < 0.04);
  CHECK(head.lightSeen(kFrontView) > 4 * head.taken());
  // Around the face is the hair over the forehead, too.
  constexpr std::array kFace{Region::FaceFrameLeft, Region::FaceFrameRight, Region::FrontTop};
  for (const Region face : kFace)
    for (int r = 0; r < look::kRegions; ++r) {
      const auto other = static_cast<Region>(r);
      if (front.area[r] < 400 || std::find(kFace.begin(), kFace.end(), other) != kFace.end()) continue;
      CAPTURE(look::regionWord(face), look::regionWord(other), front.lightness(face), front.lightness(other));
      CHECK(front.lightness(face) > front.lightness(other) + 1);
    }
  // The temple alone: nothing over the forehead, and less seen than the frame.
  const double frameSeen = head.lightSeen(kFrontView);
  head.update(withFrame(seed, false));
  const Seen temple = seenFrom(head, kFrontView);
  CHECK(head.taken() > 0.005);
  CHECK(temple.light[static_cast<std::size_t>(Region::FrontTop)] < 0.02 * temple.area[static_cast<std::size_t>(Region::FrontTop)]);
  CHECK(head.lightSeen(kFrontView) < 0.75 * frameSeen);
}

void underneath(ColouredHair& down, ColouredHair& tied, ColouredHair& raised, std::uint64_t seed) {
  const hair::Worn layer{hair::WornWay::LayerRaised};
  const auto look = [&](const plan::Plan& plan) {
    down.update(plan);
    tied.update(plan, wornAs(hair::WornWay::TiedBack));
    raised.update(plan, wornAs(layer.way));
    return std::array{down.readings(), tied.readings(), raised.readings()};
  };
  const plan::Plan all = overUnderneath(seed, true), top = overUnderneath(seed, false);
  const auto full = look(all), bare = look(top);
  const auto found = [&](const plan::Plan& plan, const std::array<look::Readings, 3>& seen) {
    bool nape = false, beneath = false;
    for (const auto& f : advise::findingsOf(plan, {"", &seen[0], &seen[1], &seen[2], layer, nullptr})) {
      nape = nape || f.kind == advise::FindingKind::NapeBare;
      beneath = beneath || (f.kind == advise::FindingKind::BareUnderneath && f.worn.way == hair::WornWay::LayerRaised);
    }
    return std::pair{nape, beneath};
  };
  const auto change = [&](std::size_t way) { return full[way].whole.lightness - bare[way].whole.lightness; };
  CAPTURE(seed, change(0), change(1), change(2));
  CHECK(std::abs(change(0)) < 1);  // worn down nobody sees it
  CHECK(change(1) > 2);
  CHECK(change(2) > 5);
  for (std::size_t k = 0; k < look::kRegions; ++k)
    if (isLarge(full[0].regions[k])) {
      CAPTURE(look::regionWord(static_cast<Region>(k)));
      CHECK(std::abs(full[0].regions[k].whole->lightness - bare[0].regions[k].whole->lightness) < 2.5);
    }
  CHECK(found(all, full) == std::pair{false, false});
  CHECK(found(top, bare) == std::pair{true, true});
}

void allStatements(std::uint64_t seed, int locks) {
  CAPTURE(seed, locks);
  const plan::Plan plan = plan::Plan::fresh(seed);
  ColouredHair down(plan, locks);
  growingPieces(down, seed);
  faceFrame(down, seed);
  ColouredHair tied(plan, locks, wornAs(hair::WornWay::TiedBack)), raised(plan, locks, wornAs(hair::WornWay::LayerRaised));
  underneath(down, tied, raised, seed);
}

}  // namespace

TEST_CASE("growing pieces, face frame and a bare underneath, five seeds (common practice, no source)",
          "[advise][must-come-out]") {
  for (const std::uint64_t seed : {11, 12, 13, 14, 15}) allStatements(seed, 30000);
}

TEST_CASE("growing pieces, face frame and a bare underneath at 100,000 locks (common practice, no source)",
          "[advise][must-come-out]") {
  allStatements(16, 100000);
}
