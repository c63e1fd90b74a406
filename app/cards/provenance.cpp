#include "app/cards/provenance.h"

#include <QCoreApplication>

#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Provenance)
};

// Defaults that are not our own assumption. Those of the fields follow
// engine/plan/plan.h; measures follow engine/head/measures.h.
struct Source {
  const char *field, *source;
};
constexpr Source kSources[] = {
    {"hair.density_per_cm2", QT_TRANSLATE_NOOP("Provenance", "published, [Loussouarn2005]")},
    {"hair.fibre_um", QT_TRANSLATE_NOOP("Provenance", "published, mean fibre area in a hair-science book")},
    {"head.hairlineFront_mm", QT_TRANSLATE_NOOP("Provenance", "as on our drawn head")},
    {"head.hairlineTemples_mm", QT_TRANSLATE_NOOP("Provenance", "as on our drawn head")},
    {"head.hairlineSides_mm", QT_TRANSLATE_NOOP("Provenance", "as on our drawn head")},
    {"head.hairlineNape_mm", QT_TRANSLATE_NOOP("Provenance", "as on our drawn head")}};
constexpr Source kFollows[] = {
    {"head.circumference_mm", QT_TRANSLATE_NOOP("Provenance", "Not typed: from the chosen size, survey [ANSUR2].")},
    {"head.length_mm", QT_TRANSLATE_NOOP("Provenance", "Not typed: follows the size and what is typed, survey [ANSUR2].")},
    {"head.breadth_mm", QT_TRANSLATE_NOOP("Provenance", "Not typed: follows the size and what is typed, survey [ANSUR2].")},
    {"head.earToEar_mm", QT_TRANSLATE_NOOP("Provenance", "Not typed: follows the size and what is typed, survey [ANSUR1].")}};

}  // namespace

QString provenance(const char* field, const std::optional<double>& value) {
  const std::string_view name(field);
  if (!value) {
    for (const Source& row : kFollows)
      if (name == row.field) return Words::tr(row.source);
    return Words::tr("Not typed.");
  }
  const plan::FieldInfo& info = plan::fieldInfo(name);
  if (!info.standard || *info.standard != *value) return Words::tr("Typed by you.");
  for (const Source& row : kSources)
    if (name == row.field) return Words::tr("Our default: %1.").arg(Words::tr(row.source));
  return Words::tr("Our default: own assumption.");
}

}  // namespace combdraft::cards
