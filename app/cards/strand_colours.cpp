#include "app/cards/strand_colours.h"

#include "engine/colour/hair_colour.h"
#include "engine/colour/screen.h"

namespace combdraft::cards {
namespace {

constexpr colour::Light kLight = colour::Light::Daylight;

colour::Tone toneOf(plan::Tone tone) { return static_cast<colour::Tone>(tone); }
static_assert(static_cast<int>(plan::Tone::Red) == static_cast<int>(colour::Tone::Red));

colour::Xyz treated(const plan::Piece& piece, const plan::ZoneColour& zone) {
  if (piece.action == plan::Action::Deepen) {
    const plan::FinishesAt aim = zone.finish.value_or(plan::FinishesAt{zone.lifts.level, {}});
    return colour::xyzOf(colour::deepenedHair(aim.level, toneOf(aim.tone)), kLight);
  }
  if (zone.finish)
    return colour::xyzOf(
        colour::finishedHair(zone.lifts.level, zone.finish->level, toneOf(zone.finish->tone)), kLight);
  return colour::xyzOf(colour::lightenedHair(zone.lifts.level), kLight);
}

}  // namespace

std::vector<QColor> strandColours(const plan::Piece& piece, const plan::Hair& hair,
                                  plan::HairZone zone, double length_mm, const std::vector<double>& xs_mm,
                                  const std::vector<double>& light) {
  const plan::RootMiddleEnd level = hair.level[static_cast<std::size_t>(zone)];
  const auto natural = [&](double l) {
    return colour::xyzOf(colour::naturalHair(l, hair.toneWarmth), kLight);
  };
  const colour::Xyz naturals[] = {natural(level.root), natural(level.middle), natural(level.end)};
  const colour::Xyz root = treated(piece, piece.root);
  const colour::Xyz end = piece.handover_mm ? treated(piece, piece.end) : root;

  std::vector<QColor> colours;
  for (std::size_t i = 0; i < xs_mm.size(); ++i) {
    const double s = 2 * std::min(1.0, xs_mm[i] / length_mm);
    const colour::Xyz base = s < 1 ? (1 - s) * naturals[0] + s * naturals[1]
                                   : (2 - s) * naturals[1] + (s - 1) * naturals[2];
    const bool beyond = piece.handover_mm && xs_mm[i] > *piece.handover_mm;
    const double share = piece.action == plan::Action::LeaveOut ? 0 : light[i];
    const std::array<double, 3> rgb =
        colour::linearSrgb((1 - share) * base + share * (beyond ? end : root), kLight);
    colours.emplace_back(colour::encodeSrgb(rgb[0]), colour::encodeSrgb(rgb[1]),
                         colour::encodeSrgb(rgb[2]));
  }
  return colours;
}

}  // namespace combdraft::cards
