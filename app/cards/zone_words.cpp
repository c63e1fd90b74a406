#include "app/cards/zone_words.h"

#include <QCoreApplication>

#include "app/cards/card_parts.h"

namespace combdraft::cards {

QString zoneName(plan::HairZone zone) {
  static constexpr const char* kNames[] = {
      QT_TRANSLATE_NOOP("HairZones", "Front"), QT_TRANSLATE_NOOP("HairZones", "Top"),
      QT_TRANSLATE_NOOP("HairZones", "Crown"), QT_TRANSLATE_NOOP("HairZones", "Sides"),
      QT_TRANSLATE_NOOP("HairZones", "Back"),  QT_TRANSLATE_NOOP("HairZones", "Nape")};
  return QCoreApplication::translate("HairZones", kNames[static_cast<std::size_t>(zone)]);
}

QComboBox* newZoneChoice(QWidget* parent, const QString& name) {
  QStringList words{QCoreApplication::translate("HairZones", "Whole head")};
  for (std::size_t zone = 0; zone < plan::kHairZones; ++zone) words << zoneName(static_cast<plan::HairZone>(zone));
  return newCombo(parent, name, words);
}

std::optional<plan::HairZone> zoneAtRow(int row) {
  return row <= 0 ? std::nullopt : std::optional(static_cast<plan::HairZone>(row - 1));
}

int rowOfZone(const std::optional<plan::HairZone>& zone) { return zone ? static_cast<int>(*zone) + 1 : 0; }

}  // namespace combdraft::cards
