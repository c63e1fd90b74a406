#include "engine/head/hairline.h"

#include <algorithm>
#include <cmath>

namespace combdraft::head {
namespace {

struct Row {
  double azimuth_deg, z_mm;
};
// For a = 73.9, b = 94.9, c = 90; symmetric. Front centre 42 mm below the top
// [ANSUR1: 41.7 +- 9.5]; the rest [own], registered to the line art.
constexpr Row kTable[] = {
    {0, 48.0}, {5, 47.9}, {10, 47.6}, {15, 47.1}, {20, 46.3}, {25, 44.9}, {30, 42.8}, {35,
    39.4}, {40, 34.2}, {45, 27.0}, {50, 19.0}, {55, 11.2}, {60, 2.5}, {64, -6.8}, {67,
    -15.2}, {69, -20.9}, {71, -26.9}, {72, -28.7}, {73, -29.5}, {74, -29.7}, {75, -29.3},
    {76, -28.0}, {77, -25.4}, {78, -21.0}, {79, -16.6}, {80, -12.4}, {82, -4.4}, {84, 0.6},
    {86, 3.7}, {88, 5.6}, {90, 6.9}, {93, 7.9}, {96, 8.3}, {100, 8.0}, {104, 6.7}, {107,
    5.0}, {110, 2.2}, {112, -0.4}, {114, -3.9}, {116, -8.5}, {118, -14.5}, {120, -22.3},
    {122, -31.5}, {124, -39.8}, {126, -46.1}, {128, -50.9}, {130, -54.6}, {133, -59.0},
    {136, -62.4}, {140, -65.8}, {145, -68.9}, {150, -70.9}, {155, -72.2}, {160, -73.0},
    {170, -73.8}, {180, -74.0}};

double bump(double azimuth, double centre, double width) {
  const double t = (azimuth - centre) / width;
  return std::exp(-t * t);
}

}  // namespace

Hairline::Hairline(const HeadShape& shape, const HairlineMoves& moves)
    : shape_(shape), moves_(moves) {}

double Hairline::height_mm(double azimuth_deg) const {
  const double turn = std::abs(std::remainder(azimuth_deg, 360.0));
  const Row* const end = std::end(kTable);
  const Row* above = std::lower_bound(std::begin(kTable), end, turn,
                                      [](const Row& r, double v) { return r.azimuth_deg < v; });
  double z = 0;
  if (above == std::begin(kTable)) {
    z = above->z_mm;
  } else if (above == end) {
    z = (end - 1)->z_mm;
  } else {
    const Row& below = *(above - 1);
    const double t = (turn - below.azimuth_deg) / (above->azimuth_deg - below.azimuth_deg);
    z = below.z_mm + t * (above->z_mm - below.z_mm);
  }
  z *= shape_.axes().c_mm / 90.0;
  return z + moves_.front_mm * bump(turn, 0, 32) + moves_.temples_mm * bump(turn, 50, 16) +
         moves_.sides_mm * bump(turn, 95, 28) + moves_.nape_mm * bump(turn, 180, 40);
}

double Hairline::above_mm(const Vec3& p) const {
  return p.z() - height_mm(degrees(std::atan2(p.x(), p.y())));
}

bool Hairline::contains(const ScalpPoint& point) const { return contains(shape_.pointAt(point)); }

Vec3 Hairline::pointAt(double azimuth_deg) const {
  const double z = height_mm(azimuth_deg), angle = radians(azimuth_deg);
  const Vec3 out(std::sin(angle), std::cos(angle), 0);
  return out * shape_.sectionRadius_mm(out, z) + Vec3(0, 0, z);
}

std::vector<Vec3> Hairline::outline(int count) const {
  std::vector<Vec3> points;
  points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) points.push_back(pointAt(-180.0 + 360.0 * i / count));
  return points;
}

}  // namespace combdraft::head
