#include "engine/hair/flow_field.h"

#include <algorithm>
#include <cmath>

#include "engine/head/landmarks.h"

namespace combdraft::hair {
namespace {

Vec3 tangential(const Vec3& v, const Vec3& n) { return v - v.dot(n) * n; }

Vec3 nearestOnLine(const std::vector<Vec3>& line, const Vec3& p) {
  Vec3 best = line.front();
  double bestSquared = (p - best).squaredNorm();
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const Vec3 d = line[i + 1] - line[i];
    const double length = d.squaredNorm();
    const double t = length > 0 ? std::clamp((p - line[i]).dot(d) / length, 0.0, 1.0) : 0.0;
    const Vec3 q = line[i] + t * d;
    const double squared = (p - q).squaredNorm();
    if (squared < bestSquared) best = q, bestSquared = squared;
  }
  return best;
}

}  // namespace

FlowField::FlowField(const head::HeadShape& shape, const head::Hairline& hairline,
                     std::vector<Vec3> part, const std::vector<plan::Whorl>& whorls, const Worn& worn,
                     const Assumptions& assumptions)
    : shape_(shape),
      hairline_(hairline),
      part_(std::move(part)),
      way_(worn.way),
      partReach_(assumptions["fall.partReach_mm"]),
      partWeight_(assumptions["fall.partWeight"]),
      whorlReach_(assumptions["fall.whorlReach_mm"]),
      whorlWeight_(assumptions["fall.whorlWeight"]),
      combBack_(assumptions["fall.combBack"]),
      faceAway_(assumptions["fall.faceAway"]) {
  if (part_.size() < 2) part_.clear();
  if (way_ == WornWay::Blown) whorlWeight_ *= assumptions["fall.blown"];
  if (way_ == WornWay::CrownOpened) {
    // The hand spreads it straight outward, wider than it grows.
    whorlWeight_ *= assumptions["fall.crownOpened"];
    whorlReach_ *= 1.3;
    spiral_deg_ = 10;
  }
  if (way_ == WornWay::LayerRaised) raisedFrom_mm_ = head::centreLinePoint(shape_, worn.raised_mm).z();
  for (const plan::Whorl& w : whorls) {
    const Vec3 at = shape_.pointAt(w.at);
    whorls_.push_back(
        {at, shape_.normalAt(at), w.turn == plan::Turn::Clockwise ? 1.0 : -1.0});
  }
}

double FlowField::partSide(const Vec3& p) const {
  // Tied to the part where it runs; ahead of and behind it to its ends.
  const double x = part_.empty() ? 0.0 : nearestOnLine(part_, p).x();
  return std::tanh((p.x() - x) / 6.0);
}

std::optional<FlowField::Tie> FlowField::tieOf(const Vec3& root) const {
  if (way_ != WornWay::HalfUp && way_ != WornWay::TiedBack && way_ != WornWay::LayerRaised) return std::nullopt;
  if (way_ == WornWay::LayerRaised) {
    if (root.z() < raisedFrom_mm_) return std::nullopt;
    const Vec3 top = shape_.pointAlong(Vec3::UnitZ());
    return Tie{top, shape_.normalAt(top), true};
  }
  const double sy = shape_.axes().b_mm / 94.9, sz = shape_.axes().c_mm / 90;
  if (way_ == WornWay::HalfUp && root.z() < (30 + 0.25 * root.y() / sy) * sz)
    return std::nullopt;
  const Vec3 toward = way_ == WornWay::TiedBack ? Vec3(0, -96 * sy, 14 * sz)
                                                : Vec3(0, -80 * sy, 44 * sz);
  const Vec3 at = shape_.pointAlong(toward);
  return Tie{at, shape_.normalAt(at)};
}

Vec3 FlowField::direction(const Vec3& p, const Vec3& n, double side,
                          const std::optional<Tie>& tie) const {
  if (tie) return unitOr(tangential(tie->at - p, n), n.unitOrthogonal());

  const double sy = shape_.axes().b_mm / 94.9;
  Vec3 d = tangential(-Vec3::UnitZ(), n);

  if (!part_.empty()) {
    const Vec3 from = nearestOnLine(part_, p);
    const Vec3 away = tangential(p - from, n);
    const double distance = away.norm();
    const Vec3 fallback = unitOr(tangential(Vec3(side, 0, 0), n), n.unitOrthogonal());
    // On the line itself the direction is the lock's own side.
    const double sure = smoothstep(distance / 1.5);
    const Vec3 unit = unitOr(unitOr(away, fallback) * sure + fallback * (1 - sure), fallback);
    d += partWeight_ * std::exp(-distance / partReach_) * unit;
  }

  for (const WhorlAt& w : whorls_) {
    const Vec3 radial = tangential(p - w.at, n);
    const double r = (p - w.at).norm() / whorlReach_;
    const double weight = whorlWeight_ * std::exp(-r * r);
    if (weight < 1e-4) continue;
    const Vec3 out = unitOr(radial, tangential(Vec3(side, 0, 0), n));
    const Vec3 around = out.cross(n) * w.sign;
    d += weight * (std::cos(radians(spiral_deg_)) * out + std::sin(radians(spiral_deg_)) * around);
  }

  const double sideHere = part_.empty() ? std::tanh(p.x() / 30) * 0.5 : partSide(p);
  const double comb = part_.empty() ? 1.4 : combBack_;
  const double front = part_.empty() ? smoothstep(-50, 60, p.y() / sy)
                                     : smoothstep(0, 70, p.y() / sy);
  d += comb * front * tangential(Vec3(0.35 * sideHere, -1, 0), n);

  // Out of the face, away from the part's front end, near the front hairline.
  const double azimuth = std::atan2(p.x(), p.y());
  const double turn = std::abs(degrees(azimuth));
  if (turn < 64) {
    const double above = hairline_.above_mm(p);
    const double weight = faceAway_ * smoothstep(64, 40, turn) * smoothstep(20, 0, above);
    if (weight > 0) {
      const Vec3 increasing(std::cos(azimuth), -std::sin(azimuth), 0);
      const double pure = part_.empty() ? std::tanh(p.x() / 8) : partSide(p);
      const double s = pure + side * (1 - std::abs(pure));  // on the part: the lock's own side
      const Vec3 back = part_.empty() ? Vec3(tangential(Vec3(0, -1, 0.6), n)) : Vec3::Zero();
      d += weight * (s * tangential(increasing, n) + 0.6 * back);
    }
  }

  return unitOr(tangential(d, n), unitOr(tangential(Vec3(side, -0.5, -1), n), n.unitOrthogonal()));
}

bool matters(std::string_view assumption, WornWay way) {
  if (assumption == "fall.tail_mm") return way == WornWay::HalfUp || way == WornWay::TiedBack;
  if (assumption == "fall.blown") return way == WornWay::Blown;
  if (assumption == "fall.crownOpened") return way == WornWay::CrownOpened;
  return true;
}

}  // namespace combdraft::hair
