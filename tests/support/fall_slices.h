#pragma once
// Slices laid along the fall of the hair, as much taken as left out: what gives
// ribbons, where pieces across the fall give none.
#include "engine/colour/hair_colour.h"
#include "engine/hair/flow_field.h"
#include "tests/support/look_plans.h"

namespace combdraft::test {

/// The finish that reads like natural level 9.
inline plan::FinishesAt reads9() {
  double low = 6, high = 10.9;
  for (int i = 0; i < 50; ++i) {
    const double middle = (low + high) / 2;
    const auto lab = colour::labOf(colour::finishedHair(11, middle, colour::Tone::Natural), colour::Light::Daylight);
    (colour::LevelScale().levelOfLightness(lab.L) < 9 ? low : high) = middle;
  }
  return {low, plan::Tone::Natural};
}

/// Natural level 7 with slices along the fall from beside the part and all round
/// the whorl: `thickness_mm` of piece, as much left out, 25 mm from the opening.
/// They begin `inner_mm` from it.
inline plan::Plan alternating(const plan::Plan& head, double thickness_mm, double inner_mm) {
  plan::Plan plan = head;
  plan::Hair hair = plan.hair();
  for (auto& zone : hair.level) zone = {7, 7, 7};
  plan.put(plan::kHairId, hair);
  const head::HeadShape shape;
  const head::Hairline hairline(shape);
  std::vector<Vec3> part;
  for (const auto& p : head.head().part) part.push_back(shape.pointAt(p));
  const hair::FlowField field(shape, hairline, part, head.head().whorls, {}, {});
  const Vec3 whorl = shape.pointAt(plan.head().whorls.front().at);
  constexpr double kRing_mm = 25;
  std::vector<Vec3> starts;
  for (const double side : {1.0, -1.0})
    for (double y = 72; y > -30; y -= 2 * thickness_mm) starts.push_back(shape.project({side * kRing_mm, y, 88}));
  const int round = static_cast<int>(std::floor(kPi * kRing_mm / thickness_mm + 0.5));
  for (int i = 0; i < round; ++i) {
    const double a = 2 * kPi * (i + 0.5) / round;
    const Vec3 out = shape.project(whorl + kRing_mm * Vec3(std::cos(a), std::sin(a), 0));
    starts.push_back(shape.project(whorl + kRing_mm * (out - whorl).normalized()));
  }
  const auto step = [&](const Vec3& p, double by_mm) {
    return Vec3(shape.project(p + by_mm * field.direction(p, shape.normalAt(p), p.x() >= 0 ? 1 : -1, std::nullopt)));
  };
  for (const Vec3& start : starts) {
    std::vector<plan::ScalpPoint> line;
    Vec3 p = start;
    for (int i = 0; i < 60; ++i) {  // upstream
      const Vec3 next = step(p, -1.5);
      double nearest = (whorl - next).norm();
      for (const Vec3& place : part) nearest = std::min(nearest, (place - next).norm());
      if (nearest < inner_mm) break;
      p = next;
      if (i % 4 == 0) line.insert(line.begin(), shape.scalpPointAt(p));
    }
    line.push_back(shape.scalpPointAt(start));
    p = start;
    for (int i = 0; i < 60; ++i) {  // downstream
      p = step(p, 3);
      if (hairline.above_mm(p) < 2) break;
      if (i % 5 == 4) line.push_back(shape.scalpPointAt(p));
    }
    if (line.size() < 2) continue;
    plan::Piece piece = slice(line, thickness_mm);
    piece.root.lifts = {11, 10, 12};
    piece.root.finish = reads9();
    piece.start_mm = piece.blend_mm = 0;
    addPiece(plan, piece);
  }
  return plan;
}

}  // namespace combdraft::test
