#pragma once
// What the look rests on: every number of our own with its unit, range, default
// and origin, in groups by what it moves. A change is an edit of the plan; what
// differs from the default says so by a sign and a word.
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <string>
#include <vector>

#include "app/controls/number_field.h"
#include "app/document/document_controller.h"
#include "engine/base/assumptions.h"

class QVBoxLayout;

namespace combdraft::cards {

class AssumptionsCard : public QWidget {
  Q_OBJECT

 public:
  explicit AssumptionsCard(document::DocumentController& controller, QWidget* parent = nullptr);

  /// Brings an assumption into view and puts the keyboard there; unknown keys do nothing.
  void showAssumption(const std::string& key);
  /// "All as we set them", "◆ 2 differ from their default"
  QString summary() const { return summary_->text(); }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  struct Row {
    const Assumption* assumption;
    controls::NumberField* field;
    QLabel* note;
    QPushButton* reset;
  };
  /// Some forty rows: made when they are first wanted, not with every window.
  void buildRows();
  void addRow(QVBoxLayout* column, const Assumption& assumption);
  void fill();
  /// Nothing = back to the default.
  void change(const Assumption& assumption, const std::optional<double>& value, bool stepping);
  void resetAll();

  document::DocumentController& controller_;
  QLabel* summary_;
  QPushButton* resetAll_;
  std::vector<Row> rows_;
  const Assumption* stepped_ = nullptr;
  document::Gesture stepping_ = document::Gesture::begin();
};

}  // namespace combdraft::cards
