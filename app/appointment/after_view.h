#pragma once
// After the rinse: which level came in each zone, and finishes and corrections that
// the user types. Each becomes one undo entry of the plan, so that it can be seen on
// the heads and taken back. Nothing here lightens, and nothing here chooses a colour.
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <array>

#include "app/appointment/corrections_box.h"
#include "app/appointment/finish_field.h"
#include "app/document/document_controller.h"
#include "engine/work/toning.h"

namespace combdraft::appointment {

class AfterView : public QWidget {
  Q_OBJECT

 public:
  explicit AfterView(document::DocumentController& controller, QWidget* parent = nullptr);

  void fill();
  QTableWidget* table() { return table_; }
  FinishField* finish(plan::HairZone zone) { return zones_[static_cast<std::size_t>(zone)]; }
  FinishField* finishOfAll() { return all_; }
  QPushButton* tryFinish() { return try_; }
  QPushButton* see() { return see_; }
  CorrectionsBox* corrections() { return corrections_; }
  QString stateText() const { return state_->text(); }

 Q_SIGNALS:
  void lookWanted();  ///< back to the sheet, where the look follows the plan

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* buildLeft();
  void enable();
  void tryTyped();

  document::DocumentController& controller_;
  std::vector<work::ZoneLevel> levels_;
  QLabel *state_, *said_;
  QTableWidget* table_;
  QWidget* finishes_;
  std::array<FinishField*, plan::kHairZones> zones_{};
  FinishField* all_;
  QPushButton *try_, *see_;
  CorrectionsBox* corrections_;
};

}  // namespace combdraft::appointment
