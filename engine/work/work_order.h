#pragma once
// In which order pieces are worked: as the plan numbers them, or by the rule that
// slow hair comes first and fine hair at the front hairline last. All common
// practice, no source.
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::work {

enum class OrderUse { AsPlanned, ByRule };

/// How soon hair at a place takes.
enum class Pace {
  Slow,      ///< a zone whose porosity was found resistant
  Usual,
  Hairline,  ///< within `work.hairline_mm` of the front or temple hairline: fine, takes fast
};
struct PiecePlace {
  plan::HairZone zone{};
  Pace pace = Pace::Usual;
  /// Above the parietal ridge: front, top or crown. Its pieces show most and so
  /// come from a fresh bowl.
  bool top = false;
};
/// Of the middle of a piece's line. The hairline counts before the zone.
/// Precondition: the line has a point.
class PiecePlaces {
 public:
  explicit PiecePlaces(const plan::Plan& plan);
  PiecePlace of(const plan::Piece& piece) const;

 private:
  head::HeadShape shape_;
  std::vector<Vec3> frontHairline_;
  std::array<plan::Porosity, plan::kHairZones> porosity_;
  double hairline_mm_;
};

/// Worked pieces of a choice ("" = the active one); left-outs are not placed. By
/// rule: plan::orderByRule, parted into slow, usual and hairline, each as it was.
std::vector<plan::ItemId> workOrder(const plan::Plan& plan, const plan::ItemId& choice, OrderUse use);

}  // namespace combdraft::work
