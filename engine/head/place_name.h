#pragma once
// What a place on the scalp is called and how far it is from what the hand
// knows: the words beside the linked pointer.
#include <string>
#include <vector>

#include "engine/head/landmarks.h"
#include "engine/head/surface_distance.h"

namespace combdraft::head {

enum class Place { OffHair, Front, Temple, Top, Crown, Side, Back, Nape };

/// What `fromReference_mm` is measured from.
enum class PlaceReference {
  FrontHairline,  ///< behind the front hairline, along the centre line
  Crown,          ///< below (+) or above the crown, along the centre line
  EarPoint,       ///< above (+) or below the ear point, straight on the surface
};

struct PlaceName {
  Place place = Place::OffHair;
  PlaceReference reference = PlaceReference::FrontHairline;
  double fromReference_mm = 0;
  double fromCentre_mm = 0;    ///< from the centre line, + the wearer's right
  double fromHairline_mm = 0;  ///< to the nearest hairline; + inside the hair
};

/// Names places of one head; build once per head, then about 1 ms for a name with its
/// distances, less for the place alone. All distances on the surface, within 1 mm up to 100 mm.
class PlaceNamer {
 public:
  PlaceNamer(const HeadShape& shape, const Hairline& hairline);
  PlaceName at(const Vec3& surfacePoint) const;
  /// The place of `at` alone.
  Place placeAt(const Vec3& surfacePoint) const;
  /// The distance from the centre line of `at` alone, + the wearer's right.
  double fromCentre_mm(const Vec3& surfacePoint) const;

 private:
  double fromHairline_mm(const Vec3& p) const;
  /// The way to the mirror image: it crosses the centre line square, half-way.
  SurfacePath acrossFrom(const Vec3& p) const;
  double alongCentreLine_mm(const Vec3& onCentreLine) const;  // from the front hairline

  HeadShape shape_;
  Hairline hairline_;
  Landmarks marks_;
  std::vector<Vec3> edge_, edgeNormal_;  // hairline, 3 degrees apart from -180
  std::vector<Vec3> centre_;
  std::vector<double> centreAlong_;
  double crownAlong_mm_ = 0;
};

/// One question; builds a PlaceNamer for it.
PlaceName placeName(const HeadShape& shape, const Hairline& hairline, const ScalpPoint& point);

/// "back, 38 mm below the crown, 22 mm left of centre, 61 mm from the hairline"
std::string describe(const PlaceName& name);

}  // namespace combdraft::head
