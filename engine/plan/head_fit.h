#pragma once
// Places of one head on another: the same direction, but where the hairline is
// near, the same distance from it, so that what was drawn along it follows it.
#include "engine/plan/plan.h"

namespace combdraft::plan {

class HeadFit {
 public:
  HeadFit(const Head& from, const Head& to);

  /// The same measures and hairline: every place stays.
  bool isSameHead() const { return same_; }
  /// Within 10 mm of the hairline the height above it is kept (to 0.05 mm); up
  /// to 80 mm above, the hold fades [own].
  ScalpPoint operator()(const ScalpPoint& point) const;

 private:
  struct Side {
    explicit Side(const Head& head);
    double above_mm(const ScalpPoint& point) const;
    head::HeadShape shape;
    head::Hairline hairline;
  };
  bool same_;
  Side from_, to_;
};

}  // namespace combdraft::plan
