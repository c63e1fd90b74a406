#include "engine/head/section_rows.h"

#include <algorithm>
#include <cmath>

#include "engine/head/hairline.h"
#include "engine/head/landmarks.h"
#include "engine/head/surface_distance.h"

namespace combdraft::head {
namespace {

constexpr double kStep_mm = 3;      // between stored fronts
constexpr double kRay_mm = 5;       // between rays of a front
constexpr double kShortEdge_mm = 18;  // a shorter first edge counts as a corner
constexpr double kTop_deg = 42;     // sections nearer the vertex lie on top
constexpr double kFarthest_mm = 420;

Vec3 tangent(const Vec3& direction, const Vec3& normal, const Vec3& fallback) {
  return unitOr(direction - direction.dot(normal) * normal, fallback);
}

Vec3 crownOnCentreLine(const HeadShape& shape) {
  Vec3 crown = defaultWhorl(shape);
  crown.x() = 0;
  return shape.project(crown);
}

/// The way across the rows at a place, unit tangent, from their first edge on:
/// upward for horizontal rows (toward the crown on top of the head), away from
/// the centre line for vertical ones, between the two for diagonals.
class Across {
 public:
  /// `middle` of the section decides what "up" and "away" mean for all of it.
  Across(const HeadShape& shape, const Vec3& middle, RowRun run)
      : shape_(shape), run_(run), onTop_(scalpPointAlong(middle).drop_deg < kTop_deg),
        behind_(middle.y() < 0),
        // A section across the centre line counts as one of the wearer's right.
        side_(middle.x() < -8 ? -1 : 1),
        toCrown_(crownOnCentreLine(shape).y() < middle.y() ? -1 : 1) {}

  Vec3 operator()(const Vec3& at) const {
    const Vec3 normal = shape_.normalAt(at);
    const Vec3 up = tangent(onTop_ ? Vec3(0, toCrown_, 0) : Vec3::UnitZ(), normal, Vec3::UnitY());
    // Level round the head, from the face back.
    Vec3 back = onTop_ ? tangent(Vec3(side_, 0, 0), normal, Vec3::UnitX())
                       : side_ * tangent(normal.cross(up), normal, Vec3::UnitY());
    switch (run_) {
      case RowRun::Horizontal: return up;
      case RowRun::Vertical:
      case RowRun::Pivoting:
        // From the centre line: on top outward, in front back, behind forward.
        return onTop_ || !behind_ ? back : Vec3(-back);
      // A parting that falls toward the face is met from low behind.
      case RowRun::DiagonalForward: return tangent(up - back, normal, up);
      case RowRun::DiagonalBack: return tangent(up + back, normal, up);
    }
    return up;
  }

 private:
  const HeadShape& shape_;
  RowRun run_;
  bool onTop_, behind_;
  double side_, toCrown_;
};

}  // namespace

SectionRows::SectionRows(const HeadShape& shape, const std::vector<Vec3>& corners, RowRun run,
                         const std::optional<Vec3>& pivot)
    : shape_(shape), outline_(shape, corners), run_(run) {
  if (run != RowRun::Pivoting) {
    growFronts();
    return;
  }
  Vec3 about = corners.front();
  const Vec3 crown = crownOnCentreLine(shape);
  for (const Vec3& corner : corners)
    if ((corner - crown).norm() < (about - crown).norm() - 1e-9) about = corner;
  turnRays(pivot.value_or(about));
}

// ---- parallel rows --------------------------------------------------------

SectionRows::Front SectionRows::firstEdge() const {
  const Across across(shape_, outline_.middle(), run_);
  const Vec3 growth = across(outline_.middle());
  // Sides whose outward normal looks against the growth, as one stretch round
  // the side that lies farthest against it.
  const std::vector<Vec3>& line = outline_.line();
  const std::size_t n = line.size() - 1;
  std::vector<bool> against(n);
  std::size_t lowest = 0;
  double depth = 1e9;
  for (std::size_t i = 0; i < n; ++i) {
    const Vec3 along = line[i + 1] - line[i], at = (line[i] + line[i + 1]) / 2;
    const Vec3 normal = shape_.normalAt(at);
    Vec3 out = unitOr(normal.cross(along), normal.unitOrthogonal());
    if (outline_.contains(shape_.project(at + 0.4 * out))) out = -out;
    against[i] = out.dot(across(shape_.project(at))) < -0.64;
    const double along_mm = (at - outline_.middle()).dot(growth);
    if (against[i] && along_mm < depth) depth = along_mm, lowest = i;
  }
  if (!against[lowest]) return {};
  std::size_t first = lowest, last = lowest, guard = 0;
  while (against[(first + n - 1) % n] && guard++ < n) first = (first + n - 1) % n;
  for (guard = 0; against[(last + 1) % n] && guard++ < n;) last = (last + 1) % n;
  std::vector<Vec3> edge;
  for (std::size_t i = first;; i = (i + 1) % n) {
    edge.push_back(line[i]);
    if (i == last) {
      edge.push_back(line[i + 1]);
      break;
    }
    if (edge.size() > n) return {};
  }
  if (lineLength_mm(shape_, edge) < kShortEdge_mm) return {};
  const double reach = outline_.radius_mm() + 30;
  const Vec3 before = surfaceOffset(shape_, edge.front(), edge.front() - edge[1], reach);
  const Vec3 after = surfaceOffset(shape_, edge.back(), edge.back() - edge[edge.size() - 2], reach);
  std::vector<Vec3> whole;
  const auto straight = [&](const Vec3& from, const Vec3& to) {
    for (const Vec3& p : shortestPath(shape_, from, to).points) whole.push_back(p);
  };
  straight(before, edge.front());
  whole.insert(whole.end(), edge.begin(), edge.end());
  straight(edge.back(), after);
  Front front;
  for (const Vec3& p : resampledOnSurface(shape_, whole, kRay_mm)) {
    if (!front.empty() && (p - front.back().at).norm() < kRay_mm / 2) continue;
    front.push_back({p, Vec3::Zero()});
  }
  return front;
}

SectionRows::Front SectionRows::cornerLine() const {
  const Across across(shape_, outline_.middle(), run_);
  const Vec3 growth = across(outline_.middle());
  // The corner farthest against the growth, measured along the surface as far
  // as a straight walk tells: by height in the growth's own plane.
  Vec3 corner = outline_.line().front();
  double depth = 1e9;
  for (const Vec3& p : outline_.line()) {
    const double along = (p - outline_.middle()).dot(growth);
    if (along < depth) depth = along, corner = p;
  }
  const Vec3 normal = shape_.normalAt(corner);
  const Vec3 forward = across(corner);
  const Vec3 right = forward.cross(normal);
  const double reach = 2 * outline_.radius_mm() + 40;
  Front front;
  const int rays = static_cast<int>(std::ceil(reach / kRay_mm));
  for (const double turn : {-1.0, 1.0}) {
    SurfaceStep step{corner, turn * right};
    std::vector<Ray> half;
    for (int i = 0; i < rays; ++i) {
      step = stepAlong(shape_, step.at, step.heading, kRay_mm);
      half.push_back({step.at, Vec3::Zero()});
    }
    if (turn < 0) {
      front.assign(half.rbegin(), half.rend());
      front.push_back({corner, Vec3::Zero()});
    } else {
      front.insert(front.end(), half.begin(), half.end());
    }
  }
  return front;
}

SectionRows::Front SectionRows::stepped(const Front& front) const {
  Front next;
  std::vector<Vec3> rights;
  for (const Ray& ray : front) {
    const SurfaceStep step = stepAlong(shape_, ray.at, ray.heading, kStep_mm);
    next.push_back({step.at, step.heading});
    rights.push_back(step.heading.cross(shape_.normalAt(step.at)));
  }
  // Rays that have met end there.
  for (bool again = true; again && next.size() > 2;) {
    again = false;
    for (std::size_t i = 0; i + 1 < next.size(); ++i) {
      if ((next[i + 1].at - next[i].at).dot(rights[i]) > 0.4) continue;
      const auto first = static_cast<std::ptrdiff_t>(i), last = static_cast<std::ptrdiff_t>(std::min(i + 2, next.size()));
      next.erase(next.begin() + first, next.begin() + last);
      rights.erase(rights.begin() + first, rights.begin() + last);
      again = true;
      break;
    }
  }
  // Rays that have parted get company, set out by the bow between them.
  Front filled;
  for (std::size_t i = 0; i < next.size(); ++i) {
    filled.push_back(next[i]);
    if (i + 1 == next.size()) break;
    const double gap = (next[i + 1].at - next[i].at).norm();
    if (gap < 1.7 * kRay_mm) continue;
    const Vec3 heading = unitOr(next[i].heading + next[i + 1].heading, next[i].heading);
    const double angle = std::acos(std::clamp(next[i].heading.dot(next[i + 1].heading), -1.0, 1.0));
    const Vec3 at = (next[i].at + next[i + 1].at) / 2 + heading * (gap / 2 * std::tan(angle / 4));
    const Vec3 on = shape_.project(at);
    filled.push_back({on, tangent(heading, shape_.normalAt(on), heading)});
  }
  return filled;
}

void SectionRows::growFronts() {
  const bool diagonal = run_ == RowRun::DiagonalForward || run_ == RowRun::DiagonalBack;
  Front front = diagonal ? Front{} : firstEdge();
  if (front.size() < 3) front = cornerLine();
  // Travel so that the growth lies to the left, seen from outside.
  const Ray& middle = front[front.size() / 2];
  const Vec3 along = front[front.size() / 2 + 1].at - front[front.size() / 2 - 1].at;
  const Vec3 toMiddle = outline_.middle() - middle.at;
  if (shape_.normalAt(middle.at).cross(along).dot(toMiddle) < 0)
    std::reverse(front.begin(), front.end());
  for (std::size_t i = 0; i < front.size(); ++i) {
    const Vec3 way = front[std::min(i + 1, front.size() - 1)].at - front[i == 0 ? 0 : i - 1].at;
    front[i].heading = leftOf(shape_, front[i].at, way);
  }
  double last = 0;
  const std::size_t most = static_cast<std::size_t>(kFarthest_mm / kStep_mm);
  int empty = 0;
  while (fronts_.size() < most && front.size() >= 3 && empty < 3) {
    bool within = false;
    for (const Ray& ray : front) within = within || outline_.contains(ray.at);
    if (within) last = static_cast<double>(fronts_.size()) * kStep_mm;
    empty = within || fronts_.empty() ? 0 : empty + 1;
    fronts_.push_back(front);
    front = stepped(front);
  }
  // The far end of the room, to a tenth.
  double low = last, high = std::min(last + kStep_mm, static_cast<double>(fronts_.size() - 1) * kStep_mm);
  while (high - low > 0.1) {
    const double at = (low + high) / 2;
    (rowAt(at).empty() ? high : low) = at;
  }
  depth_mm_ = low;
}

// ---- pivoting rows --------------------------------------------------------

void SectionRows::turnRays(const Vec3& pivot) {
  pivot_ = pivot;
  const Vec3 normal = shape_.normalAt(pivot);
  east_ = tangent(outline_.middle() - pivot, normal, normal.unitOrthogonal());
  north_ = normal.cross(east_);
  // Angles and lengths at which the outline is seen from the pivot.
  double low = 0, high = 0;
  for (const Vec3& p : outline_.line()) {
    const Vec3 way = p - pivot;
    if (way.norm() < 4) continue;
    const double angle = std::atan2(way.dot(north_), way.dot(east_));
    low = std::min(low, angle), high = std::max(high, angle);
    reach_mm_ = std::max(reach_mm_, way.norm());
  }
  reach_mm_ *= 1.35;  // chords are shorter than the way
  firstAngle_ = low, span_ = high - low;
  // Mid-length of the middle row, and the arc there.
  middle_mm_ = reach_mm_ / 2;
  const auto rayTo = [&](double angle, double length) {
    return surfaceOffset(shape_, pivot_, std::cos(angle) * east_ + std::sin(angle) * north_, length);
  };
  double far = 0;
  for (double r = 2; r < reach_mm_; r += 2)
    if (outline_.contains(rayTo(low + span_ / 2, r))) far = r;
  if (far > 0) middle_mm_ = far / 2;
  std::vector<Vec3> arc;
  for (int i = 0; i <= 48; ++i) arc.push_back(rayTo(low + span_ * i / 48, middle_mm_));
  depth_mm_ = lineLength_mm(shape_, arc);
}

// ---- one row --------------------------------------------------------------

std::vector<std::vector<Vec3>> SectionRows::rowAt(double from_mm, double clear_share) const {
  if (run_ == RowRun::Pivoting) {
    const double angle = firstAngle_ + span_ * (depth_mm_ > 0 ? from_mm / depth_mm_ : 0.5);
    SurfaceStep step{pivot_, std::cos(angle) * east_ + std::sin(angle) * north_};
    if (const double clear = clear_share * middle_mm_; clear > 0)
      step = stepAlong(shape_, step.at, step.heading, clear);
    std::vector<Vec3> ray{step.at};
    for (double r = clear_share * middle_mm_; r < reach_mm_; r += 4) {
      step = stepAlong(shape_, step.at, step.heading, 4);
      ray.push_back(step.at);
    }
    return outline_.inside(ray);
  }
  const double at = std::clamp(from_mm / kStep_mm, 0.0, static_cast<double>(fronts_.size() - 1));
  const std::size_t k = static_cast<std::size_t>(at);
  const double rest_mm = from_mm - static_cast<double>(k) * kStep_mm;
  std::vector<Vec3> row;
  for (const Ray& ray : fronts_[k])
    row.push_back(rest_mm > 1e-9 ? surfaceOffset(shape_, ray.at, ray.heading, rest_mm) : ray.at);
  return inOrder(outline_.inside(row));
}

std::vector<std::vector<Vec3>> SectionRows::inOrder(std::vector<std::vector<Vec3>> rows) const {
  if (rows.empty()) return rows;
  const Vec3 &first = rows.front().front(), &last = rows.back().back();
  bool turn = false;
  if (run_ == RowRun::Horizontal) {
    const bool straddles = first.x() * last.x() < 0 && std::min(std::abs(first.x()), std::abs(last.x())) > 3;
    turn = straddles ? first.x() > last.x() : std::abs(first.x()) > std::abs(last.x());
  } else {
    turn = first.z() < last.z();
    if (std::abs(first.z() - last.z()) < 6) turn = first.y() < last.y();
  }
  if (turn) {
    std::reverse(rows.begin(), rows.end());
    for (auto& row : rows) std::reverse(row.begin(), row.end());
  }
  return rows;
}

}  // namespace combdraft::head
