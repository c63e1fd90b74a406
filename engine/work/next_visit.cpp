#include "engine/work/next_visit.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/work/log_text.h"
#include "engine/work/work_order.h"

namespace combdraft::work {
namespace {

double growth_mm(const plan::Plan& plan, double weeks) {
  return Assumptions(plan.info().assumptions)["growth.mm_per_week"] * weeks;
}

constexpr double kMeets_mm = 10;      // an end of light and a beginning of light are one line [own]
constexpr double kSame_frac = 0.01;  // of a zone's hair

using State = std::map<plan::ItemId, PieceNow>;

// What was not placed takes no hair from the others and lightens none.
plan::Plan withoutSkipped(plan::Plan plan, const plan::ItemId& choice, const State& state) {
  std::vector<plan::ItemId> skipped;
  for (const auto& [id, piece] : plan.pieces(choice))
    if (piece->action != plan::Action::LeaveOut && !wasPlaced(state, id)) skipped.push_back(id);
  for (const plan::ItemId& id : skipped) plan.put(id, plan::ItemPtr());
  return plan;
}

double levelOf(const State& state, const plan::ItemId& id, const plan::Piece& piece) {
  const auto now = state.find(id);
  const double lifted = now != state.end() && now->second.came ? *now->second.came : piece.root.lifts.level;
  return piece.root.finish ? std::min(piece.root.finish->level, lifted) : lifted;  // a finish does not lighten
}

}  // namespace

Result<plan::ChangeSet> grownOut(const plan::Plan& plan, const plan::ItemId& choice, double weeks) {
  constexpr double kLongest_weeks = 104;
  if (!(weeks >= 0) || !(weeks <= kLongest_weeks)) return Error{ErrorCode::OutOfRange, "weeks", {numberText(weeks), "0 to 104 weeks"}, {}};
  const Result<AppointmentLog> log = readLog(plan.info().logJson);
  if (!log) return log.error();
  const State state = treatedInAll(*log);
  const Result<Amounts> amounts = amountsOf(withoutSkipped(plan, choice, state), {choice, {}, 40'000});
  if (!amounts) return amounts.error();
  struct Light {
    double hairs = 0, start = 0, level = 0;
    double stoppedHairs = 0, stop = 0;
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
      sum->level += amount.hairs * levelOf(state, amount.piece, piece);
      if (piece.stop_mm) sum->stoppedHairs += amount.hairs, sum->stop += amount.hairs * *piece.stop_mm;
    }
  }
  const double grown = growth_mm(plan, weeks);
  const auto isLit = [&](std::size_t z) { return (light[z].hairs > 0 ? light[z] : all).hairs > 0 && amounts->zones[z].share_frac() > 0; };
  std::size_t needed = plan.hair().scattered.size();
  for (std::size_t z = 0; z < plan::kHairZones; ++z) needed += isLit(z);
  if (needed > plan::limits::kSmallList)
    return Error{ErrorCode::TooManyItems, "hair.scattered", {std::to_string(needed), std::to_string(plan::limits::kSmallList)}, {}};
  return plan::changeHair(plan, [&](plan::Hair& hair) {
    for (plan::ScatteredLight& old : hair.scattered) old.from_mm += grown, old.to_mm += grown;
    for (std::size_t z = 0; z < plan::kHairZones; ++z) {
      hair.length_mm[z] = std::min(hair.length_mm[z] + grown, plan::fieldInfo("hair.length_mm").high);
      const double share = amounts->zones[z].share_frac();
      const Light& mean = light[z].hairs > 0 ? light[z] : all;
      if (!isLit(z)) continue;
      plan::ScatteredLight today;
      today.zone = static_cast<plan::HairZone>(z);
      today.share_frac = std::min(1.0, share);
      today.from_mm = mean.start / mean.hairs + grown;
      today.level = mean.level / mean.hairs;
      const bool isStopped = mean.stoppedHairs > mean.hairs / 2;
      const double to_mm = isStopped ? mean.stop / mean.stoppedHairs + grown : hair.length_mm[z];
      today.to_mm = std::max(today.from_mm, to_mm);
      // Pieces that ended at old light made it longer; they are no other hair.
      for (plan::ScatteredLight& old : hair.scattered) {
        if (!isStopped || old.zone != today.zone || std::abs(old.from_mm - to_mm) > kMeets_mm) continue;
        if (old.share_frac <= today.share_frac + kSame_frac) {
          old.from_mm = std::min(old.from_mm, today.from_mm);
          today.share_frac -= std::min(today.share_frac, old.share_frac);
        } else {  // some of the old light only
          old.share_frac -= today.share_frac;
          today.to_mm = old.to_mm;
          break;
        }
      }
      if (today.share_frac > kSame_frac) hair.scattered.push_back(today);
    }
    for (plan::Band& band : hair.bands) band.from_mm += grown, band.to_mm += grown;
  });
}

std::vector<RepeatPiece> piecesToRepeat(const plan::Plan& plan, const plan::ItemId& choice, double weeks, double show_mm) {
  const Result<AppointmentLog> log = readLog(plan.info().logJson);
  const State state = log ? treatedInAll(*log) : State();
  std::vector<RepeatPiece> pieces;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    if (piece->action != plan::Action::Lighten) continue;
    const double start = piece->start_mm + growth_mm(plan, weeks);
    pieces.push_back({id, start, start > show_mm, wasPlaced(state, id)});
  }
  return pieces;
}

plan::ChangeSet stoppedAtOldLight(const plan::Plan& today, const plan::Plan& next, const std::vector<plan::ItemId>& pieces, double weeks) {
  plan::Plan stopped = next;
  for (const plan::ItemId& id : pieces) {
    const auto *before = today.find<plan::Piece>(id), *now = next.find<plan::Piece>(id);
    if (!before || !now) continue;
    plan::Piece piece = *now;
    const double old_mm = before->start_mm + growth_mm(today, weeks);
    if (piece.action != plan::Action::Lighten || old_mm <= piece.start_mm) continue;
    piece.stop_mm = old_mm;
    stopped.put(id, piece);
  }
  return plan::difference(next, stopped, plan::EditKind::ChangePieces);
}

LeftOutAfter leftOutAfter(double light_frac, int visits) {
  if (visits <= 0) return {};
  const double left = 1 - std::clamp(light_frac, 0.0, 1.0);
  return {left, std::pow(left, visits)};
}

}  // namespace combdraft::work
