#include "engine/head/strip_frame.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/base/expect.h"
#include "engine/head/surface_distance.h"

namespace combdraft::head {
namespace {

constexpr double kStep_mm = 3;
constexpr std::size_t kStretchSegments = 8;

std::pair<Vec3, double> ballAround(const Vec3* begin, const Vec3* end) {
  Vec3 low = *begin, high = *begin;
  for (const Vec3* p = begin; p != end; ++p) low = low.cwiseMin(*p), high = high.cwiseMax(*p);
  const Vec3 centre = (low + high) / 2;
  double radius = 0;
  for (const Vec3* p = begin; p != end; ++p) radius = std::max(radius, (*p - centre).norm());
  return {centre, radius};
}

/// Mean curvature, 1/mm, over the first 20 mm from `at` to the side.
double meanBend(const HeadShape& shape, const Vec3& at, const Vec3& side) {
  constexpr double kProbe_mm = 20;
  const Vec3 away = shape.project(at + kProbe_mm * side);
  const double chord = (away - at).norm();
  const double halfTurn =
      std::asin(std::min(1.0, (shape.normalAt(away) - shape.normalAt(at)).norm() / 2));
  return 2 * std::sin(halfTurn) / chord;
}

}  // namespace

StripFrame::StripFrame(const HeadShape& shape, const std::vector<Vec3>& line)
    : shape_(shape), line_(resampledOnSurface(shape, line, kStep_mm)) {
  COMBDRAFT_EXPECT(line_.size() >= 2, line.size(), line_.size());
  const std::size_t n = line_.size();
  along_.assign(n, 0);
  for (std::size_t i = 1; i < n; ++i)
    along_[i] = along_[i - 1] + lineLength_mm(shape, {line_[i - 1], line_[i]});
  for (std::size_t i = 0; i < n; ++i) {
    const Vec3 in = i > 0 ? unitOr(line_[i] - line_[i - 1], Vec3::Zero()) : Vec3::Zero();
    const Vec3 out = i + 1 < n ? unitOr(line_[i + 1] - line_[i], Vec3::Zero()) : Vec3::Zero();
    const Vec3 left = leftOf(shape, line_[i], in + out);
    left_.push_back(left);
    bendLeft_.push_back(meanBend(shape, line_[i], left));
    bendRight_.push_back(meanBend(shape, line_[i], -left));
  }
  for (std::size_t first = 0; first + 1 < n; first += kStretchSegments) {
    const std::size_t last = std::min(first + kStretchSegments, n - 1);
    const auto [centre, radius] = ballAround(&line_[first], &line_[last] + 1);
    stretches_.push_back({first, last, centre, radius});
  }
  std::tie(centre_, radius_mm_) = ballAround(line_.data(), line_.data() + n);
}

std::optional<StripPlace> StripFrame::placeOf(const Vec3& q, double reach_mm) const {
  if ((q - centre_).norm() > radius_mm_ + reach_mm) return std::nullopt;
  double best = reach_mm * reach_mm;
  bool found = false;
  std::size_t segment = 0;
  double t = 0;
  for (const Stretch& s : stretches_) {
    const double gap = (q - s.centre).norm() - s.radius_mm;
    if (gap > 0 && gap * gap > best) continue;
    for (std::size_t i = s.first; i < s.last; ++i) {
      const Vec3 step = line_[i + 1] - line_[i], off = q - line_[i];
      const double at = std::clamp(off.dot(step) / step.squaredNorm(), 0.0, 1.0);
      const double distance = (off - at * step).squaredNorm();
      if (distance > best || (found && distance == best)) continue;
      best = distance, found = true, segment = i, t = at;
    }
  }
  if (!found) return std::nullopt;
  const Vec3 step = line_[segment + 1] - line_[segment];
  const double span_mm = along_[segment + 1] - along_[segment];
  StripPlace place;
  place.onStrip = true;
  const double unclamped = (q - line_[segment]).dot(step) / step.squaredNorm();
  const bool beforeStart = segment == 0 && unclamped < 0;
  const bool pastEnd = segment + 2 == line_.size() && unclamped > 1;
  double along = t;
  if (beforeStart || pastEnd) {
    along = unclamped;
    place.onStrip = false;
  }
  place.along_mm = along_[segment] + along * span_mm;
  const Vec3 foot = line_[segment] + along * step;
  const Vec3 left = (1 - t) * left_[segment] + t * left_[segment + 1];
  const double aside = (q - foot).dot(left);
  const std::vector<double>& bends = aside < 0 ? bendRight_ : bendLeft_;
  const double bend = (1 - t) * bends[segment] + t * bends[segment + 1];
  const double chord = (q - foot).norm();
  // Chord to arc on a circle of that curvature.
  const double turn = std::min(bend * chord / 2, 0.95);
  const double arc = turn > 1e-6 ? chord * std::asin(turn) / turn : chord;
  place.across_mm = std::copysign(arc, aside);
  return place;
}

std::pair<std::size_t, double> StripFrame::locate(double along_mm) const {
  const double s = std::clamp(along_mm, 0.0, along_.back());
  const auto above = std::upper_bound(along_.begin() + 1, along_.end() - 1, s);
  const auto i = static_cast<std::size_t>(above - along_.begin()) - 1;
  return {i, (s - along_[i]) / (along_[i + 1] - along_[i])};
}

Vec3 StripFrame::pointAt(double along_mm) const {
  const auto [i, t] = locate(along_mm);
  return shape_.project(line_[i] + t * (line_[i + 1] - line_[i]));
}

Vec3 StripFrame::headingAt(double along_mm) const {
  const Vec3 at = pointAt(along_mm), left = leftAt(along_mm);
  return unitOr(left.cross(shape_.normalAt(at)), left);
}

Vec3 StripFrame::leftAt(double along_mm) const {
  const auto [i, t] = locate(along_mm);
  const Vec3 left = (1 - t) * left_[i] + t * left_[i + 1];
  const Vec3 normal = shape_.normalAt(line_[i] + t * (line_[i + 1] - line_[i]));
  return unitOr(left - left.dot(normal) * normal, left_[i]);
}

}  // namespace combdraft::head
