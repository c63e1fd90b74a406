#include "engine/advise/strips.h"

#include <algorithm>
#include <cmath>

#include "engine/head/measures.h"
#include "engine/head/surface_distance.h"

namespace combdraft::advise {
namespace {

head::HeadShape shapeOf(const plan::Plan& plan) {
  const auto fitted = head::fitHead(plan.head().measures);
  return head::HeadShape(fitted ? fitted->axes : head::HeadAxes{});
}

// A thousandth of a degree is 0.002 mm; the file stays readable.
plan::ScalpPoint rounded(const plan::ScalpPoint& p) {
  return {std::round(p.bearing_deg * 1000) / 1000, std::round(p.drop_deg * 1000) / 1000};
}

}  // namespace

Strips::Strips(const plan::Plan& plan)
    : shape_(shapeOf(plan)), hairline_(shape_, plan.head().hairline) {}

std::optional<Strip> Strips::of(const plan::Piece& piece) const {
  std::vector<Vec3> line;
  for (const plan::ScalpPoint& point : piece.line) {
    const Vec3 at = shape_.pointAt(point);
    if (line.empty() || (at - line.back()).norm() > 0.01) line.push_back(at);
  }
  if (line.size() < 2) return std::nullopt;
  return Strip{head::StripFrame(shape_, line), piece.thickness_mm};
}

std::vector<plan::ScalpPoint> Strips::beside(const plan::Piece& piece, double left_mm) const {
  const auto strip = of(piece);
  if (!strip) return {};
  const double length = strip->frame.length_mm();
  const int parts = std::clamp(
      std::max(static_cast<int>(piece.line.size()) - 1, static_cast<int>(length / 12)), 1, 40);
  std::vector<plan::ScalpPoint> line;
  for (int i = 0; i <= parts; ++i) {
    const double along = length * i / parts;
    const Vec3 at = strip->frame.pointAt(along);
    line.push_back(rounded(shape_.scalpPointAt(
        left_mm == 0 ? at : head::surfaceOffset(shape_, at, strip->frame.leftAt(along), left_mm))));
  }
  return line;
}

std::vector<plan::ScalpPoint> Strips::across(const Strip& strip, double along_mm,
                                             double half_mm) const {
  const Vec3 at = strip.frame.pointAt(along_mm), left = strip.frame.leftAt(along_mm);
  std::vector<plan::ScalpPoint> line;
  for (const double side : {-1.0, -0.5, 0.0, 0.5, 1.0})
    line.push_back(rounded(shape_.scalpPointAt(
        side == 0 ? at : head::surfaceOffset(shape_, at, left, side * half_mm))));
  return line;
}

bool Strips::contains(const Strip& outer, const Strip& inner) {
  constexpr double kSpare_mm = 0.6;
  const double reach = outer.thickness_mm + 5;
  return std::all_of(inner.frame.line().begin(), inner.frame.line().end(), [&](const Vec3& at) {
    const auto place = outer.frame.placeOf(at, reach);
    return place && place->along_mm >= -kSpare_mm &&
           place->along_mm <= outer.frame.length_mm() + kSpare_mm &&
           std::abs(place->across_mm) + inner.thickness_mm / 2 <= outer.thickness_mm / 2 + kSpare_mm;
  });
}

bool Strips::overlap(const Strip& a, const Strip& b, double gap_mm) {
  const double reach = (a.thickness_mm + b.thickness_mm) / 2 + gap_mm;
  if ((a.frame.centre() - b.frame.centre()).norm() > a.frame.radius_mm() + b.frame.radius_mm() + reach)
    return false;
  const auto meets = [&](const Strip& line, const Strip& other) {
    return std::any_of(line.frame.line().begin(), line.frame.line().end(), [&](const Vec3& at) {
      const auto place = other.frame.placeOf(at, reach);
      return place && place->onStrip && std::abs(place->across_mm) < reach;
    });
  };
  return meets(a, b) || meets(b, a);
}

bool Strips::isInHair(const std::vector<plan::ScalpPoint>& line) const {
  return std::all_of(line.begin(), line.end(),
                     [&](const plan::ScalpPoint& p) { return hairline_.contains(p); });
}

}  // namespace combdraft::advise
