#include "app/cards/head_numbers.h"

#include <QtGlobal>

namespace combdraft::cards {
namespace {

using Typed = std::optional<double>;
using head::FittedHead;

constexpr HeadNumber kMeasures[] = {
    {"head.circumference_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Round the head"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "head measure"),
     [](const plan::Head& h) -> Typed { return h.measures.circumference_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.circumference_mm = v; },
     [](const FittedHead& f) { return f.circumference_mm; }},
    {"head.length_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Forehead to back"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "head length"),
     [](const plan::Head& h) -> Typed { return h.measures.length_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.length_mm = v; }, [](const FittedHead& f) { return f.length_mm; }},
    {"head.breadth_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Breadth above the ears"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "head breadth"),
     [](const plan::Head& h) -> Typed { return h.measures.breadth_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.breadth_mm = v; }, [](const FittedHead& f) { return f.breadth_mm; }},
    {"head.earToEar_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Ear to ear over the top"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "ear to ear"),
     [](const plan::Head& h) -> Typed { return h.measures.earToEar_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.earToEar_mm = v; }, [](const FittedHead& f) { return f.earToEar_mm; }}};

constexpr HeadNumber kHairline[] = {
    {"head.hairlineFront_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Front hairline, up or down (−)"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "front hairline"),
     [](const plan::Head& h) -> Typed { return h.hairline.front_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.front_mm = *v; }, nullptr},
    {"head.hairlineTemples_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Temples, up or down (−)"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "temples"),
     [](const plan::Head& h) -> Typed { return h.hairline.temples_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.temples_mm = *v; }, nullptr},
    {"head.hairlineSides_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Over the ears, up or down (−)"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "hairline at the sides"),
     [](const plan::Head& h) -> Typed { return h.hairline.sides_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.sides_mm = *v; }, nullptr},
    {"head.hairlineNape_mm", QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "Nape, up or down (−)"), QT_TRANSLATE_NOOP("combdraft::cards::HeadCard", "nape hairline"),
     [](const plan::Head& h) -> Typed { return h.hairline.nape_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.nape_mm = *v; }, nullptr}};

}  // namespace

std::span<const HeadNumber> headMeasures() { return kMeasures; }
std::span<const HeadNumber> hairlineMoves() { return kHairline; }

}  // namespace combdraft::cards
