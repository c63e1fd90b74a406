#include <QCoreApplication>
#include <algorithm>

#include "app/cards/piece_card.h"

namespace combdraft::cards {
namespace {

// Nearer than this to the scalp counts as scalp contact is likely (own choice:
// product creeps, and a start is typed to a few millimetres).
constexpr double kNearScalp_mm = 12;

QString tr(const char* text) { return QCoreApplication::translate("PieceCautions", text); }

bool leafletAllowsScalp(const plan::Plan& plan, const plan::Piece& piece) {
  const auto* formula = plan.find<plan::Formula>(piece.root.formula);
  return formula && formula->scalpContact == plan::Formula::ScalpContact::Yes;
}

}  // namespace

QStringList pieceCautions(const plan::Plan& plan, const std::vector<const plan::Piece*>& pieces) {
  const auto any = [&](const auto& test) {
    return std::any_of(pieces.begin(), pieces.end(), [&](const plan::Piece* p) { return test(*p); });
  };
  const plan::Hair& hair = plan.hair();
  QStringList cautions;
  if (any([&](const plan::Piece& p) {
        return p.action == plan::Action::Lighten && p.start_mm < kNearScalp_mm &&
               !leafletAllowsScalp(plan, p);
      }))
    cautions << tr("Starts at or near the scalp: check the maker's leaflet for scalp contact.");
  const auto backcombedWhere = [&](plan::Condition condition) {
    return any([&](const plan::Piece& p) {
      return p.backcomb.depth_mm > 0 && p.backcomb.pushed_frac > 0 &&
             hair.condition[static_cast<std::size_t>(zoneOf(plan, p))] == condition;
    });
  };
  if (backcombedWhere(plan::Condition::Poor))
    cautions << tr("Backcombing hair in poor condition: check elasticity first.");
  else if (backcombedWhere(plan::Condition::NotChecked))
    cautions << tr("Backcombing, and the condition here is not recorded: check elasticity first.");
  const bool alreadyLight =
      !hair.scattered.empty() ||
      std::any_of(hair.bands.begin(), hair.bands.end(), [](const plan::Band& b) { return b.level >= 8; });
  if (alreadyLight && any([](const plan::Piece& p) { return p.action == plan::Action::Lighten; }))
    cautions << tr("Some of this hair is already light: check its strength, test a strand.");
  return cautions;
}

}  // namespace combdraft::cards
