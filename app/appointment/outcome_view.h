#pragma once
// Planned against got, piece by piece, and what this head says of the user's own
// speed and amounts. Nothing is taken over unless she ticks it and presses the button;
// the last head can be taken away again. Never minutes on the hair, never a lift.
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

#include "app/controls/number_field.h"
#include "app/document/document_controller.h"
#include "app/live/hair_count_service.h"
#include "engine/work/outcome.h"

namespace combdraft::appointment {

class OutcomeView : public QWidget {
  Q_OBJECT

 public:
  /// `counts` outlives the view.
  OutcomeView(document::DocumentController& controller, live::HairCountService& counts, QWidget* parent = nullptr);

  /// Product for hair follows when the hair is counted.
  void fill();
  /// The factors that stand now; no signal.
  void setFactors(const work::OwnFactors& factors);
  /// Takes back what was said of the last change: it could not be kept.
  void sayNotKept(const QString& why);
  /// What this head gives, as far as it was logged and typed.
  work::MeasuredHead measured() const;

  QTableWidget* table() { return table_; }
  controls::NumberField* mixed() { return mixed_; }
  controls::NumberField* left() { return left_; }
  controls::NumberField* pushed() { return pushed_; }
  QCheckBox* consent() { return consent_; }
  QPushButton* take() { return take_; }
  QPushButton* takeAway() { return takeAway_; }
  QPushButton* usePushedButton() { return usePushed_; }
  QString stateText() const { return state_->text(); }
  QString headText() const { return head_->text(); }
  QString factorsText() const { return learned_->text(); }
  QString saidText() const { return said_->text(); }

 Q_SIGNALS:
  /// The user took a head over or away.
  void factorsChanged(const combdraft::work::OwnFactors& factors);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* buildSide();
  void fillTable();
  void weighHair();
  void fillHead();
  void showPushing();
  void usePushed();
  void takeOver();
  void takeLastAway();

  document::DocumentController& controller_;
  live::HairCountService& counts_;
  work::OwnFactors factors_;
  double hair_g_ = 0;                    ///< under product, of the pieces that were placed
  QString uncounted_;                    ///< why hair_g_ is not known though pieces were placed; "" = it is
  std::optional<double> speed_;
  bool hasBackcombed_ = false;
  QTableWidget* table_;
  QLabel *state_, *head_, *learned_, *said_;
  controls::NumberField *mixed_, *left_, *pushed_;
  QCheckBox* consent_;
  QPushButton *take_, *takeAway_, *usePushed_;
};

}  // namespace combdraft::appointment
