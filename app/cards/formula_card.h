#pragma once
// The formulas of a plan, as typed from their leaflets: letter, kind, what is
// mixed, where that was read and when, what the leaflet says about the scalp,
// and which pieces use it. The program fills in nothing but a free letter.
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>
#include <functional>

#include "app/cards/mix_rows.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_box.h"
#include "app/controls/text_field.h"
#include "app/document/document_controller.h"

class QVBoxLayout;

namespace combdraft::cards {

class FormulaCard : public QWidget {
  Q_OBJECT

 public:
  explicit FormulaCard(document::DocumentController& controller, QWidget* parent = nullptr);

  /// The formula whose values are shown; "" = there is none.
  const plan::ItemId& shown() const { return shown_; }
  void showFormula(const plan::ItemId& id);

 private:
  void buildFields(QVBoxLayout* column);
  void fill();
  void fillList();
  void add();
  void remove();
  void change(const QString& what, const std::function<void(plan::Formula&)>& change,
              document::Gesture gesture = document::Gesture::none());

  document::DocumentController& controller_;
  plan::ItemId shown_;
  QListWidget* list_;
  QPushButton *add_, *remove_, *select_;
  QLabel *empty_, *letterTwice_, *users_;
  QWidget* body_;
  controls::TextField *letter_, *origin_, *date_;
  QComboBox* kind_;
  MixRows* mix_;
  controls::NumberField *life_, *longest_;
  controls::TextBox *text_, *directions_;
  controls::Segments* contact_;
  document::Gesture typing_ = document::Gesture::begin(), typingDirections_ = document::Gesture::begin();
};

}  // namespace combdraft::cards
