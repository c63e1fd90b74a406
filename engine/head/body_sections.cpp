#include "engine/head/body_sections.h"

#include <algorithm>
#include <cmath>

#include "engine/head/monotone_curve.h"

namespace combdraft::head {
namespace {

// Read off the drawn contours for a = 73.9, b = 94.9, c = 90; widths to z = -198
// and depths to z = -206 are drawn, what is lower is [own].
struct Width {
  double z, half;
};
constexpr Width kWidth[] = {{0, 73.9},      {-10.5, 73.4}, {-15, 72.2},   {-20, 70.9},
                            {-30, 68.85},   {-40, 67.3},   {-48, 66.5},   {-60, 65.8},
                            {-65, 64.9},    {-70, 63.7},   {-75, 62.2},   {-80, 60.4},
                            {-90.5, 55.3},  {-100, 54.3},  {-112, 53.6},  {-120, 53.6},
                            {-130, 54.0},   {-139, 54.8},  {-150, 56.5},  {-160, 59.5},
                            {-166, 62.5},   {-170, 65.3},  {-175, 70.0},  {-180, 75.8},
                            {-185, 83.0},   {-190, 91.6},  {-198, 110.0}, {-206, 133.0},
                            {-215, 160.0},  {-222, 177.0}, {-230, 190.0}, {-242, 199.0},
                            {-260, 204.0}};
struct WidthBehind {
  double z, half;
};
constexpr WidthBehind kWidthBehind[] = {{-90, 54.0}, {-100, 53.7}, {-112, 53.6}};
// The nose is left out between its root (-15) and its base (-65); under the
// upper lip the trunk draws back to the throat and the jaw takes over.
struct Front {
  double z, y;
};
constexpr Front kFront[] = {{-15, 90.6},  {-26, 91.6},  {-40, 94.0},  {-55, 96.8}, {-65, 98.8},
                            {-72, 98.0},  {-80, 94.0},  {-90, 80.0},  {-100, 64.0}, {-110, 53.0},
                            {-120, 47.0}, {-130, 44.5}, {-139, 43.0}, {-145, 38.5}, {-150, 36.3},
                            {-160, 33.5}, {-170, 30.8}, {-180, 28.0}, {-190, 25.6}, {-198, 23.9},
                            {-206, 22.5}, {-216, 23.0}, {-230, 30.0}, {-260, 48.0}};
struct Back {
  double z, y;
};
constexpr Back kBack[] = {{-90, -60.5},  {-100, -59.43}, {-105, -59.36}, {-110, -59.42},
                          {-120, -59.9}, {-134, -61.4},  {-145, -63.3},  {-160, -67.0},
                          {-170, -70.0}, {-180, -73.5},  {-190, -77.5},  {-198, -81.1},
                          {-206, -85.0}, {-230, -96.0},  {-260, -104.0}};
struct Middle {
  double z, y;
};
constexpr Middle kMiddle[] = {{-85, 0},    {-110, -3},  {-139, -10}, {-160, -17},
                              {-180, -23}, {-206, -31}, {-230, -33}, {-260, -28}};
struct Jaw {
  double z, half, front, back;
};
constexpr Jaw kJaw[] = {{-66, 64.6, 98.8, 3.4},     {-70, 63.7, 99.0, 3.5},
                        {-75, 62.2, 100.3, 4.1},    {-78.5, 61.0, 101.6, 4.7},
                        {-82, 59.6, 101.0, 5.4},    {-84, 58.6, 99.8, 5.9},
                        {-86, 57.6, 97.0, 6.5},
                        {-90, 55.6, 99.0, 7.9},     {-92.5, 53.9, 99.5, 9.0},
                        {-98, 49.9, 95.6, 13.5},    {-104, 44.7, 91.8, 20.7},
                        {-110, 38.65, 92.7, 30.1},  {-116, 31.5, 93.4, 41.0},
                        {-120, 26.0, 92.7, 48.8},   {-125, 17.7, 90.0, 60.7},
                        {-127, 12.9, 88.0, 66.7},   {-128.5, 6.8, 85.2, 74.0},
                        {-129, 1.0, 83.5, 82.5}};

constexpr double kSkullFront_mm = -15;  // above, the face follows the skull
constexpr double kNeckTable_mm = -90;   // above, the back is HeadShape's own

}  // namespace

bool EarShape::contains(const Vec3& p) const {
  const double lean = radians(leanBack_deg);
  const Vec3 q = p - centre;
  const double alongEar = std::cos(lean) * q.z() - std::sin(lean) * q.y();
  const double acrossEar = std::sin(lean) * q.z() + std::cos(lean) * q.y();
  return Vec3(q.x() / radii.x(), acrossEar / radii.y(), alongEar / radii.z()).squaredNorm() < 1;
}

BodySections::BodySections(const HeadShape& shape) : shape_(shape) {}

double BodySections::top_mm(BodyPart part) const {
  return part == BodyPart::Trunk ? shape_.axes().c_mm : kJaw[0].z * shape_.axes().c_mm / 90;
}

double BodySections::bottom_mm(BodyPart part) const {
  return (part == BodyPart::Trunk ? -260.0 : -129.0) * shape_.axes().c_mm / 90;
}

std::optional<BodySection> BodySections::at(BodyPart part, double z_mm) const {
  if (z_mm > top_mm(part) || z_mm < bottom_mm(part)) return std::nullopt;
  const HeadAxes& axes = shape_.axes();
  const double wide = axes.a_mm / 73.9, deep = axes.b_mm / 94.9;
  const double z = z_mm * 90 / axes.c_mm;  // height on the drawn head
  BodySection s;
  s.z_mm = z_mm;
  if (part == BodyPart::Jaw) {
    s.halfWidth_mm = s.halfWidthBehind_mm = wide * monotoneCurve(kJaw, &Jaw::z, &Jaw::half, z);
    s.front_mm = deep * monotoneCurve(kJaw, &Jaw::z, &Jaw::front, z);
    s.back_mm = s.middle_mm = deep * monotoneCurve(kJaw, &Jaw::z, &Jaw::back, z);
    return s;
  }
  const double skull = std::sqrt(std::max(0.0, 1 - z * z / 8100));
  s.halfWidth_mm =
      z >= 0 ? axes.a_mm * skull
             : std::max(axes.a_mm * skull,  // the sideburn lies on the skull
                        wide * monotoneCurve(kWidth, &Width::z, &Width::half, z));
  s.halfWidthBehind_mm =
      z >= kNeckTable_mm ? shape_.halfWidth_mm(z_mm)
      : z >= -112 ? std::min(s.halfWidth_mm, wide * monotoneCurve(kWidthBehind, &WidthBehind::z,
                                                                  &WidthBehind::half, z))
                  : s.halfWidth_mm;
  s.front_mm = z >= 0 ? axes.b_mm * skull
               : z >= kSkullFront_mm
                   ? deep * (94.9 + (90.6 - 94.9) * smoothstep(z / kSkullFront_mm))
                   : deep * monotoneCurve(kFront, &Front::z, &Front::y, z);
  s.back_mm = z >= kNeckTable_mm ? -shape_.halfDepthBehind_mm(z_mm)
                                 : deep * monotoneCurve(kBack, &Back::z, &Back::y, z);
  s.middle_mm = deep * monotoneCurve(kMiddle, &Middle::z, &Middle::y, z);
  return s;
}

std::array<EarShape, 2> BodySections::ears() const {
  const HeadAxes& axes = shape_.axes();
  const double wide = axes.a_mm / 73.9, deep = axes.b_mm / 94.9, high = axes.c_mm / 90;
  EarShape right;
  right.centre = Vec3(73.5 * wide, -14.0 * deep, -31.5 * high);
  right.radii = Vec3(9.5 * wide, 16.5 * deep, 32.0 * high);
  right.leanBack_deg = 18;
  EarShape left = right;
  left.centre.x() = -left.centre.x();
  return {right, left};
}

double BodySections::halfWidthAt_mm(const BodySection& s, double y_mm) const {
  const bool before = y_mm >= s.middle_mm;
  const double depth = before ? s.front_mm - s.middle_mm : s.middle_mm - s.back_mm;
  const double width = before ? s.halfWidth_mm : s.halfWidthBehind_mm;
  if (depth <= 0) return 0;
  const double r = std::abs(y_mm - s.middle_mm) / depth;
  const double p = shape_.axes().p;
  return r >= 1 ? 0.0 : width * std::pow(1 - std::pow(r, p), 1 / p);
}

bool BodySections::contains(const Vec3& p) const {
  for (const BodyPart part : {BodyPart::Trunk, BodyPart::Jaw})
    if (const auto section = at(part, p.z()))
      if (std::abs(p.x()) < halfWidthAt_mm(*section, p.y())) return true;
  for (const EarShape& ear : ears())
    if (ear.contains(p)) return true;
  return false;
}

}  // namespace combdraft::head
