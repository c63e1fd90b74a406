#include "app/paint/strip.h"

#include <algorithm>
#include <cmath>

#include "engine/head/surface_distance.h"

namespace combdraft::paint {
namespace {

constexpr std::size_t kMostStretches = 2000;  // a screen cannot show more teeth

Vec3 walkSideways(const head::HeadShape& shape, const Vec3& from, const Vec3& side,
                  double distance_mm) {
  const int steps = std::max(1, static_cast<int>(std::ceil(distance_mm / 3)));
  Vec3 at = from, direction = side;
  for (int i = 0; i < steps; ++i) {
    const Vec3 next = shape.project(at + direction * (distance_mm / steps));
    const Vec3 normal = shape.normalAt(next);
    const Vec3 flat = direction - direction.dot(normal) * normal;
    direction = unitOr(flat, direction);
    at = next;
  }
  return at;
}

StripSample mix(const StripSample& p, const StripSample& q, double t) {
  return {p.along_mm + t * (q.along_mm - p.along_mm), p.centre + t * (q.centre - p.centre),
          p.a + t * (q.a - p.a), p.b + t * (q.b - p.b), p.normal + t * (q.normal - p.normal)};
}

std::vector<plan::Stretch> without(std::vector<plan::Stretch> stretches,
                                   const std::vector<plan::Stretch>& holes) {
  for (const plan::Stretch& hole : holes) {
    std::vector<plan::Stretch> kept;
    for (const plan::Stretch& s : stretches) {
      if (hole.to_mm <= s.from_mm || hole.from_mm >= s.to_mm) {
        kept.push_back(s);
        continue;
      }
      if (hole.from_mm > s.from_mm) kept.push_back({s.from_mm, hole.from_mm});
      if (hole.to_mm < s.to_mm) kept.push_back({hole.to_mm, s.to_mm});
    }
    stretches = std::move(kept);
  }
  return stretches;
}

}  // namespace

std::vector<Vec3> surfaceLine(const head::HeadShape& shape,
                              const std::vector<head::ScalpPoint>& points, double step_mm) {
  std::vector<Vec3> given;
  for (const head::ScalpPoint& point : points) given.push_back(shape.pointAt(point));
  std::vector<Vec3> line = head::resampledOnSurface(shape, given, step_mm);
  if (line.size() < 2) line.clear();
  return line;
}

Strip makeStrip(const head::HeadShape& shape, const std::vector<head::ScalpPoint>& points,
                double thickness_mm) {
  const std::vector<Vec3> line = surfaceLine(shape, points);
  Strip strip;
  strip.reserve(line.size());
  double along = 0, lowerA = 0, lowerB = 0;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const Vec3 ahead = line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0];
    const Vec3 normal = shape.normalAt(line[i]);
    const Vec3 side = unitOr(normal.cross(ahead), Vec3::UnitX());
    if (i > 0) along += (line[i] - line[i - 1]).norm();
    StripSample sample{along, line[i], walkSideways(shape, line[i], side, thickness_mm / 2),
                       walkSideways(shape, line[i], -side, thickness_mm / 2), normal};
    lowerA += sample.a.z();
    lowerB += sample.b.z();
    strip.push_back(sample);
  }
  if (lowerA < lowerB)
    for (StripSample& s : strip) std::swap(s.a, s.b);
  return strip;
}

double stripLength_mm(const Strip& strip) { return strip.empty() ? 0 : strip.back().along_mm; }

Strip stripBetween(const Strip& strip, double from_mm, double to_mm) {
  Strip part;
  for (std::size_t i = 0; i + 1 < strip.size(); ++i) {
    const StripSample &p = strip[i], &q = strip[i + 1];
    const double span = q.along_mm - p.along_mm;
    if (span <= 0 || q.along_mm < from_mm || p.along_mm > to_mm) continue;
    const double t0 = std::max(0.0, (from_mm - p.along_mm) / span);
    const double t1 = std::min(1.0, (to_mm - p.along_mm) / span);
    if (t1 <= t0) continue;
    if (part.empty()) part.push_back(mix(p, q, t0));
    part.push_back(mix(p, q, t1));
  }
  return part;
}

std::vector<StripRun> splitBySight(const head::SheetView& view, const Strip& strip) {
  std::vector<StripRun> runs;
  double before = 0;
  for (const StripSample& sample : strip) {
    const double now = sample.normal.dot(view.toward());
    const Sight sight = now > 0 ? Sight::Seen : Sight::Hidden;
    if (runs.empty()) {
      runs.push_back({sight, {}});
    } else if (runs.back().sight != sight) {
      const StripSample edge = mix(runs.back().strip.back(), sample, before / (before - now));
      runs.back().strip.push_back(edge);
      runs.push_back({sight, {edge}});
    }
    runs.back().strip.push_back(sample);
    before = now;
  }
  std::erase_if(runs, [](const StripRun& run) { return run.strip.size() < 2; });
  return runs;
}

std::vector<LineRun> splitBySight(const head::HeadShape& shape, const head::SheetView& view,
                                  const std::vector<Vec3>& line) {
  Strip strip;
  for (const Vec3& p : line) strip.push_back({0, p, p, p, shape.normalAt(p)});
  std::vector<LineRun> runs;
  for (const StripRun& run : splitBySight(view, strip)) {
    LineRun out{run.sight, {}};
    for (const StripSample& s : run.strip) out.points.push_back(s.centre);
    runs.push_back(std::move(out));
  }
  return runs;
}

std::vector<plan::Stretch> treatedStretches(const plan::Piece& piece, double length_mm) {
  return without({{0, length_mm}}, piece.dropOuts);
}

std::vector<plan::Stretch> takenStretches(const plan::Piece& piece, double length_mm) {
  if (piece.taking != plan::Taking::Weave || !(piece.tooth_mm > 0) || !(piece.gap_mm > 0))
    return treatedStretches(piece, length_mm);
  std::vector<plan::Stretch> teeth;
  const double pitch = piece.tooth_mm + piece.gap_mm;
  for (double from = 0; from < length_mm && teeth.size() < kMostStretches; from += pitch)
    teeth.push_back({from, std::min(from + piece.tooth_mm, length_mm)});
  return without(std::move(teeth), piece.dropOuts);
}

}  // namespace combdraft::paint
