#pragma once
// After the rinse: which level came in each zone, and a finish or a correction
// that the user types, as edits of the same plan so that its look can be seen.
// Nothing here lightens again, and nothing here chooses a colour.
#include <optional>
#include <string_view>
#include <vector>

#include "engine/base/result.h"
#include "engine/plan/change_set.h"
#include "engine/work/appointment_log.h"

namespace combdraft::work {

/// Levels seen on the lightened pieces of a zone after their rinse, as last logged.
struct ZoneLevel {
  plan::HairZone zone{};
  double level = 0, low = 0, high = 0;  ///< mean and range over its pieces
  int pieces = 0;
  double planned = 0;                   ///< mean of what the same pieces were to lift to
};
/// Zones without a level seen after the rinse are left out: with product on, hair looks lighter. A piece belongs where the middle of its line lies.
std::vector<ZoneLevel> levelsByZone(const plan::Plan& plan, const AppointmentLog& log);

/// What colour is left in bare hair of a level: "pale yellow", "gold", "orange" ...
/// Common practice, no source; charts differ by half a step.
std::string_view pigmentWord(double level);

/// A finish typed for a zone (nothing = all zones that have a level).
struct ZoneFinish {
  std::optional<plan::HairZone> zone;
  plan::FinishesAt finish;
};
/// The lightened pieces with the levels that came (a piece's own where one was
/// logged, else its zone's) and the typed finishes. Later entries win.
/// Error OutOfRange at the zone's word: a finish lighter than the hair that it goes on.
Result<plan::ChangeSet> toned(const plan::Plan& plan, const AppointmentLog& log, const std::vector<ZoneFinish>& finishes);

/// Puts depth back: these pieces are deepened to a typed level and tone.
/// Error OutOfRange at the piece's id: it would become lighter.
Result<plan::ChangeSet> deepened(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces, const plan::FinishesAt& finish);
/// These pieces are left out instead, for the next time the placement is used.
plan::ChangeSet leftOut(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces);
/// Adds a root shadow over a zone (nothing = the whole head).
plan::ChangeSet rootShadow(const plan::Plan& plan, const plan::Treatment& shadow);

/// Whether an edit brings more light: a new light piece, a lighter level or
/// finish, an earlier start, a wider or fuller piece. The item; nothing = none does.
std::optional<plan::ItemId> bringsMoreLight(const plan::Plan& before, const plan::Plan& after);

}  // namespace combdraft::work
