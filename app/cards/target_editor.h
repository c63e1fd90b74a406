#pragma once
// What is wanted of the look in one region of the active choice: level, contrast,
// lightest and darkest hair. All may be left empty.
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <functional>

#include "app/controls/number_field.h"
#include "app/document/document_controller.h"

namespace combdraft::cards {

class TargetEditor : public QWidget {
  Q_OBJECT

 public:
  explicit TargetEditor(document::DocumentController& controller, QWidget* parent = nullptr);

  /// Index into plan::targetRegions(): 0 = whole head. Puts the keyboard there.
  void turnTo(int region);
  QComboBox* which() { return which_; }
  controls::NumberField* level() { return level_; }
  QComboBox* contrast() { return contrast_; }
  controls::NumberField* brightest() { return brightest_; }
  controls::NumberField* darkest() { return darkest_; }
  QPushButton* clear() { return clear_; }
  /// The aims of the choice, a line for each region that has one.
  QString listText() const { return all_->text(); }
  QString cautionText() const { return caution_->isHidden() ? QString() : caution_->text(); }

 private:
  std::string region() const;
  void fill();
  void change(const QString& what, const std::function<void(plan::Target&)>& change,
              document::Gesture gesture = document::Gesture::none());

  document::DocumentController& controller_;
  QComboBox *which_, *contrast_;
  controls::NumberField *level_, *brightest_, *darkest_;
  QLabel *caution_, *all_;
  QPushButton* clear_;
  document::Gesture stepping_ = document::Gesture::begin();
};

}  // namespace combdraft::cards
