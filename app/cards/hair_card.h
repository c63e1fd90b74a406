#pragma once
// The hair: how much, how thick, how it falls, lengths and levels zone by zone
// at root, middle and ends, old colour bands, hair that is already light, white,
// condition as found.
#include <QComboBox>
#include <QLabel>
#include <QWidget>
#include <array>
#include <functional>

#include "app/cards/stretch_list.h"
#include "app/cards/zone_table.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_field.h"
#include "app/document/document_controller.h"

namespace combdraft::cards {

class HairCard : public QWidget {
  Q_OBJECT

 public:
  explicit HairCard(document::DocumentController& controller, QWidget* parent = nullptr);

  ZoneTable* table() { return table_; }
  StretchList* bands() { return bands_; }
  StretchList* scattered() { return scattered_; }
  /// The choice of a zone's condition; nothing = that of all zones.
  QComboBox* condition(const std::optional<plan::HairZone>& zone);

 private:
  void buildNumbers(QVBoxLayout* column);
  void buildTable(QVBoxLayout* column);
  void buildStretches(QVBoxLayout* column);
  void buildCondition(QVBoxLayout* column);
  void setRows(ZoneTable::Rows rows);
  void fill();
  void fillCondition(const plan::Hair& hair);
  void change(const QString& what, const std::function<void(plan::Hair&)>& change);
  /// Arrow steps join into one entry; anything else stands alone.
  void changeNumber(const QString& what, bool stepping, const std::function<void(plan::Hair&)>& change);
  void edit(const QString& name, const std::function<void(plan::Hair&)>& change, document::Gesture gesture);

  document::DocumentController& controller_;
  QLabel* caution_;
  QComboBox* curl_;
  std::vector<controls::NumberField*> numbers_;
  controls::Segments* rows_;
  ZoneTable* table_;
  StretchList *bands_, *scattered_;
  std::array<QComboBox*, plan::kHairZones + 1> condition_{};
  controls::TextField* checked_;
  QString steppedWhat_;
  document::Gesture stepping_ = document::Gesture::begin();
};

}  // namespace combdraft::cards
