#include "app/cards/hair_numbers.h"

#include <QtGlobal>

namespace combdraft::cards {
namespace {

using Typed = std::optional<double>;

constexpr HairNumber kNumbers[] = {
    {"hair.density_per_cm2", QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "Hairs on a square centimetre"),
     QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "how much hair"), "", 1, 0,
     [](const plan::Hair& h) -> Typed { return h.density_per_cm2; },
     [](plan::Hair& h, const Typed& v) { h.density_per_cm2 = *v; }, nullptr},
    {"hair.fibre_um", QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "Thickness of one hair"),
     QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "thickness of one hair"), "µm", 1, 1,
     [](const plan::Hair& h) -> Typed { return h.fibre_um; },
     [](plan::Hair& h, const Typed& v) { h.fibre_um = *v; }, nullptr},
    {"hair.layering_frac", QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "Layering"), QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "layering"), "%", 100, 0,
     [](const plan::Hair& h) -> Typed { return h.layering_frac; },
     [](plan::Hair& h, const Typed& v) { h.layering_frac = *v; }, nullptr},
    {"hair.cutLine_mm", QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "Cut line, below the head's middle"),
     QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "cut line"), "mm", 1, 0,
     [](const plan::Hair& h) -> Typed { return h.cutLine_mm; },
     [](plan::Hair& h, const Typed& v) { h.cutLine_mm = v; }, QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "as grown")},
    {"hair.toneWarmth", QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "Natural tone, ash −1 to red-gold +1"),
     QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "natural tone"), "", 1, 1,
     [](const plan::Hair& h) -> Typed { return h.toneWarmth; },
     [](plan::Hair& h, const Typed& v) { h.toneWarmth = *v; }, nullptr},
    {"hair.white_frac", QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "White hair"), QT_TRANSLATE_NOOP("combdraft::cards::HairCard", "white hair"), "%", 100, 0,
     [](const plan::Hair& h) -> Typed { return h.white_frac; },
     [](plan::Hair& h, const Typed& v) { h.white_frac = *v; }, nullptr}};

}  // namespace

std::span<const HairNumber> hairNumbers() { return kNumbers; }

}  // namespace combdraft::cards
