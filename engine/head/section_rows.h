#pragma once
// The rows of a section: the lines along which its pieces are taken.
//
// Parallel runs are lines of equal surface distance from the section's first
// edge (its lower edge for horizontal rows, the edge nearest the centre for
// vertical ones). Where the section has no such edge but a corner, and for
// diagonal rows, they are counted from a straight line through that corner.
// Pivoting rows are straight lines from one point at equal angles.
#include <optional>
#include <vector>

#include "engine/head/scalp_outline.h"

namespace combdraft::head {

enum class RowRun { Horizontal, Vertical, DiagonalForward, DiagonalBack, Pivoting };

class SectionRows {
 public:
  /// `pivot` is used by pivoting rows only; without one they turn about the
  /// outline's corner nearest the crown. Costs about 10 ms for a section of a
  /// quarter of the head.
  SectionRows(const HeadShape& shape, const std::vector<Vec3>& corners, RowRun run,
              const std::optional<Vec3>& pivot = std::nullopt);

  /// Room for rows, mm: the greatest distance from the first edge inside the
  /// section; for pivoting rows the length of the arc at mid-length.
  double depth_mm() const { return depth_mm_; }

  /// The row at `from_mm` (between 0 and the depth), where it lies inside the section; may be
  /// several stretches. Points at most 4 mm apart. Rows travel away from the
  /// centre line (horizontal), downward (the others), away from the pivot.
  /// Distance of every point from the first edge: within 0.3 mm (tested).
  /// `clear_share`: pivoting rows begin at this share of mid-length.
  std::vector<std::vector<Vec3>> rowAt(double from_mm, double clear_share = 0) const;

  const ScalpOutline& outline() const { return outline_; }

 private:
  struct Ray {
    Vec3 at, heading;
  };
  using Front = std::vector<Ray>;  // one line of equal distance, in travel order

  void growFronts();
  void turnRays(const Vec3& pivot);
  Front firstEdge() const;
  Front cornerLine() const;
  Front stepped(const Front& front) const;
  std::vector<std::vector<Vec3>> inOrder(std::vector<std::vector<Vec3>> rows) const;

  HeadShape shape_;
  ScalpOutline outline_;
  RowRun run_;
  std::vector<Front> fronts_;  // kStep_mm apart
  double depth_mm_ = 0;
  // pivoting
  Vec3 pivot_ = Vec3::Zero();
  double firstAngle_ = 0, span_ = 0, middle_mm_ = 0, reach_mm_ = 0;
  Vec3 east_ = Vec3::UnitX(), north_ = Vec3::UnitY();
};

}  // namespace combdraft::head
