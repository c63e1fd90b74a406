#pragma once
// One bar: how it's worn, when, and in which light. Writes the view state only;
// nothing here changes the plan.
#include <QComboBox>
#include <QFrame>
#include <QLabel>
#include <QSlider>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/document/view_state.h"

namespace combdraft::desk {

class WornBar : public QFrame {
  Q_OBJECT

 public:
  explicit WornBar(document::ViewState& view, QWidget* parent = nullptr);

  controls::Segments* worn() { return worn_; }
  controls::Segments* lifts() { return lifts_; }
  QSlider* part() { return part_; }

 private:
  template <class Change>
  void change(Change change);
  void fill();
  QWidget* group(const QString& title, QWidget* control, QLabel** titleLabel = nullptr);

  document::ViewState& view_;
  controls::Segments *worn_, *lifts_, *toner_, *subject_;
  QSlider* part_;
  QLabel* partText_;
  QComboBox* light_;
  QSlider* weeks_;
  QLabel* weeksText_;
};

/// "Part: usual place", "Part: 12 mm to client's right"
QString partText(double shift_mm);
/// "When: on the day", "When: 6 weeks later"
QString weeksText(double weeks);

}  // namespace combdraft::desk
