#pragma once
// The head: measures, hairline, usual part, whorls and how they turn, skin for
// the scalp.
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <array>
#include <functional>
#include <utility>
#include <vector>

#include "app/cards/head_numbers.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/document/document_controller.h"

class QVBoxLayout;

namespace combdraft::cards {

class HeadCard : public QWidget {
  Q_OBJECT

 public:
  explicit HeadCard(document::DocumentController& controller, QWidget* parent = nullptr);

 private:
  void buildMeasures(QVBoxLayout* column);
  void buildPart(QVBoxLayout* column);
  void buildWhorls(QVBoxLayout* column);
  void addNumber(QVBoxLayout* column, const HeadNumber& row);
  void fill();
  void fillMeasures(const plan::Head& head);
  void change(const QString& what, const std::function<void(plan::Head&)>& change,
              document::Gesture gesture = document::Gesture::none());

  document::DocumentController& controller_;
  controls::Segments *set_, *size_, *part_, *whorls_;
  std::array<controls::Segments*, 2> turns_{};
  std::array<QLabel*, 2> turnNames_{};
  QPushButton* resetPart_;
  QComboBox* skin_;
  QLabel* notes_;
  std::vector<std::pair<const HeadNumber*, controls::NumberField*>> numbers_;
  const HeadNumber* stepped_ = nullptr;
  document::Gesture stepping_ = document::Gesture::begin();
};

}  // namespace combdraft::cards
