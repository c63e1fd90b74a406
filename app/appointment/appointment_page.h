#pragma once
// The page of the appointment: the work list before it, and the log while it goes.
#include <QStackedWidget>
#include <QWidget>

#include "app/appointment/log_view.h"
#include "app/appointment/work_list_view.h"

namespace combdraft::appointment {

class AppointmentPage : public QWidget {
  Q_OBJECT

 public:
  explicit AppointmentPage(document::DocumentController& controller, QWidget* parent = nullptr,
                           LogView::Clock clock = LogView::systemClock());

  enum class View { WorkList, Log };
  void turnTo(View view);
  WorkListView& workList() { return *workList_; }
  LogView& log() { return *log_; }
  controls::Segments* which() { return which_; }

 Q_SIGNALS:
  void left();
  void tapped();  ///< the log changed: bring it onto the disk

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  controls::Segments* which_;
  QStackedWidget* views_;
  WorkListView* workList_;
  LogView* log_;
};

}  // namespace combdraft::appointment
