#pragma once
// A small table of numbers, zone by zone: length, and level at root, middle and
// ends. Its first row stands for all zones: what is typed there goes to all of
// them. Tab walks along a row, Enter goes down, Ctrl with an arrow anywhere.
#include <QGridLayout>
#include <QLabel>
#include <QWidget>
#include <array>
#include <optional>

#include "app/controls/number_field.h"
#include "engine/plan/plan.h"

namespace combdraft::cards {

enum class ZonePart { Length, Root, Middle, End };
inline constexpr std::size_t kZoneParts = 4;
double zoneValue(const plan::Hair& hair, std::size_t zone, ZonePart part);
void setZoneValue(plan::Hair& hair, std::size_t zone, ZonePart part, double value);

class ZoneTable : public QWidget {
  Q_OBJECT

 public:
  explicit ZoneTable(QWidget* parent = nullptr);

  void setHair(const plan::Hair& hair);
  enum class Rows { Together, ZoneByZone };
  void setRows(Rows rows);
  /// Row 0 = all zones, then the zones.
  controls::NumberField* box(std::size_t row, ZonePart part) { return boxes_[row][static_cast<std::size_t>(part)]; }

 Q_SIGNALS:
  /// Nothing = all zones.
  void edited(std::optional<combdraft::plan::HairZone> zone, combdraft::cards::ZonePart part, double value,
              bool stepping);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void addBox(QGridLayout* grid, std::size_t row, std::size_t part, const QString& name);
  void showHeads();
  void walk(std::size_t row, std::size_t part, int down, int right);

  std::array<std::array<controls::NumberField*, kZoneParts>, plan::kHairZones + 1> boxes_{};
  std::array<QLabel*, plan::kHairZones + 1> names_{};
  QLabel *lengthHead_, *problem_;
};

}  // namespace combdraft::cards
