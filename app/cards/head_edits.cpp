#include "app/cards/head_edits.h"

#include <cmath>

#include "engine/head/landmarks.h"
#include "engine/head/part_line.h"
#include "engine/head/surface_distance.h"

namespace combdraft::cards {
namespace {

// How far aside the everyday words put it (own choice).
constexpr double kSidePart_mm = 38, kWhorlAside_mm = 16, kTwoWhorls_mm = 22;
constexpr double kOnCentreLine_mm = 8;

head::HeadShape shapeOf(const plan::Head& head) {
  const Result<head::FittedHead> fitted = head::fitHead(head.measures);
  return fitted ? head::HeadShape(fitted->axes) : head::HeadShape();
}

head::ScalpPoint tenths(const head::ScalpPoint& p) {
  return {std::round(p.bearing_deg * 10) / 10, std::round(p.drop_deg * 10) / 10};
}

}  // namespace

std::vector<head::ScalpPoint> partLine(const plan::Head& head, PartPlace place) {
  if (place == PartPlace::None) return {};
  const head::HeadShape shape = shapeOf(head);
  const head::Hairline hairline(shape, head.hairline);
  std::vector<head::ScalpPoint> line = head::defaultPart(shape, hairline);
  if (place != PartPlace::Middle)
    line = head::partMoved(shape, hairline, line, place == PartPlace::Right ? kSidePart_mm : -kSidePart_mm).line;
  for (head::ScalpPoint& point : line) point = tenths(point);
  return line;
}

std::vector<plan::Whorl> whorlsAt(const plan::Head& head, WhorlPlace place) {
  const head::HeadShape shape = shapeOf(head);
  const Vec3 crown = head::defaultWhorl(shape);
  const Vec3 onLine = shape.pointAlong(Vec3(0, crown.y(), crown.z()));
  const auto whorl = [&](double right_mm, plan::Turn turn) {
    plan::Whorl w;
    w.at = tenths(shape.scalpPointAt(head::surfaceOffset(shape, onLine, Vec3::UnitX(), right_mm)));
    w.turn = turn;
    return w;
  };
  switch (place) {
    case WhorlPlace::Left: return {whorl(-kWhorlAside_mm, plan::Turn::Clockwise)};
    case WhorlPlace::Middle: return {whorl(0, plan::Turn::Clockwise)};
    case WhorlPlace::Right: return {whorl(kWhorlAside_mm, plan::Turn::Counterclockwise)};
    case WhorlPlace::Two:
      return {whorl(-kTwoWhorls_mm, plan::Turn::Clockwise), whorl(kTwoWhorls_mm, plan::Turn::Counterclockwise)};
  }
  return {};
}

PartPlace partPlace(const plan::Head& head) {
  if (head.part.size() < 2) return PartPlace::None;
  const head::HeadShape shape = shapeOf(head);
  const double x = shape.pointAt(head.part.front()).x();
  return x > kOnCentreLine_mm ? PartPlace::Right : x < -kOnCentreLine_mm ? PartPlace::Left : PartPlace::Middle;
}

WhorlPlace whorlPlace(const plan::Head& head) {
  if (head.whorls.size() > 1) return WhorlPlace::Two;
  if (head.whorls.empty()) return WhorlPlace::Middle;
  const double x = shapeOf(head).pointAt(head.whorls.front().at).x();
  return x > kOnCentreLine_mm ? WhorlPlace::Right : x < -kOnCentreLine_mm ? WhorlPlace::Left : WhorlPlace::Middle;
}

}  // namespace combdraft::cards
