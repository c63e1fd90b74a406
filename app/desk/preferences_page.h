#pragma once
// What the user chooses for the whole program; every choice holds at once.
#include <QWidget>

#include "app/store/settings.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace combdraft::controls {
class NumberField;
class Segments;
}

namespace combdraft::desk {

class PreferencesPage : public QWidget {
  Q_OBJECT

 public:
  explicit PreferencesPage(QWidget* parent = nullptr);

  /// Shows values; no signal.
  void set(const store::Preferences& preferences, bool hints, int hintsPutAway);
  controls::Segments* unit() { return unit_; }
  controls::Segments* theme() { return theme_; }
  controls::Segments* textSize() { return textSize_; }
  controls::Segments* begin() { return begin_; }
  controls::NumberField* thickness() { return thickness_; }
  controls::NumberField* start() { return start_; }
  QCheckBox* hints() { return hints_; }
  QPushButton* hintsAgain() { return again_; }

 Q_SIGNALS:
  void changed(const combdraft::store::Preferences& preferences);
  void hintsWanted(bool shown);
  void hintsAgainWanted();
  void keysWanted();
  void done();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  store::Preferences now_;
  controls::Segments *unit_, *theme_, *textSize_, *begin_, *language_;
  controls::NumberField *thickness_, *start_;
  QCheckBox* hints_;
  QPushButton* again_;
};

}  // namespace combdraft::desk
