#pragma once
// Distances and straight walks on the head's own surface, mm.
//
// "Straight" means geodesic: the shortest way between near points. All points
// lie on the surface of the same HeadShape. The surface has a step in front of
// the neck (below HeadShape::neckTop_mm at y = 0), far from any hair: ways that
// cross it are not meaningful.
#include <vector>

#include "engine/head/head_shape.h"

namespace combdraft::head {

/// A way on the surface: its points, first and last as given, and its length.
struct SurfacePath {
  std::vector<Vec3> points;
  double length_mm = 0;
};

/// The shortest way from `from` to `to`. Length within 0.01 % of the exact
/// geodesic on spheroids of flattening -0.2 to 0.2 (tested against
/// [GeographicLib], near-antipodal pairs included). About 0.2 ms.
SurfacePath shortestPath(const HeadShape& shape, const Vec3& from, const Vec3& to);

/// Length of the shortest way, mm. Same accuracy and cost as `shortestPath`.
double surfaceDistance_mm(const HeadShape& shape, const Vec3& from, const Vec3& to);

/// Where a straight walk ends and which way it then points (unit tangent).
struct SurfaceStep {
  Vec3 at;
  Vec3 heading;
};

/// Walks straight from `from`, starting along `direction` (its part in the
/// surface counts, any length > 0), for `distance_mm` (negative walks back).
/// Ends within 0.001 mm per 100 mm of the exact geodesic on spheroids.
SurfaceStep stepAlong(const HeadShape& shape, const Vec3& from, const Vec3& direction,
                      double distance_mm);

/// Only the end point of `stepAlong`.
Vec3 surfaceOffset(const HeadShape& shape, const Vec3& from, const Vec3& direction,
                   double distance_mm);

/// Unit tangent at `at` square to `heading`, to the left seen from outside.
Vec3 leftOf(const HeadShape& shape, const Vec3& at, const Vec3& heading);

/// A drawn line as points on the surface no more than `step_mm` apart. Between
/// two given points the line follows the plane through them and the head
/// centre. Given points are kept; points closer than 1e-6 mm to the one before
/// are dropped.
std::vector<Vec3> resampledOnSurface(const HeadShape& shape, const std::vector<Vec3>& line,
                                     double step_mm = 3.0);

/// Length of a line given by close points (each less than 10 mm apart), with
/// the bend between them allowed for.
double lineLength_mm(const HeadShape& shape, const std::vector<Vec3>& line);

}  // namespace combdraft::head
