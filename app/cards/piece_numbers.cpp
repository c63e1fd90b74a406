#include "app/cards/piece_numbers.h"

#include <QtGlobal>
#include <cmath>

namespace combdraft::cards {
namespace {

using Group = PieceNumber::Group;
using plan::Piece;
using Typed = std::optional<double>;

// Adds or changes the finish of a zone; emptied = stays bare.
void setFinish(plan::ZoneColour& zone, const Typed& level) {
  if (!level)
    zone.finish.reset();
  else if (zone.finish)
    zone.finish->level = *level;
  else
    zone.finish = plan::FinishesAt{*level, plan::Tone::Natural};
}
// The span always holds its own level.
void setLevel(plan::LiftsTo& lifts, double level) {
  const double below = lifts.level - lifts.low, above = lifts.high - lifts.level;
  lifts.level = level;
  lifts.low = std::max(1.0, level - below);
  lifts.high = std::min(12.0, level + above);
}
void setLow(plan::LiftsTo& lifts, double low) { lifts.low = std::min(low, lifts.level); }
void setHigh(plan::LiftsTo& lifts, double high) { lifts.high = std::max(high, lifts.level); }

constexpr PieceNumber kNumbers[] = {
    {Group::Strand, "piece.start_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Starts at, off the scalp"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "start"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.start_mm; },
     [](Piece& p, const Typed& v) { p.start_mm = *v; }},
    {Group::Strand, "piece.blend_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Blend length"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "blend length"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.blend_mm; },
     [](Piece& p, const Typed& v) { p.blend_mm = *v; }},
    {Group::Strand, "backcomb.depth_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Backcomb depth"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "backcomb depth"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.backcomb.depth_mm; },
     [](Piece& p, const Typed& v) { p.backcomb.depth_mm = *v; }},
    {Group::Strand, "backcomb.pushed_frac", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "How much is pushed back"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "pushed share"), "%", 100, 0, nullptr,
     [](const Piece& p) -> Typed { return p.backcomb.pushed_frac; },
     [](Piece& p, const Typed& v) { p.backcomb.pushed_frac = *v; }},
    {Group::Strand, "backcomb.blend_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Blend of the pushed hair"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "blend of pushed hair"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.backcomb.blend_mm; },
     [](Piece& p, const Typed& v) { p.backcomb.blend_mm = *v; }},
    {Group::Strand, "piece.handover_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "End formula takes over at"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "handover"), "mm", 1, 1, QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "never"),
     [](const Piece& p) -> Typed { return p.handover_mm; },
     [](Piece& p, const Typed& v) { p.handover_mm = v; }},
    {Group::Strand, "piece.stop_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Lightener stops at"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "stop"), "mm", 1, 1, QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "ends"),
     [](const Piece& p) -> Typed { return p.stop_mm; },
     [](Piece& p, const Typed& v) { p.stop_mm = v; }},

    {Group::Strip, "piece.thickness_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Thickness"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "thickness"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.thickness_mm; },
     [](Piece& p, const Typed& v) { p.thickness_mm = *v; }},
    {Group::Strip, "piece.taken_frac", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Taken within the teeth"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "taken share"), "%", 100, 0, nullptr,
     [](const Piece& p) -> Typed { return p.taken_frac; },
     [](Piece& p, const Typed& v) { p.taken_frac = *v; }},
    {Group::Strip, "piece.tooth_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Teeth"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "teeth"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.tooth_mm; },
     [](Piece& p, const Typed& v) { p.tooth_mm = *v; }},
    {Group::Strip, "piece.gap_mm", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Gaps"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "gaps"), "mm", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.gap_mm; },
     [](Piece& p, const Typed& v) { p.gap_mm = *v; }},
    {Group::Strip, "piece.outer_frac", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Brush reaches into it"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "brush reach"), "%", 100, 0, nullptr,
     [](const Piece& p) -> Typed { return p.outer_frac; },
     [](Piece& p, const Typed& v) { p.outer_frac = *v; }},

    {Group::RootZone, "lifts.level", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Lifts to level"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "lifts to"), "", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.root.lifts.level; },
     [](Piece& p, const Typed& v) { setLevel(p.root.lifts, *v); }},
    {Group::RootZone, "lifts.low", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "… at the least"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "least lift"), "", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.root.lifts.low; },
     [](Piece& p, const Typed& v) { setLow(p.root.lifts, *v); }},
    {Group::RootZone, "lifts.high", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "… at the most"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "most lift"), "", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.root.lifts.high; },
     [](Piece& p, const Typed& v) { setHigh(p.root.lifts, *v); }},
    {Group::RootZone, "finish.level", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Finishes at level"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "finishes at"), "", 1, 1, QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "stays bare"),
     [](const Piece& p) -> Typed { return p.root.finish ? Typed(p.root.finish->level) : Typed(); },
     [](Piece& p, const Typed& v) { setFinish(p.root, v); }},

    {Group::EndZone, "lifts.level", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Lifts to level"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "lifts to at the ends"), "", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.end.lifts.level; },
     [](Piece& p, const Typed& v) { setLevel(p.end.lifts, *v); }},
    {Group::EndZone, "lifts.low", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "… at the least"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "least lift at the ends"), "", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.end.lifts.low; },
     [](Piece& p, const Typed& v) { setLow(p.end.lifts, *v); }},
    {Group::EndZone, "lifts.high", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "… at the most"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "most lift at the ends"), "", 1, 1, nullptr,
     [](const Piece& p) -> Typed { return p.end.lifts.high; },
     [](Piece& p, const Typed& v) { setHigh(p.end.lifts, *v); }},
    {Group::EndZone, "finish.level", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Finishes at level"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "finishes at, ends"), "", 1, 1, QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "stays bare"),
     [](const Piece& p) -> Typed { return p.end.finish ? Typed(p.end.finish->level) : Typed(); },
     [](Piece& p, const Typed& v) { setFinish(p.end, v); }},

    {Group::Order, "piece.order", QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "Place in the order"),
     QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "order"), "", 1, 0, nullptr,
     [](const Piece& p) -> Typed { return p.order; },
     [](Piece& p, const Typed& v) { p.order = static_cast<int>(std::lround(*v)); }},
};

}  // namespace

std::span<const PieceNumber> pieceNumbers() { return kNumbers; }

}  // namespace combdraft::cards
