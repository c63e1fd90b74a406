#include "engine/work/next_visit.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/work/work_order.h"

namespace combdraft::work {
namespace {

double growth_mm(const plan::Plan& plan, double weeks) {
  return Assumptions(plan.info().assumptions)["growth.mm_per_week"] * weeks;
}

double levelOf(const plan::Piece& piece) { return piece.root.finish ? piece.root.finish->level : piece.root.lifts.level; }

}  // namespace

Result<plan::ChangeSet> grownOut(const plan::Plan& plan, const plan::ItemId& choice, double weeks) {
  constexpr double kLongest_weeks = 104;
  if (!(weeks >= 0) || !(weeks <= kLongest_weeks)) return Error{ErrorCode::OutOfRange, "weeks", {numberText(weeks), "0 to 104 weeks"}, {}};
  const Result<Amounts> amounts = amountsOf(plan, {choice, {}, 40'000});
  if (!amounts) return amounts.error();
  struct Light {
    double hairs = 0, start = 0, level = 0;
  };
  std::array<Light, plan::kHairZones> light{};
  Light all;  // for a zone that only reaches of pieces from beside it lie in
  const PiecePlaces places(plan);
  for (const PieceAmount& amount : amounts->pieces) {
    const plan::Piece& piece = *plan.find<plan::Piece>(amount.piece);
    if (piece.action != plan::Action::Lighten) continue;
    const double pushed = piece.backcomb.depth_mm > 0 ? piece.backcomb.pushed_frac : 0;
    const double start = (1 - pushed) * piece.start_mm + pushed * std::max(piece.start_mm, piece.backcomb.depth_mm);
    for (Light* sum : {&light[static_cast<std::size_t>(places.of(piece).zone)], &all}) {
      sum->hairs += amount.hairs;
      sum->start += amount.hairs * start;
      sum->level += amount.hairs * levelOf(piece);
    }
  }
  const double grown = growth_mm(plan, weeks);
  return plan::changeHair(plan, [&](plan::Hair& hair) {
    for (plan::ScatteredLight& old : hair.scattered) old.from_mm += grown, old.to_mm += grown;
    for (std::size_t z = 0; z < plan::kHairZones; ++z) {
      hair.length_mm[z] = std::min(hair.length_mm[z] + grown, plan::fieldInfo("hair.length_mm").high);
      const double share = amounts->zones[z].share_frac();
      const Light& mean = light[z].hairs > 0 ? light[z] : all;
      if (mean.hairs <= 0 || share <= 0 || hair.scattered.size() >= plan::limits::kSmallList) continue;
      plan::ScatteredLight today;
      today.zone = static_cast<plan::HairZone>(z);
      today.share_frac = std::min(1.0, share);
      today.from_mm = mean.start / mean.hairs + grown;
      today.to_mm = std::max(today.from_mm, hair.length_mm[z]);
      today.level = mean.level / mean.hairs;
      hair.scattered.push_back(today);
    }
    for (plan::Band& band : hair.bands) band.from_mm += grown, band.to_mm += grown;
  });
}

std::vector<RepeatPiece> piecesToRepeat(const plan::Plan& plan, const plan::ItemId& choice, double weeks, double show_mm) {
  std::vector<RepeatPiece> pieces;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    if (piece->action != plan::Action::Lighten) continue;
    const double start = piece->start_mm + growth_mm(plan, weeks);
    pieces.push_back({id, start, start > show_mm});
  }
  return pieces;
}

LeftOutAfter leftOutAfter(double light_frac, int visits) {
  if (visits <= 0) return {};
  const double left = 1 - std::clamp(light_frac, 0.0, 1.0);
  return {left, std::pow(left, visits)};
}

}  // namespace combdraft::work
