#pragma once
// The appointment as a strip of minutes: a row for each pair of hands, a row for
// the bowls. A moment is chosen by pointing or with the arrow keys; what is oldest
// then is said under it.
#include <QWidget>

#include "engine/plan/plan.h"
#include "engine/work/timeline.h"

namespace combdraft::appointment {

class TimelineStrip : public QWidget {
  Q_OBJECT

 public:
  explicit TimelineStrip(QWidget* parent = nullptr);
  void show(const plan::Plan& plan, const work::Timeline& timeline, int pairs);
  double moment_min() const { return moment_min_; }
  void setMoment(double at_min);
  /// "at 12.0 min: oldest piece 1, 9.3 min; oldest product A: bowl 1, 11.0 min"
  QString momentText() const;
  QSize sizeHint() const override;

 Q_SIGNALS:
  void momentChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  double xOf(double at_min) const;
  double end_min() const;
  int rowHeight() const;
  void describe();

  plan::Plan plan_ = plan::Plan::fresh(1);
  work::Timeline timeline_;
  int pairs_ = 1;
  double moment_min_ = 0;
};

}  // namespace combdraft::appointment
