#pragma once
// The page of the appointment: the work list before it, the log while it goes, and
// what follows after the rinse.
#include <QStackedWidget>
#include <QWidget>

#include "app/appointment/after_view.h"
#include "app/appointment/log_view.h"
#include "app/appointment/next_visit_view.h"
#include "app/appointment/outcome_view.h"
#include "app/appointment/work_list_view.h"

namespace combdraft::appointment {

class AppointmentPage : public QWidget {
  Q_OBJECT

 public:
  explicit AppointmentPage(document::DocumentController& controller, QWidget* parent = nullptr,
                           LogView::Clock clock = LogView::systemClock(),
                           live::HairCountService::Count count = live::HairCountService::engineCount());

  enum class View { WorkList, Log, After, Outcome, NextVisit };
  void turnTo(View view);
  View view() const { return static_cast<View>(views_->currentIndex()); }
  /// The user's own factors, as the settings hold them.
  void setFactors(const work::OwnFactors& factors);
  WorkListView& workList() { return *workList_; }
  LogView& log() { return *log_; }
  AfterView& after() { return *after_; }
  OutcomeView& outcome() { return *outcome_; }
  NextVisitView& nextVisit() { return *nextVisit_; }
  controls::Segments* which() { return which_; }
  /// What the pieces have of the hair; counted while a view that shows it is in view.
  const live::HairCountService& counts() const { return *counts_; }

 Q_SIGNALS:
  void left();
  void turned();  ///< to another view
  void tapped();  ///< the log changed: bring it onto the disk
  void factorsChanged(const combdraft::work::OwnFactors& factors);
  void lookWanted();  ///< the plan was changed: to the sheet, to look at it

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  live::HairCountService* counts_;  ///< shared by the views
  controls::Segments* which_;
  QStackedWidget* views_;
  WorkListView* workList_;
  LogView* log_;
  AfterView* after_;
  OutcomeView* outcome_;
  NextVisitView* nextVisit_;
};

}  // namespace combdraft::appointment
