#pragma once
// The hair: how much, how thick, how it falls, lengths, levels by zone at root,
// middle and ends, white, condition.
#include <QComboBox>
#include <QLineEdit>
#include <QWidget>
#include <array>
#include <functional>

#include "app/controls/number_field.h"
#include "app/document/document_controller.h"

namespace combdraft::cards {

class HairCard : public QWidget {
  Q_OBJECT

 public:
  explicit HairCard(document::DocumentController& controller, QWidget* parent = nullptr);

 private:
  void fill();
  void change(const QString& what, const std::function<void(plan::Hair&)>& change);

  document::DocumentController& controller_;
  QComboBox* curl_;
  std::vector<controls::NumberField*> numbers_;
  std::array<std::array<controls::NumberField*, 4>, plan::kHairZones> zones_{};  // length, root, middle, end
  std::array<QComboBox*, plan::kHairZones> condition_{};
  QLineEdit* checked_;
};

}  // namespace combdraft::cards
