#include "engine/head/scalp_outline.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"
#include "engine/head/surface_distance.h"

namespace combdraft::head {
namespace {

double cross(const Vec2& a, const Vec2& b) { return a.x() * b.y() - a.y() * b.x(); }

/// Where segment p..q meets segment a..b: share along p..q, half-open at b.
std::optional<double> meets(const Vec2& p, const Vec2& q, const Vec2& a, const Vec2& b) {
  const Vec2 along = q - p, side = b - a;
  const double turn = cross(along, side);
  if (std::abs(turn) < 1e-18) return std::nullopt;
  const double t = cross(a - p, side) / turn, u = cross(a - p, along) / turn;
  if (t < 0 || t > 1 || u < 0 || u >= 1) return std::nullopt;
  return t;
}

}  // namespace

ScalpOutline::ScalpOutline(const HeadShape& shape, const std::vector<Vec3>& corners)
    : shape_(shape), corners_(corners) {
  COMBDRAFT_EXPECT(corners.size() >= 3, corners.size());
  Vec3 sum = Vec3::Zero();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Vec3& next = corners[(i + 1) % corners.size()];
    const std::vector<Vec3> side = resampledOnSurface(shape, {corners[i], next}, 3);
    for (std::size_t k = 0; k + 1 < side.size(); ++k) {
      line_.push_back(side[k]);
      side_.push_back(i);
      sum += (side[k + 1] - side[k]).norm() * unitOr(side[k] + side[k + 1], Vec3::UnitZ());
    }
  }
  if (line_.empty()) line_.push_back(corners.front()), side_.push_back(0);
  middle_ = shape.pointAlong(unitOr(sum, corners.front()));
  turn_ = Eigen::Quaterniond::FromTwoVectors(middle_, Vec3::UnitZ()).toRotationMatrix();
  for (const Vec3& point : line_) {
    flat_.push_back(mapped(point));
    radius_mm_ = std::max(radius_mm_, (point - middle_).norm());
  }
  line_.push_back(line_.front());
  flat_.push_back(flat_.front());
  side_.push_back(side_.front());
}

Vec2 ScalpOutline::mapped(const Vec3& point) const {
  const Vec3 d = turn_ * unitOr(point, Vec3::UnitZ());
  return Vec2(d.x(), d.y()) / std::max(1 + d.z(), 1e-9);
}

Vec3 ScalpOutline::unmapped(const Vec2& place) const {
  const double r2 = place.squaredNorm();
  const Vec3 d(2 * place.x(), 2 * place.y(), 1 - r2);
  return shape_.pointAlong(turn_.transpose() * d);
}

bool ScalpOutline::contains(const Vec3& surfacePoint) const {
  const Vec2 p = mapped(surfacePoint);
  bool inside = false;
  for (std::size_t i = 0; i + 1 < flat_.size(); ++i) {
    const Vec2 &a = flat_[i], &b = flat_[i + 1];
    if ((a.y() > p.y()) != (b.y() > p.y()) &&
        p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x()))
      inside = !inside;
  }
  return inside;
}

std::optional<Vec3> ScalpOutline::crossing() const {
  const std::size_t n = flat_.size() - 1;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t k = i + 2; k < n; ++k) {
      if (i == 0 && k + 1 == n) continue;  // neighbours round the start
      if (const auto t = meets(flat_[i], flat_[i + 1], flat_[k], flat_[k + 1]))
        return unmapped(flat_[i] + *t * (flat_[i + 1] - flat_[i]));
    }
  return std::nullopt;
}

std::vector<std::vector<Vec3>> ScalpOutline::inside(const std::vector<Vec3>& line) const {
  std::vector<std::vector<Vec3>> found;
  if (line.empty()) return found;
  std::vector<Vec3> run;
  bool within = contains(line.front());
  if (within) run.push_back(line.front());
  for (std::size_t i = 1; i < line.size(); ++i) {
    const Vec2 p = mapped(line[i - 1]), q = mapped(line[i]);
    std::vector<double> hits;
    for (std::size_t k = 0; k + 1 < flat_.size(); ++k)
      if (const auto t = meets(p, q, flat_[k], flat_[k + 1])) hits.push_back(*t);
    std::sort(hits.begin(), hits.end());
    for (const double t : hits) {
      const Vec3 edge = unmapped(p + t * (q - p));
      if (within) {
        run.push_back(edge);
        found.push_back(std::move(run));
        run.clear();
      } else {
        run = {edge};
      }
      within = !within;
    }
    // A crossing that rounding lost must not turn the rest inside out.
    if (const bool now = contains(line[i]); now != within) {
      if (within) found.push_back(std::exchange(run, {}));
      within = now;
    }
    if (within) run.push_back(line[i]);
  }
  if (!run.empty()) found.push_back(std::move(run));
  std::erase_if(found, [](const auto& part) { return part.size() < 2; });
  return found;
}

std::optional<std::pair<std::vector<Vec3>, std::vector<Vec3>>> ScalpOutline::split(
    const std::vector<Vec3>& parting, double reach_mm) const {
  if (parting.size() < 2) return std::nullopt;
  std::vector<Vec3> line = resampledOnSurface(shape_, parting, 3);
  if (line.size() < 2) return std::nullopt;
  const auto lead = [&](const Vec3& end, const Vec3& before) {
    return surfaceOffset(shape_, end, end - before, reach_mm);
  };
  if (contains(line.front())) line.insert(line.begin(), lead(line[0], line[1]));
  if (contains(line.back())) line.push_back(lead(line.back(), line[line.size() - 2]));

  struct Hit {
    double at;            // along the outline: stretch number and share
    std::size_t segment;  // of the line
    double along;
    Vec3 place;
  };
  std::vector<Hit> hits;
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const Vec2 p = mapped(line[i]), q = mapped(line[i + 1]);
    for (std::size_t k = 0; k + 1 < flat_.size(); ++k)
      if (const auto t = meets(p, q, flat_[k], flat_[k + 1])) {
        const Vec2 place = p + *t * (q - p);
        const double share = (place - flat_[k]).norm() / (flat_[k + 1] - flat_[k]).norm();
        hits.push_back({static_cast<double>(k) + share, i, static_cast<double>(i) + *t,
                        unmapped(place)});
      }
  }
  if (hits.size() != 2) return std::nullopt;
  std::sort(hits.begin(), hits.end(), [](const Hit& a, const Hit& b) { return a.along < b.along; });
  // The parting inside: drawn corners only, so that outlines stay short.
  std::vector<Vec3> within;
  for (const Vec3& point : parting)
    if (contains(point)) within.push_back(point);

  const auto cornersBetween = [&](double from, double to) {
    // Corners met while walking the outline forward from `from` to `to`.
    const double round = static_cast<double>(flat_.size() - 1);
    if (to <= from) to += round;
    std::vector<Vec3> met;
    for (int turn = 0; turn < 2; ++turn)
      for (std::size_t k = 0; k + 1 < flat_.size(); ++k) {
        const bool isCorner = k == 0 || side_[k] != side_[k - 1];
        const double at = static_cast<double>(k) + turn * round;
        if (isCorner && at > from + 1e-6 && at < to - 1e-6) met.push_back(line_[k]);
      }
    return met;
  };
  const auto outline = [&](const Hit& start, const Hit& end, std::vector<Vec3> inner) {
    // start -> inner -> end -> along the outline back to start
    std::vector<Vec3> around{start.place};
    around.insert(around.end(), inner.begin(), inner.end());
    around.push_back(end.place);
    for (const Vec3& corner : cornersBetween(end.at, start.at)) around.push_back(corner);
    return around;
  };
  std::vector<Vec3> back(within.rbegin(), within.rend());
  std::vector<Vec3> one = outline(hits[0], hits[1], within);
  std::vector<Vec3> other = outline(hits[1], hits[0], back);
  if (one.size() < 3 || other.size() < 3) return std::nullopt;
  // Which of them lies to the left of the parting's travel.
  const Vec3 at = unmapped((mapped(hits[0].place) + mapped(line[hits[0].segment + 1])) / 2);
  const Vec3 heading = line[hits[0].segment + 1] - line[hits[0].segment];
  const Vec3 left = surfaceOffset(shape_, at, leftOf(shape_, at, heading), 0.5);
  if (ScalpOutline(shape_, one).contains(left)) return std::pair{one, other};
  return std::pair{other, one};
}

}  // namespace combdraft::head
