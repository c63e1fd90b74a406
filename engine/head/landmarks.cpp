#include "engine/head/landmarks.h"

#include <algorithm>
#include <cmath>

#include "engine/head/surface_distance.h"

namespace combdraft::head {
namespace {

constexpr double kStep_mm = 3;

struct Scale {
  double a, b, c;
  explicit Scale(const HeadShape& s)
      : a(s.axes().a_mm / 73.9), b(s.axes().b_mm / 94.9), c(s.axes().c_mm / 90.0) {}
};

/// The surface point at `azimuth_deg` on the plane z = height + rise * y.
Vec3 onTiltedPlane(const HeadShape& shape, double azimuth_deg, double height_mm, double rise) {
  double lo = 0, hi = 150;  // drop: above the plane, below it
  for (int i = 0; i < 50; ++i) {
    const double mid = (lo + hi) / 2;
    const Vec3 at = shape.pointAt({azimuth_deg, mid});
    (at.z() > height_mm + rise * at.y() ? lo : hi) = mid;
  }
  return shape.pointAt({azimuth_deg, (lo + hi) / 2});
}

/// The longest run of points inside the hairline.
std::vector<Vec3> insideHair(const Hairline& hairline, const std::vector<Vec3>& points) {
  std::vector<Vec3> run, best;
  for (const Vec3& p : points) {
    if (hairline.contains(p)) {
      run.push_back(p);
      if (run.size() > best.size()) best = run;
    } else {
      run.clear();
    }
  }
  return best;
}

/// Right temple, round the back, to the left temple.
std::vector<Vec3> tiltedLine(const HeadShape& shape, double height_mm, double rise,
                             double fromAzimuth_deg) {
  std::vector<Vec3> points;
  for (double azimuth = fromAzimuth_deg; azimuth <= 360 - fromAzimuth_deg; azimuth += 2)
    points.push_back(onTiltedPlane(shape, azimuth, height_mm, rise));
  return points;
}

}  // namespace

Vec3 centreLinePoint(const HeadShape& shape, double behindVertex_mm) {
  // March along the profile; each degree of drop is less than 2 mm.
  const double bearing = behindVertex_mm < 0 ? 0 : 180;
  const double wanted = std::abs(behindVertex_mm);
  double done = 0;
  Vec3 before = shape.pointAt({bearing, 0});
  for (double drop = 0.5; drop <= 150; drop += 0.5) {
    const Vec3 here = shape.pointAt({bearing, drop});
    const double step = (here - before).norm();
    if (done + step >= wanted)
      return shape.pointAt({bearing, drop - 0.5 + 0.5 * (wanted - done) / step});
    done += step;
    before = here;
  }
  return before;
}

Vec3 defaultWhorl(const HeadShape& shape) {
  const Scale scale(shape);
  constexpr double kBehindVertex_mm = 62.5, kAside_mm = 6;
  const Vec3 onCentre = centreLinePoint(shape, kBehindVertex_mm * (scale.b + scale.c) / 2);
  return surfaceOffset(shape, onCentre, -Vec3::UnitX(), kAside_mm * scale.a);
}

Landmarks landmarksOf(const HeadShape& shape, const Hairline& hairline) {
  const Scale scale(shape);
  Landmarks m;
  m.apex = shape.pointAlong(Vec3::UnitZ());
  m.crown = defaultWhorl(shape);
  m.frontCentre = hairline.pointAt(0);
  m.nape = hairline.pointAt(180);
  m.occipital = onTiltedPlane(shape, 180, -24 * scale.c, 0.09 * scale.c / scale.b);
  m.templeRight = hairline.pointAt(50);
  m.templeLeft = hairline.pointAt(-50);
  m.earRight = shape.pointAlong({68 * scale.a, 1 * scale.b, -34 * scale.c});
  m.earLeft = shape.pointAlong({-68 * scale.a, 1 * scale.b, -34 * scale.c});
  m.nasion = shape.pointAlong({0, 90.6 * scale.b, -15 * scale.c});
  m.inion = m.occipital;
  return m;
}

std::vector<Vec3> centreLine(const HeadShape& shape, const Hairline& hairline) {
  const Vec3 front = hairline.pointAt(0), back = hairline.pointAt(180);
  return resampledOnSurface(shape, {front, shape.pointAlong(Vec3::UnitZ()), back}, kStep_mm);
}

std::vector<Vec3> earToEarLine(const HeadShape& shape) {
  const Scale scale(shape);
  const double y = 1 * scale.b, low = -34 * scale.c;
  std::vector<Vec3> points;
  // Rays in the plane y = const from its own centre, right ear to left ear.
  const double end = 90 + degrees(std::atan2(-low, 68 * scale.a));
  const int parts = 120;
  for (int i = 0; i <= parts; ++i) {
    const double angle = radians(end - 2 * end * i / parts);
    const Vec3 ray(std::sin(angle), 0, std::cos(angle));
    double lo = 0, hi = 200;
    for (int k = 0; k < 50; ++k) {
      const double mid = (lo + hi) / 2;
      (shape.implicit(Vec3(0, y, 0) + mid * ray) < 0 ? lo : hi) = mid;
    }
    points.push_back(Vec3(0, y, 0) + lo * ray);
  }
  return points;
}

std::vector<Vec3> parietalRidge(const HeadShape& shape, const Hairline& hairline) {
  const Scale scale(shape);
  return insideHair(hairline,
                    tiltedLine(shape, 37 * scale.c, 0.07 * scale.c / scale.b, 20));
}

std::vector<Vec3> occipitalLine(const HeadShape& shape, const Hairline& hairline) {
  const Scale scale(shape);
  return insideHair(hairline,
                    tiltedLine(shape, -24 * scale.c, 0.09 * scale.c / scale.b, 100));
}

}  // namespace combdraft::head
