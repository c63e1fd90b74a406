#include "engine/work/toning.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/plan_words.h"
#include "engine/work/work_order.h"

namespace combdraft::work {
namespace {

double lightestOf(const plan::ZoneColour& colour) { return colour.finish ? colour.finish->level : colour.lifts.level; }

bool isBrighter(const plan::Piece& before, const plan::Piece& after) {
  if (after.action != plan::Action::Lighten) return false;
  if (before.action != plan::Action::Lighten) return true;
  return after.root.lifts.level > before.root.lifts.level || after.end.lifts.level > before.end.lifts.level ||
         lightestOf(after.root) > lightestOf(before.root) || lightestOf(after.end) > lightestOf(before.end) ||
         after.start_mm < before.start_mm || after.thickness_mm > before.thickness_mm || after.taken_frac > before.taken_frac ||
         after.backcomb.depth_mm < before.backcomb.depth_mm || after.backcomb.pushed_frac < before.backcomb.pushed_frac ||
         after.stop_mm.value_or(1e9) > before.stop_mm.value_or(1e9) || after.dropOuts.size() < before.dropOuts.size();
}

}  // namespace

std::vector<ZoneLevel> levelsByZone(const plan::Plan& plan, const AppointmentLog& log) {
  const PiecePlaces places(plan);
  std::map<plan::HairZone, ZoneLevel> zones;
  for (const auto& [id, now] : stateAt(log, 1e18)) {
    const auto* piece = plan.find<plan::Piece>(id);
    if (!piece || piece->action != plan::Action::Lighten || !now.came || piece->line.empty()) continue;
    ZoneLevel& zone = zones[places.of(*piece).zone];
    zone.low = zone.pieces ? std::min(zone.low, *now.came) : *now.came;
    zone.high = zone.pieces ? std::max(zone.high, *now.came) : *now.came;
    zone.level += *now.came;
    zone.planned += now.planned.value_or(piece->root.lifts).level;
    ++zone.pieces;
  }
  std::vector<ZoneLevel> levels;
  for (auto& [zone, sum] : zones) {
    sum.zone = zone;
    sum.level /= sum.pieces;
    sum.planned /= sum.pieces;
    levels.push_back(sum);
  }
  return levels;
}

std::string_view pigmentWord(double level) {
  constexpr std::array<std::string_view, 10> kWords{"plum black", "red violet", "red",  "red orange",  "orange",
                                                    "gold orange", "gold",      "deep yellow", "yellow", "pale yellow"};
  return kWords[static_cast<std::size_t>(std::clamp(std::lround(level), 1L, 10L) - 1)];
}

Result<plan::ChangeSet> toned(const plan::Plan& plan, const AppointmentLog& log, const std::vector<ZoneFinish>& finishes) {
  const PiecePlaces places(plan);
  const auto zones = levelsByZone(plan, log);
  const auto state = stateAt(log, 1e18);
  plan::Plan after = plan;
  for (const auto& [id, piece] : plan.pieces()) {
    if (piece->action != plan::Action::Lighten || piece->line.empty()) continue;
    const plan::HairZone zone = places.of(*piece).zone;
    const auto own = state.find(id);
    if (!wasPlaced(state, id)) continue;  // skipped: it is as it was
    const auto ofZone = std::find_if(zones.begin(), zones.end(), [&](const ZoneLevel& z) { return z.zone == zone; });
    std::optional<double> level;
    if (own != state.end() && own->second.came) level = own->second.came;
    else if (ofZone != zones.end()) level = ofZone->level;
    if (!level) continue;
    plan::Piece changed = *piece;
    changed.root.lifts = changed.end.lifts = {*level, *level, *level};
    for (const ZoneFinish& typed : finishes) {
      if (typed.zone && *typed.zone != zone) continue;
      if (typed.finish.level > *level)
        return Error{ErrorCode::OutOfRange, std::string(plan::wordOf(zone)),
                     {numberText(typed.finish.level), "at most " + numberText(*level) + ", the level of the hair: a toner does not lighten"}, {}};
      changed.root.finish = changed.end.finish = typed.finish;
    }
    // What stays bare, or keeps its planned finish, cannot be lighter than the hair.
    for (plan::ZoneColour* colour : {&changed.root, &changed.end})
      if (colour->finish) colour->finish->level = std::min(colour->finish->level, *level);
    after.put(id, changed);
  }
  return plan::difference(plan, after, plan::EditKind::ChangePieces);
}

Result<plan::ChangeSet> deepened(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces, const plan::FinishesAt& finish) {
  for (const plan::ItemId& id : pieces) {
    const auto* piece = plan.find<plan::Piece>(id);
    if (!piece) return Error{ErrorCode::IdUnknown, id, {id, "a piece of this plan"}, {}};
    const double now = std::min(lightestOf(piece->root), piece->handover_mm ? lightestOf(piece->end) : lightestOf(piece->root));
    if (piece->action == plan::Action::Lighten && finish.level > now)
      return Error{ErrorCode::OutOfRange, id, {numberText(finish.level), "at most " + numberText(now) + ", the level that it has"}, {}};
  }
  return plan::changePieces(plan, pieces, [&](plan::Piece& piece) {
    piece.action = plan::Action::Deepen;
    piece.root.finish = piece.end.finish = finish;
  });
}

plan::ChangeSet leftOut(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  return plan::changePieces(plan, pieces, [](plan::Piece& piece) { piece.action = plan::Action::LeaveOut; });
}

plan::ChangeSet rootShadow(const plan::Plan& plan, const plan::Treatment& shadow) {
  plan::Treatment added = shadow;
  added.kind = plan::Treatment::Kind::RootShadow;
  if (added.choice.empty()) added.choice = plan.info().activeChoice;
  return plan::setItem(plan, plan.freeId("treatment"), added);
}

std::optional<plan::ItemId> bringsMoreLight(const plan::Plan& before, const plan::Plan& after) {
  for (const auto& [id, item] : after.items()) {
    const auto* now = std::get_if<plan::Piece>(item.get());
    if (!now) continue;
    const auto* was = before.find<plan::Piece>(id);
    if (was ? isBrighter(*was, *now) : now->action == plan::Action::Lighten) return id;
  }
  return std::nullopt;
}

}  // namespace combdraft::work
