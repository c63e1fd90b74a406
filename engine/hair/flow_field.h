#pragma once
// Which way hair lies on the head: a unit direction at each scalp place, the
// same for all hair there up to small wandering. See docs/engine-notes.md,
// "Fall"; all weights are own assumptions.
#include <optional>
#include <vector>

#include "engine/base/assumptions.h"
#include "engine/hair/worn.h"
#include "engine/head/hairline.h"
#include "engine/plan/plan.h"

namespace combdraft::hair {

class FlowField {
 public:
  /// `part`: places front to back on the surface; fewer than 2 = no part.
  FlowField(const head::HeadShape& shape, const head::Hairline& hairline, std::vector<Vec3> part,
            const std::vector<plan::Whorl>& whorls, const Worn& worn, const Assumptions& assumptions);

  /// Where gathered hair is tied.
  struct Tie {
    Vec3 at, outward;
    bool held = false;  ///< by the hand: the hair ends there, nothing hangs on
  };
  /// The tie that gathers hair rooted at `root`, or nothing when it hangs.
  std::optional<Tie> tieOf(const Vec3& root) const;

  /// Unit tangent direction of fall at surface point `p` with outward normal
  /// `n`, toward `tie` when there is one. `side` (-1 or +1) decides on the part
  /// line and where fields cancel.
  Vec3 direction(const Vec3& p, const Vec3& n, double side, const std::optional<Tie>& tie) const;

  /// +1 when `p` lies to the wearer's right of the part, -1 left, smooth between.
  double partSide(const Vec3& p) const;

  const std::vector<Vec3>& part() const { return part_; }

 private:
  struct WhorlAt {
    Vec3 at, normal;
    double sign;
  };

  head::HeadShape shape_;
  head::Hairline hairline_;
  std::vector<Vec3> part_;
  std::vector<WhorlAt> whorls_;
  WornWay way_;
  double partReach_, partWeight_, whorlReach_, whorlWeight_, combBack_, faceAway_;
  double spiral_deg_ = 50;     ///< how far the whorl turns hair from straight outward
  double raisedFrom_mm_ = 0;   ///< LayerRaised: hair rooted higher is held up
};

/// Whether an assumption about the fall changes this way of wearing at all.
bool matters(std::string_view assumption, WornWay way);

}  // namespace combdraft::hair
