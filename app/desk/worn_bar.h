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
  controls::Segments* moisture() { return moisture_; }
  QSlider* part() { return part_; }
  QSlider* raised() { return raised_; }
  QComboBox* distance() { return distance_; }
  QString partText() const { return partText_->text(); }

 private:
  template <class Change>
  void change(Change change);
  void buildWorn();
  void buildHair();
  void buildSeeing();
  void fill();
  QWidget* group(const QString& title, QWidget* control, QLabel** titleLabel = nullptr);
  QSlider* slider(const QString& name, const QString& tip, int low, int high, int page, const QString& widest);
  QComboBox* combo(const QString& name, const QString& tip, const QStringList& words);

  document::ViewState& view_;
  controls::Segments *worn_, *lifts_, *toner_, *subject_, *moisture_;
  QSlider *part_, *raised_, *weeks_;
  QLabel *partText_, *raisedText_, *weeksText_;
  QWidget* raisedGroup_;
  QComboBox *light_, *distance_;
};

/// "Down", "In the wind": a way of wearing as the bar and the menu name it.
QString wornName(hair::WornWay way);
/// What it means, as one phrase.
QString wornTip(hair::WornWay way);
QString lightName(colour::Light light);

/// From where the hair is looked at.
struct Distance {
  double metres;
  const char* name;  ///< translated by distanceName()
};
inline constexpr Distance kDistances[] = {{0.6, QT_TRANSLATE_NOOP("WornBar", "close, 0.6 m")},
                                          {1, QT_TRANSLATE_NOOP("WornBar", "talking, 1 m")},
                                          {2, QT_TRANSLATE_NOOP("WornBar", "salon mirror, 2 m")},
                                          {3, QT_TRANSLATE_NOOP("WornBar", "across the room, 3 m")}};
QString distanceName(const Distance& distance);

/// "Part: usual place", "Part: 12 mm to client's right"
QString partText(double shift_mm);
/// The same; where the part is not seen, why.
QString partText(const hair::Worn& worn);
/// "Raised above: 140 mm below the top"
QString raisedText(double raised_mm);
/// "When: on the day", "When: 6 weeks later"
QString weeksText(double weeks);

}  // namespace combdraft::desk
