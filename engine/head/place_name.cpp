#include "engine/head/place_name.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/head/surface_distance.h"

namespace combdraft::head {
namespace {

constexpr double kEdgeStep_deg = 3;

/// The arc a chord spans on a circle that turns its normal as much.
double arcOf(double chord, double turnChord) {
  const double half = std::asin(std::min(1.0, turnChord / 2));
  return half > 1e-6 ? chord * half / std::sin(half) : chord;
}

}  // namespace

PlaceNamer::PlaceNamer(const HeadShape& shape, const Hairline& hairline)
    : shape_(shape), hairline_(hairline), marks_(landmarksOf(shape, hairline)) {
  for (double azimuth = -180; azimuth < 180; azimuth += kEdgeStep_deg) {
    edge_.push_back(hairline.pointAt(azimuth));
    edgeNormal_.push_back(shape.normalAt(edge_.back()));
  }
  centre_ = centreLine(shape, hairline);
  centreAlong_.push_back(0);
  for (std::size_t i = 1; i < centre_.size(); ++i)
    centreAlong_.push_back(centreAlong_.back() + (centre_[i] - centre_[i - 1]).norm());
  Vec3 crown = marks_.crown;
  crown.x() = 0;
  crownAlong_mm_ = alongCentreLine_mm(shape.project(crown));
}

double PlaceNamer::alongCentreLine_mm(const Vec3& p) const {
  double best = 1e18, along = 0;
  for (std::size_t i = 1; i < centre_.size(); ++i) {
    const Vec3 step = centre_[i] - centre_[i - 1];
    double t = (p - centre_[i - 1]).dot(step) / step.squaredNorm();
    // Beyond the hairline at either end the line runs on straight.
    if (i > 1) t = std::max(t, 0.0);
    if (i + 1 < centre_.size()) t = std::min(t, 1.0);
    const double gap = (p - centre_[i - 1] - t * step).squaredNorm();
    if (gap < best) best = gap, along = centreAlong_[i - 1] + t * step.norm();
  }
  return along;
}

double PlaceNamer::fromHairline_mm(const Vec3& p) const {
  const Vec3 normal = shape_.normalAt(p);
  const auto guess = [&](const Vec3& e, const Vec3& n) {
    return arcOf((e - p).norm(), (n - normal).norm());
  };
  std::size_t nearest = 0;
  for (std::size_t i = 1; i < edge_.size(); ++i)
    if (guess(edge_[i], edgeNormal_[i]) < guess(edge_[nearest], edgeNormal_[nearest])) nearest = i;
  double low = -180 + kEdgeStep_deg * (double(nearest) - 1), high = low + 2 * kEdgeStep_deg;
  for (int i = 0; i < 12; ++i) {  // thirds: the guess has one valley here
    const double one = low + (high - low) / 3, two = high - (high - low) / 3;
    const Vec3 e1 = hairline_.pointAt(one), e2 = hairline_.pointAt(two);
    if (guess(e1, shape_.normalAt(e1)) < guess(e2, shape_.normalAt(e2)))
      high = two;
    else
      low = one;
  }
  const double length = surfaceDistance_mm(shape_, p, hairline_.pointAt((low + high) / 2));
  return hairline_.contains(p) ? length : -length;
}

Place PlaceNamer::placeAt(const Vec3& p) const {
  const double azimuth = std::abs(degrees(std::atan2(p.x(), p.y())));
  const double high = shape_.axes().c_mm / 90, deep = shape_.axes().b_mm / 94.9;
  const bool aboveRidge = p.z() > high * (37 + 0.07 * p.y() / deep);
  const bool belowOccipital = p.z() < high * (-24 + 0.09 * p.y() / deep);
  // Bounds of the names: own choice, along the trade's section lines.
  constexpr double kCrownReach_mm = 32, kFrontReach_mm = 45, kTempleReach_mm = 30;
  // No way on the surface is shorter than the straight one, which costs nothing.
  const auto isNear = [&](const Vec3& mark, double reach_mm) {
    return (p - mark).norm() < reach_mm && surfaceDistance_mm(shape_, p, mark) < reach_mm;
  };
  if (!hairline_.contains(p)) return Place::OffHair;
  if (isNear(marks_.crown, kCrownReach_mm * deep)) return Place::Crown;
  if (std::min((p - marks_.templeLeft).norm(), (p - marks_.templeRight).norm()) < kTempleReach_mm * deep) return Place::Temple;
  if (azimuth < 60 && fromHairline_mm(p) < kFrontReach_mm * deep) return Place::Front;
  if (aboveRidge) return p.y() > marks_.crown.y() ? Place::Top : Place::Back;
  if (p.y() > -30 * deep) return Place::Side;
  return belowOccipital ? Place::Nape : Place::Back;
}

SurfacePath PlaceNamer::acrossFrom(const Vec3& p) const {
  return shortestPath(shape_, p, p.cwiseProduct(Vec3(-1, 1, 1)));
}

double PlaceNamer::fromCentre_mm(const Vec3& p) const { return std::copysign(acrossFrom(p).length_mm / 2, p.x()); }

PlaceName PlaceNamer::at(const Vec3& p) const {
  PlaceName name;
  name.place = placeAt(p);
  name.fromHairline_mm = fromHairline_mm(p);
  const SurfacePath across = acrossFrom(p);
  name.fromCentre_mm = std::copysign(across.length_mm / 2, p.x());
  const std::size_t n = across.points.size();
  Vec3 foot = n % 2 == 1 ? across.points[n / 2]
                         : Vec3((across.points[n / 2 - 1] + across.points[n / 2]) / 2);
  foot.x() = 0;
  const double along = alongCentreLine_mm(shape_.project(foot));
  const double azimuth = std::abs(degrees(std::atan2(p.x(), p.y())));

  const bool beside = name.place == Place::Side || name.place == Place::Temple ||
                      (name.place == Place::OffHair && azimuth > 60 && azimuth < 115);
  if (beside) {
    const Vec3& ear = p.x() < 0 ? marks_.earLeft : marks_.earRight;
    name.reference = PlaceReference::EarPoint;
    name.fromReference_mm =
        std::copysign(surfaceDistance_mm(shape_, p, ear), p.z() - ear.z());
  } else if (name.place == Place::Crown || name.place == Place::Back ||
             name.place == Place::Nape || (name.place == Place::OffHair && azimuth >= 115)) {
    name.reference = PlaceReference::Crown;
    name.fromReference_mm = along - crownAlong_mm_;
  } else {
    name.reference = PlaceReference::FrontHairline;
    name.fromReference_mm = along;
  }
  return name;
}

PlaceName placeName(const HeadShape& shape, const Hairline& hairline, const ScalpPoint& point) {
  return PlaceNamer(shape, hairline).at(shape.pointAt(point));
}

std::string describe(const PlaceName& name) {
  static constexpr const char* kPlaces[] = {"off the hair", "front", "temple", "top",
                                            "crown",        "side",  "back",   "nape"};
  const auto mm = [](double value) { return numberText(std::abs(value), 0) + " mm"; };
  const bool positive = name.fromReference_mm >= 0;
  std::string text = kPlaces[static_cast<std::size_t>(name.place)];
  text += ", " + mm(name.fromReference_mm);
  switch (name.reference) {
    case PlaceReference::FrontHairline:
      text += positive ? " behind the front hairline" : " before the front hairline";
      break;
    case PlaceReference::Crown: text += positive ? " below the crown" : " above the crown"; break;
    case PlaceReference::EarPoint:
      text += positive ? " above the ear point" : " below the ear point";
      break;
  }
  if (std::abs(name.fromCentre_mm) < 0.5)
    text += ", on the centre line";
  else
    text += ", " + mm(name.fromCentre_mm) +
            (name.fromCentre_mm < 0 ? " left of centre" : " right of centre");
  text += ", " + mm(name.fromHairline_mm) +
          (name.fromHairline_mm < 0 ? " outside the hairline" : " from the hairline");
  return text;
}

}  // namespace combdraft::head
