#pragma once
// The head: measures, hairline, usual part, whorls, skin for the scalp.
#include <QComboBox>
#include <QLabel>
#include <QWidget>
#include <functional>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/document/document_controller.h"

namespace combdraft::cards {

class HeadCard : public QWidget {
  Q_OBJECT

 public:
  explicit HeadCard(document::DocumentController& controller, QWidget* parent = nullptr);

 private:
  void fill();
  void change(const QString& what, const std::function<void(plan::Head&)>& change);

  document::DocumentController& controller_;
  controls::Segments *set_, *size_, *part_, *whorls_;
  QComboBox* skin_;
  QLabel* notes_;
  std::vector<controls::NumberField*> numbers_;
};

}  // namespace combdraft::cards
